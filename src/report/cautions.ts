// What could hurt somebody, said in the signal words of ANSI Z535.6 in their standard sense: WARNING for what could
// kill or injure seriously, CAUTION for lesser injury, NOTICE for what is not about injury. Each says what the hazard
// is, what may come of it and how to avoid it. Nothing here is more certain than the model.

import { maxLitresPerHour } from '../equations'
import { defaults, type Plan } from '../plan'
import { ADULT_ENERGY_FROM_YEARS, type Reckoning, type WaterCarry } from '../reckon'
import { counted, listText } from '../units'
import { type Caution, ITS_FIGURES, itsFigures, lightestSetup } from './caution'
import { type Formats, marginText, percentOver } from './formats'
import { fuelCautions } from './fuel-cautions'
import { ASK_ABOUT_WATER, FOOD_DRAWS_ANIMALS, STOP_AT_PAIN, TREAT_WATER } from './general-cautions'
import { heatCautions } from './heat-cautions'
import { framelessLimitSentence } from './limit-names'
import { noticeCautions } from './notice-cautions'
import { placeText } from './places'
import { densityNotices } from './plausible'

/** As much energy as a hiker may choose to go without before it is said: judgement of ours. */
const MOST_DEFICIT = 0.2

export function cautionsOf(plan: Plan, reckoning: Reckoning, formats: Formats): Caution[] {
  return [
    ...waterCautions(plan, reckoning, formats),
    ...loadCautions(plan, reckoning, formats),
    ...heatCautions(plan, formats),
    ...foodCautions(plan),
    ...energyCautions(plan, formats),
    ...fuelCautions(plan),
    ...densityNotices(plan, reckoning, formats),
    ...noticeCautions(reckoning, formats),
  ]
}

function waterCautions(plan: Plan, reckoning: Reckoning, formats: Formats): Caution[] {
  const { stops, water: habits } = plan.trip
  const { water } = formats
  const cautions = shortCautions(plan, reckoning, formats)
  const trusted = habits.trustDoubtful ? stops.filter(s => s.water === 'doubtful') : []
  if (trusted.length)
    cautions.push({
      signal: 'WARNING',
      about: 'water',
      short: `You count on doubtful water: ${listText(trusted.map(s => s.name))}`,
      at: trusted.map(stop => stops.indexOf(stop)),
      text: `You count on ${listText(trusted.map(s => s.name))}, marked doubtful. If it is dry when you get there, you have no water. Confirm it before you leave, or stop trusting doubtful water sources.`,
    })
  if (typeof habits.litresPerHour === 'number' && habits.litresPerHour > maxLitresPerHour)
    cautions.push({
      signal: 'WARNING',
      about: 'water',
      short: `Drinking ${water(habits.litresPerHour)} an hour can kill`,
      text: `You plan on ${water(habits.litresPerHour)} an hour. Drinking more than about ${water(maxLitresPerHour)} an hour can bring on overhydration, which can kill. Drink to thirst, eat salty food, and change hour, pace or route: salt does not undo drinking too much.`,
    })
  cautions.push(TREAT_WATER)
  if (reckoning.need.waterCarryLitres > 0) cautions.push(ASK_ABOUT_WATER)
  return cautions
}

/** One warning for all dry stretches that the containers do not last: the worst is told, the others open. */
export function shortCautions({ trip }: Plan, { carries }: Reckoning, { water }: Formats): Caution[] {
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
      short: `${marginText(worst.shortLitres, water)} short of water`,
      at: short.map(c => c.stop),
      text: `Your bottles hold ${owned(worst)} of water needed from ${between(worst)}${others.length ? `, and too little on ${counted(others.length, 'more stretch', 'more stretches')}` : ''}. Running dry can end in heat illness or collapse: carry more, or camp at water.`,
      more: others.map(c => `From ${between(c)}: ${owned(c)}.`),
    },
  ]
}

function loadCautions(plan: Plan, reckoning: Reckoning, formats: Formats): Caution[] {
  const { need, moments, packs, notices } = reckoning
  const { massKg, loadShareLimit, ageYears } = plan.carrier
  const { kg, percent } = formats
  const lightest = lightestSetup(packs)
  const carriedKg = lightest === null ? need.peakLoadFullWaterKg : packs[lightest]!.carriedKg
  const cautions: Caution[] = []
  // Over the common share as well, that is said instead.
  const isOverCommon = notices.some(({ code }) => code === 'load-over-common-practice')
  if (carriedKg > loadShareLimit * massKg && !isOverCommon)
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      asks: itsFigures({ kind: 'load-share', ...(lightest === null ? {} : { setup: lightest }) }),
      short: `Load is ${percentOver(carriedKg / massKg, loadShareLimit, formats)} of your body mass`,
      at: [need.peakFullWaterAt.stop],
      text: `${kg(carriedKg)} ${placeText(need.peakFullWaterAt, moments)}, is ${percentOver(carriedKg / massKg, loadShareLimit, formats)} of your body mass, over your limit of ${percent(loadShareLimit)}. Heavier packs are linked with more strain and probably more injury. Carry less, or resupply or find water more often.`,
    })
  if (defaults.isYoung(ageYears))
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      atAnswer: true,
      short: 'Young people carry less',
      text: 'Children and young people: common guidance is 10 to 15 % of body mass, and stop well before 20 %. Let adults carry the shared gear, and ask a doctor if unsure.',
    })
  if (packs.some(p => p.verdicts.includes('frameless-overloaded')))
    cautions.push({
      signal: 'CAUTION',
      about: 'load',
      short: 'Too heavy for a pack without a frame',
      text: `Without a frame your shoulders carry it all. ${framelessLimitSentence(plan, formats.kg)}; a lower one of its maker comes first.`,
    })
  cautions.push(STOP_AT_PAIN)
  return cautions
}

/** The ceiling without a frame: the hiker's own number is told as theirs. */
function energyCautions({ carrier: { ageYears }, trip: { meals } }: Plan, { percent }: Formats): Caution[] {
  const cautions: Caution[] = []
  if (meals.ration === 'energy' && meals.deficit > MOST_DEFICIT)
    cautions.push({
      signal: 'CAUTION',
      about: 'energy',
      short: `You eat ${percent(meals.deficit)} too little`,
      text: `You plan to go without ${percent(meals.deficit)} of your energy. For days on end that costs strength, warmth and judgement: carry more food, or walk shorter days.`,
    })
  if (defaults.isYoung(ageYears) && ageYears >= ADULT_ENERGY_FROM_YEARS)
    cautions.push({
      signal: 'NOTICE',
      about: 'energy',
      short: 'Energy figures are for adults',
      text: 'The energy equations are for adults. From 14 to 17 years they are a rough guide: growing bodies may need more.',
    })
  return cautions
}

/** The gear of all who eat together. */
export function foodCautions({ trip, gear }: Pick<Plan, 'trip' | 'gear'>): Caution[] {
  const sleepsOut = trip.stops.some(s => s.nights > 0 && s.meals === 'carried')
  if (!gear.some(item => item.use === 'daily')) return missingFood(trip, sleepsOut)
  return sleepsOut ? [FOOD_DRAWS_ANIMALS] : []
}

/** Over several days somebody eats; where huts give supper and breakfast, what is eaten on the way is still carried. */
function missingFood({ stops, meals }: Plan['trip'], sleepsOut: boolean): Caution[] {
  const severalDays = stops.some(s => s.nights > 0)
  if (!sleepsOut && !(severalDays && meals.trail > 0)) return []
  return [
    {
      signal: 'NOTICE',
      about: 'food',
      short: 'No food in the gear',
      text: 'There is no food in the gear, so none is counted. Add one full day of food, used up “Daily (food)”.',
    },
  ]
}
