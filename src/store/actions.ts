// Everything the screens can do to the stored state. Each action is one change, saved by persist.ts in the background.

import { batch } from '@preact/signals'
import type { ProfilePoint } from '../files'
import {
  copyName,
  type Draft,
  emptyDraft,
  setField,
  stillTyped,
  TRIP_FORMAT,
  TRIP_VERSION,
  type Typed,
  withoutLog,
  withoutLogTexts,
} from '../plan'
import { parted, type Shelf, setThingFact, thingPath, type WithDraft } from '../plan/shelf'
import type { Library, ScreenPlace, StepPart, System, Theme, TripDocument } from './documents'
import { describeField, engine } from './engine'
import { erasedNote } from './erased'
import {
  bringBack,
  changed,
  lastDone,
  lastUndone,
  moved,
  partsBetween,
  pruned,
  shelfParts,
  stepOf,
  takeAway,
  touched,
  travelled,
  type World,
} from './journal'
import { placeAfter } from './library'
import type { State } from './state'

export interface Clock {
  now: () => number
  newId: () => string
}

/** The open trip's draft and the shelf, where one tap changes both. */
export interface Both {
  draft: Draft
  shelf: Shelf
}

export type Actions = ReturnType<typeof createActions>

/** Typing that goes on in the same field within this time is one step. */
const JOIN_MS = 2000

export function createActions(state: State, { now, newId }: Clock) {
  /** The step that typing on would join. */
  let typing: { step: string; path: string; at: number } | null = null

  const setLibrary = (part: Partial<Omit<Library, 'format' | 'version' | 'order'>>) => {
    state.library.value = { ...state.library.peek(), ...part }
  }

  /** Goes over to the next world in one step of the journal; what changes nothing is no step. */
  function commit(made: World, { label, path, list }: { label: string; path?: string; list?: StepPart }) {
    const world = state.world()
    const next = state.withPacksListed(made, now())
    const journal = state.journal.peek()
    const own = state.ownSteps.peek()
    const last = lastDone(own)
    const at = now()
    const joined = typing && path === typing.path && last?.id === typing.step && at - typing.at <= JOIN_MS
    const start = joined && last === own.at(-1) ? travelled(world, last!, 'back', at) : null
    const parts = list ? [list, ...shelfParts(world.shelf, next.shelf)] : partsBetween(start ?? world, next)
    if (parts.length === 0 && !start) return
    const id = start ? last!.id : newId()
    const step = stepOf(journal, { id, label, parts, now: at })
    typing = path === undefined ? null : { step: id, path, at }
    batch(() => {
      if (parts.length > 0) state.record(start ? { ...step, at: last!.at } : step)
      // Typed back to what it was: nothing is left to take back.
      else state.journal.value = journal.filter(other => other !== last)
      state.putWorld({ ...next, removed: pruned(next.removed, state.journal.peek()) })
    })
  }

  /** The world with the open trip as it was edited: what is of the list of packs goes there. */
  function withOpen(world: World, edited: WithDraft): World {
    const trip = world.trips.get(world.open ?? '')
    if (!trip) return withShelf(world, parted(edited, { ...NO_TRIP, shelf: world.shelf }).shelf)
    const { draft, typed, shelf } = parted(edited, { ...trip, shelf: world.shelf })
    const isSame = draft === trip.draft && typed === trip.typed
    const trips = isSame
      ? world.trips
      : new Map(world.trips).set(trip.id, touched({ ...trip, draft, typed }, now()))
    return withShelf({ ...world, trips }, shelf)
  }

  const withShelf = (world: World, shelf: Shelf): World =>
    shelf === world.shelf ? world : { ...world, shelf: touched(shelf, now()) }

  function travel(way: 'back' | 'forth') {
    typing = null
    for (;;) {
      const journal = state.journal.peek()
      const own = state.ownSteps.peek()
      const step = way === 'back' ? lastDone(own) : lastUndone(own)
      if (!step) return
      const next = travelled(state.world(), step, way, now())
      state.justUndone.value = way === 'back' && next ? state.lastLabel.peek() : null
      // Another tab has changed the same since: the step has no place any more, the one before it may.
      state.journal.value = journal.flatMap(other =>
        other !== step ? other : next ? { ...step, undone: way === 'back' } : [],
      )
      if (next) return state.putWorld(next)
    }
  }

  function add(
    draft: Draft,
    { label, open, at, ...rest }: Pick<TripDocument, 'demo' | 'typed' | 'profile'> & AddNote,
  ): string {
    const id = newId()
    const head = { format: TRIP_FORMAT, version: TRIP_VERSION, id, changedAt: now(), revision: 0 } as const
    const trip: TripDocument = { ...head, draft, ...rest }
    const world = state.world()
    const place = at ?? world.order.length
    const next: World = {
      ...world,
      trips: new Map(world.trips).set(id, trip),
      order: world.order.toSpliced(place, 0, id),
      open: open ? id : world.open,
    }
    const list: StepPart = { on: 'list', id, here: true, at: place, open, before: world.open }
    commit(next, { label: `${label} trip${nameIn(draft)}`, list })
    return id
  }

  return {
    /** Adds a trip and opens it; returns its id. */
    createTrip: (draft: Draft, { demo = false } = {}): string =>
      add(draft, { demo, typed: {}, label: 'Add', open: true }),

    /** Opens a trip; null, or an id that is gone, opens none. */
    openTripById(id: string | null) {
      setLibrary({ open: id !== null && state.trips.peek().has(id) ? id : null })
    },

    /** Puts a copy after its original and returns its id; null where there is no such trip. The open trip stays. */
    duplicateTrip(id: string): string | null {
      const trip = state.trips.peek().get(id)
      if (!trip) return null
      const draft = { ...withoutLog(trip.draft), ...copyName({ name: trip.draft.name || 'Trip' }) }
      const { profile } = trip
      const typed = withoutLogTexts(trip.typed)
      const at = placeAfter(state.library.peek(), id)
      return add(draft, { demo: false, typed, at, label: 'Add', open: false, ...(profile && { profile }) })
    },

    /** Removes a trip. It is kept among the removed ones, for undo and `restoreTrip`. */
    removeTrip(id: string) {
      const world = state.world()
      const part = { on: 'list', id, here: false, at: world.order.indexOf(id), before: null } as const
      const next = changed(world, open => takeAway(open, part, { at: now(), how: 'removed' }))
      if (!next) return
      const label = `Delete trip${nameIn(world.trips.get(id)!.draft) || ' without a name'}`
      commit(next, { label, list: { ...part, open: world.open === id } })
    },

    /** Brings a removed trip back, at the end of the list. */
    restoreTrip(id: string) {
      const world = state.world()
      const part = { on: 'list', id, here: true, at: world.order.length, open: false, before: null } as const
      const next = changed(world, open => bringBack(open, part))
      if (next) commit(next, { label: `Bring back trip${nameIn(next.trips.get(id)!.draft)}`, list: part })
    },

    /** Erases a removed trip for good, with the steps that mention it; see `store/lazy` for what lies elsewhere. */
    eraseTrip(id: string) {
      if (!state.removed.peek().has(id)) return
      typing = null
      state.erase([[id, erasedNote(now())]])
    },

    /** Moves a trip to another index of the list that is shown. */
    moveTrip(id: string, to: number) {
      const world = state.world()
      const from = world.order.indexOf(id)
      // Trips that cannot be read are not shown, and keep their places.
      const shown = world.order.filter(other => world.trips.has(other))
      const target = world.order.indexOf(shown[Math.min(Math.max(0, to), shown.length - 1)] ?? id)
      if (from < 0 || from === target) return
      const next = { ...world, order: moved(world.order, id, target) }
      const label = `Move trip${nameIn(world.trips.get(id)?.draft)}`
      commit(next, { label, list: { on: 'order', id, from, to: target } })
    },

    /** One undoable edit of the open trip and the packs, named by its label; where none is open, of the packs alone. */
    edit(label: string, fn: (draft: Draft) => Draft) {
      const edited = state.edited.peek()
      const draft = fn(edited.draft)
      commit(withOpen(state.world(), { draft, typed: stillTyped(draft, edited.typed) }), { label })
    },

    /** One undoable edit of the shelf, named by its label. Typing on at the same `path` within 2 s joins it. */
    editShelf(label: string, fn: (shelf: Shelf) => Shelf, path?: string) {
      const joins = path === undefined ? {} : { path: `shelf/${path}` }
      commit(withShelf(state.world(), fn(state.shelf.peek())), { label, ...joins })
    },

    /** One undoable edit of the open trip and the shelf together; of its unread texts too, where those are given back. */
    editBoth(label: string, fn: (both: Both & { typed: Typed }) => Both & { typed?: Typed }) {
      const trip = state.openTrip.peek()
      if (!trip) return
      const both = { draft: trip.draft, typed: trip.typed, shelf: state.shelf.peek() }
      const { draft, shelf, typed = both.typed } = fn(both)
      const world = withShelf(state.world(), shelf)
      commit(withOpen(world, { draft, typed: stillTyped(draft, typed) }), { label })
    },

    /**
     * Writes a field of the open trip or of a pack: its value (undefined: none) and the text that could not be read as one (null:
     * none). Typing on in the same field within 2 s is one undo step.
     */
    setField(path: string, value: unknown, text: string | null) {
      const edited = state.edited.peek()
      const draft = setField(edited.draft, path, value)
      const next = withOpen(state.world(), { draft, typed: withText(edited.typed, path, text) })
      commit(next, { label: describeField(draft, path), path: `${state.library.peek().open}/${path}` })
    },

    /** As `setField`, for a fact of a thing on the shelf: `massKg`, `fuel/boilLitres`. */
    setThingField(id: string, field: string, value: unknown, text: string | null) {
      const before = state.shelf.peek()
      const thing = before.things.find(other => other.id === id)
      if (!thing) return
      const made = setThingFact(before, id, { field, value, now: now() })
      const typed = withText(before.typed, thingPath(id, field), text)
      const shelf = typed === before.typed ? made : { ...made, typed }
      const label = `${thing.item.name?.trim() || 'Unnamed item'}, ${engine.peek()?.fieldWord(field) ?? 'change'} (on the shelf)`
      commit(withShelf(state.world(), shelf), { label, path: `shelf/${thingPath(id, field)}` })
    },

    /** Keeps the terrain of the track that the open trip's stops come from, or none. Not a step of its own to undo. */
    setProfile(profile: ProfilePoint[] | null) {
      const trip = state.storedOpen.peek()
      if (!trip) return
      const { profile: _old, ...rest } = touched(trip, now())
      state.putTrip(profile ? { ...rest, profile } : rest)
    },

    /** Takes back this tab's latest change of any trip, the shelf, or the list of trips; opens the trip it was made in. */
    undo: () => batch(() => travel('back')),
    /** Brings again what was undone last. */
    redo: () => batch(() => travel('forth')),
    setSystem: (system: System) => setLibrary({ system }),
    setTheme: (theme: Theme) => setLibrary({ theme }),
    setBrightSun: (brightSun: boolean) => setLibrary({ brightSun }),
    setLargeTargets: (largeTargets: boolean) => setLibrary({ largeTargets }),
    setPackColumns: (packColumns: string[]) => setLibrary({ packColumns }),
    /** Shows the figures of one of several people. */
    setPerson: (person: string) => setLibrary({ person }),
    setPlace: (place: ScreenPlace) => setLibrary({ place }),
    /** Once for all: a visit that says nothing new writes nothing. */
    noteToldWhy() {
      if (!state.library.peek().toldWhy) setLibrary({ toldWhy: true })
    },

    dismissStoreProblem() {
      state.storeProblem.value = null
    },
  }
}

interface AddNote {
  label: string
  /** Whether it is opened. */
  open: boolean
  at?: number
}

/** What stands in for the trip where none is open. */
const NO_TRIP = { draft: emptyDraft(), typed: {} }

const nameIn = (draft: Draft | undefined) => (draft?.name ? ` “${draft.name}”` : '')

function withText(typed: Typed, path: string, text: string | null): Typed {
  const { [path]: old, ...others } = typed
  if (old === (text ?? undefined)) return typed
  return text === null ? others : { ...others, [path]: text }
}
