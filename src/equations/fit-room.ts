// The numbers that decide how a rigid piece goes into a pack: what it measures, and the most of that there is room for.
// Source: elementary-geometry (keys of data/sources.json); the clearance is our judgement.

import { firstWrong, type PackInner, roomIn } from './fit'
import { girthOf, longestSlanted, posesOf, type RigidPiece } from './fit-poses'
import { perimeterOf, sideRoom } from './fit-section'
import { found, type Outcome } from './outcome'

export interface FitRoom {
  /** What stands up when the piece stands, and the height there is for it. */
  longCm: number
  heightCm: number
  /** Of the end it stands on: the diameter, or the longer side beside the shorter; and the most the section takes. */
  endCm: number
  endRoomCm: number
  /** The longest that lies across, and the longest that goes in leaning, as thick as the piece is; 0 where none does. */
  lyingRoomCm: number
  slantRoomCm: number
  /** Around the piece where it stands, and around the section. */
  girthCm: number
  roundCm: number
}

/**
 * What decides how a rigid piece goes into a pack: it stands while its length and its end are within their room, lies
 * while its length is within `lyingRoomCm`, leans while within `slantRoomCm`, and rounds the pack out while its girth is
 * within `roundCm`.
 *
 * Source: elementary-geometry, the rules of `fitOf` solved for the size that decides; our-judgement for 1 cm of clearance.
 * Symbols: beside a side s an ellipse of semi-axes a ≥ b takes 2a √(1 − (s/2b)²). Ignores: what `fitOf` does.
 *
 * @example
 * fitRoom({ shape: 'cylinder', diameterCm: 22, lengthCm: 30 }, { section: 'ellipse', innerHeightCm: 60, innerWidthCm: 32, innerDepthCm: 24, clearanceCm: 0 }) // { longCm: 30, heightCm: 60, endCm: 22, endRoomCm: 24, lyingRoomCm: 17.42843, slantRoomCm: 0, girthCm: 69.11504, roundCm: 88.41397 }
 */
export function fitRoom(piece: RigidPiece, packInner: PackInner): Outcome<FitRoom> {
  const refusal = firstWrong(piece, packInner)
  if (refusal) return refusal
  const { section, heightCm } = roomIn(packInner)
  const [standing, ...lying] = posesOf(piece)
  const { outline } = standing
  const least = Math.min(section.widthCm, section.depthCm)
  return found({
    longCm: standing.upCm,
    heightCm,
    endCm: outline.round ? outline.acrossCm : outline.sideCm,
    endRoomCm: outline.round ? least : sideRoom(section, outline.otherCm),
    lyingRoomCm: Math.max(
      ...lying.map(pose =>
        pose.upCm <= heightCm && !pose.outline.round ? sideRoom(section, pose.outline.otherCm) : 0,
      ),
    ),
    slantRoomCm: longestSlanted(standing, section, heightCm),
    girthCm: girthOf(standing),
    roundCm: perimeterOf(section),
  })
}
