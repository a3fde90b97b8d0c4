// What the hiker's own packing teaches the packing model: known gear in a pack of known litres, and how full it was.
// The rule and its least spread, 0.03, or 0.06 after one observation, are judgements of ours.

import type { OutsideRange } from '../equations'

/** The same shape as an equation's outcome: the value, or the field that is outside and its limit. */
export type Observed = { ok: true; value: number } | OutsideRange

export interface Packed {
  /** How full the main body was: 1 to the brim, more where it would not close. */
  fullness: number
  /** Litres of that pack's main body. */
  bodyLitres: number
  /** What the model says the same things take with the personal factor 1: its bodyLitres over its personalFactor. */
  reckonedLitresAtFactor1: number
}

export const CALIBRATION_LIMITS = {
  /** Under a tenth full a glance tells nothing. */
  fullness: { min: 0.1, max: 2, unit: 'of the main body' },
  bodyLitres: { min: 1, max: 300, unit: 'L' },
  reckonedLitresAtFactor1: { min: 0.5, max: 1000, unit: 'L' },
  overLitres: { min: 0, max: 100, unit: 'L' },
  /** As the plan's settings have it: beyond this, something other than the packing is wrong. */
  factor: { min: 0.2, max: 5, unit: 'times what is reckoned' },
} as const

/** How sure the factor is taken to be, as a share of the litres: after one packing, and at the best after several. */
export const FACTOR_SPREAD = { ofOne: 0.06, least: 0.03 } as const

type Field = keyof typeof CALIBRATION_LIMITS

function firstOutside(given: Partial<Record<Field, number>>): OutsideRange | undefined {
  for (const [field, got] of Object.entries(given) as [Field, number][]) {
    const limit = CALIBRATION_LIMITS[field]
    if (!(got >= limit.min && got <= limit.max))
      return { ok: false, reason: 'outside-range', field, limit, got }
  }
  return undefined
}

/**
 * One observation of the personal factor: F = fullness × bodyLitres / reckonedLitresAtFactor1. A field outside its
 * limit, or a factor that is (`field: 'factor'`), comes back by name.
 */
export function observedFactor(packed: Packed): Observed {
  const { fullness, bodyLitres, reckonedLitresAtFactor1 } = packed
  const refusal = firstOutside({ fullness, bodyLitres, reckonedLitresAtFactor1 })
  if (refusal) return refusal
  const factor = (fullness * bodyLitres) / reckonedLitresAtFactor1
  return firstOutside({ factor }) ?? { ok: true, value: factor }
}

/** How full a pack of `bodyLitres` was that would not close by about `overLitres`: more than 1. */
export function fullnessNotClosing(packed: { bodyLitres: number; overLitres: number }): Observed {
  const { bodyLitres, overLitres } = packed
  const fullness = (bodyLitres + overLitres) / bodyLitres
  return (
    firstOutside({ bodyLitres, overLitres }) ?? firstOutside({ fullness }) ?? { ok: true, value: fullness }
  )
}

/** The two settings that calibrate a plan. A spread of null: not calibrated, the model's own range stands. */
export interface Calibration {
  personalFactor: number
  personalFactorSpread: number | null
}

/**
 * Several observations as one: their mean, with the standard deviation of the mean, at least 0.03. One alone: 0.06.
 * None: the settings of a plan that was never calibrated. The spread counts as a share of the litres, as the model has it.
 */
export function combineObservations(observations: readonly { factor: number }[]): Calibration {
  const n = observations.length
  if (n === 0) return { personalFactor: 1, personalFactorSpread: null }
  const personalFactor = observations.reduce((sum, { factor }) => sum + factor, 0) / n
  if (n === 1) return { personalFactor, personalFactorSpread: FACTOR_SPREAD.ofOne }
  const squares = observations.reduce((sum, { factor }) => sum + (factor - personalFactor) ** 2, 0)
  const ofTheMean = Math.sqrt(squares / (n - 1) / n)
  return { personalFactor, personalFactorSpread: Math.max(FACTOR_SPREAD.least, ofTheMean) }
}
