// Long because the page is reckoned once more in one reading.
// The whole model page once more, item by item and moment by moment, with nothing added up in advance: slow, plain
// and written from the page, not from the engine. The engine is held to it in differential.test.ts.

import { completePlan, type Item, type ItemDocument, type Plan } from '../../src/plan'
import { calibrated } from './naive-calibration'
import {
  heatLitresPerHour,
  legWatts,
  restingKcal,
  tableLitresPerHour,
  walkingHours,
  wbgtOf,
  weatherOf,
} from './naive-energy'
import { heapOf, type InPlay, litresOf, packing, sigmaM, uncertain, wholeOf } from './naive-heap'
import { answers, judge } from './naive-packs'
import { daysOf, happenings, type Jugs, leftOf, ridesOf, usedOf, waterAlong } from './naive-trip'

function look(plan: Plan, play: InPlay[], jugs: Jugs) {
  const gear = play.map(it => it.item)
  const water = jugs.outside + jugs.soft + jugs.rigid
  const kg = { kept: 0, daily: 0, nightly: 0, spread: 0, water, rubbish: 0, total: 0 }
  let bodyKg = jugs.soft + jugs.rigid
  let outsideLitres = 0
  for (const it of play) {
    const { item } = it
    const rides = ridesOf(item, gear)
    const each = item.massKg * item.count
    if (rides !== 'worn') {
      kg[item.use] += it.left * each
      kg.rubbish += it.used * item.leaves * each
    }
    if (rides === 'main-body') bodyKg += wholeOf(it) * each
    if (item.inside === null && rides === 'outside-pocket') outsideLitres += wholeOf(it) * litresOf(item)
  }
  kg.total = kg.kept + kg.daily + kg.nightly + kg.spread + kg.water + kg.rubbish
  const heap = heapOf(play, jugs.soft)
  return {
    kg,
    bodyKg,
    bodyLitres: packing(plan, heap, { F: 1 }).V,
    rigidLitres: heap.rigid,
    softLitres: heap.soft,
    outsideLitres,
  }
}

/** Index of the earliest largest; values apart by rounding alone count as equal. */
function earliestMax(values: number[]): number {
  const top = Math.max(...values)
  return values.findIndex(value => value >= top * (1 - 1e-12))
}

type Gear = { gear: Item[] }

/** One pass at given rations and watts (null: not known yet). */
function pass(plan: Plan & Gear, rations: number[], watts: (number | null)[]) {
  const { stops, pace, water } = plan.trip
  const hours = stops.flatMap(({ leg }) => (leg ? [walkingHours(leg, pace)] : []))
  const litresPerHour = hours.map((_, i) =>
    water.litresPerHour === 'from-heat' ? heatLitresPerHour(plan.trip, i, watts[i]!) : water.litresPerHour,
  )
  const legLitres = hours.map((h, i) => h * litresPerHour[i]!)
  const list = happenings(plan, hours, rations)
  const { sources, looks, room } = waterAlong(plan, list, legLitres, plan.gear)
  const plays: InPlay[][] = []
  const moments: (ReturnType<typeof look> & {
    stop: number
    phase: 'arrive' | 'depart'
    day: number
    km: number
    hours: number
  })[] = []
  let day = 1
  let km = 0
  let walked = 0
  list.forEach((it, now) => {
    if (it.what === 'walk') {
      km += stops[it.leg + 1]!.leg!.km
      walked += it.hours
    }
    if (it.what !== 'look') return
    if (it.phase === 'depart') day += stops[it.stop]!.nights
    const play = plan.gear.map(item => ({
      item,
      left: leftOf(item, now, list, plan, rations),
      used: usedOf(item, now, list),
    }))
    plays.push(play)
    const seen = look(plan, play, looks[moments.length]!)
    moments.push({ stop: it.stop, phase: it.phase, day, km, hours: walked, ...seen })
  })
  return { hours, legLitres, litresPerHour, sources, looks, room, plays, moments, rations }
}

function energy(plan: Plan, { hours, moments }: ReturnType<typeof pass>) {
  const rest = restingKcal(plan.carrier)
  if (!rest) return null
  const legs = hours.map((h, i) => {
    const { km, ascentM, descentM, ground } = plan.trip.stops[i + 1]!.leg!
    const leaves = moments.find(m => m.stop === i && m.phase === 'depart')!.kg.total
    const reaches = moments.find(m => m.stop === i + 1 && m.phase === 'arrive')!.kg.total
    const loadKg = (leaves + reaches) / 2 + plan.settings.packKgForEnergy
    const { massKg } = plan.carrier
    const power = legWatts({
      km,
      ascentM,
      descentM,
      ground,
      hours: h,
      loadKg,
      massKg,
      restingKcal: rest.kcal,
    })
    return { ...power, kcal: power.watts * h * 0.86 }
  })
  const { dayOfLeg, days } = daysOf(plan)
  const byDay = Array.from({ length: days }, (_, day) => {
    const mine = legs.filter((_, i) => dayOfLeg[i] === day)
    const kcalWalking = mine.reduce((sum, leg) => sum + leg.kcal, 0)
    const dayHours = hours.filter((_, i) => dayOfLeg[i] === day).reduce((a, b) => a + b, 0)
    // The page does not say what is left of a day walked for over 24 hours: nothing.
    const off = Math.max(0, 24 - dayHours) / 24
    return { kcalWalking, kcalTotal: kcalWalking + 1.4 * rest.kcal * off }
  })
  return { legs, days: byDay, assumed: rest.assumed }
}

/** Rounds as the page has them: again until no moment's total moves by 1 g; 'unsettled' after 50. */
function settle(plan: Plan) {
  const { dayOfLeg, days } = daysOf(plan)
  const byEnergy = plan.trip.meals.ration === 'energy'
  let now = pass(
    plan,
    Array.from({ length: days }, () => 1),
    dayOfLeg.map(() => null),
  )
  let spent = energy(plan, now)
  const coupled = (byEnergy && spent) || plan.trip.water.litresPerHour === 'from-heat'
  let rounds = 0
  while (coupled) {
    if (rounds === 50) return 'unsettled'
    const K = plan.gear
      .filter(item => item.use === 'daily')
      .reduce((sum, item) => sum + item.massKg * item.count * (item.kcalPerKg ?? 0), 0)
    const rations =
      byEnergy && spent
        ? spent.days.map(day => (day.kcalTotal * (1 - plan.trip.meals.deficit)) / K)
        : now.rations
    const next = pass(
      plan,
      rations,
      dayOfLeg.map((_, i) => (spent ? spent.legs[i]!.watts : null)),
    )
    const moved = Math.max(...next.moments.map((m, i) => Math.abs(m.kg.total - now.moments[i]!.kg.total)))
    now = next
    spent = energy(plan, now)
    rounds++
    if (moved < 0.001) break
    if (!Number.isFinite(moved)) return 'unsettled'
  }
  return { now, spent, rounds: byEnergy && spent ? rounds : 0 }
}

export type Naive = Exclude<ReturnType<typeof naive>, 'unsettled'>

/** Section 11: one more container, endless, weightless, strapped on. */
function withEndlessContainer(plan: Plan): Plan {
  const endless: ItemDocument = {
    id: 'endless',
    massKg: 0,
    litres: 0,
    stow: 'strapped-on',
    holdsWaterLitres: 1e6,
  }
  const [item] = completePlan({
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 70 },
    trip: { stops: [{ name: 'a' }, { name: 'b', leg: { km: 0 } }] },
    gear: [endless],
  }).gear
  return { ...plan, gear: [...plan.gear, item!] }
}

/** Section 8, with what nobody has said as 10 L and 2 kg each. */
export function naive(plan: Plan) {
  const known = naiveAsSaid(plan)
  if (known === 'unsettled') return known
  const missing = plan.gear.flatMap(({ unknownUpTo: most }, i) => [
    ...(most?.massKg ? [`gear[${i}].massKg`] : []),
    ...(most?.litres ? [`gear[${i}].litres`] : []),
  ])
  const heavy = plan.gear.map(item => ({
    ...item,
    massKg: item.unknownUpTo?.massKg ? 2 : item.massKg,
    litres: item.unknownUpTo?.litres ? 10 : item.litres,
  }))
  const worst = missing.length ? naiveAsSaid({ ...plan, gear: heavy }) : null
  const suffices =
    worst === 'unsettled' ? known.packs.map(() => false) : (worst?.packs.map(pack => pack.suffices) ?? null)
  const answer = answers(plan, known.need.peakLoadFullWaterKg, known.packs, suffices)
  return { ...known, missing, packs: known.packs.map((pack, i) => ({ ...pack, answer: answer[i] })) }
}

/** The reckoning of a plan whose items carry no `fuel`; 'unsettled' where the page refuses. */
function naiveAsSaid(plan: Plan) {
  const settled = settle(plan)
  if (settled === 'unsettled') return settled
  const { now, spent, rounds } = settled
  const watered = settle(withEndlessContainer(plan))
  if (watered === 'unsettled') return watered
  const { plays, hours, legLitres, sources } = now
  const { stops } = plan.trip
  const { dayOfLeg, days } = daysOf(plan)
  const full = earliestMax(now.moments.map(m => m.bodyLitres))
  const fullHeap = { rigid: now.moments[full]!.rigidLitres, soft: now.moments[full]!.softLitres }
  const { W, ...list } = uncertain(plan, plays[full]!, fullHeap)
  const { F, s } = calibrated(plan, W, list)
  const moments = now.moments.map(m => ({ ...m, bodyLitres: F * m.bodyLitres }))
  const heavy = earliestMax(moments.map(m => m.kg.total))
  const fullest = moments[full]!
  const heaviest = moments[heavy]!
  const sV = s * fullest.bodyLitres
  const sM = sigmaM(plan, plays[heavy]!)
  const place = ({ stop, phase }: typeof fullest) => ({ stop, name: stops[stop]!.name, phase })
  const { gear } = plan
  const rigidInside = gear.filter(
    item => item.build === 'rigid' && item.count > 0 && ridesOf(item, gear) === 'main-body',
  )
  const largest = (sizes: (number | null)[]) => {
    const known = sizes.filter(size => size !== null)
    return known.length ? Math.max(...known) : null
  }
  const sumKg = (items: Item[]) => items.reduce((sum, item) => sum + item.massKg * item.count, 0)
  const need = {
    bodyLitres: fullest.bodyLitres,
    bodyLitresSafe: fullest.bodyLitres + 1.2816 * sV,
    sigmaV: sV,
    bodyAt: place(fullest),
    outsideLitres: Math.max(...moments.map(m => m.outsideLitres)),
    peakLoadKg: heaviest.kg.total,
    peakLoadSafeKg: heaviest.kg.total + 1.2816 * sM,
    sigmaM: sM,
    peakAt: place(heaviest),
    baseKg: sumKg(gear.filter(item => item.use === 'kept' && ridesOf(item, gear) !== 'worn')),
    wornKg: sumKg(gear.filter(item => ridesOf(item, gear) === 'worn')),
    packedDensity: fullest.bodyLitres > 0 ? fullest.bodyKg / fullest.bodyLitres : null,
    longestCm: largest(rigidInside.map(item => item.lengthCm)),
    widestCm: largest(rigidInside.map(item => item.diameterCm)),
    waterCarryLitres: Math.max(...sources.map(s => s.carried)),
    waterShortLitres: Math.max(...sources.map(s => s.short)),
    peakLoadFullWaterKg: Math.max(...watered.now.moments.map(m => m.kg.total)),
    factor: F,
    sigmaShare: s,
  }
  const litresOfDay = (day: number) => {
    const sleeps = stops.find(
      (stop, i) => i > 0 && dayOfLeg[i - 1]! <= day && day < dayOfLeg[i - 1]! + stop.nights,
    )
    const walking = legLitres.filter((_, i) => dayOfLeg[i] === day).reduce((a, b) => a + b, 0)
    return walking + (sleeps ? plan.trip.water.campLitres : 0)
  }
  const fromHeat = plan.trip.water.litresPerHour === 'from-heat'
  const packs = judge(
    plan,
    need,
    fullest,
    plays[0]!,
    (plan.trip.meals.spareDays * now.rations.reduce((a, b) => a + b, 0)) / now.rations.length,
  )
  const least = packs.length ? Math.min(...packs.map(pack => pack.carriedKg)) : need.peakLoadFullWaterKg
  const share = least / plan.carrier.massKg
  const usual = (plan.carrier.ageYears ?? 99) < 18 ? 0.2 : 0.3
  const notices: Record<string, unknown>[] = [
    ...(share > usual ? [{ code: 'load-over-common-practice', share, limit: usual }] : []),
    ...sources.filter(s => s.short > 0).map(s => ({ code: 'water-short', stop: s.stop, litres: s.short })),
    ...(now.room ? [] : [{ code: 'water-containers-missing' }]),
    ...(spent ? [] : [{ code: 'energy-not-for-children' }]),
    ...(spent?.assumed ? [{ code: 'resting-assumed' }] : []),
    ...(spent?.legs ?? []).flatMap((leg, i) =>
      leg.outOfRange ? [{ code: 'energy-out-of-range', leg: i, name: stops[i + 1]!.name }] : [],
    ),
    ...(fromHeat ? hours : []).flatMap((_, i) =>
      weatherOf(plan.trip, i).airC === null
        ? [{ code: 'air-assumed', leg: i, name: stops[i + 1]!.name }]
        : [],
    ),
    ...(fromHeat ? Array.from({ length: days }, (_, day) => day) : []).flatMap(day =>
      litresOfDay(day) > 11.36 ? [{ code: 'water-cap-day', day: day + 1, litres: litresOfDay(day) }] : [],
    ),
    ...hours.flatMap((_, i) => {
      const { litresPerHour } = plan.trip.water
      const { airC, humidity } = weatherOf(plan.trip, i)
      if (litresPerHour === 'from-heat' || airC === null) return []
      const wbgt = wbgtOf({ airC, humidity })
      const asked = tableLitresPerHour(wbgt, spent ? spent.legs[i]!.watts : null)
      return wbgt >= 25.6 && litresPerHour < asked
        ? [
            {
              code: 'water-below-heat-table',
              leg: i,
              name: stops[i + 1]!.name,
              litresPerHour,
              tableLitresPerHour: asked,
            },
          ]
        : []
    }),
  ]
  return {
    need,
    moments,
    legs: hours.map((h, i) => ({
      hours: h,
      waterLitres: legLitres[i]!,
      kcal: spent ? spent.legs[i]!.kcal : null,
    })),
    days: Array.from({ length: days }, (_, day) => ({
      day: day + 1,
      hours: hours.filter((_, i) => dayOfLeg[i] === day).reduce((a, b) => a + b, 0),
      kcalWalking: spent ? spent.days[day]!.kcalWalking : null,
      kcalTotal: spent ? spent.days[day]!.kcalTotal : null,
      ration: now.rations[day]!,
    })),
    rationRounds: rounds,
    packs,
    notices,
  }
}
