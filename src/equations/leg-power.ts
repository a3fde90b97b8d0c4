// Mean walking power over a leg known by its totals, from the backpacking equation, and its energy.
// Speed and grade beyond the equation's limits are computed at the limit and flagged.
// Sources: looney-2022; the split of the leg is our-judgement.

import { type LegTotals, legRanges, splitByTotals } from './leg-split'
import { firstOutside, found, type Outcome, type Range } from './outcome'
import { backpackingFormula, backpackingRanges } from './walking-power'

export interface LegEffort extends LegTotals {
  hours: number
  loadShare: number
  terrainFactor: number
  restingWPerKg: number
}

export interface LegPower {
  wattsPerKg: number
  /** Speed or grade lay beyond the equation's limit and was set to it. */
  atLimit: boolean
  /** The load lay beyond the heaviest that was studied; the formula was followed all the same. */
  loadBeyondStudy: boolean
}

/** Loads are followed past the studied share; the end here only keeps the arithmetic sane. */
export const legPowerRanges = {
  ...legRanges,
  hours: { min: 0, max: 5000, unit: 'h', source: 'our-judgement' },
  loadShare: { min: 0, max: 100, unit: 'of body mass', source: 'our-judgement' },
  terrainFactor: backpackingRanges.terrainFactor,
  restingWPerKg: backpackingRanges.restingWPerKg,
} as const satisfies Record<keyof LegEffort, Range>

/** Asks hours > 0 before dividing: a negative zero would turn the speed round. */
function speedMPerS(km: number, hours: number): number {
  if (km === 0) return 0
  return hours > 0 ? km / hours / 3.6 : Number.POSITIVE_INFINITY
}

/**
 * Mean watts a kilogram of body mass over a leg: climb and descent at the same speed, weighted by time.
 *
 * Source: looney-2022 by `backpackingWPerKg`, on the parts of `splitByTotals` (our-judgement).
 * Symbols: S = km / hours in m/s; G = ± (ascentM + descentM) / (10 km) %; others as `backpackingWPerKg`.
 * Ignores: uneven steepness inside the leg. No km in some hours is standing; km in no hours is taken at the
 * limit speed and flagged, with no time and so no energy.
 * Outside a range: `ok: false` with the field and its limit.
 *
 * @example
 * legPowerWPerKg({ km: 6, ascentM: 0, descentM: 0, hours: 1.5, loadShare: 0.2, terrainFactor: 1.1, restingWPerKg: 1.1 }) // { wattsPerKg: 4.422295, atLimit: false, loadBeyondStudy: false }
 * legPowerWPerKg({ km: 9, ascentM: 0, descentM: 0, hours: 1, loadShare: 0, terrainFactor: 1, restingWPerKg: 1 }) // { wattsPerKg: 7.894183, atLimit: true, loadBeyondStudy: false }
 */
export function legPowerWPerKg(leg: LegEffort): Outcome<LegPower> {
  const refusal = firstOutside(legPowerRanges, leg)
  if (refusal) return refusal
  const { speedMPerS: speedLimit, gradePercent: gradeLimit, loadShare: studied } = backpackingRanges
  const speed = speedMPerS(leg.km, leg.hours)
  const { loadShare, terrainFactor, restingWPerKg } = leg
  const speedWithin = Math.min(speed, speedLimit.max)
  const parts = splitByTotals(leg)
  const wattsPerKg = parts.reduce((sum, { share, slope }) => {
    const gradePercent = Math.min(Math.max(100 * slope, gradeLimit.min), gradeLimit.max)
    const state = { speedMPerS: speedWithin, gradePercent, loadShare, terrainFactor, restingWPerKg }
    return sum + share * backpackingFormula(state)
  }, 0)
  const tooSteep = parts.some(({ slope }) => Math.abs(100 * slope) > gradeLimit.max)
  const atLimit = speed > speedLimit.max || tooSteep
  return found({ wattsPerKg, atLimit, loadBeyondStudy: leg.loadShare > studied.max })
}

/** Kilocalories in a watt-hour, rounded as the model of this app states it (exact: 3600 / 4184). */
export const kcalPerWattHour = 0.86
