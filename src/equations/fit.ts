// Whether one rigid piece goes into a pack, and how: upright, lying or leaning, only by rounding the pack out, or not.
// Source: elementary-geometry; the clearance and the order of the questions are our judgement.

import {
  longestInSection,
  longestStrip,
  perimeterOf,
  type Section,
  type SectionShape,
  takesCircle,
  takesRectangle,
} from './fit-section'
import { firstOutside, found, type Outcome, type Range } from './outcome'

/** A round or a box-shaped piece. A box's length is its longest side, whatever the order the sides are given in. */
export type RigidPiece =
  | { shape: 'cylinder'; diameterCm: number; lengthCm: number }
  | { shape: 'box'; lengthCm: number; widthCm: number; depthCm: number }

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

/** One way to hold a piece: what stands up, and the outline that lies in the section. */
interface Pose {
  upCm: number
  outline: { round: true; acrossCm: number } | { round: false; sideCm: number; otherCm: number }
}

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
  const { section: shape, innerHeightCm, innerWidthCm, innerDepthCm } = packInner
  const { clearanceCm = usualClearanceCm } = packInner
  const inner = { innerHeightCm, innerWidthCm, innerDepthCm, clearanceCm }
  const refusal = firstWrong(piece) ?? firstOutside(packInnerRanges, inner)
  if (refusal) return refusal
  const heightCm = innerHeightCm - clearanceCm
  const section = { shape, widthCm: innerWidthCm - clearanceCm, depthCm: innerDepthCm - clearanceCm }
  return found(fitIn(posesOf(piece), section, heightCm))
}

function firstWrong(piece: RigidPiece) {
  const { shape: _shape, ...sides } = piece
  return 'diameterCm' in sides ? firstOutside(pieceRanges, sides) : firstOutside(boxPieceRanges, sides)
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

/** The ways to hold a piece, the longest side up first. */
function posesOf(piece: RigidPiece): [Pose, ...Pose[]] {
  if (piece.shape === 'cylinder') {
    const { diameterCm, lengthCm } = piece
    const lying = { round: false as const, sideCm: lengthCm, otherCm: diameterCm }
    return [
      { upCm: lengthCm, outline: { round: true, acrossCm: diameterCm } },
      { upCm: diameterCm, outline: lying },
    ]
  }
  const sides = [piece.lengthCm, piece.widthCm, piece.depthCm].sort((a, b) => b - a)
  const [long, middle, short] = sides as [number, number, number]
  const pose = (upCm: number, sideCm: number, otherCm: number): Pose => ({
    upCm,
    outline: { round: false, sideCm, otherCm },
  })
  return [pose(long, middle, short), pose(middle, long, short), pose(short, long, middle)]
}

const takes = (section: Section, { outline }: Pose): boolean =>
  outline.round
    ? takesCircle(section, outline.acrossCm)
    : takesRectangle(section, outline.sideCm, outline.otherCm)

const girthOf = ({ outline }: Pose): number =>
  outline.round ? Math.PI * outline.acrossCm : 2 * (outline.sideCm + outline.otherCm)

/**
 * Longest piece of this thickness that goes in leaning: it stays within an upright slab of the section, as thick as
 * itself, and leans in that. A piece may go in that this leaves out, by its rounded ends; none that it takes does not.
 */
function longestSlanted({ outline }: Pose, section: Section, heightCm: number): number {
  const [first, second] = outline.round
    ? [outline.acrossCm, outline.acrossCm]
    : [outline.sideCm, outline.otherCm]
  const within = (slabCm: number, thickCm: number) =>
    longestStrip(longestInSection(section, slabCm), heightCm, thickCm)
  return Math.max(within(first, second), within(second, first))
}
