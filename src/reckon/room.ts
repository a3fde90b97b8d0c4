// How many main-body litres a heap of rigid and soft things takes: the two-class packing model of
// Stovall, de Larrard and Buil, Powder Technol. 48 (1986) 1–12, written in litres. Fill efficiency 1 is
// Furnas' perfect filling (Ind. Eng. Chem. 23 (1931) 1052–1058), 0 no filling at all.

export interface Packing {
  rigidPacking: number
  softPacking: number
  fillEfficiency: number
  personalFactor: number
}

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
export function packingTerms({ rigidPacking, softPacking, fillEfficiency, personalFactor }: Packing) {
  const unfilled = 1 - fillEfficiency
  const skeleton: Term = {
    perRigidLitre: personalFactor / rigidPacking,
    perSoftLitre: (personalFactor * unfilled) / softPacking,
  }
  const softBulk: Term = {
    perRigidLitre: personalFactor * (1 + unfilled * (1 / rigidPacking - 1)),
    perSoftLitre: personalFactor / softPacking,
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
  { personalFactor, softPacking }: Pick<Packing, 'personalFactor' | 'softPacking'>,
): number {
  if (pocketLitres === null) return 0
  return (personalFactor * Math.max(0, neededLitres - pocketLitres)) / softPacking
}

/** The same heap with perfect filling and with none: the range the model itself leaves open. */
export function roomRange(
  rigidLitres: number,
  softLitres: number,
  packing: Packing,
): { low: number; high: number } {
  const at = (fillEfficiency: number) =>
    roomFor(rigidLitres, softLitres, { ...packing, fillEfficiency }).bodyLitres
  return { low: at(1), high: at(0) }
}
