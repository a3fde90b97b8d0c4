// How far a set-up reaches for every amount of water: days of food between resupplies against litres of water, by the
// rule of reach.ts (the first departure's stock). Exact: each limit is made of straight lines, and so is the least.

import type { Pack, Plan } from '../plan/types'
import type { Parts } from './need'
import { bodyLine, type Growth, growthOf, type Line, litresOn, onDay } from './reach'
import { partsOf } from './remedies-parts'
import { packingTerms, spillLitres, type Term } from './room'
import type { Reckoning } from './types'
import { contentsLimitKg } from './verdicts'
import { waterAboard, waterRoomOf } from './water'

export type Binding = 'room' | 'rating' | 'frameless-ceiling' | 'body-share'

export interface ReachPoint {
  waterLitres: number
  /** Full rations, the spare ones on top; null: no limit. */
  days: number | null
  /** What sets the days from here to the next point; null where nothing does. */
  binds: Binding | null
  /** Days to the carrier's own share of body mass, whatever the pack bears; 0 where even none is too many. */
  shareDays: number | null
}

export interface ReachOptions {
  /** Index into `reckoning.packs`. */
  setupIndex: number
  /** The carrier's share of body mass limits the days as well. */
  withBodyShare?: boolean
}

/** Days to which a limit holds with so much water; −∞: not even none, +∞: any number. */
interface Limit {
  binds: Binding
  days: (waterLitres: number) => number
  /** Where its line bends. */
  kinks: number[]
  /** The most water with which day 0 still holds. */
  mostWater: number
}

/** Litres and kilograms of rounding. */
const ROUNDING = 1e-9

/**
 * The points at which the line of days against water bends, from no water to the most that still allows day 0, or to
 * what the containers hold. More water never gives more days. Empty when not even day 0 without water can be held and
 * borne; null when nothing is eaten daily. Throws RangeError when there is no such set-up.
 */
export function reachCurve(plan: Plan, reckoning: Reckoning, options: ReachOptions): ReachPoint[] | null {
  const parts = partsOf(plan, reckoning)
  if (!parts.gear.some(item => item.use === 'daily' && item.count > 0)) return null
  const { own, share } = limitsOf(parts, reckoning, options.setupIndex)
  const limits = options.withBodyShare ? [...own, share] : own
  const end = Math.min(
    parts.water.capacityLitres ?? Number.POSITIVE_INFINITY,
    ...limits.map(l => l.mostWater),
  )
  if (end < 0 || limits.some(limit => limit.days(0) < 0)) return []

  const bends = [...limits.flatMap(limit => limit.kinks), share.mostWater].filter(
    water => water > 0 && water < end,
  )
  const ends = sorted([0, ...bends, end])
  const waters = sorted([...ends, ...ends.slice(1).flatMap((to, i) => crossings(limits, ends[i]!, to))])
  const least = (water: number) =>
    limits.reduce((a, b) => (b.days(water) < a.days(water) ? b : a), limits[0]!)
  const points = waters.map((waterLitres, i): ReachPoint => {
    const ruling = least((waterLitres + (waters[i + 1] ?? waters[i - 1] ?? waterLitres)) / 2)
    const days = Math.max(0, Math.min(...limits.map(limit => limit.days(waterLitres))))
    const finite = Number.isFinite(days)
    return {
      waterLitres,
      days: finite ? days : null,
      binds: finite ? ruling.binds : null,
      shareDays: finiteOrNull(Math.max(0, share.days(waterLitres))),
    }
  })
  return withoutStraight(points)
}

/** Days at any amount of water, read off the curve; 0 beyond its end, null for no limit. */
export function reachAt(curve: ReachPoint[], waterLitres: number): number | null {
  const next = curve.findIndex(point => point.waterLitres >= waterLitres - ROUNDING)
  if (next < 0) return 0
  const b = curve[next]!
  const a = curve[next - 1]
  if (!a || a.days === null || b.days === null) return b.days
  const along = Math.min(1, (waterLitres - a.waterLitres) / (b.waterLitres - a.waterLitres))
  return a.days + along * (b.days - a.days)
}

export interface Stretch {
  /** Left with the food for it: the start, or a stop with resupply. */
  stop: number
  name: string
  /** The next resupply stop, or the end. */
  to: number
  /** Full rations eaten from the pack on the way; the spare ones are on top. */
  days: number
  /** Water carried when leaving. */
  waterLitres: number
}

/** This trip's own stretches between resupplies, to be held against the curve. */
export function stretchesOf(plan: Plan, reckoning: Reckoning): Stretch[] {
  const { stocks } = partsOf(plan, reckoning)
  const { stops } = plan.trip
  const again = plan.gear.some(item => item.use === 'daily' && item.resupplied && item.count > 0)
  const last = stops.length - 1
  const starts = stops.flatMap((stop, i) => (i === 0 || (again && i < last && stop.resupply) ? [i] : []))
  const spareRations = stocks.at(-1)!.left.dailyOnce - suppersLeft(plan, reckoning)
  return starts.map((stop, i) => {
    const m = reckoning.moments.findIndex(moment => moment.stop === stop && moment.phase === 'depart')
    const { dailyAgain, dailyOnce } = stocks[m]!.left
    return {
      stop,
      name: stops[stop]!.name,
      to: starts[i + 1] ?? last,
      days: (again ? dailyAgain : dailyOnce) - spareRations,
      waterLitres: reckoning.moments[m]!.kg.water,
    }
  })
}

/** Rations carried to the end besides the spare ones. */
function suppersLeft({ trip: { meals } }: Plan, { days }: Reckoning): number {
  return meals.supperAfterEnd ? 0 : meals.supper * days.at(-1)!.ration
}

function limitsOf(parts: Parts, reckoning: Reckoning, setupIndex: number): { own: Limit[]; share: Limit } {
  const judged = reckoning.packs[setupIndex]
  if (!judged) throw new RangeError(`set-up ${setupIndex}: there are ${reckoning.packs.length}`)
  const { plan } = parts
  const pack = plan.packs[judged.pack]!
  const { massKg, ratedKg, frame } = pack.setups[judged.index]!
  const heap = growthOf(parts)
  const own: Limit[] = Object.values(packingTerms(parts.packing)).map(term =>
    roomLimit(term, pack, { heap, parts }),
  )
  const limitKg = contentsLimitKg(judged, reckoning.need)
  if (limitKg !== null) {
    const ceiling = frame === 'frameless' && (ratedKg === null || plan.settings.framelessCeilingKg < ratedKg)
    own.push(loadLimit(ceiling ? 'frameless-ceiling' : 'rating', limitKg, heap.kg))
  }
  const shareKg = plan.carrier.loadShareLimit * plan.carrier.massKg
  return { own, share: loadLimit('body-share', shareKg - massKg - judged.linerKg, heap.kg) }
}

function loadLimit(binds: Binding, contentsKg: number, { start, perDay }: Line): Limit {
  const days = (waterLitres: number) => daysAlong([0, 1], [start, start + perDay], contentsKg - waterLitres)
  return { binds, days, kinks: [], mostWater: contentsKg - start }
}

/** The main body by one term of the packing model: its litres bend where a container fills, in days and in water. */
function roomLimit(
  term: Term,
  { bodyLitres, outsideLitres }: Pick<Pack, 'bodyLitres' | 'outsideLitres'>,
  { heap, parts }: { heap: Growth; parts: Parts },
): Limit {
  const room = waterRoomOf(parts.gear, parts.stowOf)
  const soft = (water: number) => term.perSoftLitre * waterAboard(water, water, room).softBodyLitres
  const line = bodyLine(heap, term)
  const filling = sorted([
    ...line.map(({ fromDay }) => fromDay),
    ...pocketsFull(heap.pocketLitres, outsideLitres),
  ])
  const knots = [...filling, filling.at(-1)! + 1]
  const litres = knots.map(day => {
    const pockets = onDay(heap.pocketLitres, day)
    return litresOn(line, day) + spillLitres(pockets, outsideLitres, parts.packing)
  })
  // Water fills what hangs outside, then the soft containers inside; beyond both it takes no more room.
  const outside = room?.outside ?? 0
  const softRoom = room?.softBody ?? Number.POSITIVE_INFINITY
  const waterFor = (left: number) => {
    if (left < 0) return Number.NEGATIVE_INFINITY
    const softWater = term.perSoftLitre > 0 ? left / term.perSoftLitre : Number.POSITIVE_INFINITY
    return softWater >= softRoom ? Number.POSITIVE_INFINITY : outside + softWater
  }
  return {
    binds: 'room',
    days: water => daysAlong(knots, litres, bodyLitres - soft(water)),
    kinks: [outside, outside + softRoom, ...litres.slice(0, -1).map(at => waterFor(bodyLitres - at))],
    mostWater: waterFor(bodyLitres - litres[0]!),
  }
}

/** The day, above 0, on which the pockets are full; none where they are from the start, never are, or are not judged. */
function pocketsFull({ start, perDay }: Line, outsideLitres: number | null): number[] {
  return outsideLitres !== null && start < outsideLitres && perDay > 0
    ? [(outsideLitres - start) / perDay]
    : []
}

/** The largest day at which a rising line through the knots is at most `limit`; its last slope goes on for ever. */
function daysAlong(knots: number[], values: number[], limit: number): number {
  if (values[0]! > limit + ROUNDING) return Number.NEGATIVE_INFINITY
  for (let i = 1; i < knots.length; i++) {
    const [from, to] = [values[i - 1]!, values[i]!]
    if (to <= limit && i < knots.length - 1) continue
    const slope = (to - from) / (knots[i]! - knots[i - 1]!)
    return slope > 0 ? knots[i - 1]! + Math.max(0, limit - from) / slope : Number.POSITIVE_INFINITY
  }
  return Number.POSITIVE_INFINITY
}

/** Where any two limits, straight from `from` to `to`, cross in between. */
function crossings(limits: Limit[], from: number, to: number): number[] {
  const lines = limits
    .map(({ days }) => ({ start: days(from), end: days(to) }))
    .filter(({ start, end }) => Number.isFinite(start) && Number.isFinite(end))
  return lines.flatMap((a, i) =>
    lines.slice(i + 1).flatMap(b => {
      const [before, after] = [a.start - b.start, a.end - b.end]
      return before * after < 0 ? [from + ((to - from) * before) / (before - after)] : []
    }),
  )
}

const sorted = (waters: number[]) => [...new Set(waters)].sort((a, b) => a - b)
const finiteOrNull = (days: number) => (Number.isFinite(days) ? days : null)

/** Without points on the straight line between their neighbours, where the same limit binds throughout. */
function withoutStraight(points: ReachPoint[]): ReachPoint[] {
  const kept: ReachPoint[] = []
  points.forEach((point, i) => {
    const before = kept.at(-1)
    const after = points[i + 1]
    if (before && after && before.binds === point.binds && isBetween(before, point, after)) return
    kept.push(point)
  })
  return kept
}

function isBetween(a: ReachPoint, b: ReachPoint, c: ReachPoint): boolean {
  const along = (b.waterLitres - a.waterLitres) / (c.waterLitres - a.waterLitres)
  const onLine = (x: number | null, y: number | null, z: number | null) =>
    x === null || y === null || z === null
      ? x === z && y === z
      : Math.abs(y - x - along * (z - x)) <= ROUNDING * Math.max(1, x)
  return onLine(a.days, b.days, c.days) && onLine(a.shareDays, b.shareDays, c.shareDays)
}
