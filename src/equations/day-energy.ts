// Energy of a whole walking day from its totals alone: Yamamoto's mountaineering equation.
// An independent cross-check of the backpacking equation; it reads about 15 to 20 % above it.
// Source: yamamoto-2016, through a third-party copy.

import { legRanges } from './leg-split'
import { firstOutside, found, type Outcome, type Range } from './outcome'

export interface DayTotals {
  hours: number
  km: number
  ascentM: number
  descentM: number
  bodyKg: number
  loadKg: number
}

/** No range is published in what was read. */
export const dayTotalsRanges = {
  ...legRanges,
  hours: { min: 0, max: 5000, unit: 'h', source: 'our-judgement' },
  bodyKg: { min: 10, max: 300, unit: 'kg', source: 'our-judgement' },
  loadKg: { min: 0, max: 150, unit: 'kg', source: 'our-judgement' },
} as const satisfies Record<keyof DayTotals, Range>

/**
 * Gross kilocalories of the hours under way, short stops included.
 *
 * Source: yamamoto-2016: (1.8 h + 0.3 km + 10 km_up + 0.6 km_down) × (body + pack).
 * Symbols: h = hours, km_up = ascentM / 1000, km_down = descentM / 1000, body + pack = bodyKg + loadKg.
 * Ignores: ground, steepness, sex, age, altitude.
 *
 * @example
 * yamamotoKcal({ hours: 5, km: 14, ascentM: 1452, descentM: 1452, bodyKg: 60, loadKg: 8 }) // 1944.2016
 */
export function yamamotoKcal(day: DayTotals): Outcome<number> {
  const refusal = firstOutside(dayTotalsRanges, day)
  if (refusal) return refusal
  const perKg = 1.8 * day.hours + 0.3 * day.km + 10 * (day.ascentM / 1000) + 0.6 * (day.descentM / 1000)
  return found(perKg * (day.bodyKg + day.loadKg))
}
