// Round things in a pack's section: the largest at a place, two side by side, the room beside one; and thin rods.
// Source: elementary-geometry (keys of data/sources.json).

import { type PackInner, packInnerRanges, usualClearanceCm } from './fit'
import { ellipsePerimeter } from './fit-section'
import { firstOutside, found, type Outcome, outside, type Range } from './outcome'

const axis = { min: 1, max: 100, unit: 'cm', source: 'our-judgement' } as const

export const ellipseRanges = {
  semiMajorCm: axis,
  semiMinorCm: axis,
} as const satisfies Record<string, Range>

interface Ellipse {
  semiMajorCm: number
  semiMinorCm: number
}

function firstWrong(ellipse: Ellipse) {
  const refusal = firstOutside(ellipseRanges, ellipse)
  if (refusal) return refusal
  const { semiMajorCm, semiMinorCm } = ellipse
  const limit = { ...axis, max: semiMajorCm }
  return semiMinorCm > semiMajorCm ? outside('semiMinorCm', limit, semiMinorCm) : undefined
}

/**
 * Length around an ellipse in cm.
 *
 * Source: ramanujan-1914: π (a + b)(1 + 3k / (10 + √(4 − 3k))), k = ((a − b)/(a + b))². Symbols: a = semiMajorCm,
 * b = semiMinorCm. Ignores: an error that grows as the ellipse flattens, 0.001 % at b = a / 5.
 *
 * @example
 * ellipsePerimeterCm({ semiMajorCm: 16, semiMinorCm: 12 }) // 88.41397
 */
export function ellipsePerimeterCm(ellipse: Ellipse): Outcome<number> {
  return firstWrong(ellipse) ?? found(ellipsePerimeter(ellipse.semiMajorCm, ellipse.semiMinorCm))
}

/**
 * Radius in cm of the largest circle inside an ellipse whose centre lies on the long axis, `offsetCm` off the middle.
 *
 * Source: elementary-geometry: b √(1 − c²/(a² − b²)) while c ≤ (a² − b²)/a, beyond that a − c.
 * Symbols: a = semiMajorCm, b = semiMinorCm, c = offsetCm, at most a. Ignores: nothing.
 *
 * @example
 * inscribedRadiusCm({ semiMajorCm: 16, semiMinorCm: 12, offsetCm: 3 }) // 11.50776
 */
export function inscribedRadiusCm(place: Ellipse & { offsetCm: number }): Outcome<number> {
  const { semiMajorCm: a, semiMinorCm: b, offsetCm: c } = place
  const refusal = firstWrong(place)
  if (refusal) return refusal
  if (!(c >= 0 && c <= a)) return outside('offsetCm', { min: 0, max: a, unit: 'cm' }, c)
  const focus2 = a ** 2 - b ** 2
  return found(c <= focus2 / a && c > 0 ? b * Math.sqrt(1 - c ** 2 / focus2) : Math.min(b, a - c))
}

const innerRanges = {
  innerWidthCm: packInnerRanges.innerWidthCm,
  innerDepthCm: packInnerRanges.innerDepthCm,
  clearanceCm: packInnerRanges.clearanceCm,
}

/**
 * Largest diameter in cm of two equal round things that stand side by side in a section.
 *
 * Source: elementary-geometry: in an ellipse the circle at its own radius off the middle, b √(a² − b²) / a while
 * 2b² ≤ a², else a / 2; in a rectangle also corner to corner, W + D − √(2 W D), at most the lesser side.
 * Symbols: a, b: half of width and depth less the clearance, in order of size. Ignores: height, what rides beside them.
 *
 * @example
 * pairDiameterCm({ section: 'ellipse', innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 0 }) // 16
 */
export function pairDiameterCm(inner: Omit<PackInner, 'innerHeightCm'>): Outcome<number> {
  const { section, innerWidthCm, innerDepthCm, clearanceCm = 1 } = inner
  const refusal = firstOutside(innerRanges, { innerWidthCm, innerDepthCm, clearanceCm })
  if (refusal) return refusal
  const long = Math.max(innerWidthCm, innerDepthCm) - clearanceCm
  const short = Math.min(innerWidthCm, innerDepthCm) - clearanceCm
  if (section === 'rectangle') return found(Math.min(short, long + short - Math.sqrt(2 * long * short)))
  const flat = 2 * short ** 2 <= long ** 2
  return found(flat ? (short * Math.sqrt(long ** 2 - short ** 2)) / long : long / 2)
}

const pairRanges = {
  ...innerRanges,
  oneCm: { min: 0.1, max: 200, unit: 'cm', source: 'our-judgement' },
  otherCm: { min: 0.1, max: 200, unit: 'cm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/**
 * Whether two round things of any diameters stand side by side in a section.
 *
 * Source: elementary-geometry: each as far to its end as it goes, c = √((a² − b²)(1 − r²/b²)) in an ellipse or a − r
 * where the end is the closer (r ≤ b²/a), corner to corner in a rectangle; they stand while the centres are r₁ + r₂ apart.
 * Symbols: a ≥ b: half of width and depth less the clearance; r₁, r₂: half of oneCm and otherCm. Ignores: height, what
 * rides beside them.
 *
 * @example
 * pairStands({ section: 'ellipse', innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 0, oneCm: 18, otherCm: 13 }) // true
 * pairStands({ section: 'ellipse', innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 0, oneCm: 18, otherCm: 14.1 }) // false
 */
export function pairStands(
  pair: Omit<PackInner, 'innerHeightCm'> & { oneCm: number; otherCm: number },
): Outcome<boolean> {
  const { section, innerWidthCm, innerDepthCm, clearanceCm = usualClearanceCm, oneCm, otherCm } = pair
  const refusal = firstOutside(pairRanges, { innerWidthCm, innerDepthCm, clearanceCm, oneCm, otherCm })
  if (refusal) return refusal
  const a = (Math.max(innerWidthCm, innerDepthCm) - clearanceCm) / 2
  const b = (Math.min(innerWidthCm, innerDepthCm) - clearanceCm) / 2
  const [one, other] = [oneCm / 2, otherCm / 2]
  if (Math.max(one, other) > b) return found(false)
  const offset = (r: number) =>
    r * a <= b ** 2 ? a - r : Math.sqrt((a ** 2 - b ** 2) * Math.max(0, 1 - (r / b) ** 2))
  const apartCm =
    section === 'ellipse' ? offset(one) + offset(other) : Math.hypot(2 * a - one - other, 2 * b - one - other)
  return found(apartCm >= one + other - ROUNDING)
}

/** What misses by less stands. */
const ROUNDING = 1e-9

const besideRanges = {
  diameterCm: { min: 0.1, max: 200, unit: 'cm', source: 'our-judgement' },
  lengthCm: { min: 0.1, max: 500, unit: 'cm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/**
 * Litres left beside a round thing that stands in an elliptical body, over its length: room for soft things only.
 *
 * Source: elementary-geometry: (π a b − π r²) h. Symbols: a = semiMajorCm, b = semiMinorCm, r = diameterCm / 2 ≤ b,
 * h = lengthCm. Ignores: that narrow gaps take nothing.
 *
 * @example
 * roomBesideLitres({ semiMajorCm: 16, semiMinorCm: 12, diameterCm: 22, lengthCm: 30 }) // 6.691592
 */
export function roomBesideLitres(place: Ellipse & { diameterCm: number; lengthCm: number }): Outcome<number> {
  const { semiMajorCm, semiMinorCm, diameterCm, lengthCm } = place
  const refusal = firstWrong(place) ?? firstOutside(besideRanges, { diameterCm, lengthCm })
  if (refusal) return refusal
  if (diameterCm > 2 * semiMinorCm)
    return outside('diameterCm', { ...besideRanges.diameterCm, max: 2 * semiMinorCm }, diameterCm)
  return found((Math.PI * (semiMajorCm * semiMinorCm - (diameterCm / 2) ** 2) * lengthCm) / 1000)
}

/**
 * Longest rod of no thickness in a pack, in cm, corner to corner or leaning along the long axis.
 *
 * Source: elementary-geometry: √(H² + W² + D²) in a box, √(H² + (2a)²) in an elliptical body.
 * Symbols: H, W, D = innerHeightCm, innerWidthCm, innerDepthCm less the clearance. Ignores: the rod’s thickness.
 *
 * @example
 * longestRodCm({ section: 'rectangle', innerHeightCm: 50, innerWidthCm: 30, innerDepthCm: 20, clearanceCm: 0 }) // 61.64414
 */
export function longestRodCm(inner: PackInner): Outcome<number> {
  const { section, innerHeightCm, innerWidthCm, innerDepthCm, clearanceCm = 1 } = inner
  const refusal = firstOutside(packInnerRanges, { innerHeightCm, innerWidthCm, innerDepthCm, clearanceCm })
  if (refusal) return refusal
  const [height, width, depth] = [innerHeightCm, innerWidthCm, innerDepthCm].map(cm => cm - clearanceCm)
  const across = section === 'ellipse' ? Math.max(width!, depth!) : Math.hypot(width!, depth!)
  return found(Math.hypot(height!, across))
}
