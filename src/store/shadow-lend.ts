// While the database cannot be read, the copied trips are shown, and can be edited. Should it answer later, it has the
// last word: an edit made meanwhile takes the place of the state it was made from, or goes beside a later one.

import { batch } from '@preact/signals'
import { type History, LIBRARY, type Library, TRIP, type TripDocument } from './documents'
import { MOST_STEPS } from './history'
import { merged, tidied } from './library'
import { type Loaded, takeIn } from './load'
import { copyOf } from './shadow-check'
import type { ShadowEnvironment } from './shadow-environment'
import type { Entries } from './shadow-manifest'
import { isTripKey, LIBRARY_KEY, tripKey } from './write'

export async function lend(env: ShadowEnvironment, { entries, at }: { entries: Entries; at: number }) {
  const { state, books, newId } = env
  const lent = new Map<string, TripDocument>()
  for (const [key, entry] of Object.entries(entries)) {
    const trip = isTripKey(key) ? await copyOf(env, { key, entry, kind: TRIP }) : null
    if (trip && !state.trips.peek().has(trip.id)) lent.set(trip.id, trip)
  }
  const entry = entries[LIBRARY_KEY]
  const library = entry ? await copyOf(env, { key: LIBRARY_KEY, entry, kind: LIBRARY }) : null
  // It may have answered in the meantime.
  if (state.loaded.peek() || lent.size === 0) return
  const before = state.library.peek()
  const { kind, message = '' } = state.saveState.peek()
  batch(() => {
    state.trips.value = new Map([...lent, ...state.trips.peek()])
    const base = books.known.get(LIBRARY_KEY)!.value as Library
    const joined = library ? merged(base, before, library) : before
    state.library.value = tidied({ ...joined, place: before.place }, state.trips.peek())
    const when = at ? ` of ${new Date(at).toLocaleString()}` : ''
    books.hooks.lent = ` Shown meanwhile: your trips from the second copy${when}.`
    state.saveState.value = { kind, message: message + books.hooks.lent }
  })
  const lentLibrary = state.library.peek()
  books.hooks.joining = found => {
    books.hooks.joining = () => {}
    books.hooks.lent = ''
    takeBack({ state, lent, found, newId })
    state.library.value = merged(lentLibrary, state.library.peek(), before)
  }
}

type Return = Pick<ShadowEnvironment, 'state' | 'newId'> & { lent: Map<string, TripDocument>; found: Loaded }

function takeBack({ state, lent, found, newId }: Return) {
  const trips = new Map(state.trips.peek())
  const histories = new Map(state.histories.peek())
  const gone = new Set(found.gone.map(([key]) => key))
  for (const [id, document] of lent) {
    const ours = trips.get(id)
    const steps = histories.get(id)
    trips.delete(id)
    histories.delete(id)
    const isEdited = ours !== document
    if (!ours || (gone.has(tripKey(id)) && !isEdited)) continue
    if (isEdited || !found.trips.has(id)) takeIn(found, { document: ours, over: [document.changedAt] }, newId)
    const isInPlace = found.unsaved.some(trip => trip.id === id)
    if (steps && isInPlace) histories.set(id, joined(found.histories.get(id), steps))
  }
  state.trips.value = trips
  state.histories.value = histories
}

const joined = (stored: History | undefined, steps: History): History => ({
  ...steps,
  past: [...(stored?.past ?? []), ...steps.past].slice(-MOST_STEPS),
})
