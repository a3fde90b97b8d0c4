// Walking hours from a leg's totals: the blend of DIN 33466 and Naismith's rule with Langmuir's corrections.
// All give moving time: breaks are extra, and the ground's surface is not considered.
// Sources: din-33466, naismith-1892, langmuir-1984; the texts themselves were not read.

import { type LegTotals, legRanges } from './leg-split'
import { firstOutside, found, type Outcome, outside, type Range } from './outcome'

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
 * Source: din-33466 (one equation, unnumbered in the transcriptions read).
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

/** A slope of 12° loses at most this many metres a kilometre: tan 12° × 1000. */
const gentleDescentMPerKm = 1000 * Math.tan((12 * Math.PI) / 180)

const naismithRanges = {
  km: legRanges.km,
  ascentM: legRanges.ascentM,
  gentleDescentM: legRanges.descentM,
  steepDescentM: legRanges.descentM,
} as const satisfies Record<string, Range>

/**
 * Hours for a leg by Naismith's rule with Langmuir's corrections for descent.
 *
 * Source: naismith-1892 (km / 5 + ascent / 600), langmuir-1984 (10 min off per 300 m down on slopes of
 * 5° to 12°, 10 min on per 300 m down on steeper ones).
 * Symbols: up_m = ascentM, down 5–12° = gentleDescentM, down over 12° = steepDescentM.
 * Ignores: breaks, ground, load; made for fit walkers with little to carry, so it is optimistic.
 * More gentle descent than a 12° slope over these km can lose is `ok: false`: the credit would outrun the walk.
 *
 * @example
 * naismithHours({ km: 16, ascentM: 1000 }) // 4.866667
 * naismithHours({ km: 10, ascentM: 600, gentleDescentM: 300, steepDescentM: 300 }) // 3
 */
export function naismithHours({
  km,
  ascentM,
  gentleDescentM = 0,
  steepDescentM = 0,
}: {
  km: number
  ascentM: number
  gentleDescentM?: number
  steepDescentM?: number
}): Outcome<number> {
  const refusal = firstOutside(naismithRanges, { km, ascentM, gentleDescentM, steepDescentM })
  if (refusal) return refusal
  const gentleLimitM = km * gentleDescentMPerKm
  if (gentleDescentM > gentleLimitM) {
    return outside('gentleDescentM', { min: 0, max: gentleLimitM, unit: 'm' }, gentleDescentM)
  }
  return found(km / 5 + ascentM / 600 - gentleDescentM / 1800 + steepDescentM / 1800)
}
