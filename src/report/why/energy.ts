// Why a leg or a day costs the energy it does, with Yamamoto's totals beside it: a range rather than one number.
// Source keys: looney-2022, looney-2019-graded, mifflin-1990, yamamoto-2016, soule-goldman-1972, our-judgement.

import { type Outcome, terrainFactors, yamamotoKcal } from '../../equations'
import { FIELDS } from '../../plan'
import { CAMP_FACTOR, routeOf } from '../../reckon'
import { effortBounds, effortsOf } from './effort'
import { originOf } from './origins'
import { whyResting } from './resting'
import { sumOf } from './sum'
import type { Explanation, WhyContext, WhyInput, WhyOther } from './types'
import { kcalRangeText, kcalRoughText, kcalText, legName, legPath, numberText, wattsText } from './words'

const YAMAMOTO = 'Yamamoto’s totals'
const GIVE_OR_TAKE =
  'Take either figure as plus or minus 20 %. Yamamoto’s equation knows only hours, distance, climb, descent and mass.'
const LOONEY_IGNORES =
  'age, fatigue, altitude, poles, breaks, heavy shoes, cold. A leg counts as one even climb and one even descent.'

export function whyLegEnergy(context: WhyContext, leg: number): Explanation[] {
  const { plan, reckoning, working, formats } = context
  const efforts = effortsOf(context, [leg])
  const [effort] = efforts
  if (!effort || !working.body) return []
  const { ground } = plan.trip.stops[leg + 1]!.leg!
  const { packKgForEnergy } = plan.settings
  const yamamoto = yamamotoOf(context, [leg])
  const { bounds, instead } = effortBounds(context, efforts)
  const own: Explanation = {
    title: `Walking energy to ${legName(context, leg)}`,
    equation: 'Backpacking equation of Looney and others, 2022',
    says: `Watts for each kg of body: rest, plus what speed, slope and ground cost, raised by the load. Times the hours. Rest is contained in it. On the screen ${kcalRoughText(effort.kcal)}: nothing finer is known.`,
    inputs: [
      { label: 'Body mass', value: formats.kg(plan.carrier.massKg), path: 'carrier/massKg' },
      { label: 'Contents, mean over the leg', value: formats.kg(effort.contentsKg) },
      {
        label: 'The pack itself, taken as',
        value: formats.kg(packKgForEnergy),
        from: originOf(packKgForEnergy, FIELDS.settings.packKgForEnergy),
      },
      ...legInputs(context, leg),
      {
        label: 'Ground factor',
        value: `${numberText(effort.terrainFactor, 1)}, ${terrainFactors[ground].standing}`,
        path: legPath(context, leg, 'ground'),
      },
      { label: 'Power', value: wattsText(effort.watts) },
    ],
    result: { value: effort.kcal, text: kcalText(effort.kcal) },
    range: {
      bounds,
      note: 'Tested level, up to two thirds of body mass; the slope term was made for walking without a load.',
    },
    instead,
    sourceKeys: ['looney-2022', 'looney-2019-graded', terrainFactors[ground].source],
    ignores: LOONEY_IGNORES,
    others: crossCheck(yamamoto, reckoning.legs[leg]!.kcal ?? effort.kcal),
  }
  return [own, whyResting(context, working.body)]
}

function legInputs(context: WhyContext, leg: number): WhyInput[] {
  const { formats, plan, reckoning } = context
  const { km, ascentM, descentM } = plan.trip.stops[leg + 1]!.leg!
  return [
    { label: 'Distance', value: formats.km(km), path: legPath(context, leg, 'km') },
    { label: 'Climb', value: formats.metres(ascentM), path: legPath(context, leg, 'ascentM') },
    { label: 'Descent', value: formats.metres(descentM), path: legPath(context, leg, 'descentM') },
    {
      label: 'Walking time',
      value: formats.hours(reckoning.legs[leg]!.hours),
      path: legPath(context, leg, 'hours'),
    },
  ]
}

export function whyDayEnergy(context: WhyContext, day: number): Explanation[] {
  const { reckoning, working, formats } = context
  const { body } = working
  const { kcalTotal, kcalWalking } = reckoning.days[day]!
  if (!body || kcalTotal === null || kcalWalking === null) return []
  const { legs, hours } = routeOf(context.plan).days[day]!
  const efforts = effortsOf(context, legs)
  const offTrail = kcalTotal - kcalWalking
  const yamamoto = legs.length ? yamamotoOf(context, legs) : null
  const { bounds, instead } = effortBounds(context, efforts)
  const own = sumOf({
    title: `Energy of day ${day + 1}`,
    equation: 'Walking: Looney and others 2022. The rest: Mifflin and St Jeor 1990',
    says: `The legs’ walking energy, and ${numberText(CAMP_FACTOR, 1)} times the resting energy for the hours off the trail.`,
    kind: 'number',
    system: formats.system,
    show: kcalText,
    parts: [
      ...legs.map((leg, i) => ({
        label: `to ${legName(context, leg)}`,
        value: efforts[i]!.kcal,
        path: legPath(context, leg, 'km'),
      })),
      { label: 'off the trail', value: offTrail },
    ],
    inputs: [
      { label: 'Hours off the trail', value: formats.hours(Math.max(0, 24 - hours)) },
      {
        label: 'Resting energy of a day',
        value: kcalText(body.restingKcal),
        path: 'carrier/heightCm',
      },
    ],
    range: { bounds: legs.length ? bounds : [], note: 'First and last day count as whole days.' },
    instead: legs.length ? instead : null,
    sourceKeys: ['looney-2022', 'mifflin-1990', 'our-judgement'],
    ignores: `${LOONEY_IGNORES} Shivering and camp work beyond the factor, which is our judgement.`,
    others: legs.length ? crossCheck(yamamoto === null ? null : yamamoto + offTrail, kcalTotal) : null,
  })
  return [own, whyResting(context, body)]
}

/**
 * Looney's figure for each day and Yamamoto's walking with the same rest of the day; null where there is none. Of a long
 * trip only for the first `count` days.
 */
export function dayEnergyRanges(
  context: WhyContext,
  count = context.reckoning.days.length,
): ({ lowKcal: number; highKcal: number } | null)[] {
  const { days } = routeOf(context.plan)
  return context.reckoning.days.slice(0, count).map(({ kcalTotal, kcalWalking }, i) => {
    if (kcalTotal === null || kcalWalking === null) return null
    const yamamoto = yamamotoOf(context, days[i]!.legs)
    const other = yamamoto === null ? kcalTotal : kcalTotal - kcalWalking + yamamoto
    return { lowKcal: Math.min(kcalTotal, other), highKcal: Math.max(kcalTotal, other) }
  })
}

/** Summed leg by leg, each at its own mean load: the equation is a sum, so nothing is lost by that. */
function yamamotoOf(context: WhyContext, legs: readonly number[]): number | null {
  const { plan, reckoning } = context
  const parts = effortsOf(context, legs).map(({ leg, contentsKg }): Outcome<number> => {
    const { km, ascentM, descentM } = plan.trip.stops[leg + 1]!.leg!
    const { hours } = reckoning.legs[leg]!
    const loadKg = contentsKg + plan.settings.packKgForEnergy
    return yamamotoKcal({ hours, km, ascentM, descentM, bodyKg: plan.carrier.massKg, loadKg })
  })
  return parts.reduce<number | null>((sum, part) => (sum !== null && part.ok ? sum + part.value : null), 0)
}

function crossCheck(yamamoto: number | null, looney: number): Explanation['others'] {
  const other: WhyOther = {
    label: YAMAMOTO,
    value: yamamoto,
    text: yamamoto === null ? 'none for so heavy a load' : kcalText(yamamoto),
    sourceKeys: ['yamamoto-2016'],
  }
  const between =
    yamamoto === null
      ? ''
      : `Somewhere from ${kcalRangeText(Math.min(yamamoto, looney), Math.max(yamamoto, looney))}. `
  return { title: 'By another equation', list: [other], note: `${between}${GIVE_OR_TAKE}` }
}
