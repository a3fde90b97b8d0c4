// What the place of the load in the pack does: the moment about the hips, and the lean that balances it.
// Sources: static balance; winter-2009 (shares of the body, from memory). Studies disagree on height: see the notes.

import { firstOutside, found, type Outcome, outside, type Range } from './outcome'

const g = 9.80665

/** Mass of the upper body as a share of the body’s, and height of its centre above the hips as a share of stature. */
export const upperBody = { massShare: 0.678, heightShare: 0.626 * 0.288, source: 'winter-2009' } as const

export const loadRanges = {
  massKg: { min: 0.001, max: 200, unit: 'kg', source: 'our-judgement' },
  behindM: { min: -0.5, max: 1, unit: 'm', source: 'our-judgement' },
  aboveM: { min: -0.5, max: 1.5, unit: 'm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

export const leanRanges = {
  bodyKg: { min: 10, max: 300, unit: 'kg', source: 'our-judgement' },
  heightCm: { min: 50, max: 250, unit: 'cm', source: 'our-judgement' },
  packKg: { min: 0, max: 200, unit: 'kg', source: 'our-judgement' },
  behindM: { min: 0, max: 1, unit: 'm', source: 'our-judgement' },
  aboveM: { min: 0, max: 1.5, unit: 'm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

const tiltRange = { leanDeg: { min: 0, max: 60, unit: '°', source: 'our-judgement' } } as const
const manyPieces = { min: 1, max: 100_000, unit: 'pieces' }

/** A part of the load: its mass, how far behind the hip axis it rides, and how far above. */
export interface LoadPiece {
  massKg: number
  behindM: number
  aboveM: number
}

function firstPieceOutside(pieces: readonly LoadPiece[]) {
  if (pieces.length === 0) return outside('pieces', manyPieces, 0)
  for (const piece of pieces) {
    const refusal = firstOutside(loadRanges, piece)
    if (refusal) return refusal
  }
  return undefined
}

/**
 * Mass and centre of several parts of a load; 1 part or more.
 *
 * Source: static-balance. Symbols: m, x, z = massKg, behindM, aboveM of each part. Ignores: sideways offset.
 *
 * @example
 * loadCentre({ pieces: [{ massKg: 3, behindM: 0.1, aboveM: 0.35 }, { massKg: 2, behindM: 0.22, aboveM: 0.45 }, { massKg: 5, behindM: 0.15, aboveM: 0.1 }] }) // { massKg: 10, behindM: 0.149, aboveM: 0.245 }
 */
export function loadCentre({ pieces }: { pieces: readonly LoadPiece[] }): Outcome<LoadPiece> {
  const refusal = firstPieceOutside(pieces)
  if (refusal) return refusal
  const sum = (of: (piece: LoadPiece) => number) => pieces.reduce((total, piece) => total + of(piece), 0)
  const massKg = sum(piece => piece.massKg)
  return found({
    massKg,
    behindM: sum(piece => piece.massKg * piece.behindM) / massKg,
    aboveM: sum(piece => piece.massKg * piece.aboveM) / massKg,
  })
}

/**
 * Moment of the load about the hip axis in N·m, backwards positive, with the trunk leaning forward by `leanDeg`.
 *
 * Source: static-balance: M = g Σ m (x cos θ − z sin θ). Symbols: m, x, z = massKg, behindM, aboveM; θ = leanDeg.
 * Ignores: walking, the body’s own moment, what a hip belt takes elsewhere.
 *
 * @example
 * hipMomentNm({ pieces: [{ massKg: 3, behindM: 0.1, aboveM: 0.35 }, { massKg: 2, behindM: 0.22, aboveM: 0.45 }, { massKg: 5, behindM: 0.15, aboveM: 0.1 }], leanDeg: 10 }) // 10.2178
 */
export function hipMomentNm(load: { pieces: readonly LoadPiece[]; leanDeg: number }): Outcome<number> {
  const centre = loadCentre(load)
  if (!centre.ok) return centre
  const refusal = firstOutside(tiltRange, { leanDeg: load.leanDeg })
  if (refusal) return refusal
  const { massKg, behindM, aboveM } = centre.value
  const lean = (load.leanDeg * Math.PI) / 180
  return found(g * massKg * (behindM * Math.cos(lean) - aboveM * Math.sin(lean)))
}

/**
 * Forward lean of the trunk in degrees at which the load and the upper body balance over the hips.
 *
 * Source: static-balance: tan θ = m x / (mu hu + m z); winter-2009 (from memory) for mu = 0.678 of the body’s mass and
 * hu = 0.626 × 0.288 of stature. Symbols: m = packKg, x = behindM, z = aboveM of its centre. Ignores: walking, muscle,
 * slope. Advice, not a verdict: stuempfle-2004 and johnson-2000 disagree on whether height matters.
 *
 * @example
 * balancingLeanDeg({ bodyKg: 75, heightCm: 175, packKg: 15, behindM: 0.18, aboveM: 0.3 }) // 7.487424
 */
export function balancingLeanDeg(load: {
  bodyKg: number
  heightCm: number
  packKg: number
  behindM: number
  aboveM: number
}): Outcome<number> {
  const refusal = firstOutside(leanRanges, load)
  if (refusal) return refusal
  const { bodyKg, heightCm, packKg, behindM, aboveM } = load
  const upright = (upperBody.massShare * bodyKg * upperBody.heightShare * heightCm) / 100 + packKg * aboveM
  return found((Math.atan((packKg * behindM) / upright) * 180) / Math.PI)
}
