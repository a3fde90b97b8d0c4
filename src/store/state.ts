// The app's state as signals, and the one place where the open trip is settled and reckoned.
// Only actions.ts and what persists write here; components read.

import { batch, computed, signal } from '@preact/signals'
import { type Draft, emptyDraft, type Typed } from '../plan'
import {
  emptyShelf,
  packTexts,
  type Shelf,
  same,
  type WithDraft,
  withList,
  withListTexts,
} from '../plan/shelf'
import { emptyLibrary, type Library, type RemovedTrip, type Step, type TripDocument } from './documents'
import { engine } from './engine'
import { type Erased, mentions } from './erased'
import {
  inOrder,
  type Journal,
  lastDone,
  lastUndone,
  offered,
  pruned,
  touched,
  type World,
  withStep,
} from './journal'
import { tidied, withTrip } from './library'
import { createPace } from './pace'
import type { OpenReckoned } from './reckoning'
import { SHELF_KEY, tripKey } from './record-places'

/** `memory-only`: nothing can be kept on this device now; `failed`: the last save did not work, the edits are still here. */
export interface SaveState {
  kind: 'saved' | 'saving' | 'memory-only' | 'failed'
  message?: string
}

/** A stored record that cannot be read: its key in the database, and what it is, in words. */
export interface Damaged {
  key: string
  what: string
}

/** The second copy of the trips, outside the database: not looked at yet, up to date since `at`, or why there is none. */
export type CopyState =
  | { kind: 'starting' }
  | { kind: 'kept'; at: number; trips: number }
  | { kind: 'absent' | 'newer' }
  | { kind: 'failed'; why: string }

export type State = ReturnType<typeof createState>

export function createState() {
  const library = signal<Library>(emptyLibrary())
  const trips = signal<ReadonlyMap<string, TripDocument>>(new Map())
  const removed = signal<ReadonlyMap<string, RemovedTrip>>(new Map())
  const shelf = signal<Shelf>(emptyShelf())
  const journal = signal<Journal>([])
  const erased = signal<ReadonlyMap<string, Erased>>(new Map())
  const saveState = signal<SaveState>({ kind: 'saved' })
  const storeProblem = signal<string | null>(null)
  const loaded = signal(false)
  /** Keys whose records could not be read: never written. */
  const unread = new Set<string>()
  const damaged = signal<Damaged[]>([])
  /** What undo has just taken back here, in words, until something else is done. */
  const justUndone = signal<string | null>(null)
  const copy = signal<CopyState>({ kind: 'starting' })

  /** Steps that another tab has done since this one began: they are for it to take back. */
  const elsewhere = new Set<string>()
  const ownSteps = computed((): Journal => journal.value.filter(({ id }) => !elsewhere.has(id)))

  const storedOpen = computed(() => trips.value.get(library.value.open ?? '') ?? null)
  // The same list while one moves about in the app: a save reads the order back as another one.
  let lastOrder: string[] = []
  const order = computed(() => {
    const { order: now } = library.value
    if (!same(lastOrder, now)) lastOrder = now
    return lastOrder
  })
  const tripList = computed(() => order.value.flatMap(id => trips.value.get(id) ?? []))

  // Each apart, so that a trip or a shelf which changes in name of its revision only is not reckoned anew.
  const packs = computed(() => shelf.value.packs)
  const shelfTyped = computed(() => shelf.value.typed)
  const listTexts = computed(() => packTexts(shelfTyped.value))
  const storedDraft = computed(() => storedOpen.value?.draft)
  const storedTyped = computed(() => storedOpen.value?.typed)
  const draft = computed(() => storedDraft.value && withList(storedDraft.value, packs.value))
  const typed = computed(() => storedTyped.value && withListTexts(storedTyped.value, listTexts.value))
  const openTrip = computed(
    () =>
      (storedOpen.value &&
        draft.value &&
        typed.value &&
        shownAs(storedOpen.value, draft.value, typed.value)) ??
      null,
  )
  /** The list by itself, in the place of a trip: what is judged and edited apart from any. */
  const apart = computed(
    (): WithDraft => ({ draft: withList(emptyDraft(), packs.value), typed: listTexts.value }),
  )
  const reckonedApart = computed(
    () => engine.value?.reckonApart(apart.value.draft, apart.value.typed) ?? null,
  )
  const tripsWithPacks = computed(() =>
    tripList.value.map(trip =>
      shownAs(trip, withList(trip.draft, packs.value), withListTexts(trip.typed, listTexts.value)),
    ),
  )
  /** The one of several people whose figures are shown; null: a lone hiker's. */
  const person = computed(() => {
    const people = storedDraft.value?.people ?? []
    const chosen = library.value.person
    return (people.find(({ id }) => id === chosen) ?? people[0])?.id ?? null
  })
  const pace = createPace()
  const shown = computed(() => `${storedOpen.value?.id} ${person.value}`)
  let last: { shown: string; draft: Draft; typed: Typed; open: OpenReckoned } | null = null
  const reckoned = computed((): OpenReckoned | null => {
    const [now, texts] = [draft.value, typed.value]
    if (!now || !texts || !engine.value) return null
    const isHeld = pace.isBehind.value
    if (last?.shown === shown.value && (isHeld || (last.draft === now && last.typed === texts)))
      return last.open
    const open = engine.value.reckonOpen(now, texts, person.value)
    last = open && { shown: shown.value, draft: now, typed: texts, open }
    return open
  })

  const putTrip = (trip: TripDocument, at?: number) =>
    batch(() => {
      trips.value = new Map(trips.value).set(trip.id, trip)
      library.value = withTrip(library.value, trip.id, at)
    })

  /** Puts a library in, as it fits the trips there are. */
  const tidy = (next: Library) => {
    library.value = tidied(next, trips.peek(), id => unread.has(tripKey(id)))
  }

  const dropTrip = (id: string) =>
    batch(() => {
      trips.value = new Map([...trips.value].filter(([key]) => key !== id))
      tidy(library.value)
    })

  /** All that undo reaches, without subscribing to it. */
  const world = (): World => {
    const { order, open } = library.peek()
    return { trips: trips.peek(), removed: removed.peek(), shelf: shelf.peek(), order, open }
  }

  /** The world with the packs that its trips have brought on the list; not while the list cannot be kept. */
  const withPacksListed = (made: World, now: number): World => {
    if (unread.has(SHELF_KEY) || !engine.value) return made
    const given = engine.value.givenToList(made.shelf, made.trips.values())
    if (given.trips.length === 0) return made
    const changed = given.trips.map(trip => [trip.id, touched(trip, now)] as const)
    return { ...made, trips: new Map([...made.trips, ...changed]), shelf: touched(given.shelf, now) }
  }

  const putWorld = (next: World) =>
    batch(() => {
      pace.catchUp()
      const { order, open } = library.peek()
      trips.value = next.trips
      removed.value = next.removed
      shelf.value = next.shelf
      if (next.order !== order || next.open !== open)
        library.value = { ...library.peek(), order: next.order, open: next.open }
    })

  /** Puts down a step that has just been done here. */
  const record = (step: Step) =>
    batch(() => {
      justUndone.value = null
      const others = journal.peek().filter(({ id }) => elsewhere.has(id))
      journal.value = inOrder([...others, ...withStep(ownSteps.peek(), step)])
    })

  /** Takes in steps that are stored; one with a known id takes its place. `by`: another tab has just done them. */
  const putSteps = (steps: Iterable<Step>, by: 'anyone' | 'another' = 'anyone') => {
    const held = new Set(journal.peek().map(({ id }) => id))
    if (by === 'another') for (const { id } of steps) if (!held.has(id)) elsewhere.add(id)
    const all = new Map([...journal.peek(), ...steps].map(step => [step.id, step]))
    journal.value = inOrder(all.values())
  }

  /** Takes trips out of all there is of them here, for good: by their ids. */
  const erase = (notes: Iterable<[string, Erased]>) =>
    batch(() => {
      const all = [...notes]
      if (all.length === 0) return
      const ids = new Set(all.map(([id]) => id))
      erased.value = new Map([...erased.peek(), ...all])
      trips.value = new Map([...trips.peek()].filter(([id]) => !ids.has(id)))
      journal.value = journal.peek().filter(step => !all.some(([id]) => mentions(step, id)))
      const left = new Map([...removed.peek()].filter(([id]) => !ids.has(id)))
      removed.value = pruned(left, journal.peek())
      justUndone.value = null
      tidy(library.peek())
    })

  const tell = (message: string) => {
    const told = storeProblem.peek()
    if (!told?.includes(message)) storeProblem.value = told ? `${told} ${message}` : message
  }

  const labelled = (step: Step | undefined) => (step ? labelOf(step, trips.value, library.value.open) : null)

  return {
    library,
    trips,
    /** Removed trips by id, and those whose making was undone. */
    removed,
    shelf,
    journal,
    ownSteps,
    /** What was erased for good, by the ids of trips. */
    erased,
    saveState,
    storeProblem,
    /** Whether the stored trips have been read. */
    loaded,
    unread,
    damaged,
    justUndone,
    copy,
    /** The open trip as it is shown and edited: with the list of packs in it. */
    openTrip,
    storedOpen,
    /** What is edited: the open trip, or where there is none the packs alone. */
    edited: computed((): WithDraft => openTrip.value ?? apart.value),
    apart,
    reckonedApart,
    /** As they are stored. */
    tripList,
    tripsWithPacks,
    reckoned,
    pace,
    person,
    removedTrips: computed(() => offered(removed.value)),
    canUndo: computed(() => lastDone(ownSteps.value) !== undefined),
    canRedo: computed(() => lastUndone(ownSteps.value) !== undefined),
    /** What undo would take back, in words. */
    lastLabel: computed(() => labelled(lastDone(ownSteps.value))),
    /** What redo would bring again, in words. */
    redoLabel: computed(() => labelled(lastUndone(ownSteps.value))),
    putTrip,
    dropTrip,
    erase,
    tidy,
    world,
    putWorld,
    withPacksListed,
    record,
    putSteps,
    tell,
  }
}

/** The trip with another draft and other texts; the same one where they are its own. */
const shownAs = (trip: TripDocument, draft: Draft, typed: Typed): TripDocument =>
  draft === trip.draft && typed === trip.typed ? trip : { ...trip, draft, typed }

/** A step's label, with the trip's name where that is not the open one: undoing it opens that trip. */
function labelOf({ label, parts }: Step, trips: World['trips'], open: string | null): string {
  const part = parts.find(({ on }) => on === 'trip') as { id: string } | undefined
  if (!part || part.id === open) return label
  return `${label} (in “${trips.get(part.id)?.draft.name || 'Trip'}”)`
}
