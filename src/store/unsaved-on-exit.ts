// What a page puts aside of its unsaved edits when it goes away, as small as can be. Pure.

import { SHELF_LISTS, type Shelf } from '../plan/shelf'
import type { Step, TripDocument, Unsaved } from './documents'
import { areaOf, isTripKey, SHELF_KEY } from './record-places'
import type { Change } from './write'

/** So many items, stops and packs of several trips are put aside in some tens of milliseconds … */
const MOST_ENTRIES = 20_000
/** … and so many in no time. */
const FEW_ENTRIES = 2000

/**
 * When changes are put aside: at once; in a task of their own where a long trip takes its time; never while the page
 * stays where several trips are long together, as a backup brings them and nobody types them: putting all aside in one
 * go would hold up the page, and they are said to be there only once they are saved.
 */
export function whenAside(changes: readonly Change[]): 'now' | 'soon' | 'on-leaving' {
  const trips = changes.filter(({ key, value }) => value && isTripKey(key))
  let entries = 0
  for (const { value } of trips) {
    const { gear, packs, trip } = (value as TripDocument).draft
    entries += gear.length + packs.length + trip.stops.length
  }
  if (trips.length > 1 && entries > MOST_ENTRIES) return 'on-leaving'
  return entries > FEW_ENTRIES ? 'soon' : 'now'
}

/** Null when nothing that counts is unsaved. `inFlight`: what a save under way may yet write. */
export function unsavedOf(changes: readonly Change[], inFlight: readonly Change[]): Unsaved | null {
  const unsaved: Unsaved = { format: 'pack-reckoner/parting', version: 6, trips: [], shelf: null, steps: [] }
  const sentBy = new Map(inFlight.map(change => [change.key, change.value]))
  for (const { key, value, known } of changes) {
    if (!value) continue
    if (areaOf(key) === 'step') unsaved.steps.push(value as Step)
    const sent = sentBy.get(key)
    const before = [known?.value, sent].filter(state => state !== undefined)
    if (key === SHELF_KEY) unsaved.shelf = pared(before as Shelf[], value as Shelf)
    if (!isTripKey(key)) continue
    const over = (before as TripDocument[]).map(trip => trip.changedAt)
    unsaved.trips.push({ document: value as TripDocument, over })
  }
  return unsaved.trips.length > 0 || unsaved.shelf || unsaved.steps.length > 0 ? unsaved : null
}

/**
 * Of the shelf only what is not the same in all states: merged like another tab's
 * version. Which of the states before is stored is not known until the next start, so all of them count.
 */
function pared(states: Shelf[], after: Shelf): Unsaved['shelf'] {
  if (states.length === 0) return null
  const alike = new Set(SHELF_LISTS.flatMap(list => [...alikeIn(list, states, after)]))
  return { before: states.map(state => without(state, alike)), after: without(after, alike) }
}

/** What stands the very same everywhere; not the neighbour of a new one, which tells where that belongs. */
function alikeIn(list: (typeof SHELF_LISTS)[number], states: Shelf[], after: Shelf): Set<object> {
  const held = states.map(state => new Set<object>(state[list]))
  const ids = states.map(state => new Set(state[list].map(({ id }) => id)))
  const now = after[list]
  const alike = new Set<object>(now.filter(thing => held.every(state => state.has(thing))))
  now.forEach(({ id }, i) => {
    const neighbour = now[i - 1] ?? now[i + 1]
    if (neighbour && ids.some(state => !state.has(id))) alike.delete(neighbour)
  })
  return alike
}

function without(shelf: Shelf, alike: Set<object>): Shelf {
  const pared = SHELF_LISTS.map(list => [list, shelf[list].filter(thing => !alike.has(thing))])
  return { ...shelf, ...Object.fromEntries(pared) }
}
