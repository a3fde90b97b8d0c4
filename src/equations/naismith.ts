// Walking hours from a leg's totals by Naismith's rule with Langmuir's corrections for descent.
// Moving time: breaks are extra, and the ground's surface is not considered.
// Sources: naismith-1892, langmuir-1984; the texts themselves were not read.

import { legRanges } from './leg-split'
import { firstOutside, found, type Outcome, outside, type Range } from './outcome'

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
