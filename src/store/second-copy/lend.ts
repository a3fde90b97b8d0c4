// While the database cannot be read, the copied trips are shown, and can be edited. Should it answer later, it has the
// last word: an edit made meanwhile takes the place of the state it was made from, or goes beside a later one.

import { batch } from '@preact/signals'
import { mergeShelves, type Shelf } from '../../plan/shelf'
import type { Library, TripDocument } from '../documents'
import { merged } from '../library'
import { takeIn } from '../load'
import type { Loaded } from '../loaded'
import { LIBRARY, SHELF, TRIP } from '../record-kinds'
import { isTripKey, LIBRARY_KEY, SHELF_KEY, tripKey } from '../record-places'

import type { CopyEnvironment } from './environment'
import { copyOf } from './losses'
import type { Entries } from './manifest'

export async function lend(env: CopyEnvironment, { entries, at }: { entries: Entries; at: number }) {
  const { state, records, newId } = env
  const lent = new Map<string, TripDocument>()
  for (const [key, entry] of Object.entries(entries)) {
    const trip = isTripKey(key) ? await copyOf(env, { key, entry, kind: TRIP }) : null
    if (trip && !state.trips.peek().has(trip.id)) lent.set(trip.id, trip)
  }
  const entry = entries[LIBRARY_KEY]
  const library = entry ? await copyOf(env, { key: LIBRARY_KEY, entry, kind: LIBRARY }) : null
  const atShelf = entries[SHELF_KEY]
  const shelf = atShelf ? await copyOf(env, { key: SHELF_KEY, entry: atShelf, kind: SHELF }) : null
  // It may have answered in the meantime.
  if (state.loaded.peek() || (lent.size === 0 && !shelf)) return
  const before = state.library.peek()
  const { kind, message = '' } = state.saveState.peek()
  batch(() => {
    state.trips.value = new Map([...lent, ...state.trips.peek()])
    const base = records.known.get(LIBRARY_KEY)!.value as Library
    const joined = library ? merged(base, before, library) : before
    state.tidy({ ...joined, place: before.place })
    if (shelf) lendShelf(env, shelf)
    const when = at ? ` of ${new Date(at).toLocaleString()}` : ''
    records.hooks.lent = ` Shown meanwhile: your trips from the second copy${when}.`
    state.saveState.value = { kind, message: message + records.hooks.lent }
  })
  const lentLibrary = state.library.peek()
  records.hooks.joining = found => {
    records.hooks.joining = () => {}
    records.hooks.lent = ''
    const isErased = (id: string) =>
      (found.allErased?.at ?? 0) > at || found.erased.some(([erased]) => erased === id)
    const trips = [...state.trips.peek()].filter(([id]) => !(lent.has(id) && isErased(id)))
    state.trips.value = new Map(trips)
    takeBack({ state, lent, found, newId })
    state.library.value = merged(lentLibrary, state.library.peek(), before)
  }
}

type Return = Pick<CopyEnvironment, 'state' | 'newId'> & { lent: Map<string, TripDocument>; found: Loaded }

function takeBack({ state, lent, found, newId }: Return) {
  const trips = new Map(state.trips.peek())
  const gone = new Set(found.gone.map(([key]) => key))
  for (const [id, document] of lent) {
    const ours = trips.get(id)
    trips.delete(id)
    const isEdited = ours !== document
    if (!ours || (gone.has(tripKey(id)) && !isEdited)) continue
    if (isEdited || !found.trips.has(id)) takeIn(found, { document: ours, over: [document.changedAt] }, newId)
  }
  state.trips.value = trips
}

/** The copied shelf counts as what the database held: once it answers, both are merged over that. */
function lendShelf({ state, records, newId }: CopyEnvironment, shelf: Shelf) {
  const ours = state.shelf.peek()
  const base = records.known.get(SHELF_KEY)!.value as Shelf
  records.known.set(SHELF_KEY, { value: shelf, revision: 0 })
  state.shelf.value = ours === base ? shelf : mergeShelves({ base, ours, theirs: shelf }, newId).shelf
}
