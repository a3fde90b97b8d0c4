// What could hurt somebody, said in the signal words of ANSI Z535.6 in their standard sense: WARNING for what could
// kill or injure seriously, CAUTION for lesser injury, NOTICE for what is not about injury. Each says what the hazard
// is, what may come of it and how to avoid it. Nothing here is more certain than the model.

import { heatCategories, maxLitresPerHour, simplifiedWbgtC } from '../equations'
import type { Plan } from '../plan'
import type { Notice, Reckoning } from '../reckon'
import { placeText } from './places'
import { densityNotices } from './plausible'
import { percentOver, type Shown } from './shown'

export interface Caution {
  signal: 'WARNING' | 'CAUTION' | 'NOTICE'
  about: 'water' | 'load' | 'heat' | 'food' | 'energy' | 'model'
  text: string
  /** The figure in it that the app has reckoned, as "why?" asks for it; absent where there is none. */
  asks?: Asks
}

type Asks =
  | { kind: 'carry'; stop: number }
  | { kind: 'load-share'; setup?: number }
  | { kind: 'heat'; leg: number }
  | { kind: 'day'; day: number }
  | { kind: 'resting-energy' }

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
    ...reckoning.notices.flatMap(notice => noticeCautions(notice, shown)),
  ]
}

function waterCautions(plan: Plan, { carries, need }: Reckoning, { water }: Shown): Caution[] {
  const { stops, water: habits } = plan.trip
  const short = carries.filter(c => c.shortLitres > 0)
  const cautions: Caution[] = short.map(c => ({
    signal: 'WARNING',
    about: 'water',
    asks: { kind: 'carry', stop: c.stop },
    text: `Water falls short by ${water(c.shortLitres)} between ${stops[c.stop]!.name} and ${stops[c.to]!.name}: ${water(c.needLitres)} wanted, containers for ${water(c.carriedLitres)}. Running dry can end in heat illness or collapse. Take more containers, camp at water, or change the route.`,
  }))
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
  if (need.waterCarryLitres > 0) cautions.push({ signal: 'NOTICE', about: 'water', text: WATER_LINE })
  return cautions
}

function loadCautions(plan: Plan, { need, moments, packs }: Reckoning, shown: Shown): Caution[] {
  const { massKg, loadShareLimit, ageYears } = plan.carrier
  const { kg, percent } = shown
  // The pack's own mass counts: the lightest of those considered, or the contents alone while there is none.
  const lightest = packs.reduce((best, p, i) => (p.carriedKg < packs[best]!.carriedKg ? i : best), 0)
  const carriedKg = packs[lightest]?.carriedKg ?? need.peakLoadKg
  const cautions: Caution[] = []
  if (carriedKg > loadShareLimit * massKg)
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      asks: { kind: 'load-share', ...(packs.length ? { setup: lightest } : {}) },
      text: `${kg(carriedKg)} ${placeText(need.peakAt, moments)} is ${percentOver(carriedKg / massKg, loadShareLimit, shown)} of your body mass, over the ${percent(loadShareLimit)} you set out from. Heavier packs are linked with more strain and probably more injury. Lighten it, or shorten the stretch between resupplies or sources.`,
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
      asks: { kind: 'heat', leg: trip.stops.findIndex(isHot) - 1 },
      text: `Heat on the way to ${listText(hot.map(stop => stop.name))}: by air and humidity about ${Math.round(fromWbgtC)} °C WBGT or more, fairly strong sun assumed. Hard walking there can end in heat stroke before water runs short, and drinking more does not prevent it. Change hour, pace or route, and rest in shade. Confusion or collapse: cool at once and call for help.`,
    },
  ]
}

function foodCautions({ trip, gear }: Plan): Caution[] {
  const sleepsOut = trip.stops.some(s => s.nights > 0 && s.meals === 'carried')
  if (!sleepsOut || !gear.some(item => item.use === 'daily')) return []
  return [
    {
      signal: 'NOTICE',
      about: 'food',
      text: 'How food must be stored is local law in many places, and it changes: follow the land manager’s current order. Toiletries and rubbish count as food.',
    },
  ]
}

function noticeCautions(notice: Notice, { water }: Shown): Caution[] {
  switch (notice.code) {
    // Told from the carries, with the stretch it concerns.
    case 'water-short':
      return []
    case 'water-containers-missing':
      return [
        {
          signal: 'NOTICE',
          about: 'water',
          text: 'No item in the gear list holds water: all of it is counted inside the main body, without limit. Add your bottles or bags with what they hold.',
        },
      ]
    case 'resting-assumed':
      return [
        {
          signal: 'NOTICE',
          about: 'energy',
          asks: { kind: 'resting-energy' },
          text: 'Energy figures assume 170 cm and 35 years: give your height and age to make them yours.',
        },
      ]
    case 'energy-not-for-children':
      return [
        {
          signal: 'NOTICE',
          about: 'energy',
          text: 'No energy figures under 14 years: the equations know adults only. Ask a health professional about a child’s food.',
        },
      ]
    case 'energy-out-of-range':
      return [
        {
          signal: 'NOTICE',
          about: 'energy',
          text: `The leg to ${notice.name} is faster or steeper than the energy equation was made for; its energy is computed at the equation’s limit.`,
        },
      ]
    case 'air-assumed':
      return [
        {
          signal: 'NOTICE',
          about: 'heat',
          asks: { kind: 'heat', leg: notice.leg },
          text: `No air temperature for the leg to ${notice.name}: 20 °C is assumed. Hotter air asks for more water.`,
        },
      ]
    case 'water-cap-hour':
      return [
        {
          signal: 'WARNING',
          about: 'heat',
          text: `On the leg to ${notice.name} the body would lose more than drinking can replace. Change hour, pace or route; do not just drink more.`,
        },
      ]
    case 'water-cap-day':
      return [
        {
          signal: 'WARNING',
          about: 'heat',
          asks: { kind: 'day', day: notice.day - 1 },
          text: `Day ${notice.day} asks for ${water(notice.litres)} of water, more than a body should take in a day. Change hour, pace or route; do not just drink more.`,
        },
      ]
  }
}

export function listText(names: string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
