// What a pack gives for its mass and its price, apart from any trip.

import type { Pack, Setup } from '../plan/types'

export interface Ratios {
  gramsPerLitre: number
  /** Null where no rating is known. */
  gramsPerRatedKg: number | null
  /** Null where no price is known. */
  pricePerLitre: number | null
}

/** By the main body alone, which is what fits the gear. */
export const ratiosOf = (
  { bodyLitres, price }: Pick<Pack, 'bodyLitres' | 'price'>,
  { massKg, ratedKg }: Pick<Setup, 'massKg' | 'ratedKg'>,
): Ratios => ({
  gramsPerLitre: (1000 * massKg) / bodyLitres,
  gramsPerRatedKg: ratedKg === null ? null : (1000 * massKg) / ratedKg,
  pricePerLitre: price === null ? null : price / bodyLitres,
})
