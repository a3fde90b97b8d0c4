// The shipped table of foods: density and energy, with where each row comes from.
// Sources: data/foods.json names them; USDA rows are published and in the public domain, the rest are estimates of ours.

import table from '../../../data/foods.json'

export interface Food {
  id: string
  name: string
  /** As it lies in a cup or a bag. */
  kgPerLitre: number
  kcalPer100G: number
  source: 'usda' | 'ours'
}

type Row = Omit<Food, 'kgPerLitre' | 'source'> & { kgPerLitre: number | null; source: string }

const rows = table.foods as Row[]

/** The foods whose density is known; energy alone gives no litres. */
export const foods: readonly Food[] = rows.filter((row): row is Food => row.kgPerLitre !== null)

/** How many rows are left out for want of a density. */
export const withoutDensity = rows.length - foods.length

export const foodWithId = (id: string): Food | undefined => foods.find(food => food.id === id)
