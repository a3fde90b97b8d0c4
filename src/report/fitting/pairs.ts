// Two round things in one pack: side by side, one above the other, or not both at once. Source: fit-rounds.ts of the
// equations; from which width two are a question is our judgement.

import { fitRoom, type PackInner, pairStands, type RigidPiece, usualClearanceCm } from '../../equations'
import type { Item } from '../../plan'

export interface Pair {
  /** The same thing twice where there are several of it. */
  items: [Item, Item]
  how: 'side-by-side' | 'stacked' | 'not-both'
  /** Less than the clearance is left. */
  snug: boolean
}

interface Held {
  item: Item
  piece: RigidPiece
  way: string
}

type Round = Held & { piece: Extract<RigidPiece, { shape: 'cylinder' }> }

/** Thinner than this share of the pack, two of a thing are no question. */
const THIN = 1 / 3

/** Several of one thing; and the two widest things where both stand alone and not together. */
export function pairsOf(fitted: readonly Held[], inner: PackInner): Pair[] {
  const thinCm = THIN * Math.min(inner.innerWidthCm, inner.innerDepthCm)
  const rounds = fitted
    .filter(isRound)
    .filter(({ item, way, piece }) => way === 'upright' && item.inside === null && piece.diameterCm > thinCm)
    .sort((a, b) => b.piece.diameterCm - a.piece.diameterCm)
  const several = rounds.filter(({ item }) => item.count > 1).map(one => pairIn(one, one, inner))
  const [first, second] = rounds
  const widest = first && second ? pairIn(first, second, inner) : null
  return widest?.how === 'not-both' ? [...several, widest] : several
}

const isRound = (held: Held): held is Round => held.piece.shape === 'cylinder'

/** Held with the clearance first, then without it, each way: nothing is said against what goes in. */
function pairIn(one: Round, other: Round, inner: PackInner): Pair {
  const items: Pair['items'] = [one.item, other.item]
  const close = { ...inner, clearanceCm: 0 }
  if (besides(one, other, inner)) return { items, how: 'side-by-side', snug: false }
  if (besides(one, other, close)) return { items, how: 'side-by-side', snug: true }
  if (stacks(one, other, inner)) return { items, how: 'stacked', snug: false }
  if (stacks(one, other, close)) return { items, how: 'stacked', snug: true }
  return { items, how: 'not-both', snug: false }
}

function besides(one: Round, other: Round, inner: PackInner): boolean {
  const stands = pairStands({ ...inner, oneCm: one.piece.diameterCm, otherCm: other.piece.diameterCm })
  return stands.ok && stands.value
}

function stacks(one: Round, other: Round, inner: PackInner): boolean {
  const together = (a: Round, b: Round) => a.piece.lengthCm + lowest(b, inner)
  const { innerHeightCm, clearanceCm = usualClearanceCm } = inner
  return Math.min(together(one, other), together(other, one)) <= innerHeightCm - clearanceCm
}

/** The height it takes held as low as it goes: lying, where the section takes its length. */
function lowest({ piece }: Round, inner: PackInner): number {
  const room = fitRoom(piece, inner)
  const lies = room.ok && piece.lengthCm <= room.value.lyingRoomCm
  return lies ? Math.min(piece.lengthCm, piece.diameterCm) : piece.lengthCm
}
