// Litres of a rolled mat from the sides it has laid out flat, and how sure they are.
// Sources: elementary-geometry; gum-2008 (4.3.7, eq. 10); the half-widths are our judgement.

import { compressionRanges, rolledMat } from './compression'
import { type Measured, measuringRanges, readingHalfWidths } from './measuring'
import { firstOutside, found, type Outcome } from './outcome'

export interface MeasuredMat extends Measured {
  diameterCm: number
  /** The same mat laid flat, or round the inside of the pack. */
  flatLitres: number
}

/** What is taken to be left open in the middle of a roll, and how well a ruler reads a thickness; our judgement. */
export const matReadings = { coreCm: 2, thicknessHalfWidthCm: 0.1 } as const

const { lengthCm, widthCm, thicknessCm, coreCm } = compressionRanges
export const matRanges = { lengthCm, widthCm, thicknessCm, coreCm } as const
const ranges = { ...matRanges, squeezeShare: measuringRanges.squeezeShare }

/**
 * Litres of a mat rolled up, from its length, width and thickness with the air let out, and the open middle of the roll.
 *
 * Source: elementary-geometry on V = w (L t + π d² / 4); gum-2008 eq. 10, each reading uniform (4.3.7).
 * Half-widths: our-judgement, ± 5 mm by tape, ± 1 mm for the thickness; squeezeShare as in girthLitres.
 * Symbols: L, w, t, d = lengthCm, widthCm, thicknessCm, coreCm. Ignores: air left between the turns.
 *
 * @example
 * matLitres({ lengthCm: 183, widthCm: 51, thicknessCm: 1.5, coreCm: 2 }) // { litres: 14.15972, sigmaLitres: 0.5471748, diameterCm: 18.80171, flatLitres: 13.9995 }
 */
export function matLitres(mat: {
  lengthCm: number
  widthCm: number
  thicknessCm: number
  coreCm?: number
  squeezeShare?: number
}): Outcome<MeasuredMat> {
  const { lengthCm, widthCm, thicknessCm, coreCm = matReadings.coreCm, squeezeShare = 0 } = mat
  const refusal = firstOutside(ranges, { lengthCm, widthCm, thicknessCm, coreCm, squeezeShare })
  if (refusal) return refusal
  const rolled = rolledMat({ lengthCm, widthCm, thicknessCm, coreCm })
  if (!rolled.ok) return rolled
  const { diameterCm, rollLitres, flatLitres } = rolled.value
  const { tapeCm } = readingHalfWidths
  // Slope by each reading times its half-width, L.
  const moved = [
    (widthCm * thicknessCm * tapeCm) / 1000,
    (rollLitres / widthCm) * tapeCm,
    (widthCm * lengthCm * matReadings.thicknessHalfWidthCm) / 1000,
    (widthCm * Math.PI * coreCm * tapeCm) / 2000,
    rollLitres * squeezeShare,
  ]
  const sigmaLitres = Math.hypot(...moved) / Math.sqrt(3)
  return found({ litres: rollLitres, sigmaLitres, diameterCm, flatLitres })
}
