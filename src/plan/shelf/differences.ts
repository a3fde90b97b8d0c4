// What is otherwise in a trip than on the shelf, and the two ways to make it one again. Pure.

import type { Draft, DraftItem } from '../draft'
import { type OfferedField, takeOffer } from './offers'
import { same } from './same'
import { factsOf, setThings } from './things'
import type { Shelf, Thing, ThingFacts } from './types'

/** The facts of an item that are not those of its thing: `from` in the trip, `to` on the shelf. */
export function differences(item: DraftItem, thing: Thing): OfferedField[] {
  const here = factsOf(item)
  const fields = new Set([...Object.keys(here), ...Object.keys(thing.item)]) as Set<keyof ThingFacts>
  return [...fields].flatMap(field => {
    const [from, to] = [here[field], thing.item[field]]
    return same(from, to) ? [] : [{ field, from, to }]
  })
}

/** The draft with an item made as its thing is. */
export const asOnShelf = (draft: Draft, item: DraftItem, thing: Thing, now: number): Draft =>
  takeOffer(draft, { itemId: item.id, thing, fields: differences(item, thing) }, now)

/** Both with a thing made as its item in the trip is; trips that use it are offered the change. `now`: ms since 1970. */
export function asInTrip(
  { draft, shelf }: { draft: Draft; shelf: Shelf },
  { item, thing, now }: { item: DraftItem; thing: Thing; now: number },
): { draft: Draft; shelf: Shelf } {
  const facts = Object.fromEntries(differences(item, thing).map(({ field, from }) => [field, from]))
  return {
    shelf: setThings(shelf, [thing.id], { item: facts }, now),
    draft: takeOffer(draft, { itemId: item.id, thing, fields: [] }, now),
  }
}
