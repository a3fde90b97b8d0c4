// Why so much water is drunk in an hour of a leg: heat of the air, how hard the walking is, and the rate for both.
// Source keys: tb-med-507, montain-1999, bom-wbgt, our-judgement.

import {
  airRanges,
  heatCategories,
  litresPerQuart,
  maxLitresPerHour,
  planningAnchors,
  simplifiedWbgtC,
  typicalWatts,
  type WaterRate,
  type WorkClass,
  waterRate,
  workClassLimits,
} from '../../equations'
import { ASSUMED_AIR_C } from '../../reckon'
import { given } from '../given'
import { effortOf } from './effort'
import type { Explanation, WhyContext } from './types'
import { degreesText, flowText, legName, legPath, numberText, wattsText } from './words'

const CLASSES: WorkClass[] = ['easy', 'moderate', 'hard']
const CLASS_LIMITS: Record<WorkClass, string> = {
  easy: `under ${workClassLimits.moderateFromW} W`,
  moderate: `${workClassLimits.moderateFromW} to ${workClassLimits.hardFromW} W`,
  hard: `${workClassLimits.hardFromW} W and more`,
}
/** What a person, and full sun or shade, may each add or take away: a quarter quart in the table's own words. */
const quarterQuart = litresPerQuart / 4
const tableFromC = heatCategories[0]!.fromWbgtC

/** None where the rate is the hiker's own. */
export function whyLegWater(context: WhyContext, leg: number): Explanation[] {
  const { plan, reckoning, shown } = context
  if (plan.trip.water.litresPerHour !== 'from-heat') return []
  const { airC, humidity } = plan.trip.stops[leg + 1]!.leg!
  const air = { airC: airC ?? ASSUMED_AIR_C, humidity }
  const wbgtC = given(simplifiedWbgtC(air))
  const effort = effortOf(context, leg)
  const { rate, held } = rateFor(wbgtC, effort?.watts ?? null, reckoning.legs[leg]!.litresPerHour)
  const flow = (litresPerHour: number) => flowText(litresPerHour, shown.system)
  const rests = wbgtC >= tableFromC
  const category = heatCategories.findLast(({ fromWbgtC }) => wbgtC >= fromWbgtC)

  const own: Explanation = {
    title: `Water for an hour on the way to ${legName(context, leg)}`,
    equation: rests ? 'Table of TB MED 507 (2003)' : 'Planning rates of ours',
    says: rests
      ? `Heat category ${category?.category}, ${rate.workClass} work. Room to carry, not a drinking target.`
      : `The table begins at ${degreesText(tableFromC, shown.system)} WBGT; below it straight lines between ${planningAnchors.map(anchor => degreesText(anchor.wbgtC, shown.system)).join(', ')}. Room to carry, not a drinking target.`,
    inputs: [
      { label: 'Heat of the air (WBGT)', value: degreesText(wbgtC, shown.system) },
      effort
        ? { label: 'Walking power', value: wattsText(effort.watts) }
        : { label: 'Walking power', value: 'none under 14 years: taken as moderate work' },
      {
        label: 'Work class',
        value: `${rate.workClass}: ${CLASS_LIMITS[rate.workClass]}; it stands for ${wattsText(typicalWatts[rate.workClass])}${held ? '. At the edge of two classes the harder stands' : ''}`,
      },
      {
        label: 'Never more than',
        value: `${flow(maxLitresPerHour)}${rate.capped ? ', which is met here' : ''}`,
      },
      {
        label: 'Time on the leg',
        value: shown.hours(reckoning.legs[leg]!.hours),
        path: legPath(context, leg, 'hours'),
      },
      { label: 'Water of the leg', value: shown.water(reckoning.legs[leg]!.waterLitres) },
    ],
    result: { value: rate.litresPerHour, text: flow(rate.litresPerHour) },
    range: {
      bounds: [],
      note: rests
        ? 'Made for acclimatised soldiers in uniform, for at least four hours of work with rests.'
        : 'Outside the table: these lower rates join its first category and lie above the losses that ISO 7933 predicts for easy and moderate walking.',
    },
    instead: rate.capped
      ? `The rate would be higher; it is held at ${flow(maxLitresPerHour)}. Change hour, pace or route.`
      : null,
    sourceKeys: rests ? ['tb-med-507', 'montain-1999'] : ['our-judgement', 'montain-1999'],
    ignores: 'body size, acclimatisation, the rest minutes of the table.',
    others: {
      title: 'How far it may be off',
      list: [
        {
          label: 'From person to person',
          value: quarterQuart,
          text: `± ${flow(quarterQuart)}`,
          sourceKeys: ['tb-med-507'],
        },
        {
          label: 'Full sun or full shade',
          value: quarterQuart,
          text: `± ${flow(quarterQuart)} more`,
          sourceKeys: ['tb-med-507'],
        },
      ],
      note: `So somewhere from ${flow(Math.max(0, rate.litresPerHour - 2 * quarterQuart))} to ${flow(rate.litresPerHour + 2 * quarterQuart)}, and never over ${flow(maxLitresPerHour)}.`,
    },
  }
  return [own, whyWbgt(context, leg, wbgtC)]
}

/** The heat of the air on a leg, and from where it is dangerous. */
export function whyHeat(context: WhyContext, leg: number): Explanation {
  const { airC, humidity } = context.plan.trip.stops[leg + 1]!.leg!
  const own = whyWbgt(context, leg, given(simplifiedWbgtC({ airC: airC ?? ASSUMED_AIR_C, humidity })))
  const from = degreesText(heatCategories[2]!.fromWbgtC, context.shown.system)
  return {
    ...own,
    says: `${own.says} From ${from} the table of TB MED 507 lets moderate work go on for two thirds of an hour at most.`,
    sourceKeys: [...own.sourceKeys, 'tb-med-507'],
  }
}

function whyWbgt(context: WhyContext, leg: number, wbgtC: number): Explanation {
  const { plan, shown } = context
  const { airC, humidity } = plan.trip.stops[leg + 1]!.leg!
  const { min, max } = airRanges.airC
  return {
    title: 'Heat of the air',
    equation: 'Simplified wet-bulb globe temperature (WBGT)',
    says: 'One figure for heat from air temperature and humidity, in fairly strong sun and light wind.',
    inputs: [
      {
        label: 'Air',
        value:
          airC === null
            ? `${degreesText(ASSUMED_AIR_C, shown.system)}, assumed`
            : degreesText(airC, shown.system),
        path: legPath(context, leg, 'airC'),
      },
      { label: 'Humidity', value: shown.percent(humidity), path: legPath(context, leg, 'humidity') },
    ],
    result: { value: wbgtC, text: degreesText(wbgtC, shown.system) },
    range: {
      bounds: [],
      note: `The formula names no range. Here it takes air from ${degreesText(min, shown.system)} to ${degreesText(max, shown.system)}: inside.`,
    },
    instead:
      airC === null ? `No air temperature was given: ${numberText(ASSUMED_AIR_C, 0)} °C stands in.` : null,
    sourceKeys: ['bom-wbgt'],
    ignores:
      'real sun and wind: too high under cloud, in wind or at night, perhaps too low in still air under full sun.',
    others: null,
  }
}

/** The rate the engine used. At the edge of two classes it may have held the harder one of two rounds. */
function rateFor(wbgtC: number, watts: number | null, used: number): { rate: WaterRate; held: boolean } {
  const rateAt = (power: number) => given(waterRate({ wbgtC, watts: power }))
  const rate = rateAt(watts ?? typicalWatts.moderate)
  if (rate.litresPerHour === used) return { rate, held: false }
  const other = CLASSES.map(work => rateAt(typicalWatts[work])).find(
    ({ litresPerHour }) => litresPerHour === used,
  )
  return other ? { rate: other, held: true } : { rate, held: false }
}
