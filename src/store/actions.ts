// Everything the screens can do to the stored state. Each action is one change, saved by persist.ts in the background.

import { batch } from '@preact/signals'
import type { ProfilePoint } from '../files'
import { copyName, type Draft, describeField, fieldAt, hasPlace, setField, type Typed } from '../plan'
import { emptyHistory, type ScreenPlace, type System, type Theme, type TripDocument } from './documents'
import { type Contents, type EditNote, recorded, redone, type Travelled, undone } from './history'
import { placeAfter } from './library'
import type { State } from './state'

export interface Clock {
  now: () => number
  newId: () => string
}

export type Actions = ReturnType<typeof createActions>

export function createActions(state: State, { now, newId }: Clock) {
  const setLibrary = (
    part: Partial<Pick<State['library']['value'], 'open' | 'system' | 'theme' | 'place'>>,
  ) => {
    state.library.value = { ...state.library.peek(), ...part }
  }

  /** Puts new contents into the open trip; the same contents are no edit. */
  function change(next: Contents, note: Omit<EditNote, 'at'>) {
    const trip = state.openTrip.peek()
    if (!trip || (next.draft === trip.draft && next.typed === trip.typed)) return
    batch(() => {
      state.putHistory(trip.id, recorded(state.history.peek(), trip, { ...note, at: now() }))
      state.putTrip(changed(trip, next))
    })
  }

  /** Two states of a trip never share their time, so that it tells them apart. */
  const changed = (trip: TripDocument, { draft, typed }: Contents): TripDocument => ({
    ...trip,
    draft,
    typed,
    changedAt: Math.max(now(), trip.changedAt + 1),
  })

  function travel(go: (history: State['history']['value'], contents: Contents) => Travelled | null) {
    const trip = state.openTrip.peek()
    const travelled = trip && go(state.history.peek(), trip)
    if (!travelled) return
    batch(() => {
      state.putHistory(trip.id, travelled.history)
      state.putTrip(changed(trip, travelled.contents))
    })
  }

  function add(
    draft: Draft,
    rest: Pick<TripDocument, 'demo' | 'typed' | 'profile'> & { at?: number },
  ): string {
    const { demo, typed, profile, at } = rest
    const id = newId()
    const trip: TripDocument = {
      format: 'pack-reckoner/trip',
      version: 1,
      id,
      demo,
      changedAt: now(),
      revision: 0,
      draft,
      typed,
      ...(profile && { profile }),
    }
    state.putTrip(trip, at)
    return id
  }

  return {
    /** Adds a trip and opens it; returns its id. */
    createTrip(draft: Draft, { demo = false } = {}): string {
      return batch(() => {
        const id = add(draft, { demo, typed: {} })
        setLibrary({ open: id })
        return id
      })
    },

    /** Opens a trip; null, or an id that is gone, opens none. */
    openTripById(id: string | null) {
      setLibrary({ open: id !== null && state.trips.peek().has(id) ? id : null })
    },

    /** Puts a copy after its original and returns its id; null where there is no such trip. The open trip stays. */
    duplicateTrip(id: string): string | null {
      const trip = state.trips.peek().get(id)
      if (!trip) return null
      const draft = { ...trip.draft, ...copyName({ name: trip.draft.name || 'Trip' }) }
      const { typed, profile } = trip
      const at = placeAfter(state.library.peek(), id)
      return add(draft, { demo: false, typed, at, ...(profile && { profile }) })
    },

    /** Removes a trip. `restoreTrip` brings the last one back, in this session. */
    removeTrip(id: string) {
      const trip = state.trips.peek().get(id)
      if (!trip) return
      const { order, open } = state.library.peek()
      const at = order.indexOf(id)
      batch(() => {
        const history = state.histories.peek().get(id) ?? emptyHistory()
        state.removed.value = { trip, history, at, wasOpen: open === id }
        state.dropTrip(id)
      })
    },

    restoreTrip() {
      const removed = state.removed.peek()
      if (!removed) return
      batch(() => {
        state.putTrip(removed.trip, removed.at)
        state.putHistory(removed.trip.id, removed.history)
        if (removed.wasOpen) setLibrary({ open: removed.trip.id })
        state.removed.value = null
      })
    },

    /** One undoable edit of the open trip, named by its label. */
    edit(label: string, fn: (draft: Draft) => Draft) {
      const trip = state.openTrip.peek()
      if (!trip) return
      const draft = fn(trip.draft)
      change({ draft, typed: stillTyped(draft, trip.typed) }, { label })
    },

    /**
     * Writes a field of the open trip: its value (undefined: none) and the text that could not be read as one (null:
     * none). Typing on in the same field within 2 s is one undo step.
     */
    setField(path: string, value: unknown, text: string | null) {
      const trip = state.openTrip.peek()
      if (!trip) return
      const { [path]: old, ...others } = trip.typed
      const unread = text === null ? others : { ...others, [path]: text }
      const typed = old === (text ?? undefined) ? trip.typed : unread
      const draft = setField(trip.draft, path, value)
      change({ draft, typed }, { label: describeField(draft, path), path })
    },

    /** Keeps the terrain of the track that the open trip's stops come from, or none. Not a step of its own to undo. */
    setProfile(profile: ProfilePoint[] | null) {
      const trip = state.openTrip.peek()
      if (!trip) return
      const { profile: _old, ...rest } = changed(trip, trip)
      state.putTrip(profile ? { ...rest, profile } : rest)
    },

    undo: () => travel(undone),
    redo: () => travel(redone),
    setSystem: (system: System) => setLibrary({ system }),
    setTheme: (theme: Theme) => setLibrary({ theme }),
    setPlace: (place: ScreenPlace) => setLibrary({ place }),

    dismissStoreProblem() {
      state.storeProblem.value = null
    },
  }
}

/** The typed texts that still belong somewhere: their thing is there, and no value has taken their place. */
function stillTyped(draft: Draft, typed: Typed): Typed {
  const entries = Object.entries(typed)
  const kept = entries.filter(([path]) => hasPlace(draft, path) && fieldAt(draft, path) === undefined)
  return kept.length === entries.length ? typed : Object.fromEntries(kept)
}
