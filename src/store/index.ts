// What the screens may use: signals to read, actions to change, and the start of both.

import type { ReadonlySignal } from '@preact/signals'
import type { Library, TripDocument } from './documents'
import type { OpenReckoned } from './reckoning'
import { access, actions, flush, loadLater, newId, startStore, state } from './start'
import type { CopyState, Damaged, Removed, SaveState } from './state'
import { notReadyText, updateSignals } from './update-signals'
import type { Updates } from './updates'

export type { Library, ScreenPlace, System, Theme, TripDocument } from './documents'
export { type DryStretches, dryStretchSteps } from './dry-stretches'
export { loadEngine } from './engine'
export type { OpenReckoned } from './reckoning'
export type { CopyState, Damaged, Removed, SaveState } from './state'
export { access, actions, flush, newId, startStore }

export const library: ReadonlySignal<Library> = state.library
export const trips: ReadonlySignal<ReadonlyMap<string, TripDocument>> = state.trips
/** The trips in the reader's order. */
export const tripList: ReadonlySignal<TripDocument[]> = state.tripList
export const openTrip: ReadonlySignal<TripDocument | null> = state.openTrip
/** The open trip settled and reckoned; null while none is open, or the engine is not there yet. */
export const reckoned: ReadonlySignal<OpenReckoned | null> = state.reckoned
export const saveState: ReadonlySignal<SaveState> = state.saveState
/** What went wrong with stored records, in words, until `actions.dismissStoreProblem`. */
export const storeProblem: ReadonlySignal<string | null> = state.storeProblem
/** Whether the stored trips have been read. */
export const storeLoaded: ReadonlySignal<boolean> = state.loaded
/** Stored records that are damaged and left alone until they are discarded. */
export const damagedRecords: ReadonlySignal<Damaged[]> = state.damaged
/** The second copy of the trips, outside the database. */
export const secondCopy: ReadonlySignal<CopyState> = state.copy
/** The trip removed last, which `actions.restoreTrip` brings back. */
export const removedTrip: ReadonlySignal<Removed | null> = state.removed
export const canUndo: ReadonlySignal<boolean> = state.canUndo
export const canRedo: ReadonlySignal<boolean> = state.canRedo
/** What undo would take back, in words. */
export const lastLabel: ReadonlySignal<string | null> = state.lastLabel

const signals = updateSignals()
export const updateWaiting: ReadonlySignal<boolean> = signals.updateWaiting
export const offlineReady: ReadonlySignal<boolean> = signals.offlineReady
export const updateProblem: ReadonlySignal<string | null> = signals.updateProblem

let updates: Updates | null = null

/** Registers the service worker. Its code is not needed for the first picture, so it comes after it. Never rejects. */
export async function startUpdates(): Promise<void> {
  const environment = {
    container: import.meta.env.PROD ? globalThis.navigator?.serviceWorker : undefined,
    settleEdits: async () => {
      await flush()
      return state.saveState.peek().kind === 'saved' || state.trips.peek().size === 0
    },
    reload: () => location.reload(),
  }
  try {
    updates = (await loadLater()).createUpdates(environment, signals)
    await updates.start()
  } catch (error) {
    signals.updateProblem.value = notReadyText(error)
  }
}

/** Goes over to the new version that waits; false when edits could not be saved first. */
export const applyUpdate = async (): Promise<boolean> => (await updates?.applyUpdate()) ?? false
