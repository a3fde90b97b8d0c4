// Walking hours from a leg's totals by the blend of DIN 33466.
// Moving time: breaks are extra, and the ground's surface is not considered.
// Source: din-33466; the text itself was not read.

import { type LegTotals, legRanges } from './leg-split'
import { firstOutside, found, type Outcome, type Range } from './outcome'

export interface Pace {
  flatKmh: number
  climbMPerH: number
  descendMPerH: number
}

/** The published pace: "normally trained adults". */
export const dinPace: Pace = { flatKmh: 4, climbMPerH: 300, descendMPerH: 500 }

/** A faster pace quoted by one weak source for fit walkers. */
export const fitPace: Pace = { flatKmh: 4, climbMPerH: 400, descendMPerH: 800 }

export const paceRanges = {
  flatKmh: { min: 0.2, max: 20, unit: 'km/h', source: 'our-judgement' },
  climbMPerH: { min: 20, max: 5000, unit: 'm/h', source: 'our-judgement' },
  descendMPerH: { min: 20, max: 10_000, unit: 'm/h', source: 'our-judgement' },
} as const satisfies Record<keyof Pace, Range>

/**
 * Hours for a leg by the blend of horizontal and vertical time.
 *
 * Source: din-33466 (one equation, unnumbered in the copies read).
 * Symbols: t_h = km / flatKmh, t_v = ascentM / climbMPerH + descentM / descendMPerH,
 * hours = max(t_h, t_v) + min(t_h, t_v) / 2.
 * Ignores: breaks, ground, load, altitude. It does not add up over pieces: apply it to whole legs.
 * Outside a range: `ok: false` with the field and its limit.
 *
 * @example
 * blendedHours({ km: 8, ascentM: 900, descentM: 0 }) // 4
 * blendedHours({ km: 15, ascentM: 800, descentM: 600, pace: { flatKmh: 4, climbMPerH: 300, descendMPerH: 500 } }) // 5.741667
 */
export function blendedHours({ pace = dinPace, ...leg }: LegTotals & { pace?: Pace }): Outcome<number> {
  const refusal = firstOutside(legRanges, leg) ?? firstOutside(paceRanges, pace)
  if (refusal) return refusal
  const flat = leg.km / pace.flatKmh
  const vertical = leg.ascentM / pace.climbMPerH + leg.descentM / pace.descendMPerH
  return found(Math.max(flat, vertical) + Math.min(flat, vertical) / 2)
}
