// Why a leg takes as long as it does: the hiker's own figure or the blend of DIN 33466, and what other published
// rules say of the same leg. Source keys: din-33466, naismith-1892, langmuir-1984, tobler-1993, swiss-hiking-time.

import {
  blendedHours,
  evenSlope,
  legRanges,
  naismithHours,
  type Outcome,
  paceRanges,
  swissHours,
  toblerHours,
} from '../../equations'
import { given } from '../given'
import type { Explanation, WhyContext, WhyInput, WhyOther } from './types'
import { climbRateText, legName, legPath, longText, numberText, speedText } from './words'

/** Langmuir's credit is for descents of 5° to 12°, his penalty for steeper ones. */
const GENTLE_FROM = Math.tan((5 * Math.PI) / 180)
const STEEP_FROM = Math.tan((12 * Math.PI) / 180)

export function whyWalkingTime(context: WhyContext, leg: number): Explanation {
  const { plan, formats } = context
  const { km, ascentM, descentM, hours: typed } = plan.trip.stops[leg + 1]!.leg!
  const { pace } = plan.trip
  const totals = { km, ascentM, descentM }
  const computed = given(blendedHours({ ...totals, pace }))
  const others = otherRules(totals)
  const list =
    typed === null ? others : [told('DIN 33466, this app’s rule', computed, ['din-33466']), ...others]

  return {
    title: `Walking time to ${legName(context, leg)}`,
    equation: typed === null ? 'Time blend of DIN 33466' : 'Your own figure',
    says:
      typed === null
        ? 'Time along the flat and time for climb and descent; the larger counts whole, the smaller half.'
        : 'You typed this time; it stands in place of the computed one. “Use the computed time” under the field takes it back.',
    inputs:
      typed === null ? inputs() : [{ label: 'Walking time', value: formats.hours(typed), path: at('hours') }],
    result: { value: typed ?? computed, text: formats.hours(typed ?? computed) },
    range: {
      bounds: [],
      note: `The rule names no range. Here it takes legs up to ${longText(legRanges.km.max, formats.system)} and ${formats.metres(legRanges.ascentM.max)} of climb, at up to ${speedText(paceRanges.flatKmh.max, formats.system)}: all inputs are inside.`,
    },
    instead: null,
    sourceKeys: ['din-33466'],
    ignores: 'breaks, the ground, the load, altitude. It is moving time: add your stops.',
    others: { title: 'By other rules', list: list.map(spoken), note: spreadNote(list, computed) },
  }

  function at(field: string) {
    return legPath(context, leg, field)
  }

  function inputs(): WhyInput[] {
    return [
      { label: 'Distance', value: formats.km(km), path: at('km') },
      { label: 'Climb', value: formats.metres(ascentM), path: at('ascentM') },
      { label: 'Descent', value: formats.metres(descentM), path: at('descentM') },
      { label: 'On the flat', value: speedText(pace.flatKmh, formats.system), path: 'trip/pace/flatKmh' },
      {
        label: 'Climbing',
        value: climbRateText(pace.climbMPerH, formats.system),
        path: 'trip/pace/climbMPerH',
      },
      {
        label: 'Going down',
        value: climbRateText(pace.descendMPerH, formats.system),
        path: 'trip/pace/descendMPerH',
      },
    ]
  }

  function spoken(rule: Omit<WhyOther, 'text'>): WhyOther {
    return { ...rule, text: rule.value === null ? 'none: too steep for it' : formats.hours(rule.value) }
  }
}

type Rule = Omit<WhyOther, 'text'>
interface Totals {
  km: number
  ascentM: number
  descentM: number
}

const told = (label: string, value: number | null, sourceKeys: string[]): Rule => ({
  label,
  value,
  sourceKeys,
})

function otherRules(totals: Totals): Rule[] {
  return [
    told('Naismith with Langmuir', hoursOrNull(langmuirHours(totals)), ['naismith-1892', 'langmuir-1984']),
    told('Tobler’s hiking function', hoursOrNull(toblerHours(totals)), ['tobler-1993']),
    told('Swiss hiking paths', hoursOrNull(swissHours(totals)), ['swiss-hiking-time']),
  ]
}

/** The descent counts as gentle or steep as a whole, by the leg's even slope: a judgement of ours. */
function langmuirHours({ km, ascentM, descentM }: Totals): Outcome<number> {
  const even = evenSlope({ km, ascentM, descentM })
  const slope = even.ok ? even.value : Number.POSITIVE_INFINITY
  const gentleDescentM = slope >= GENTLE_FROM && slope <= STEEP_FROM ? descentM : 0
  const steepDescentM = slope > STEEP_FROM ? descentM : 0
  return naismithHours({ km, ascentM, gentleDescentM, steepDescentM })
}

function spreadNote(list: Rule[], computed: number): string {
  const hours = [computed, ...list.map(rule => rule.value)].filter(
    value => value !== null && value > 0,
  ) as number[]
  const factor = hours.length ? Math.max(...hours) / Math.min(...hours) : 1
  const apart =
    factor < 1.05
      ? 'Here the published rules agree.'
      : `A factor ${numberText(factor, 1)} between published rules: plan with the slower.`
  return `${apart} The others know no pace of yours; Naismith’s was made for fit walkers with little to carry.`
}

const hoursOrNull = (outcome: Outcome<number>): number | null => (outcome.ok ? outcome.value : null)
