// Whether one rigid piece goes into a pack, and how: upright, lying or leaning, only by rounding the pack out, or not.
// Source: elementary-geometry; the clearance and the order of the questions are our judgement.

import { girthOf, longestSlanted, type Pose, posesOf, type RigidPiece, takes } from './fit-poses'
import { perimeterOf, type Section, type SectionShape } from './fit-section'
import { firstOutside, found, type Outcome, type OutsideRange, type Range } from './outcome'

/** The inside of a pack's main body: a section that is the same all the way up. */
export interface PackInner {
  section: SectionShape
  innerHeightCm: number
  innerWidthCm: number
  innerDepthCm: number
  /** Room to be left in each direction, 1 cm where it is not given. */
  clearanceCm?: number
}

/** How a piece goes in. `deforms`: only with the section rounded out, which presses on the back. */
export type Fit =
  | { verdict: 'upright' }
  | { verdict: 'only-lying'; how: 'across' | 'slanted' }
  | { verdict: 'deforms'; how: 'upright' | 'across' }
  /** It would go in, were the pack `byCm` higher. */
  | { verdict: 'too-long'; byCm: number }
  /** The section would have to measure `byCm` more around. */
  | { verdict: 'does-not-fit'; byCm: number }

export const usualClearanceCm = 1

const pieceRange = { min: 0.1, max: 500, unit: 'cm', source: 'our-judgement' } as const

export const pieceRanges = { diameterCm: pieceRange, lengthCm: pieceRange } as const
export const boxPieceRanges = { lengthCm: pieceRange, widthCm: pieceRange, depthCm: pieceRange } as const

export const packInnerRanges = {
  innerHeightCm: { min: 5, max: 250, unit: 'cm', source: 'our-judgement' },
  innerWidthCm: { min: 3, max: 150, unit: 'cm', source: 'our-judgement' },
  innerDepthCm: { min: 3, max: 150, unit: 'cm', source: 'our-judgement' },
  clearanceCm: { min: 0, max: 2.5, unit: 'cm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/**
 * How a rigid piece goes into a pack alone. Litres are another question: a pack may have enough and still not take it.
 *
 * Source: elementary-geometry for each question; our-judgement for their order and for 1 cm of clearance each way.
 * Symbols: a round piece lying goes in while (h/2a)² + (d/2b)² ≤ 1 in an ellipse of semi-axes a ≥ b; a soft body rounds
 * out while the piece’s girth is at most the section’s perimeter. Ignores: narrowing towards the bottom, a frame in the
 * way, the opening, other things, a thin piece turned corner-wise in a rectangular section.
 *
 * @example
 * fitOf({ shape: 'cylinder', diameterCm: 22, lengthCm: 30 }, { section: 'ellipse', innerHeightCm: 60, innerWidthCm: 32, innerDepthCm: 24 }) // { verdict: 'upright' }
 * fitOf({ shape: 'cylinder', diameterCm: 24, lengthCm: 30 }, { section: 'ellipse', innerHeightCm: 60, innerWidthCm: 32, innerDepthCm: 24 }) // { verdict: 'deforms', how: 'upright' }
 */
export function fitOf(piece: RigidPiece, packInner: PackInner): Outcome<Fit> {
  const refusal = firstWrong(piece, packInner)
  if (refusal) return refusal
  const { section, heightCm } = roomIn(packInner)
  return found(fitIn(posesOf(piece), section, heightCm))
}

/** The first size of the piece or the pack that is outside its range. */
export function firstWrong(piece: RigidPiece, packInner: PackInner): OutsideRange | undefined {
  const { shape: _shape, ...sides } = piece
  const wrong = 'diameterCm' in sides ? firstOutside(pieceRanges, sides) : firstOutside(boxPieceRanges, sides)
  const { innerHeightCm, innerWidthCm, innerDepthCm, clearanceCm = usualClearanceCm } = packInner
  return wrong ?? firstOutside(packInnerRanges, { innerHeightCm, innerWidthCm, innerDepthCm, clearanceCm })
}

/** What is left of the inside once the clearance is off. */
export function roomIn(packInner: PackInner): { section: Section; heightCm: number } {
  const { section: shape, innerHeightCm, innerWidthCm, innerDepthCm } = packInner
  const { clearanceCm = usualClearanceCm } = packInner
  return {
    section: { shape, widthCm: innerWidthCm - clearanceCm, depthCm: innerDepthCm - clearanceCm },
    heightCm: innerHeightCm - clearanceCm,
  }
}

function fitIn([upright, ...lying]: [Pose, ...Pose[]], section: Section, heightCm: number): Fit {
  const low = (pose: Pose) => pose.upCm <= heightCm
  if (low(upright) && takes(section, upright)) return { verdict: 'upright' }
  if (lying.some(pose => low(pose) && takes(section, pose))) return { verdict: 'only-lying', how: 'across' }
  const slantCm = longestSlanted(upright, section, heightCm)
  if (upright.upCm <= slantCm) return { verdict: 'only-lying', how: 'slanted' }

  const perimeterCm = perimeterOf(section)
  const overCm = (pose: Pose) => girthOf(pose) - perimeterCm
  if (low(upright) && overCm(upright) <= 0) return { verdict: 'deforms', how: 'upright' }
  if (lying.some(pose => low(pose) && overCm(pose) <= 0)) return { verdict: 'deforms', how: 'across' }
  if (overCm(upright) <= 0) return { verdict: 'too-long', byCm: upright.upCm - Math.max(heightCm, slantCm) }
  return { verdict: 'does-not-fit', byCm: overCm(upright) }
}
