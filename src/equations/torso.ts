// Torso length guessed from stature, where it was not measured: a flagged stand-in, poor by nature.
// Source: ansur-2012; the lines and their spread were computed from the public data, not printed with them.

import { firstOutside, found, type Outcome, type Range } from './outcome'
import type { Sex } from './resting-energy'

interface Line {
  interceptMm: number
  perMm: number
  /** Standard error of one person’s estimate. */
  seeMm: number
  /** Along the back by tape over the vertical difference; the mean of both where the sex is not known. */
  tapeFactor: number
}

export const torsoLines: Readonly<Record<Sex | 'unknown', Line>> = {
  male: { interceptMm: 72.23, perMm: 0.21833, seeMm: 20.2, tapeFactor: 1.0367 },
  female: { interceptMm: 67.57, perMm: 0.2041, seeMm: 18.1, tapeFactor: 1.0238 },
  unknown: { interceptMm: -98.5, perMm: 0.31261, seeMm: 21.9, tapeFactor: (1.0367 + 1.0238) / 2 },
}

/** A little beyond what nineteen in twenty of the measured were: further out the lines say nothing. */
export const torsoRanges = {
  heightCm: { min: 140, max: 200, unit: 'cm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

export interface Torso {
  /** From the prominent vertebra at the neck’s base down to the level of the hip bones’ tops, upright. */
  verticalCm: number
  /** The same along the back, as a tape measures it. */
  tapeCm: number
  /** Standard error: 95 of 100 lie within about ± twice this. */
  seeCm: number
}

/**
 * Torso length for a stature; `sex` left out: the line through both sexes.
 *
 * Source: ansur-2012: T = a + b H, men 72.23 + 0.21833 H, women 67.57 + 0.20410 H, both −98.50 + 0.31261 H, in mm.
 * Symbols: H = heightCm × 10. Ignores: nearly everything that makes torsos differ (r about 0.6 within a sex); soldiers of
 * 17 and over are leaner than hikers at large. The tape’s factor for both sexes is our-judgement, their mean.
 *
 * @example
 * torsoLength({ heightCm: 175.6, sex: 'male' }) // { verticalCm: 45.56175, tapeCm: 47.23386, seeCm: 2.02 }
 * torsoLength({ heightCm: 170 }) // { verticalCm: 43.2937, tapeCm: 44.60333, seeCm: 2.19 }
 */
export function torsoLength(person: { heightCm: number; sex?: Sex | null }): Outcome<Torso> {
  const refusal = firstOutside(torsoRanges, { heightCm: person.heightCm })
  if (refusal) return refusal
  const { interceptMm, perMm, seeMm, tapeFactor } = torsoLines[person.sex ?? 'unknown']
  const verticalCm = (interceptMm + perMm * person.heightCm * 10) / 10
  return found({ verticalCm, tapeCm: verticalCm * tapeFactor, seeCm: seeMm / 10 })
}
