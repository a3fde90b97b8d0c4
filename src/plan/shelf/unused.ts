// A word on the shelf for next time: what came home unused. Pure.

import type { Draft } from '../draft'
import { tripName } from '../names'
import { isMarked } from '../trip-marks'
import type { Shelf } from './types'

const noteFor = (draft: Draft) => `Came home unused: ${tripName(draft)}.`

/** The things on the shelf behind what came home unused that do not say so yet. */
export function unusedOnShelf(draft: Draft, shelf: Pick<Shelf, 'things'>): string[] {
  const links = new Set(
    draft.gear.flatMap(({ id, shelf: link }) => (link && isMarked(draft.log?.unused, id) ? [link.id] : [])),
  )
  const note = noteFor(draft)
  return shelf.things.filter(thing => links.has(thing.id) && !thing.note?.includes(note)).map(({ id }) => id)
}

/** The shelf with that word in the note of each of them. */
export function withUnusedNoted(shelf: Shelf, draft: Draft): Shelf {
  const ids = new Set(unusedOnShelf(draft, shelf))
  if (ids.size === 0) return shelf
  const things = shelf.things.map(thing =>
    ids.has(thing.id) ? { ...thing, note: [thing.note, noteFor(draft)].filter(Boolean).join(' ') } : thing,
  )
  return { ...shelf, things }
}
