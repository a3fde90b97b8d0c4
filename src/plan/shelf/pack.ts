// From the shelf into a trip, and from a trip onto the shelf. An item packed from a thing keeps a link to it. Pure.

import type { Draft, DraftItem, ShelfLink } from '../draft'
import { factsOf, stamps } from './things'
import type { BaseLine, Outside, Shelf, Thing } from './types'

/**
 * The draft with an item for each thing, at the end of its gear. `uses` says for some how many, where, and inside what
 * (another of the things, or one that the trip has packed before).
 */
export function packThings(
  draft: Draft,
  things: readonly Thing[],
  { newId, now, uses = [] }: Outside & { uses?: readonly BaseLine[] },
): Draft {
  if (things.length === 0) return draft
  const useOf = new Map(uses.map(use => [use.thing, use]))
  const itemOf = new Map(draft.gear.flatMap(({ id, shelf }) => (shelf ? [[shelf.id, id] as const] : [])))
  const ids = things.map(({ id }) => {
    const item = newId()
    itemOf.set(id, item)
    return item
  })
  const items = things.map((thing, i): DraftItem => {
    const { count, stow, inside, atHome } = useOf.get(thing.id) ?? {}
    const container = inside === thing.id ? undefined : itemOf.get(inside ?? '')
    return {
      ...thing.item,
      ...(count !== undefined && { count }),
      ...(stow && { stow }),
      ...(container && { inside: container }),
      ...(atHome && { atHome }),
      id: ids[i]!,
      shelf: { id: thing.id, at: now },
    }
  })
  return { ...draft, gear: [...draft.gear, ...items] }
}

/**
 * The shelf with a thing for each item that is not linked to one of its things yet, and the links for those items, by
 * the item's id: to be put into the trip with `linkItems`.
 */
export function shelveItems(
  shelf: Shelf,
  items: readonly DraftItem[],
  { newId, now }: Outside,
): { shelf: Shelf; links: ReadonlyMap<string, ShelfLink> } {
  const known = new Set(shelf.things.map(({ id }) => id))
  const links = new Map<string, ShelfLink>()
  const made: Thing[] = []
  for (const item of items) {
    if (item.shelf && known.has(item.shelf.id)) continue
    const facts = factsOf(item)
    const thing: Thing = { id: newId(), item: facts, changed: stamps(facts, now) }
    made.push(thing)
    links.set(item.id, { id: thing.id, at: now })
  }
  return { shelf: made.length ? { ...shelf, things: [...shelf.things, ...made] } : shelf, links }
}

export function linkItems(draft: Draft, links: ReadonlyMap<string, ShelfLink>): Draft {
  if (links.size === 0) return draft
  const gear = draft.gear.map(item => {
    const link = links.get(item.id)
    return link ? { ...item, shelf: link } : item
  })
  return { ...draft, gear }
}
