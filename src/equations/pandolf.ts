// Older models of walking power with a load, in watts: Pandolf 1977 and Santee's correction for downhill.
// Kept for comparison; the app reckons with the backpacking equation in walking-power.ts.
// Sources: pandolf-1977, santee-2001; third-party copies (the grade's sign in Santee is a judgement).

import { firstOutside, found, type Outcome, outside, type Range } from './outcome'
import { terrainFactorRange } from './terrain'

export interface LoadedWalk {
  bodyKg: number
  loadKg: number
  speedMPerS: number
  gradePercent: number
  terrainFactor: number
}

/** Never for downhill: the equation turns negative there. Load and speed ends are from memory. */
export const pandolfRanges = {
  bodyKg: { min: 10, max: 300, unit: 'kg', source: 'our-judgement' },
  loadKg: { min: 0, max: 70, unit: 'kg', source: 'pandolf-1977' },
  speedMPerS: { min: 0, max: 2.2, unit: 'm/s', source: 'pandolf-1977' },
  gradePercent: { min: 0, max: 45, unit: '%', source: 'our-judgement' },
  terrainFactor: terrainFactorRange,
} as const satisfies Record<keyof LoadedWalk, Range>

/** Measured at 1.34 m/s with up to 27.2 kg; bodies under 40 kg are left out, the correction outweighs them. */
export const santeeRanges = {
  bodyKg: { min: 40, max: 300, unit: 'kg', source: 'our-judgement' },
  loadKg: { min: 0, max: 27.2, unit: 'kg', source: 'santee-2001' },
  speedMPerS: { min: 0, max: 2.2, unit: 'm/s', source: 'pandolf-1977' },
  gradePercent: { min: -12, max: 0, unit: '% (below 0)', source: 'santee-2001' },
  terrainFactor: { min: 1, max: 2.1, unit: 'times', source: 'our-judgement' },
} as const satisfies Record<keyof LoadedWalk, Range>

function pandolfFormula({ bodyKg: w, loadKg: l, speedMPerS: v, gradePercent: g, terrainFactor }: LoadedWalk) {
  return 1.5 * w + 2 * (w + l) * (l / w) ** 2 + terrainFactor * (w + l) * (1.5 * v ** 2 + 0.35 * v * g)
}

/**
 * Watts while standing or walking with a load, level or uphill.
 *
 * Source: pandolf-1977: M = 1.5 W + 2 (W + L) (L/W)² + η (W + L) (1.5 V² + 0.35 V G).
 * Symbols: W = bodyKg, L = loadKg, V = speedMPerS, G = gradePercent, η = terrainFactor.
 * Ignores: age, height, altitude; reads 12 to 33 % low for heavy modern loads. Downhill is `ok: false`.
 *
 * @example
 * pandolfWatts({ bodyKg: 70, loadKg: 20, speedMPerS: 1.34, gradePercent: 5, terrainFactor: 1 }) // 573.1499
 */
export function pandolfWatts(walk: LoadedWalk): Outcome<number> {
  return firstOutside(pandolfRanges, walk) ?? found(pandolfFormula(walk))
}

/**
 * Watts while walking downhill with a load: Pandolf's equation less Santee's correction.
 *
 * Source: santee-2001: CF = η (G (W + L) V / 3.5 − (W + L) (G + 6)² / W + 25 − V²), M = Pandolf − CF.
 * Symbols: as `pandolfWatts`, G negative. The signed G is our reading: only it gives the published least
 * cost near −8 %. Ignores: what Pandolf ignores; does not meet the level value at G = 0, so 0 is `ok: false`.
 *
 * @example
 * santeeWatts({ bodyKg: 80, loadKg: 0, speedMPerS: 1.34, gradePercent: -8, terrainFactor: 1 }) // 261.136171
 */
export function santeeWatts(walk: LoadedWalk): Outcome<number> {
  const refusal = firstOutside(santeeRanges, walk)
  if (refusal) return refusal
  const { bodyKg: w, loadKg: l, speedMPerS: v, gradePercent: g, terrainFactor } = walk
  if (g === 0) return outside('gradePercent', santeeRanges.gradePercent, g)
  const correction = (g * (w + l) * v) / 3.5 - ((w + l) * (g + 6) ** 2) / w + 25 - v ** 2
  return found(pandolfFormula(walk) - terrainFactor * correction)
}
