// A pack apart from any trip: what it gives for its mass and price, and whether, filled to the brim with gear as heavy as
// usual, it would be more than it can carry.

import type { Pack, Settings, Setup } from '../plan/types'
import { type Ratios, ratiosOf } from './ratios'
import { loadLimit } from './verdicts'

export interface ApartFigures extends Ratios {
  /** Main body and pockets, L; null where the pockets are not known. */
  totalLitres: number | null
  gramsPerTotalLitre: number | null
  pricePerRatedKg: number | null
  /** The load of a full main body, with the set-up's own mass where its rating covers it, kg. */
  brimLoadKg: number
  /** The rating, for a frameless set-up no more than the ceiling; null where nothing says, kg. */
  brimLimitKg: number | null
  /** Null: no limit is known. */
  outgrows: boolean | null
}

/** The figures of one set-up of a pack; what is not known leaves a figure null. Pure. */
export function apartFigures(
  pack: Pack,
  setup: Setup,
  { brimKgPerLitre, framelessCeilingKg }: Pick<Settings, 'brimKgPerLitre' | 'framelessCeilingKg'>,
): ApartFigures {
  const { bodyLitres, price } = pack
  const { massKg, ratedKg, ratingCovers } = setup
  const totalLitres = totalLitresOf(pack)
  const brimLoadKg = bodyLitres * brimKgPerLitre + (ratingCovers === 'contents' ? 0 : massKg)
  const brimLimitKg = loadLimit(setup, framelessCeilingKg)
  // Field by field, as in a list of a thousand packs spreading costs more than all the rest.
  const { gramsPerLitre, gramsPerRatedKg, pricePerLitre } = ratiosOf(pack, setup)
  return {
    gramsPerLitre,
    gramsPerRatedKg,
    pricePerLitre,
    totalLitres,
    gramsPerTotalLitre: totalLitres === null ? null : (1000 * massKg) / totalLitres,
    pricePerRatedKg: price === null || ratedKg === null ? null : price / ratedKg,
    brimLoadKg,
    brimLimitKg,
    outgrows: brimLimitKg === null ? null : brimLoadKg > brimLimitKg,
  }
}

const totalLitresOf = ({ bodyLitres, outsideLitres }: Pack): number | null =>
  outsideLitres === null ? null : bodyLitres + outsideLitres

/** What a figure of one's own may be put together from. */
export const MEASURE_PARTS = ['massG', 'bodyLitres', 'totalLitres', 'ratedKg', 'denier', 'price'] as const
export type MeasurePart = (typeof MEASURE_PARTS)[number]

/** The power of each part that is in it, whole, from -2 to 2. */
export type Measure = Partial<Readonly<Record<MeasurePart, number>>>
export const MOST_POWER = 2

/** The hiker's own figure of a set-up: its parts, each to its power, multiplied; null where one is not known. */
export function measureOf(measure: Measure, pack: Pack, setup: Setup): number | null {
  const parts: Record<MeasurePart, number | null> = {
    massG: 1000 * setup.massKg,
    bodyLitres: pack.bodyLitres,
    totalLitres: totalLitresOf(pack),
    ratedKg: setup.ratedKg,
    denier: pack.denier,
    price: pack.price,
  }
  let product = 1
  for (const part of MEASURE_PARTS) {
    const power = measure[part] ?? 0
    if (power === 0) continue
    const value = parts[part]
    // A pack that costs nothing has no price to divide by.
    if (value === null || (value === 0 && power < 0)) return null
    product *= value ** power
  }
  return product
}
