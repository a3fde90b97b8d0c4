// What the screens may use: signals to read, actions to change, and the start of both.

import { computed, type ReadonlySignal } from '@preact/signals'
import type { Shelf, WithDraft } from '../plan/shelf'
import type { Effect, OnTheWay } from '../reckon'
import * as backupSignals from './backup-signals'
import type { Library, RemovedTrip, TripDocument } from './documents'
import type { DryStretches } from './dry-stretches'
import { engine } from './engine'
import { lastDone } from './journal'
import { lastChangeOf } from './last-change'
import type { LastChange, OpenReckoned } from './reckoning'
import { access, actions, flush, loadLazy, newId, startStore, state } from './start'
import type { CopyState, Damaged, SaveState } from './state'
import { notReadyText, updateSignals } from './update-signals'
import type { Updates } from './updates'

export type { Both } from './actions'
export type { Library, RemovedTrip, ScreenPlace, System, Theme, TripDocument } from './documents'
export type { DryStretches } from './dry-stretches'
export { loadEngine } from './engine'
export { afterPaint } from './pace'
export { BESIDE, RECEIVED_CACHE } from './places'
export type { LastChange, OpenParty, OpenReckoned } from './reckoning'
export type { CopyState, Damaged, SaveState } from './state'
export { within } from './within'
export { access, actions, flush, newId, startStore }

export const library: ReadonlySignal<Library> = state.library
export const trips: ReadonlySignal<ReadonlyMap<string, TripDocument>> = state.trips
/** The trips in the reader's order, each with the list of packs in it. */
export const tripList: ReadonlySignal<TripDocument[]> = state.tripsWithPacks
/** The open trip, with the list of packs in it. */
export const openTrip: ReadonlySignal<TripDocument | null> = state.openTrip
/** What is edited: the open trip, or where none is open the packs alone. */
export const edited: ReadonlySignal<WithDraft> = state.edited
/** The packs apart from any trip. */
export const apart: ReadonlySignal<WithDraft> = state.apart
export const reckonedApart: ReadonlySignal<OpenReckoned | null> = state.reckonedApart
/** The one of several people whose figures are shown, by id; null: a lone hiker's. */
export const person: ReadonlySignal<string | null> = state.person
/** The open trip settled and reckoned; null while none is open, or the engine is not there yet. */
export const reckoned: ReadonlySignal<OpenReckoned | null> = state.reckoned
/** What is reckoned is not yet that of what was typed last; for a frame at most. */
export const isBehind: ReadonlySignal<boolean> = state.pace.isBehind
/** Types into a field of the open trip, so that the reckoning follows; and how it does, from the first call of `followTyping`. */
export const { typing, follow: followTyping } = state.pace
/** What the last edit of the open trip, or undoing one, has changed. */
export const lastChange: ReadonlySignal<LastChange | null> = lastChangeOf(() => ({
  trip: state.openTrip.value?.id,
  step: lastDone(state.ownSteps.value)?.id,
  open: state.reckoned.value,
  changeBetween: engine.value?.changeBetween ?? null,
}))
export const saveState: ReadonlySignal<SaveState> = state.saveState
/** What went wrong with stored records, in words, until `actions.dismissStoreProblem`. */
export const storeProblem: ReadonlySignal<string | null> = state.storeProblem
/** Whether the stored trips have been read. */
export const storeLoaded: ReadonlySignal<boolean> = state.loaded
/** Stored records that are damaged and left alone until they are discarded. */
export const damagedRecords: ReadonlySignal<Damaged[]> = state.damaged
/** The second copy of the trips, outside the database. */
export const secondCopy: ReadonlySignal<CopyState> = state.copy
/** The trips removed last, at most ten, which `actions.restoreTrip` brings back. */
export const removedTrips: ReadonlySignal<RemovedTrip[]> = state.removedTrips
/** Everything one owns, bases, and packings. */
export const shelf: ReadonlySignal<Shelf> = state.shelf
export const canUndo: ReadonlySignal<boolean> = state.canUndo
export const canRedo: ReadonlySignal<boolean> = state.canRedo
/** What undo would take back, in words. */
export const lastLabel: ReadonlySignal<string | null> = state.lastLabel
/** What redo would bring again, in words. */
export const redoLabel: ReadonlySignal<string | null> = state.redoLabel
/** What undo has just taken back, in words, until something else is done. */
export const justUndone: ReadonlySignal<string | null> = state.justUndone

/** The reminder to save a backup file, in words; null: none is due. */
export const dueBackup: ReadonlySignal<string | null> = backupSignals.dueBackup
/** Why the last snapshot could not be kept, in words. */
export const snapshotProblem: ReadonlySignal<string | null> = backupSignals.snapshotProblem
/** Changes whenever a snapshot was taken, or a backup file noted. */
export const backupsChanged: ReadonlySignal<number> = backupSignals.backupsChanged

const signals = updateSignals()
const container = import.meta.env.PROD ? globalThis.navigator?.serviceWorker : undefined
export const updateWaiting: ReadonlySignal<boolean> = signals.updateWaiting
export const offlineReady: ReadonlySignal<boolean> = signals.offlineReady
export const updateProblem: ReadonlySignal<string | null> = signals.updateProblem
/** The whole app is being stored, and this page is not served from there yet. */
export const isStoring: ReadonlySignal<boolean> = computed(
  () => container !== undefined && !offlineReady.value && updateProblem.value === null,
)

let updates: Updates | null = null

/** Registers the service worker. Its code is not needed for the first picture, so it comes after it. Never rejects. */
export async function startUpdates(): Promise<void> {
  const environment = {
    container,
    settleEdits: async () => {
      await flush()
      const isEmpty = state.trips.peek().size === 0 && state.shelf.peek().changedAt === 0
      return state.saveState.peek().kind === 'saved' || isEmpty
    },
    reload: () => location.reload(),
  }
  try {
    updates = (await loadLazy()).createUpdates(environment, signals)
    await updates.start()
  } catch (error) {
    signals.updateProblem.value = notReadyText(error)
  }
}

/** Goes over to the new version that waits; false when edits could not be saved first. */
export const applyUpdate = async (): Promise<boolean> => (await updates?.applyUpdate()) ?? false

/** The stretches between sources of the open trip, a step at a time; nothing while there is none, or no engine. */
export function* dryStretchSteps(): Generator<DryStretches, void> {
  const open = state.reckoned.peek()
  if (open && engine.value) yield* engine.value.openDryStretches(open)
}

/** What each thing of the open trip costs, an item a step; nothing while there is none, or no engine. */
export function* effectSteps(): Generator<Effect, void> {
  const open = state.reckoned.peek()
  if (open && engine.value) yield* engine.value.openEffects(open)
}

/** What should be left on leaving a stop of the open trip, by its index; null where it cannot be told. */
export const onTheWayAt = (open: OpenReckoned, stop: number): OnTheWay | null =>
  engine.value?.openOnTheWay(open, stop) ?? null
