// A day's food from its parts: kilograms, kilocalories and litres, and the daily item that stands for it.
// V = packing × Σ m/ρ. The packing factor for soft bags is a judgement of ours; densities are those of the table.

import type { Draft } from '../draft'
import { addItem } from '../edits'
import { LIMITS } from '../fields'
import { changeItem, withLitres } from '../litres'
import type { Food } from './table'

/** How much more room bagged food takes than its parts in a cup: soft bags, our judgement. */
export const FOOD_PACKING = 1.15

export interface Portion {
  food: Food
  massKg: number
}

export interface DaysFood {
  massKg: number
  kcal: number
  litres: number
  kcalPerKg: number
}

/** The sum of the portions; null where they weigh nothing. */
export function daysFood(portions: readonly Portion[]): DaysFood | null {
  const sum = (of: (portion: Portion) => number) =>
    portions.reduce((total, portion) => total + of(portion), 0)
  const massKg = sum(portion => portion.massKg)
  if (massKg <= 0) return null
  const kcal = sum(({ food, massKg }) => food.kcalPer100G * 10 * massKg)
  const litres = FOOD_PACKING * sum(({ food, massKg }) => massKg / food.kgPerLitre)
  return { massKg, kcal, litres, kcalPerKg: kcal / massKg }
}

/** The draft with this as a daily item: a new one at the end, or in place of the amounts of `into`. */
export function putDaysFood(
  draft: Draft,
  day: DaysFood,
  { into, newId }: { into?: string; newId: () => string },
): Draft {
  const amounts = {
    massKg: Number(day.massKg.toFixed(4)),
    massFrom: 'stated',
    kcalPerKg: Math.min(Math.round(day.kcalPerKg), LIMITS.item.kcalPerKg.max),
  } as const
  if (into !== undefined)
    return changeItem(draft, into, item => ({ ...withLitres(item, day.litres, 'guess'), ...amounts }))
  const { id: _id, ...item } = withLitres(
    { id: '', name: 'Food for a day', group: 'Food', use: 'daily' },
    day.litres,
    'guess',
  )
  return addItem(draft, newId, { with: { ...item, ...amounts } })
}
