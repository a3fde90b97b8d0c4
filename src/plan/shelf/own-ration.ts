// The ration really eaten, taken on: the food of the trip, whose copies then have it, and the things on the shelf that it
// was packed from. Pure.

import type { Draft, DraftItem } from '../draft'
import { setField } from '../field-path'
import { setThingFact } from './fact'
import type { Shelf, ThingFacts } from './types'

const rounded = (amount: number, digits: number) => Number(amount.toFixed(digits))

/** The facts that a day's food has more, or less, of: to the gram, and to the centilitre. */
function scaled(item: ThingFacts | DraftItem, factor: number): Partial<ThingFacts> {
  const { massKg, litres, litresRange: range } = item
  return {
    ...(massKg !== undefined && { massKg: rounded(massKg * factor, 3) }),
    ...(litres !== undefined && { litres: rounded(litres * factor, 2) }),
    ...(range && {
      litresRange: {
        low: rounded(range.low * factor, 2),
        typical: rounded(range.typical * factor, 2),
        high: rounded(range.high * factor, 2),
      },
    }),
  }
}

/** `rationKg`: what a day then comes to, which is noted of the trip. */
export function withOwnRation(
  { draft, shelf }: { draft: Draft; shelf: Shelf },
  { factor, rationKg, now }: { factor: number; rationKg: number; now: number },
): { draft: Draft; shelf: Shelf } {
  const food = draft.gear.filter(({ use, atHome }) => use === 'daily' && !atHome)
  const ids = new Set(food.map(({ id }) => id))
  const gear = draft.gear.map(item => (ids.has(item.id) ? { ...item, ...scaled(item, factor) } : item))
  const things = new Set(food.flatMap(item => item.shelf?.id ?? []))
  const changed = shelf.things.filter(({ id }) => things.has(id))
  const next = changed.reduce(
    (made, { id, item }) =>
      Object.entries(scaled(item, factor)).reduce(
        (at, [field, value]) => setThingFact(at, id, { field, value, now }),
        made,
      ),
    shelf,
  )
  return { draft: setField({ ...draft, gear }, 'log/rationKg', rationKg), shelf: next }
}
