// Litres of a thing measured at home with a tape or with water, and how sure they are.
// Sources: gum-2008 (4.3.7, rectangular; eq. 10, propagation); the half-widths and the squeeze are our judgement.

import { firstOutside, found, type Outcome, type Range } from './outcome'

/** Litres and their standard uncertainty. */
export interface Measured {
  litres: number
  sigmaLitres: number
}

const lengthRange = { min: 0.5, max: 300, unit: 'cm', source: 'our-judgement' } as const
const halfWidthRange = { min: 0, max: 20, unit: 'cm', source: 'our-judgement' } as const

/** Half-widths that a reading is taken to lie within: a tape, a base laid out with care, a pressed height, a jug. */
export const readingHalfWidths = {
  tapeCm: 0.5,
  baseCm: 0.3,
  pressedHeightCm: 1,
  riseLitres: 0.1,
} as const

/** How far apart two people squeeze a soft roll: ± this share of its litres. */
export const softSqueeze = 0.1

export const measuringRanges = {
  lengthCm: lengthRange,
  widthCm: lengthRange,
  heightCm: lengthRange,
  diameterCm: lengthRange,
  girthCm: { min: 1.5, max: 600, unit: 'cm', source: 'our-judgement' },
  riseLitres: { min: 0, max: 500, unit: 'L', source: 'our-judgement' },
  halfWidthCm: halfWidthRange,
  baseHalfWidthCm: halfWidthRange,
  heightHalfWidthCm: halfWidthRange,
  halfWidthLitres: { min: 0, max: 100, unit: 'L', source: 'our-judgement' },
  squeezeShare: { min: 0, max: 0.5, unit: 'as a share of 1', source: 'our-judgement' },
} as const satisfies Record<string, Range>

interface Factor {
  cm: number
  power: 1 | 2
  halfWidthCm: number
}

const cm3PerLitre = 1000

/** A constant times lengths to their powers: relative u² is the sum of (power × half-width / length)² / 3. */
function product(constant: number, factors: Factor[], shareHalfWidth = 0): Measured {
  const cm3 = factors.reduce((volume, { cm, power }) => volume * cm ** power, constant)
  const relative = factors.map(({ cm, power, halfWidthCm }) => (power * halfWidthCm) / cm)
  const litres = cm3 / cm3PerLitre
  return { litres, sigmaLitres: (litres * Math.hypot(...relative, shareHalfWidth)) / Math.sqrt(3) }
}

const ranges = <K extends keyof typeof measuringRanges>(...fields: K[]) =>
  Object.fromEntries(fields.map(field => [field, measuringRanges[field]])) as Pick<typeof measuringRanges, K>

const boxRanges = ranges('lengthCm', 'widthCm', 'heightCm', 'halfWidthCm')
const filledRanges = ranges('lengthCm', 'widthCm', 'heightCm', 'baseHalfWidthCm', 'heightHalfWidthCm')
const cylinderRanges = ranges('diameterCm', 'lengthCm', 'halfWidthCm')
const girthRanges = ranges('girthCm', 'lengthCm', 'halfWidthCm', 'squeezeShare')
const riseRanges = ranges('riseLitres', 'halfWidthLitres')

/**
 * Litres of a box-shaped thing from its three sides.
 *
 * Source: gum-2008 eq. 10 on V = L W H, each side uniform within ± halfWidthCm (4.3.7).
 * Symbols: L, W, H = lengthCm, widthCm, heightCm. Ignores: bulging sides, rounded corners.
 *
 * @example
 * boxLitres({ lengthCm: 30, widthCm: 20, heightCm: 10 }) // { litres: 6, sigmaLitres: 0.2020726 }
 */
export function boxLitres(box: {
  lengthCm: number
  widthCm: number
  heightCm: number
  halfWidthCm?: number
}): Outcome<Measured> {
  const { lengthCm, widthCm, heightCm, halfWidthCm = readingHalfWidths.tapeCm } = box
  const refusal = firstOutside(boxRanges, { lengthCm, widthCm, heightCm, halfWidthCm })
  const sides = [lengthCm, widthCm, heightCm].map(cm => ({ cm, power: 1 as const, halfWidthCm }))
  return refusal ?? found(product(1, sides))
}

/**
 * Litres of a round thing from its diameter and length.
 *
 * Source: gum-2008 eq. 10 on V = π D² h / 4, both readings uniform within ± halfWidthCm (4.3.7).
 * Symbols: D = diameterCm, h = lengthCm. Ignores: a section that is not round; a soft roll is better read by its girth.
 *
 * @example
 * cylinderLitres({ diameterCm: 22, lengthCm: 30 }) // { litres: 11.403981, sigmaLitres: 0.3187607 }
 */
export function cylinderLitres(cylinder: {
  diameterCm: number
  lengthCm: number
  halfWidthCm?: number
}): Outcome<Measured> {
  const { diameterCm, lengthCm, halfWidthCm = readingHalfWidths.tapeCm } = cylinder
  const refusal = firstOutside(cylinderRanges, { diameterCm, lengthCm, halfWidthCm })
  const across: Factor = { cm: diameterCm, power: 2, halfWidthCm }
  return refusal ?? found(product(Math.PI / 4, [across, { cm: lengthCm, power: 1, halfWidthCm }]))
}

/**
 * Litres of a round thing from the tape around it and its length. `squeezeShare`: how far a soft roll's litres depend
 * on who squeezes it, ± that share; 0 for a hard thing, `softSqueeze` for a soft one.
 *
 * Source: gum-2008 eq. 10 on V = C² h / (4 π), readings uniform within ± halfWidthCm (4.3.7). Squeeze: our-judgement.
 * Symbols: C = girthCm, h = lengthCm. Ignores: a section that is not round, which this takes for too large.
 *
 * @example
 * girthLitres({ girthCm: 50, lengthCm: 28 }) // { litres: 5.570423, sigmaLitres: 0.0862293 }
 * girthLitres({ girthCm: 50, lengthCm: 28, squeezeShare: 0.1 }) // { litres: 5.570423, sigmaLitres: 0.3329678 }
 */
export function girthLitres(roll: {
  girthCm: number
  lengthCm: number
  halfWidthCm?: number
  squeezeShare?: number
}): Outcome<Measured> {
  const { girthCm, lengthCm, halfWidthCm = readingHalfWidths.tapeCm, squeezeShare = 0 } = roll
  const refusal = firstOutside(girthRanges, { girthCm, lengthCm, halfWidthCm, squeezeShare })
  const around: Factor = { cm: girthCm, power: 2, halfWidthCm }
  const along: Factor = { cm: lengthCm, power: 1, halfWidthCm }
  return refusal ?? found(product(1 / (4 * Math.PI), [around, along], squeezeShare))
}

/**
 * Litres of a whole kit laid in a box and pressed: base of the box, and the height it reaches. What it gives contains
 * the gaps between the things already.
 *
 * Source: gum-2008 eq. 10 on V = L W H (4.3.7). Half-widths: our-judgement, ± 3 mm for the base, ± 10 mm for the height.
 * Symbols: L, W, H = lengthCm, widthCm, heightCm. Ignores: bulging sides, another hand’s pressure.
 *
 * @example
 * filledBoxLitres({ lengthCm: 40, widthCm: 30, heightCm: 25 }) // { litres: 30, sigmaLitres: 0.7258616 }
 */
export function filledBoxLitres(box: {
  lengthCm: number
  widthCm: number
  heightCm: number
  baseHalfWidthCm?: number
  heightHalfWidthCm?: number
}): Outcome<Measured> {
  const { lengthCm, widthCm, heightCm } = box
  const { baseHalfWidthCm = readingHalfWidths.baseCm } = box
  const { heightHalfWidthCm = readingHalfWidths.pressedHeightCm } = box
  const given = { lengthCm, widthCm, heightCm, baseHalfWidthCm, heightHalfWidthCm }
  const base = [lengthCm, widthCm].map(cm => ({ cm, power: 1 as const, halfWidthCm: baseHalfWidthCm }))
  const up: Factor = { cm: heightCm, power: 1, halfWidthCm: heightHalfWidthCm }
  return firstOutside(filledRanges, given) ?? found(product(1, [...base, up]))
}

/**
 * Litres of a thing pushed under water in a tight bag: what the water rises by.
 *
 * Source: gum-2008 4.3.7. Half-width of the rise: our-judgement, ± 0.1 L.
 * Symbols: V = riseLitres. Ignores: air left in the bag, which this counts as the thing.
 *
 * @example
 * displacedLitres({ riseLitres: 3 }) // { litres: 3, sigmaLitres: 0.0577350 }
 */
export function displacedLitres(bath: { riseLitres: number; halfWidthLitres?: number }): Outcome<Measured> {
  const { riseLitres, halfWidthLitres = readingHalfWidths.riseLitres } = bath
  const refusal = firstOutside(riseRanges, { riseLitres, halfWidthLitres })
  return refusal ?? found({ litres: riseLitres, sigmaLitres: halfWidthLitres / Math.sqrt(3) })
}
