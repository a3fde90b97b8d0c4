// What could hurt somebody, said in the signal words of ANSI Z535.6 in their standard sense: WARNING for what could
// kill or injure seriously, CAUTION for lesser injury, NOTICE for what is not about injury. Each says what the hazard
// is, what may come of it and how to avoid it. Nothing here is more certain than the model.

import { heatCategories, maxLitresPerHour, simplifiedWbgtC } from '../equations'
import type { Plan } from '../plan'
import type { Reckoning, WaterCarry } from '../reckon'
import { type Caution, ITS_FIGURES, itsFigures, listText } from './caution'
import { noticeCautions } from './notice-cautions'
import { placeText } from './places'
import { densityNotices } from './plausible'
import { percentOver, type Shown } from './shown'

export const GENERAL_LINE =
  'An estimate from published averages and rules of thumb, not medical advice. Your body, a health professional, your guide, local rules and the pack maker’s stated maximum overrule it.'

const WATER_LINE =
  'Ask the land manager about every source before you leave, treat the water, and plan for a source that is dry. Room to carry is not a drinking target.'

export function cautionsOf(plan: Plan, reckoning: Reckoning, shown: Shown): Caution[] {
  return [
    ...waterCautions(plan, reckoning, shown),
    ...loadCautions(plan, reckoning, shown),
    ...heatCautions(plan),
    ...foodCautions(plan),
    ...densityNotices(plan, reckoning, shown),
    ...noticeCautions(reckoning.notices, shown),
  ]
}

function waterCautions(plan: Plan, reckoning: Reckoning, shown: Shown): Caution[] {
  const { stops, water: habits } = plan.trip
  const { water } = shown
  const cautions = shortCautions(plan, reckoning, shown)
  const trusted = habits.trustDoubtful ? stops.filter(s => s.water === 'doubtful') : []
  if (trusted.length)
    cautions.push({
      signal: 'WARNING',
      about: 'water',
      text: `You count on ${listText(trusted.map(s => s.name))}, marked doubtful. A source that is dry when you reach it can leave you without water. Confirm it before you leave, or stop trusting doubtful sources.`,
    })
  if (typeof habits.litresPerHour === 'number' && habits.litresPerHour > maxLitresPerHour)
    cautions.push({
      signal: 'WARNING',
      about: 'water',
      text: `You plan on ${water(habits.litresPerHour)} an hour. Drinking more than about ${water(maxLitresPerHour)} an hour can bring on overhydration, which can kill. Drink to thirst; change hour, pace or route instead.`,
    })
  if (reckoning.need.waterCarryLitres > 0)
    cautions.push({ signal: 'NOTICE', about: 'water', text: WATER_LINE })
  return cautions
}

/** One warning for all dry stretches that the containers do not last: the worst is told, the others open. */
export function shortCautions({ trip }: Plan, { carries }: Reckoning, { water }: Shown): Caution[] {
  const short = carries.filter(c => c.shortLitres > 0)
  const [worst, ...others] = short.toSorted((a, b) => b.shortLitres - a.shortLitres)
  if (!worst) return []
  const between = (c: WaterCarry) => `${trip.stops[c.stop]!.name} to ${trip.stops[c.to]!.name}`
  const owned = (c: WaterCarry) => `${water(c.carriedLitres)} of ${water(c.needLitres)}`
  return [
    {
      signal: 'WARNING',
      about: 'water',
      asks: [worst, ...others].map(c => ({
        figure: others.length === 0 ? ITS_FIGURES : `Figures from ${between(c)}`,
        about: { kind: 'carry', stop: c.stop },
      })),
      text: `Your containers hold ${owned(worst)} wanted from ${between(worst)}${others.length ? `, and too little on ${others.length} more ${others.length === 1 ? 'stretch' : 'stretches'}` : ''}. Running dry can end in heat illness or collapse: carry more, or camp at water.`,
      more: others.map(c => `From ${between(c)}: ${owned(c)}.`),
    },
  ]
}

function loadCautions(plan: Plan, { need, moments, packs }: Reckoning, shown: Shown): Caution[] {
  const { massKg, loadShareLimit, ageYears } = plan.carrier
  const { kg, percent } = shown
  // The pack's own mass counts: the lightest of those considered, or the contents alone while there is none.
  const lightest = packs.reduce((best, p, i) => (p.carriedKg < packs[best]!.carriedKg ? i : best), 0)
  const carriedKg = packs[lightest]?.carriedKg ?? need.peakLoadFullWaterKg
  const cautions: Caution[] = []
  if (carriedKg > loadShareLimit * massKg)
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      asks: itsFigures({ kind: 'load-share', ...(packs.length ? { setup: lightest } : {}) }),
      text: `${kg(carriedKg)} ${placeText(need.peakFullWaterAt, moments)} is ${percentOver(carriedKg / massKg, loadShareLimit, shown)} of your body mass, over the ${percent(loadShareLimit)} you set out from. Heavier packs are linked with more strain and probably more injury. Lighten it, or shorten the stretch between resupplies or sources.`,
    })
  if (ageYears !== null && ageYears < 18)
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      text: 'Children and young people: common guidance is 10 to 15 % of body mass, and stop well before 20 %. Let adults carry the shared gear, and ask a doctor if in doubt.',
    })
  if (packs.some(p => p.verdicts.includes('frameless-overloaded')))
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      text: `Without a frame the shoulders bear it all. Common practice, with no source behind it, is to stay near ${kg(plan.settings.framelessCeilingKg)}; the maker’s own limit comes first. Numb or tingling arms, strap marks or pain: stop, take it off and lighten it.`,
    })
  return cautions
}

/** Legs so hot that the Army's table lets moderate work go on for two thirds of an hour at most (its category 3 up). */
function heatCautions({ trip }: Plan): Caution[] {
  const fromWbgtC = heatCategories[2]!.fromWbgtC
  const isHot = ({ leg }: Plan['trip']['stops'][number]) => {
    const wbgt = leg?.airC == null ? null : simplifiedWbgtC({ airC: leg.airC, humidity: leg.humidity })
    return wbgt?.ok === true && wbgt.value >= fromWbgtC
  }
  const hot = trip.stops.filter(isHot)
  if (hot.length === 0) return []
  return [
    {
      signal: 'WARNING',
      about: 'heat',
      asks: itsFigures({ kind: 'heat', leg: trip.stops.findIndex(isHot) - 1 }),
      text: `Heat on the way to ${listText(hot.map(stop => stop.name))}: by air and humidity about ${Math.round(fromWbgtC)} °C WBGT or more, fairly strong sun assumed. Hard walking there can end in heat stroke before water runs short, and drinking more does not prevent it. Change hour, pace or route, and rest in shade. Confusion or collapse: cool at once and call for help.`,
    },
  ]
}

function foodCautions({ trip, gear }: Plan): Caution[] {
  const sleepsOut = trip.stops.some(s => s.nights > 0 && s.meals === 'carried')
  if (!gear.some(item => item.use === 'daily')) return missingFood(trip, sleepsOut)
  if (!sleepsOut) return []
  return [
    {
      signal: 'NOTICE',
      about: 'food',
      text: 'How food must be stored is local law in many places, and it changes: follow the land manager’s current order. Toiletries and rubbish count as food.',
    },
  ]
}

/** Over several days somebody eats; where huts give supper and breakfast, what is eaten on the way is still carried. */
function missingFood({ stops, meals }: Plan['trip'], sleepsOut: boolean): Caution[] {
  const severalDays = stops.some(s => s.nights > 0)
  if (!sleepsOut && !(severalDays && meals.trail > 0)) return []
  return [
    {
      signal: 'NOTICE',
      about: 'food',
      text: 'No food is in the gear, so none is counted: litres and load are those without it. Add one full day of it to the gear, with “Daily (food)” as its use.',
    },
  ]
}
