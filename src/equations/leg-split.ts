// Splits a leg known only by its totals into a climbing and a descending part of equal steepness.
// A judgement of ours (source key: our-judgement): it makes a flat valley with one short wall look even.

import type { Range } from './outcome'

export interface LegTotals {
  km: number
  ascentM: number
  descentM: number
}

/** Ends chosen wide enough for any leg a person walks without a stop. */
export const legRanges = {
  km: { min: 0, max: 500, unit: 'km', source: 'our-judgement' },
  ascentM: { min: 0, max: 20_000, unit: 'm', source: 'our-judgement' },
  descentM: { min: 0, max: 20_000, unit: 'm', source: 'our-judgement' },
} as const satisfies Record<keyof LegTotals, Range>

export interface LegPart {
  /** Share of the leg's km, and of its time at even speed. */
  share: number
  /** Rise over run, signed; ±Infinity where height is to be gained or lost over no distance. */
  slope: number
}

/**
 * The parts of a leg: km_up = km × ascent / (ascent + descent), both parts at ± (ascent + descent) / km.
 * One level part if there is neither climb nor descent. Expects totals inside `legRanges`.
 */
export function splitByTotals({ km, ascentM, descentM }: LegTotals): LegPart[] {
  const heightM = ascentM + descentM
  if (heightM === 0) return [{ share: 1, slope: 0 }]
  const slope = heightM / (km * 1000)
  const climb = { share: ascentM / heightM, slope }
  const descent = { share: descentM / heightM, slope: -slope }
  return [climb, descent].filter(part => part.share > 0)
}
