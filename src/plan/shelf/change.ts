// A thing edited as an item is, and items of a trip put on the shelf all at once. Pure.

import type { Draft, DraftItem, ShelfLink } from '../draft'
import { fieldAt } from '../field-path'
import { thingPath } from './fact'
import { linkItems, shelveItems } from './pack'
import { factsOf, setThings } from './things'
import type { Outside, Shelf, ThingFacts } from './types'

/**
 * A thing with its item changed; the facts that become others are noted with their time. Unread text goes where a value
 * has taken its place.
 */
export function changeThing(
  shelf: Shelf,
  id: string,
  { change, now }: { change: (item: DraftItem) => DraftItem; now: number },
): Shelf {
  const thing = shelf.things.find(other => other.id === id)
  if (!thing) return shelf
  const facts = factsOf(change({ ...thing.item, id }))
  const gone = Object.keys(thing.item).map(fact => [fact, undefined] as const)
  const item = { ...Object.fromEntries(gone), ...facts }
  const next = setThings(shelf, [id], { item }, now)
  const start = thingPath(id, '')
  const typed = Object.entries(shelf.typed).filter(
    ([path]) => !path.startsWith(start) || fieldAt(facts, path.slice(start.length)) === undefined,
  )
  return typed.length === Object.keys(shelf.typed).length
    ? next
    : { ...next, typed: Object.fromEntries(typed) }
}

const nameKey = (item: Pick<ThingFacts, 'name'>): string => item.name?.trim().toLowerCase() ?? ''

/**
 * Both with every given item of the trip on the shelf: linked to a thing of the same name where there is one that is
 * not in the trip yet, else as a new thing. Items that are linked stay as they are.
 */
export function putOnShelf(
  { draft, shelf }: { draft: Draft; shelf: Shelf },
  ids: Iterable<string>,
  { newId, now }: Outside,
): { draft: Draft; shelf: Shelf } {
  const chosen = new Set(ids)
  const known = new Set(shelf.things.map(({ id }) => id))
  const isLinked = (item: DraftItem) => item.shelf !== undefined && known.has(item.shelf.id)
  const free = draft.gear.filter(item => chosen.has(item.id) && !isLinked(item))
  const links = linksByName(draft, shelf, { items: free, now })
  const made = shelveItems(
    shelf,
    free.filter(({ id }) => !links.has(id)),
    { newId, now },
  )
  return { draft: linkItems(draft, new Map([...links, ...made.links])), shelf: made.shelf }
}

/** Links to things of the same name, each thing once. */
export function linksByName(
  draft: Draft,
  shelf: Shelf,
  { items, now }: { items: readonly DraftItem[]; now: number },
): Map<string, ShelfLink> {
  const taken = new Set(draft.gear.map(item => item.shelf?.id))
  const byName = new Map<string, string>()
  for (const { id, item } of shelf.things.toReversed()) if (!taken.has(id)) byName.set(nameKey(item), id)
  byName.delete('')
  const links = new Map<string, ShelfLink>()
  for (const item of items) {
    const id = byName.get(nameKey(item))
    if (id === undefined) continue
    byName.delete(nameKey(item))
    links.set(item.id, { id, at: now })
  }
  return links
}
