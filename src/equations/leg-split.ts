// Splits a leg known only by its totals into a climbing and a descending part of equal steepness.
// A judgement of ours (source key: our-judgement): it makes a flat valley with one short wall look even.

import { firstOutside, found, type Outcome, outside, type Range } from './outcome'

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

const slopeFormula = ({ km, ascentM, descentM }: LegTotals) => (ascentM + descentM) / (km * 1000)

/** Past this a leg is a wall, and its steepness is no number to tell. */
const wall = { min: 0, max: 100, unit: 'm up per m along' }

/**
 * The steepness of a leg's two even parts, as rise over run: up on the one, down on the other.
 *
 * Source: our-judgement. Symbols: km, ascentM, descentM as everywhere. 0 on a level leg.
 * Ignores: that a leg may be flat and then steep.
 * Outside a range, and past 100 m for each metre along, by its slope: `ok: false` with the field and its limit.
 *
 * @example
 * evenSlope({ km: 10, ascentM: 600, descentM: 400 }) // 0.1
 */
export function evenSlope(leg: LegTotals): Outcome<number> {
  const refusal = firstOutside(legRanges, leg)
  if (refusal) return refusal
  const slope = leg.ascentM + leg.descentM === 0 ? 0 : slopeFormula(leg)
  return slope >= wall.min && slope <= wall.max ? found(slope) : outside('slope', wall, slope)
}

/**
 * The parts of a leg: km_up = km × ascent / (ascent + descent), both parts at ± (ascent + descent) / km.
 * One level part if there is neither climb nor descent. Expects totals inside `legRanges`.
 */
export function splitByTotals({ km, ascentM, descentM }: LegTotals): LegPart[] {
  const heightM = ascentM + descentM
  if (heightM === 0) return [{ share: 1, slope: 0 }]
  const slope = slopeFormula({ km, ascentM, descentM })
  const climb = { share: ascentM / heightM, slope }
  const descent = { share: descentM / heightM, slope: -slope }
  return [climb, descent].filter(part => part.share > 0)
}
