// What insulation takes when it is squeezed, and a mat when it is rolled.
// Source: van-wyk-1946; its constant and the fibres’ stiffness are from memory, so a result is good to about ± 25 %.

import { firstOutside, found, type Outcome, type Range } from './outcome'

export type Fill = 'down' | 'synthetic'
export type Squeeze = 'laid' | 'hand' | 'strap'

/** K of the law, for fibres that lie at random. From memory, known to a factor of about 2. */
const K = 0.01

/** Young’s modulus and density of the fibre. From memory: keratin, and polyester. */
export const fills: Readonly<Record<Fill, { stiffnessPa: number; gPerLitre: number; source: string }>> = {
  down: { stiffnessPa: 2e9, gPerLitre: 1310, source: 'van-wyk-1946' },
  synthetic: { stiffnessPa: 4e9, gPerLitre: 1380, source: 'van-wyk-1946' },
}

/** Laid in; stuffed by hand, about 200 N on 0.07 m²; strapped as hard as ASTM F1853 presses a sleeping bag. */
export const squeezes: Readonly<Record<Squeeze, { pressurePa: number; source: string }>> = {
  laid: { pressurePa: 1000, source: 'our-judgement' },
  hand: { pressurePa: 3000, source: 'our-judgement' },
  strap: { pressurePa: 6900, source: 'astm-f1853' },
}

/** Shell and lining, folded: they give way little, so one figure for every squeeze. */
const shellGPerLitre = 300

/** The litres lie within ± this share. */
export const compressionHalfWidth = 0.25

/** Below 500 Pa the law fails: at the load of a fill-power test it packs down five times too densely. */
const pressureRange = { min: 500, max: 50_000, unit: 'Pa', source: 'our-judgement' } as const

export const compressionRanges = {
  pressurePa: pressureRange,
  fromPa: pressureRange,
  toPa: pressureRange,
  fillG: { min: 0, max: 10_000, unit: 'g', source: 'our-judgement' },
  shellG: { min: 0, max: 10_000, unit: 'g', source: 'our-judgement' },
  lengthCm: { min: 10, max: 300, unit: 'cm', source: 'our-judgement' },
  widthCm: { min: 5, max: 200, unit: 'cm', source: 'our-judgement' },
  thicknessCm: { min: 0.05, max: 15, unit: 'cm', source: 'our-judgement' },
  coreCm: { min: 0, max: 30, unit: 'cm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

const { pressurePa, fromPa, toPa, fillG, shellG, ...matRanges } = compressionRanges
const itemRanges = { fillG, shellG }

/**
 * Grams of insulating fill in a litre under a pressure.
 *
 * Source: van-wyk-1946: p = K E s³ with s = solid share, the loft s0 left out. K and E are from memory, so the density
 * is good to about ± 25 %. Symbols: p = pressurePa, E and the fibre’s density by `fill`. Ignores: fill power, which the
 * law must not be carried to; damp.
 *
 * @example
 * fillDensityGPerLitre({ fill: 'down', pressurePa: 3000 }) // 69.6041
 */
export function fillDensityGPerLitre(state: { fill: Fill; pressurePa: number }): Outcome<number> {
  const refusal = firstOutside({ pressurePa }, { pressurePa: state.pressurePa })
  return refusal ?? found(densityAt(state.fill, state.pressurePa))
}

function densityAt(fill: Fill, pressure: number): number {
  const { stiffnessPa, gPerLitre } = fills[fill]
  return gPerLitre * Math.cbrt(pressure / (K * stiffnessPa))
}

/**
 * Litres of fill under one pressure as a multiple of its litres under another.
 *
 * Source: van-wyk-1946: V is as p to the power −1/3. Symbols: p = fromPa and toPa.
 * Ignores: the shell, which gives way little; fill that has not been squeezed evenly.
 *
 * @example
 * squeezedShare({ fromPa: 6900, toPa: 3000 }) // 1.320006
 */
export function squeezedShare(change: { fromPa: number; toPa: number }): Outcome<number> {
  return firstOutside({ fromPa, toPa }, change) ?? found(Math.cbrt(change.fromPa / change.toPa))
}

/** Litres with the ends of what they may be: a range to enter as it stands. */
export interface Squeezed {
  low: number
  typical: number
  high: number
}

/**
 * Packed litres of a sleeping bag, quilt or jacket: fill by how hard it is squeezed, shell at 300 g/L.
 *
 * Source: van-wyk-1946 for the fill; shell and the ± 25 % of low and high: our-judgement.
 * Symbols: fillG and shellG add up to the item’s mass. Ignores: stuff sack, damp, wear.
 *
 * @example
 * insulatedLitres({ fill: 'down', fillG: 350, shellG: 400, squeeze: 'hand' }) // { low: 4.77133, typical: 6.36177, high: 7.95221 }
 */
export function insulatedLitres(item: {
  fill: Fill
  fillG: number
  shellG: number
  squeeze: Squeeze
}): Outcome<Squeezed> {
  const refusal = firstOutside(itemRanges, { fillG: item.fillG, shellG: item.shellG })
  if (refusal) return refusal
  const density = densityAt(item.fill, squeezes[item.squeeze].pressurePa)
  const typical = item.fillG / density + item.shellG / shellGPerLitre
  const [low, high] = [1 - compressionHalfWidth, 1 + compressionHalfWidth].map(share => typical * share)
  return found({ low: low!, typical, high: high! })
}

/** A mat rolled, and the same mat laid flat or as a liner. */
export interface RolledMat {
  diameterCm: number
  rollLitres: number
  flatLitres: number
}

/**
 * Diameter and litres of a mat rolled around a core of `coreCm`, and its litres flat.
 *
 * Source: elementary-geometry: a roll’s section is that of the mat and of its core, D = √(4 L t / π + d0²).
 * Symbols: L, w, t = lengthCm, widthCm, thicknessCm; d0 = coreCm. Ignores: how tightly it is rolled, foam that gives way.
 *
 * @example
 * rolledMat({ lengthCm: 183, widthCm: 51, thicknessCm: 1.5, coreCm: 2 }) // { diameterCm: 18.80171, rollLitres: 14.15972, flatLitres: 13.9995 }
 */
export function rolledMat(mat: {
  lengthCm: number
  widthCm: number
  thicknessCm: number
  coreCm: number
}): Outcome<RolledMat> {
  const refusal = firstOutside(matRanges, mat)
  if (refusal) return refusal
  const { lengthCm, widthCm, thicknessCm, coreCm } = mat
  const diameterCm = Math.sqrt((4 * lengthCm * thicknessCm) / Math.PI + coreCm ** 2)
  const rollLitres = (Math.PI * diameterCm ** 2 * widthCm) / 4000
  return found({ diameterCm, rollLitres, flatLitres: (lengthCm * thicknessCm * widthCm) / 1000 })
}
