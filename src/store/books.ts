// What this tab knows of the database: each record as it last read or wrote it. Comparing that with the signals
// gives what is unsaved; taking in what is found or written keeps both in step.

import { batch, computed } from '@preact/signals'
import { emptyLibrary, type Library, type TripDocument } from './documents'
import { merged, placeAfter, tidied } from './library'
import type { Loaded } from './load'
import type { State } from './state'
import { type Change, historyKey, isTripKey, type Known, LIBRARY_KEY, type Outcome, tripKey } from './write'

export type Books = ReturnType<typeof createBooks>

export function createBooks(state: State) {
  const known = new Map<string, Known>([[LIBRARY_KEY, { value: state.library.peek(), revision: 0 }]])
  /** Keys whose records could not be read: never written. */
  const unread = new Set<string>()
  /** Trips removed on purpose, which the second copy may still hold. */
  const gone = new Set<string>()
  /** The last revision of trips whose records are gone, so that they go on counting should they come back. */
  const floors = new Map<string, number>()
  /** What the second copy has lent while the database does not answer: in words, and how it is taken back. */
  const hooks = { lent: '', joining: (_found: Loaded) => {} }

  const records = computed(() => {
    const all = new Map<string, object>([[LIBRARY_KEY, state.library.value]])
    for (const [id, trip] of state.trips.value) all.set(tripKey(id), trip)
    for (const [id, history] of state.histories.value) all.set(historyKey(id), history)
    return all
  })

  /** What differs from the database, as far as this tab knows. Subscribes the effect it is called in. */
  function changes(): Change[] {
    const all = records.value
    const keys = new Set([...all.keys(), ...known.keys()])
    return [...keys]
      .filter(key => !unread.has(key) && all.get(key) !== known.get(key)?.value)
      .map(key => ({ key, value: all.get(key), known: known.get(key), floor: floors.get(key) }))
  }

  const isChanged = (key: string) => records.peek().get(key) !== known.get(key)?.value

  /** Notes a record that is in the database but not (or no longer) one of the state's: the next save deletes it. */
  const noteSpent = (key: string) => known.set(key, { value: {}, revision: 0 })

  function noteGone(key: string, revision: number) {
    gone.add(key)
    floors.set(key, revision)
  }

  /** The database was emptied under the open app: nothing is in it any more, so all that is here counts as unsaved. */
  function forget() {
    for (const [key, { revision }] of known) floors.set(key, revision)
    known.clear()
    known.set(LIBRARY_KEY, { value: emptyLibrary(), revision: 0 })
    unread.clear()
    state.damaged.value = []
  }

  const noteTrip = (trip: TripDocument) =>
    known.set(tripKey(trip.id), { value: trip, revision: trip.revision })

  /** Takes a trip in that is in the database just so. */
  function take(trip: TripDocument, at?: number) {
    noteTrip(trip)
    state.putTrip(trip, at)
  }

  /** Joins what the database held at start to what was made in memory meanwhile. */
  function takeAll(found: Loaded) {
    hooks.joining(found)
    const base = known.get(LIBRARY_KEY)!.value as Library
    state.damaged.value = found.damaged
    for (const key of found.unread) unread.add(key)
    for (const [key, revision] of found.gone) noteGone(key, revision)
    for (const key of found.done) noteSpent(key)
    for (const trip of found.trips.values()) noteTrip(trip)
    for (const [id, history] of found.histories) known.set(historyKey(id), { value: history, revision: 0 })
    const unsaved = found.unsaved.map(trip => [trip.id, trip] as const)
    state.trips.value = new Map([...found.trips, ...unsaved, ...state.trips.peek()])
    state.histories.value = new Map([...found.histories, ...state.histories.peek()])
    const stored = found.library ?? base
    known.set(LIBRARY_KEY, { value: stored, revision: 0 })
    state.library.value = tidied(merged(base, state.library.peek(), stored), state.trips.peek())
    for (const problem of found.problems) state.tell(problem)
  }

  /** Takes in what a completed transaction has written. */
  function takeOutcome(outcome: Outcome) {
    batch(() => {
      for (const { key, value, revision } of outcome.saved) {
        known.set(key, { value, revision })
        gone.delete(key)
      }
      for (const { key, revision } of outcome.removed) {
        known.delete(key)
        if (isTripKey(key)) noteGone(key, revision)
      }
      for (const key of outcome.unread) unread.add(key)
      for (const trip of outcome.kept) {
        take(trip)
        // Its undo steps stay stored; they are read again at the next start.
        known.delete(historyKey(trip.id))
        state.tell(
          `“${trip.draft.name || 'Trip'}” was changed in another tab after you had removed it: it stays.`,
        )
      }
      for (const { trip, of } of outcome.copies) {
        take(trip, placeAfter(state.library.peek(), of))
        state.tell(
          `This trip was also changed in another tab. Both are kept: the other one is “${trip.draft.name}”.`,
        )
      }
      for (const { from, trip } of outcome.moved) move(from, trip)
      if (outcome.library) takeLibrary(outcome.library, outcome.saved)
    })
  }

  /** Goes on under a new id, because the record in the old place is of a kind this version cannot read. */
  function move(from: string, trip: TripDocument) {
    unread.add(historyKey(from))
    const ours = state.trips.peek().get(from) ?? trip
    const history = state.histories.peek().get(from)
    const wasOpen = state.library.peek().open === from
    noteTrip(trip)
    state.putTrip(
      ours.changedAt === trip.changedAt ? trip : { ...ours, id: trip.id },
      placeAfter(state.library.peek(), from),
    )
    if (history) state.putHistory(trip.id, history)
    state.dropTrip(from)
    if (wasOpen) state.library.value = { ...state.library.peek(), open: trip.id }
    state.tell(
      'This trip was saved by another version of Pack Reckoner: that one is left alone, yours goes on beside it.',
    )
  }

  function takeLibrary(record: Library, saved: Outcome['saved']) {
    const sent = saved.find(({ key }) => key === LIBRARY_KEY)!.value as Library
    known.set(LIBRARY_KEY, { value: record, revision: 0 })
    state.library.value = merged(sent, state.library.peek(), record)
  }

  return { known, unread, gone, hooks, changes, isChanged, noteSpent, take, takeAll, takeOutcome, forget }
}
