// The app's state as signals, and the one place where the open trip is settled and reckoned.
// Only actions.ts and persist.ts write here; components read.

import { batch, computed, signal } from '@preact/signals'
import { emptyHistory, emptyLibrary, type History, type Library, type TripDocument } from './documents'
import { engine } from './engine'
import { tidied, withTrip } from './library'
import type { OpenReckoned } from './reckoning'

/** `memory-only`: nothing can be kept on this device now; `failed`: the last save did not work, the edits are still here. */
export interface SaveState {
  kind: 'saved' | 'saving' | 'memory-only' | 'failed'
  message?: string
}

/** A removed trip, as long as it can be brought back. */
export interface Removed {
  trip: TripDocument
  history: History
  /** Its index in the order. */
  at: number
  wasOpen: boolean
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
  const histories = signal<ReadonlyMap<string, History>>(new Map())
  const saveState = signal<SaveState>({ kind: 'saved' })
  const storeProblem = signal<string | null>(null)
  const removed = signal<Removed | null>(null)
  const loaded = signal(false)
  const damaged = signal<Damaged[]>([])
  const copy = signal<CopyState>({ kind: 'starting' })

  const openTrip = computed(() => trips.value.get(library.value.open ?? '') ?? null)
  const tripList = computed(() => library.value.order.flatMap(id => trips.value.get(id) ?? []))
  const history = computed(() => histories.value.get(library.value.open ?? '') ?? emptyHistory())

  // Apart, so that a trip which changes in name of its revision only is not reckoned anew.
  const draft = computed(() => openTrip.value?.draft)
  const typed = computed(() => openTrip.value?.typed)
  const reckoned = computed((): OpenReckoned | null => {
    return draft.value && typed.value && engine.value ? engine.value(draft.value, typed.value) : null
  })

  const putTrip = (trip: TripDocument, at?: number) =>
    batch(() => {
      trips.value = new Map(trips.value).set(trip.id, trip)
      library.value = withTrip(library.value, trip.id, at)
    })

  const putHistory = (id: string, next: History) => {
    histories.value = new Map(histories.value).set(id, next)
  }

  const dropTrip = (id: string) =>
    batch(() => {
      trips.value = new Map([...trips.value].filter(([key]) => key !== id))
      histories.value = new Map([...histories.value].filter(([key]) => key !== id))
      library.value = tidied(library.value, trips.value)
    })

  const tell = (message: string) => {
    const told = storeProblem.peek()
    if (!told?.includes(message)) storeProblem.value = told ? `${told} ${message}` : message
  }

  return {
    library,
    trips,
    histories,
    saveState,
    storeProblem,
    removed,
    /** Whether the stored trips have been read. */
    loaded,
    damaged,
    copy,
    openTrip,
    tripList,
    history,
    reckoned,
    canUndo: computed(() => history.value.past.length > 0),
    canRedo: computed(() => history.value.future.length > 0),
    /** What undo would take back, in words. */
    lastLabel: computed(() => history.value.past.at(-1)?.label ?? null),
    putTrip,
    putHistory,
    dropTrip,
    tell,
  }
}
