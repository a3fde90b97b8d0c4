// Why so much water is drunk in an hour of a leg: heat of the air, how hard the walking is, and the rate for both.
// Source keys: tb-med-507, montain-1999, bom-wbgt, our-judgement.

import {
  airRanges,
  heatCategories,
  maxLitresPerHour,
  planningAnchors,
  thirstyLitresPerHour,
  thirstyRamp,
  typicalWatts,
  type WorkClass,
  workClassLimits,
} from '../../equations'
import { airOfLeg, type HeatRate, heatRateAt, LEAST_ON_ASSUMED_AIR, type LegAir } from '../../reckon'
import { sumOf, told } from './sum'
import type { Explanation, WhyContext } from './types'
import { airPath, legName, legPath, wattsText } from './words'

const CLASS_LIMITS: Record<WorkClass, string> = {
  easy: `under ${workClassLimits.moderateFromW} W`,
  moderate: `${workClassLimits.moderateFromW} to ${workClassLimits.hardFromW} W`,
  hard: `${workClassLimits.hardFromW} W and more`,
}
const MADE_FOR = 'Made for acclimatised soldiers in uniform. For four hours of work or more, with rests.'
const IGNORES = 'body size, acclimatisation, the rest minutes of the table.'
const tableFromC = heatCategories[0]!.fromWbgtC

/** None where the rate is the hiker's own. */
export function whyLegWater(context: WhyContext, leg: number): Explanation[] {
  const { reckoning, working, formats } = context
  const {
    effort,
    rate: { heat },
  } = working.legs[leg]!
  if (!heat) return []
  const { air, rate } = heat
  const { wbgtC } = air
  const held = rate.workClass !== heatRateAt(air, effort?.watts ?? null).workClass
  const { flow, degreesFine } = formats
  const basis = wbgtC >= tableFromC
  const category = heatCategories.findLast(({ fromWbgtC }) => wbgtC >= fromWbgtC)

  const sum = sumOf({
    title: `Water for an hour on the way to ${legName(context, leg)}`,
    equation: basis ? 'Table of TB MED 507 (2003)' : 'Planning rates of ours',
    says: `${
      basis
        ? `Heat category ${category?.category}, ${rate.workClass} work.`
        : `The table begins at ${degreesFine(tableFromC)} WBGT; below it straight lines between ${planningAnchors.map(anchor => degreesFine(anchor.wbgtC)).join(', ')}.`
    } On top comes what thirsty people need, from nothing at ${degreesFine(thirstyRamp.fromWbgtC)} to all of it from ${degreesFine(thirstyRamp.fullWbgtC)}. Room to carry, not a drinking target.`,
    kind: 'flow',
    system: formats.system,
    show: flow,
    parts: partsOf(rate, air),
    inputs: [
      { label: 'Heat of the air (WBGT)', value: degreesFine(wbgtC) },
      effort
        ? { label: 'Walking power', value: wattsText(effort.watts) }
        : { label: 'Walking power', value: 'none under 14 years: taken as moderate work' },
      {
        label: 'Work class',
        value: `${rate.workClass}: ${CLASS_LIMITS[rate.workClass]}; it stands for ${wattsText(typicalWatts[rate.workClass])}${held ? '. At the edge of two classes the harder stands' : ''}`,
      },
      { label: 'Full sun', value: air.fullSun ? 'yes' : 'no', path: airPath(context, leg, 'sun') },
      {
        label: 'Never more than',
        value: `${flow(maxLitresPerHour)}${rate.capped ? ', which is met here' : ''}`,
      },
      {
        label: 'Time on the leg',
        value: formats.hours(reckoning.legs[leg]!.hours),
        path: legPath(context, leg, 'hours'),
      },
      { label: 'Water of the leg', value: formats.water(reckoning.legs[leg]!.waterLitres) },
    ],
    range: {
      bounds: [],
      note: basis
        ? MADE_FOR
        : 'Outside the table. These lower rates join its first category. They lie above what ISO 7933 predicts for easy and moderate walking.',
    },
    instead: rate.capped
      ? `The rate would be higher; it is held at ${flow(maxLitresPerHour)}. Change hour, pace or route.`
      : rate.raised
        ? `The air is assumed, so no less than the usual ${flow(LEAST_ON_ASSUMED_AIR)} counts.`
        : null,
    sourceKeys: basis
      ? ['tb-med-507', 'montain-1999', 'our-judgement']
      : ['our-judgement', 'montain-1999', 'tb-med-507'],
    ignores: IGNORES,
    others: {
      title: 'How far it may be off',
      list: ['From person to person', 'Full sun or full shade'].map((label, i) => ({
        label,
        value: thirstyLitresPerHour,
        text: `± ${flow(thirstyLitresPerHour)}${i === 0 ? '' : ' more'}`,
        sourceKeys: ['tb-med-507'],
      })),
      note: 'The rate counts them towards more and never towards less: it is for who drinks most.',
    },
  })
  // The parts add up to the engine's rate but for the last bit.
  const own = { ...sum, result: { value: rate.litresPerHour, text: flow(rate.litresPerHour) } }
  return [own, whyWbgt(context, leg, air)]
}

/** What the heat table asks for on a leg, where the hiker's own rate is less. */
export function whyHeatTable(context: WhyContext, leg: number): Explanation[] {
  const { plan, formats } = context
  const air = airOfLeg(plan, leg)
  const { effort } = context.working.legs[leg]!
  const { tableLitresPerHour, workClass } = heatRateAt(air, effort?.watts ?? null)
  const { litresPerHour } = plan.trip.water
  const own = told({
    title: `The heat table on the way to ${legName(context, leg)}`,
    equation: 'Table of TB MED 507 (2003)',
    says: 'Water for an hour by heat and work, enough for most people. Room to carry, not a drinking target.',
    inputs: [
      { label: 'Heat of the air (WBGT)', value: formats.degreesFine(air.wbgtC) },
      {
        label: 'Work class',
        value: `${workClass}: ${CLASS_LIMITS[workClass]}${effort ? `; it is ${wattsText(effort.watts)}` : ', taken as such under 14 years'}`,
      },
      ...(typeof litresPerHour === 'number'
        ? [{ label: 'Your rate', value: formats.flow(litresPerHour), path: 'trip/water/litresPerHour' }]
        : []),
    ],
    result: { value: tableLitresPerHour, text: formats.flow(tableLitresPerHour) },
    range: { bounds: [], note: MADE_FOR },
    sourceKeys: ['tb-med-507', 'montain-1999'],
    ignores: IGNORES,
  })
  return [own, whyWbgt(context, leg, air)]
}

function partsOf(
  { litresPerHour, tableLitresPerHour, addedLitresPerHour, workClass }: HeatRate,
  { fullSun }: LegAir,
) {
  const own = fullSun ? addedLitresPerHour / 2 : addedLitresPerHour
  return [
    { label: `for ${workClass} work in this heat`, value: tableLitresPerHour },
    { label: 'for who is thirstier than most', value: own },
    { label: 'for full sun', value: addedLitresPerHour - own },
    {
      label: 'held to the most, or raised to the usual rate',
      value: roundedAway(litresPerHour - tableLitresPerHour - addedLitresPerHour),
    },
  ]
}

/** What is only rounding is nothing. */
const roundedAway = (value: number) => (Math.abs(value) < 1e-12 ? 0 : value)

/** The heat of the air on a leg, and from where it is dangerous. */
export function whyHeat(context: WhyContext, leg: number): Explanation {
  const own = whyWbgt(context, leg, airOfLeg(context.plan, leg))
  const from = context.formats.degreesFine(heatCategories[2]!.fromWbgtC)
  return {
    ...own,
    says: `${own.says} The table of TB MED 507 begins at ${context.formats.degreesFine(tableFromC)}; from ${from} it lets moderate work go on for two thirds of an hour at most.`,
    sourceKeys: [...own.sourceKeys, 'tb-med-507'],
  }
}

function whyWbgt(context: WhyContext, leg: number, { airC, assumed, humidity, wbgtC }: LegAir): Explanation {
  const { degrees, degreesFine, percent } = context.formats
  const { min, max } = airRanges.airC
  return {
    title: 'Heat of the air',
    equation: 'Simplified wet-bulb globe temperature (WBGT)',
    says: `Heat from air temperature and humidity, in fairly strong sun and light wind: about ${degrees(wbgtC)}.`,
    inputs: [
      {
        label: 'Air',
        value: assumed ? `${degreesFine(airC)}, assumed` : degreesFine(airC),
        path: airPath(context, leg, 'airC'),
      },
      { label: 'Humidity', value: percent(humidity), path: airPath(context, leg, 'humidity') },
    ],
    result: { value: wbgtC, text: degreesFine(wbgtC) },
    range: {
      bounds: [],
      note: `The formula names no range. Here it takes air from ${degrees(min)} to ${degrees(max)}: inside.`,
    },
    instead: assumed ? `No air temperature was given: ${degrees(airC)} stands in.` : null,
    sourceKeys: ['bom-wbgt'],
    ignores:
      'real sun and wind: too high under cloud, in wind or at night; maybe too low in still air and full sun.',
    others: null,
  }
}
