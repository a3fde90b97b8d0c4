// Alternatives: things on the shelf that an item of a trip may be instead. Swapped, the item takes over the facts of the
// thing and keeps its place; what it was before becomes an alternative. Pure.

import type { Draft, DraftItem, Swap, Typed } from '../draft'
import { fieldPath } from '../field-path'
import { mapId } from '../lists'
import { unmarked } from '../trip-marks'
import { shelveItems } from './pack'
import { same } from './same'
import { factsOf } from './things'
import type { Outside, Shelf, Thing, ThingFacts } from './types'

/** What an item is for in its trip, and so stays whatever takes its place. */
const OF_THE_PLACE = ['count', 'group', 'optional'] as const

/** An alternative with what it would be in this trip. */
export interface Alternative {
  thing: Thing
  facts: ThingFacts
}

/** The alternatives of an item that are on the shelf; `gone`: those that are there no longer. */
export function alternativesOf(item: DraftItem, shelf: Shelf): { there: Alternative[]; gone: string[] } {
  const swaps = (item.swaps ?? []).filter(({ id }) => id !== item.shelf?.id)
  const things = new Map(shelf.things.map(thing => [thing.id, thing]))
  const there = swaps.flatMap(({ id, own }) => {
    const thing = things.get(id)
    return thing ? [{ thing, facts: own?.item ?? thing.item }] : []
  })
  return { there, gone: swaps.flatMap(({ id }) => (things.has(id) ? [] : id)) }
}

/** The draft with things as alternatives of an item, at the end of those it has. */
export function addSwaps(draft: Draft, itemId: string, things: readonly string[]): Draft {
  return withSwaps(draft, itemId, ({ swaps = [], shelf }) => {
    const taken = new Set([...swaps.map(({ id }) => id), shelf?.id])
    const added = things.filter(id => !taken.has(id))
    return added.length > 0 ? [...swaps, ...added.map(id => ({ id }))] : swaps
  })
}

export const removeSwaps = (draft: Draft, itemId: string, things: readonly string[]): Draft =>
  withSwaps(draft, itemId, ({ swaps = [] }) => {
    const left = swaps.filter(({ id }) => !things.includes(id))
    return left.length < swaps.length ? left : swaps
  })

function withSwaps(draft: Draft, itemId: string, change: (item: DraftItem) => Swap[]): Draft {
  const gear = mapId(draft.gear, itemId, item => {
    const swaps = change(item)
    if (swaps === item.swaps || (swaps.length === 0 && !item.swaps)) return item
    const { swaps: _swaps, ...rest } = item
    return swaps.length > 0 ? { ...rest, swaps } : rest
  })
  return gear === draft.gear ? draft : { ...draft, gear }
}

/** The open trip and the shelf, as one tap changes both. */
interface Both {
  draft: Draft
  shelf: Shelf
}

/**
 * Both with the thing in the item's place: facts of its own in this trip if it has any, else those on the shelf. Where
 * the item stands, how many it is, what it rides in and whether it stays home remain. What it was becomes an
 * alternative, and is put on the shelf if it is not there; that it was packed, or came home unused, is not said of the
 * other. As it was where one of the two is gone.
 */
export function swapItem(
  { draft, shelf }: Both,
  { itemId, thingId, newId, now }: Outside & { itemId: string; thingId: string },
): Both {
  const item = draft.gear.find(({ id }) => id === itemId)
  const thing = shelf.things.find(({ id }) => id === thingId)
  if (!item || !thing || item.shelf?.id === thingId) return { draft, shelf }
  const shelved = shelveItems(shelf, [item], { newId, now })
  const former = formerOf(
    shelved.links.has(itemId) ? { ...item, shelf: shelved.links.get(itemId)! } : item,
    shelved.shelf,
  )
  const swaps = item.swaps ?? []
  const at = swaps.findIndex(({ id }) => id === thingId)
  const others = swaps.filter(({ id }) => id !== thingId && id !== former.id)
  const own = swaps[at]?.own
  const swapped: DraftItem = {
    ...placeOf(item),
    ...besidesPlace(own?.item ?? thing.item),
    shelf: { id: thingId, at: own?.at ?? now },
    swaps: at < 0 ? [...others, former] : others.toSpliced(at, 0, former),
  }
  const gear = mapId(draft.gear, itemId, () => swapped)
  return { draft: unmarked({ ...draft, gear }, itemId), shelf: shelved.shelf }
}

/** Unread texts without those at the facts of an item that is another now. */
export function textsBesides(typed: Typed, itemId: string): Typed {
  const start = `${fieldPath('gear', itemId)}/`
  const stays = OF_THE_PLACE.map(field => start + field)
  const kept = Object.entries(typed).filter(([path]) => !path.startsWith(start) || stays.includes(path))
  return kept.length === Object.keys(typed).length ? typed : Object.fromEntries(kept)
}

/** What the item was, as an alternative: with the facts that this trip alone knows. */
function formerOf(item: DraftItem, { things }: Shelf): Swap {
  const { id, at } = item.shelf!
  const facts = besidesPlace(factsOf(item))
  const thing = things.find(other => other.id === id)!
  return same(facts, besidesPlace(thing.item)) ? { id } : { id, own: { at, item: facts } }
}

function besidesPlace(facts: ThingFacts): ThingFacts {
  const { count: _count, group: _group, optional: _optional, ...rest } = facts
  return rest
}

/** What stays of an item: all that is no fact of a thing, and what it is for. */
function placeOf(item: DraftItem): Pick<DraftItem, 'id'> {
  const facts = besidesPlace(factsOf(item))
  const kept = Object.entries(item).filter(([field]) => !Object.hasOwn(facts, field))
  return { ...Object.fromEntries(kept), id: item.id }
}
