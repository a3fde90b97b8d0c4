// What can be done to the things on the shelf. Pure: shelf in, shelf out; ids and the time come from the caller.
// A thing that is gone changes nothing, so that an edit never fails.

import type { DraftItem } from '../draft'
import { pathParts, setField } from '../field-path'
import { copyName, insertAt, moveId } from '../lists'
import type { Stow } from '../types'
import { setFact } from './fact'
import type { Outside, Shelf, Thing, ThingFacts } from './types'

const withThings = (shelf: Shelf, things: Thing[]): Shelf =>
  things === shelf.things ? shelf : { ...shelf, things }

/** Puts a new thing at an index, or at the end. */
export function addThing(
  shelf: Shelf,
  { newId, now }: Outside,
  start: { at?: number; with?: ThingFacts } = {},
): Shelf {
  const item = start.with ?? {}
  const thing: Thing = { id: newId(), item, changed: stamps(item, now) }
  return { ...shelf, things: insertAt(shelf.things, thing, start.at) }
}

export function duplicateThing(shelf: Shelf, id: string, { newId, now }: Outside): Shelf {
  const index = shelf.things.findIndex(thing => thing.id === id)
  const thing = shelf.things[index]
  if (!thing) return shelf
  const item = { ...thing.item, ...copyName(thing.item) }
  const copy = { ...thing, id: newId(), item, changed: stamps(item, now) }
  return { ...shelf, things: insertAt(shelf.things, copy, index + 1) }
}

/** Removes things; bases let go of them, and what rode inside one rides on its own. */
export function removeThings(shelf: Shelf, ids: Iterable<string>): Shelf {
  const gone = new Set(ids)
  const things = shelf.things.filter(({ id }) => !gone.has(id))
  if (things.length === shelf.things.length) return shelf
  const bases = shelf.bases.map(base => {
    if (!base.lines.some(({ thing, inside }) => gone.has(thing) || (inside && gone.has(inside)))) return base
    const lines = base.lines.flatMap(({ inside, ...line }) => {
      if (gone.has(line.thing)) return []
      return [inside && !gone.has(inside) ? { ...line, inside } : line]
    })
    return { ...base, lines }
  })
  const typed = Object.fromEntries(
    Object.entries(shelf.typed).filter(([path]) => !gone.has(pathParts(path)[0] ?? '')),
  )
  return { ...shelf, things, bases, typed }
}

export const moveThing = (shelf: Shelf, id: string, to: number): Shelf =>
  withThings(shelf, moveId(shelf.things, id, to))

/** What may be set of a thing; a field or a fact that is there but undefined is taken away. */
export interface ThingChange {
  item?: { [K in keyof ThingFacts]?: ThingFacts[K] | undefined }
  note?: string | undefined
  weighedOn?: string | undefined
  retired?: boolean | undefined
}

/** Sets what is given of a thing, and notes for each fact that it changes when that was (`now`: ms since 1970). */
export function setThing(shelf: Shelf, id: string, change: ThingChange, now: number): Shelf {
  return setThings(shelf, [id], change, now)
}

/** As `setThing`, for many at once. */
export function setThings(shelf: Shelf, ids: Iterable<string>, change: ThingChange, now: number): Shelf {
  const chosen = new Set(ids)
  const { item = {}, ...rest } = change
  let isSame = true
  const things = shelf.things.map(thing => {
    if (!chosen.has(thing.id)) return thing
    let next = thing
    for (const [fact, value] of Object.entries(item)) next = setFact(next, fact, value, now)
    for (const [field, value] of Object.entries(rest)) next = setField(next, field, value || undefined)
    isSame &&= next === thing
    return next
  })
  return isSame ? shelf : { ...shelf, things }
}

export const setGroup = (shelf: Shelf, ids: Iterable<string>, group: string, now: number): Shelf =>
  setThings(shelf, ids, { item: { group: group || undefined } }, now)

export const setStow = (shelf: Shelf, ids: Iterable<string>, stow: Stow | undefined, now: number): Shelf =>
  setThings(shelf, ids, { item: { stow } }, now)

export const setRetired = (shelf: Shelf, ids: Iterable<string>, retired: boolean): Shelf =>
  setThings(shelf, ids, { retired }, 0)

/** The facts of an item, without what belongs to its trip. */
export function factsOf(item: DraftItem): ThingFacts {
  const {
    id: _id,
    inside: _inside,
    shelf: _shelf,
    atHome: _atHome,
    swaps: _swaps,
    owner: _owner,
    carriedBy: _carriedBy,
    shareable: _shareable,
    ...facts
  } = item
  return facts
}

export const stamps = (item: ThingFacts, now: number): Thing['changed'] =>
  Object.fromEntries(Object.keys(item).map(fact => [fact, now]))
