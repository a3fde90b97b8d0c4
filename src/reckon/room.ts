// How many main-body litres a heap of rigid and soft things takes: the two-class packing model of
// Stovall, de Larrard and Buil, Powder Technol. 48 (1986) 1–12, written in litres. Filling 1 is
// Furnas' perfect filling (Ind. Eng. Chem. 23 (1931) 1052–1058), 0 no filling at all.

import type { Settings } from '../plan/types'

export interface Packing {
  rigidPacking: number
  softPacking: number
  /** How well soft things fill the gaps between rigid ones, 0 to 1: e of the model. */
  filling: number
  /** What the hiker's own packing takes, times the model's: F. */
  factor: number
}

/** The packing model with a plan's settings; `factor` is that of its Reckoning (`need.factor`). */
export const packingOf = (
  { rigidPacking, softPacking, fillEfficiency }: Settings,
  factor: number,
): Packing => ({ rigidPacking, softPacking, filling: meanFilling(fillEfficiency), factor })

/** The setting is the likeliest filling; nothing and everything are as possible, so that the mean of the three counts. */
export const meanFilling = (fillEfficiency: number): number => (1 + fillEfficiency) / 3

/** Main-body litres per litre of rigid and of soft things, where one term of the model rules. */
export interface Term {
  perRigidLitre: number
  perSoftLitre: number
}

export interface Room extends Term {
  bodyLitres: number
  /** Which term rules: rigid pieces form a skeleton, or soft bulk surrounds them. */
  rules: 'skeleton' | 'soft-bulk'
}

/** The two terms of the model; the one that asks for more litres rules. */
export function packingTerms({ rigidPacking, softPacking, filling, factor }: Packing) {
  const unfilled = 1 - filling
  const skeleton: Term = {
    perRigidLitre: factor / rigidPacking,
    perSoftLitre: (factor * unfilled) / softPacking,
  }
  const softBulk: Term = {
    perRigidLitre: factor * (1 + unfilled * (1 / rigidPacking - 1)),
    perSoftLitre: factor / softPacking,
  }
  return { skeleton, softBulk }
}

/** Main-body litres for `rigidLitres` and `softLitres` of things (each ≥ 0), with the slopes of the ruling term. */
export function roomFor(rigidLitres: number, softLitres: number, packing: Packing): Room {
  const { skeleton, softBulk } = packingTerms(packing)
  const litres = (term: Term) => rigidLitres * term.perRigidLitre + softLitres * term.perSoftLitre
  const skeletonLitres = litres(skeleton)
  const softBulkLitres = litres(softBulk)
  return skeletonLitres > softBulkLitres
    ? { bodyLitres: skeletonLitres, rules: 'skeleton', ...skeleton }
    : { bodyLitres: softBulkLitres, rules: 'soft-bulk', ...softBulk }
}

/**
 * Main-body litres of what the pockets cannot take: it rides inside as soft things. 0 where nobody says what the
 * pockets hold.
 */
export function spillLitres(
  neededLitres: number,
  pocketLitres: number | null,
  { factor, softPacking }: Pick<Packing, 'factor' | 'softPacking'>,
): number {
  if (pocketLitres === null) return 0
  return (factor * Math.max(0, neededLitres - pocketLitres)) / softPacking
}

/** The same heap with perfect filling and with none: the range the model itself leaves open. */
export function roomRange(
  rigidLitres: number,
  softLitres: number,
  packing: Packing,
): { low: number; high: number } {
  const at = (filling: number) => roomFor(rigidLitres, softLitres, { ...packing, filling }).bodyLitres
  return { low: at(1), high: at(0) }
}
