// What this tab knows of the database: each record as it last read or wrote it. Comparing that with the signals
// gives what is unsaved; taking in what is found or written keeps both in step.

import { batch, computed } from '@preact/signals'
import { emptyShelf, type MergedShelf, mergeShelves, type Shelf } from '../plan/shelf'
import { emptyLibrary, type Library, type Step, type TripDocument } from './documents'
import { type Erased, erasedKey } from './erased'
import { inOrder } from './journal'
import { merged, placeAfter } from './library'
import type { Loaded } from './loaded'
import { clashText } from './messages'
import { isTripKey, LIBRARY_KEY, removedKey, SHELF_KEY, stepKey, tripKey, whatAt } from './record-places'
import type { State } from './state'
import type { Change, Known, Outcome } from './write'

export type SavedRecords = ReturnType<typeof createSavedRecords>

export function createSavedRecords(state: State, newId: () => string) {
  const known = new Map<string, Known>([
    [LIBRARY_KEY, { value: state.library.peek(), revision: 0 }],
    [SHELF_KEY, { value: state.shelf.peek(), revision: 0 }],
  ])
  const { unread } = state
  /** Trips removed on purpose, which the second copy may still hold. */
  const gone = new Set<string>()
  /** The last revision of trips whose records are gone, so that they go on counting should they come back. */
  const floors = new Map<string, number>()
  /** Of each trip, the versions of other tabs that are kept beside it, by the fields that both changed. */
  const copies = new Map<string, Map<string, Known>>()
  /** What the second copy has lent while the database does not answer: in words, and how it is taken back. */
  const hooks = { lent: '', joining: (_found: Loaded) => {}, listDamaged: false }
  /** The last erasure of everything that this tab knows of. */
  const erasure: { ofAll: Erased | null } = { ofAll: null }

  const records = computed(() => {
    const all = new Map<string, object>([
      [LIBRARY_KEY, state.library.value],
      [SHELF_KEY, state.shelf.value],
    ])
    for (const [id, trip] of state.trips.value) all.set(tripKey(id), trip)
    for (const [id, removed] of state.removed.value) all.set(removedKey(id), removed)
    for (const step of state.journal.value) all.set(stepKey(step.id), step)
    for (const [id, note] of state.erased.value) all.set(erasedKey(id), note)
    return all
  })

  /** What differs from the database, as far as this tab knows. Subscribes the effect it is called in. */
  function changes(): Change[] {
    const all = records.value
    // What was damaged and is discarded can be written again.
    void state.damaged.value
    const keys = new Set([...all.keys(), ...known.keys()])
    return [...keys]
      .filter(key => !unread.has(key) && all.get(key) !== known.get(key)?.value)
      .map(key => ({
        key,
        value: all.get(key),
        known: known.get(key),
        floor: floors.get(key),
        copies: copies.get(key),
      }))
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
    known.set(SHELF_KEY, { value: emptyShelf(), revision: 0 })
    unread.clear()
    erasure.ofAll = null
    state.damaged.value = []
  }

  const noteTrip = (trip: TripDocument) =>
    known.set(tripKey(trip.id), { value: trip, revision: trip.revision })

  /** Takes in that trips are erased for good: nothing of them is written any more. */
  function takeErased(notes: [string, Erased][]) {
    for (const [id, note] of notes) {
      known.set(erasedKey(id), { value: note, revision: 0 })
      known.delete(tripKey(id))
    }
    state.erase(notes)
  }

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
    for (const [id, removed] of found.removed) known.set(removedKey(id), { value: removed, revision: 0 })
    for (const [id, note] of found.erased) known.set(erasedKey(id), { value: note, revision: 0 })
    for (const step of found.steps) known.set(stepKey(step.id), { value: step, revision: 0 })
    const unsaved = found.unsaved.map(trip => [trip.id, trip] as const)
    state.trips.value = new Map([...found.trips, ...unsaved, ...state.trips.peek()])
    state.removed.value = new Map([...found.removed, ...state.removed.peek()])
    state.putSteps([...found.steps, ...found.unsavedSteps, ...state.journal.peek()])
    const stored = found.library ?? base
    // A damaged one is written anew at once, so that order and settings are kept from now on.
    const listDamaged = found.anew.has(LIBRARY_KEY)
    known.set(LIBRARY_KEY, { value: listDamaged ? emptyLibrary() : stored, revision: 0 })
    hooks.listDamaged = listDamaged
    state.tidy(merged(base, state.library.peek(), stored))
    takeShelves(found)
    erasure.ofAll = found.allErased
    state.erase(found.erased)
    for (const problem of found.problems) state.tell(problem)
  }

  function takeShelves({ shelf, shelfLeft, anew, unread: cannotRead }: Loaded) {
    const ours = state.shelf.peek()
    const base = known.get(SHELF_KEY)!.value as Shelf
    if (shelf) known.set(SHELF_KEY, { value: shelf, revision: shelf.revision })
    // A lent one is not in the database, whatever else is.
    else if (anew.has(SHELF_KEY) || (base.changedAt > 0 && !cannotRead.includes(SHELF_KEY)))
      known.set(SHELF_KEY, { value: emptyShelf(), revision: 0 })
    if (shelf) joinShelf({ base, ours, theirs: shelf })
    for (const { before, after } of shelfLeft) {
      const made = before.find(({ changedAt }) => changedAt === shelf?.changedAt) ?? before[0]
      if (made) joinShelf({ base: made, ours: after, theirs: state.shelf.peek() })
    }
  }

  /** Puts what both have become into the state, and says what is there twice. */
  function joinShelf({ base, ours, theirs }: Record<'base' | 'ours' | 'theirs', Shelf>) {
    takeShelf(ours === base ? { shelf: theirs, twice: [] } : mergeShelves({ base, ours, theirs }, newId))
  }

  function takeShelf({ shelf, twice }: MergedShelf) {
    state.shelf.value = shelf
    if (twice.length === 0) return
    const names = twice.slice(0, 3).map(name => `“${name}”`)
    const rest = twice.length > 3 ? ` and ${twice.length - 3} more` : ''
    state.tell(
      `${names.join(', ')}${rest} on your shelf: also changed in another tab. Both are kept, the other one as “… (other tab)”.`,
    )
  }

  /** Takes in what a completed transaction has written. */
  function takeOutcome(outcome: Outcome) {
    batch(() => {
      const joined = new Map(outcome.joined.map(trip => [tripKey(trip.id), trip]))
      for (const { key, value, revision } of outcome.saved) {
        const trip = joined.get(key)
        if (trip) takeJoined(trip, value as TripDocument)
        else known.set(key, { value, revision })
        gone.delete(key)
      }
      for (const { key, revision } of outcome.removed) {
        known.delete(key)
        if (isTripKey(key)) noteGone(key, revision)
      }
      for (const key of outcome.unread) unread.add(key)
      for (const trip of outcome.kept) {
        take(trip)
        stays(trip.id)
        state.tell(
          `“${trip.draft.name || 'Trip'}” was changed in another tab after you had removed it: it stays.`,
        )
      }
      for (const { trip, of, clashes, isNew } of outcome.copies) {
        take(trip, placeAfter(state.library.peek(), of.id))
        const kept = copies.get(tripKey(of.id)) ?? new Map<string, Known>()
        copies.set(tripKey(of.id), kept.set(clashes.join(' '), { value: trip, revision: trip.revision }))
        if (isNew) state.tell(clashText(of.draft, { clashes, name: trip.draft.name }))
      }
      for (const { from, trip } of outcome.moved) move(from, trip)
      takeErased(outcome.erased)
      if (outcome.erased.length > 0)
        state.tell('A trip was erased for good in another tab: what was changed in it here is gone too.')
      if (outcome.library) takeLibrary(outcome.library, outcome.saved)
      if (outcome.shelf) takeWrittenShelf(outcome.shelf, outcome.saved)
      const aside = outcome.aside.map(({ from, to }) => ({ key: to, what: whatAt(from) ?? from }))
      if (aside.length > 0) state.damaged.value = [...state.damaged.peek(), ...aside]
    })
  }

  /** Takes in a trip as it was written, joined to another tab's; `sent` is what this tab had when it wrote. */
  function takeJoined(trip: TripDocument, sent: TripDocument) {
    // Edited meanwhile: left to the next save, which joins both once more and keeps what clashes.
    if (state.trips.peek().get(trip.id) === sent) return take(trip)
    known.set(tripKey(trip.id), { value: sent, revision: trip.revision - 1, isBase: true })
  }

  /** A trip that could not be removed is not among the removed ones either, and its removal cannot be taken back. */
  function stays(id: string) {
    state.removed.value = new Map([...state.removed.peek()].filter(([other]) => other !== id))
    const isRemoval = ({ parts }: Step) =>
      parts.some(part => part.on === 'list' && part.id === id && !part.here)
    state.journal.value = state.journal.peek().filter(step => !isRemoval(step))
  }

  /** Goes on under a new id, because the record in the old place is of a kind this version cannot read. */
  function move(from: string, trip: TripDocument) {
    const ours = state.trips.peek().get(from) ?? trip
    const wasOpen = state.library.peek().open === from
    noteTrip(trip)
    state.putTrip(
      ours.changedAt === trip.changedAt ? trip : { ...ours, id: trip.id },
      placeAfter(state.library.peek(), from),
    )
    // Its steps go along.
    state.journal.value = inOrder(
      state.journal.peek().map(step => {
        const isOf = (part: Step['parts'][number]) => part.on !== 'shelf' && part.id === from
        if (!step.parts.some(isOf)) return step
        return { ...step, parts: step.parts.map(part => (isOf(part) ? { ...part, id: trip.id } : part)) }
      }),
    )
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

  function takeWrittenShelf(written: MergedShelf, saved: Outcome['saved']) {
    const ours = state.shelf.peek()
    const { value, revision } = saved.find(({ key }) => key === SHELF_KEY)!
    const sent = value as Shelf
    const theirs = { ...written.shelf, revision }
    known.set(SHELF_KEY, { value: theirs, revision })
    takeShelf({ shelf: theirs, twice: written.twice })
    if (sent !== ours) joinShelf({ base: sent, ours, theirs })
  }

  /** Why an edit of the shelf cannot be written, if there is one: what is stored cannot be read. */
  function shelfStuck() {
    if (!unread.has(SHELF_KEY) || !isChanged(SHELF_KEY)) return null
    return state.damaged.peek().some(({ key }) => key === SHELF_KEY) ? 'damaged' : 'newer'
  }

  return {
    known,
    unread,
    gone,
    hooks,
    erasure,
    changes,
    isChanged,
    shelfStuck,
    noteSpent,
    take,
    takeErased,
    takeAll,
    takeOutcome,
    forget,
  }
}
