// Metabolic power of walking, in watts a kilogram of body mass: with a pack (Looney et al. 2022) and
// without (Looney et al. 2019). Both are gross: they contain resting metabolism already.
// Sources: looney-2022, looney-2019-graded; abstracts read, coefficients through third-party copies.

import { firstOutside, found, type Outcome, type Range } from './outcome'
import { terrainFactorRange } from './terrain'

export interface BackpackingState {
  speedMPerS: number
  gradePercent: number
  loadShare: number
  terrainFactor: number
  restingWPerKg: number
}

/** The trials were level; the grade limits come with the grade term, the lower one mirrored by us. */
export const backpackingRanges = {
  speedMPerS: { min: 0, max: 1.97, unit: 'm/s', source: 'looney-2022' },
  gradePercent: { min: -45, max: 45, unit: '%', source: 'looney-2019-graded' },
  loadShare: { min: 0, max: 0.66, unit: 'of body mass', source: 'looney-2022' },
  terrainFactor: terrainFactorRange,
  restingWPerKg: { min: 0.01, max: 10, unit: 'W/kg', source: 'our-judgement' },
} as const satisfies Record<keyof BackpackingState, Range>

export const gradedWalkingRanges = {
  speedMPerS: { min: 0, max: 1.96, unit: 'm/s', source: 'looney-2019-graded' },
  gradePercent: { min: -40, max: 45, unit: '%', source: 'looney-2019-graded' },
} as const satisfies Record<string, Range>

const gradeTerm = (s: number, g: number) => 0.34 * s * g * (1 - 1.05 ** (1 - 1.1 ** (g + 32)))

const loadTerm = (l: number) => 1 + 1.96 * l ** 1.36

/** The formula of `backpackingWPerKg` without the check of ranges, for callers with limits of their own. */
export function backpackingFormula(state: BackpackingState): number {
  const { speedMPerS: s, gradePercent, loadShare, terrainFactor, restingWPerKg } = state
  const moving = 1.78 * s ** 0.58 + 0.27 * s ** 4 + gradeTerm(s, gradePercent)
  return restingWPerKg + (0.19 + terrainFactor * moving) * loadTerm(loadShare)
}

/**
 * Watts a kilogram of body mass while walking with a pack.
 *
 * Source: looney-2022, eq. 4 as third-party copies have it: M = Mrest + (0.19 + η (1.78 S^0.58 + 0.27 S^4 + Gr)) (1 + 1.96 l^1.36),
 * Gr = 0.34 S G (1 − 1.05^(1 − 1.1^(G + 32))).
 * Symbols: S = speedMPerS, G = gradePercent (signed), l = loadShare (load over body mass),
 * η = terrainFactor, Mrest = restingWPerKg.
 * Ignores: age, fatigue, altitude, poles, load on feet. Two copies of three let η act on the grade
 * term too, as here; the third does not (9 % less at η 1.2, +10 %). Packs were tested from 0.45 m/s up.
 * Outside a range: `ok: false` with the field and its limit.
 *
 * @example
 * backpackingWPerKg({ speedMPerS: 1.34, gradePercent: 10, loadShare: 0.2, terrainFactor: 1, restingWPerKg: 1.092812 }) // 10.112078
 */
export function backpackingWPerKg(state: BackpackingState): Outcome<number> {
  return firstOutside(backpackingRanges, state) ?? found(backpackingFormula(state))
}

/**
 * The factor by which a pack multiplies the walking part of the power.
 *
 * Source: looney-2022, eq. 4: 1 + 1.96 l^1.36. Symbols: l = loadShare. Ignores: where the load rides.
 *
 * @example
 * loadFactor({ loadShare: 0.2 }) // 1.219612
 */
export function loadFactor({ loadShare }: { loadShare: number }): Outcome<number> {
  const { loadShare: range } = backpackingRanges
  return firstOutside({ loadShare: range }, { loadShare }) ?? found(loadTerm(loadShare))
}

/**
 * Watts a kilogram of body mass while walking without a load.
 *
 * Source: looney-2019-graded: M = 1.44 + 1.94 S^0.43 + 0.24 S^4 + Gr, Gr as in `backpackingWPerKg`.
 * Symbols: S = speedMPerS, G = gradePercent (signed). Ignores: load, ground, personal resting rate.
 *
 * @example
 * gradedWalkingWPerKg({ speedMPerS: 1.34, gradePercent: -10 }) // 3.073756
 */
export function gradedWalkingWPerKg(state: { speedMPerS: number; gradePercent: number }): Outcome<number> {
  const refusal = firstOutside(gradedWalkingRanges, state)
  if (refusal) return refusal
  const s = state.speedMPerS
  return found(1.44 + 1.94 * s ** 0.43 + 0.24 * s ** 4 + gradeTerm(s, state.gradePercent))
}
