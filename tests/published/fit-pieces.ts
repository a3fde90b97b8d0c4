// What the checks of fit share: a pack of 32 × 24 × 60 cm without clearance, oval or square, and a round piece.

import { type Fit, fitOf, type PackInner, type RigidPiece } from '../../src/equations'
import { value } from './cases'

export const oval = (more: Partial<PackInner> = {}): PackInner => ({
  section: 'ellipse',
  innerHeightCm: 60,
  innerWidthCm: 32,
  innerDepthCm: 24,
  clearanceCm: 0,
  ...more,
})
export const boxy = (more: Partial<PackInner> = {}): PackInner => oval({ section: 'rectangle', ...more })
export const can = (diameterCm: number, lengthCm: number): RigidPiece => ({
  shape: 'cylinder',
  diameterCm,
  lengthCm,
})
export const fit = (piece: RigidPiece, inner: PackInner): Fit => value(fitOf(piece, inner))
