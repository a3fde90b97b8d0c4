// The ways to hold a rigid piece, and what each asks of a pack's section. Lengths in cm, all positive.
// Source: elementary-geometry (keys of data/sources.json).

import { longestInSection, longestStrip, type Section, takesCircle, takesRectangle } from './fit-section'

/** A round or a box-shaped piece. A box's length is its longest side, whatever the order the sides are given in. */
export type RigidPiece =
  | { shape: 'cylinder'; diameterCm: number; lengthCm: number }
  | { shape: 'box'; lengthCm: number; widthCm: number; depthCm: number }

/** One way to hold a piece: what stands up, and the outline that lies in the section. */
export interface Pose {
  upCm: number
  outline: { round: true; acrossCm: number } | { round: false; sideCm: number; otherCm: number }
}

/** The ways to hold a piece, the longest side up first. */
export function posesOf(piece: RigidPiece): [Pose, ...Pose[]] {
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

export const takes = (section: Section, { outline }: Pose): boolean =>
  outline.round
    ? takesCircle(section, outline.acrossCm)
    : takesRectangle(section, outline.sideCm, outline.otherCm)

export const girthOf = ({ outline }: Pose): number =>
  outline.round ? Math.PI * outline.acrossCm : 2 * (outline.sideCm + outline.otherCm)

/**
 * Longest piece of this thickness that goes in leaning: it stays within an upright slab of the section, as thick as
 * itself, and leans in that. A piece may go in that this leaves out, by its rounded ends; none that it takes does not.
 */
export function longestSlanted({ outline }: Pose, section: Section, heightCm: number): number {
  const [first, second] = outline.round
    ? [outline.acrossCm, outline.acrossCm]
    : [outline.sideCm, outline.otherCm]
  const within = (slabCm: number, thickCm: number) =>
    longestStrip(longestInSection(section, slabCm), heightCm, thickCm)
  return Math.max(within(first, second), within(second, first))
}
