// The ration really eaten, taken on: the food of the trip, whose copies then have it, and the things on the shelf that it
// was packed from. Pure.

import type { Draft } from '../draft'
import { setItemField } from '../set-field'
import type { FoodPlanned } from '../trip-log'
import { setThingFact } from './fact'
import type { Shelf, Thing, ThingFacts } from './types'

const rounded = (amount: number, digits: number) => Number(amount.toFixed(digits))

/** The facts that a day's food has more, or less, of: to the gram, and to the centilitre. Litres that follow the mass do so. */
function scaled(item: ThingFacts, factor: number): [string, unknown][] {
  const { massKg, litres, litresRange: range, litresPerKg } = item
  const facts: Partial<ThingFacts> = {
    ...(massKg !== undefined && { massKg: rounded(massKg * factor, 3) }),
    ...(litres !== undefined && { litres: rounded(litres * factor, 2) }),
    ...(range &&
      !litresPerKg && {
        litresRange: {
          low: rounded(range.low * factor, 2),
          typical: rounded(range.typical * factor, 2),
          high: rounded(range.high * factor, 2),
        },
      }),
  }
  return Object.entries(facts)
}

const foodOf = ({ gear }: Draft) => gear.filter(({ use, atHome }) => use === 'daily' && !atHome)

/** The things on the shelf that the food of the trip was packed from, as far as they are there. */
export function foodThings(draft: Draft, shelf: Pick<Shelf, 'things'>): Thing[] {
  const things = new Set(foodOf(draft).flatMap(item => item.shelf?.id ?? []))
  return shelf.things.filter(({ id }) => things.has(id))
}

/** `planned`: the food of the plan as it was, by which a later correction of what was left over is told. */
export function withOwnRation(
  { draft, shelf }: { draft: Draft; shelf: Shelf },
  { listedKg, ownKg, planned, now }: { listedKg: number; ownKg: number; planned: FoodPlanned; now: number },
): { draft: Draft; shelf: Shelf } {
  const factor = ownKg / listedKg
  const ids = new Set(foodOf(draft).map(({ id }) => id))
  const gear = draft.gear.map(item =>
    ids.has(item.id)
      ? scaled(item, factor).reduce((made, [field, value]) => setItemField(made, field, value), item)
      : item,
  )
  const next = foodThings(draft, shelf).reduce(
    (made, { id, item }) =>
      scaled(item, factor).reduce((at, [field, value]) => setThingFact(at, id, { field, value, now }), made),
    shelf,
  )
  const log = { ...draft.log, rationKg: ownKg, foodPlanned: planned }
  return { draft: { ...draft, gear, log }, shelf: next }
}
