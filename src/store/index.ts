// What the screens may use: signals to read, actions to change, and the start of both.

import type { ReadonlySignal } from '@preact/signals'
import type { Library, TripDocument } from './documents'
import { actions, flush, newId, startStore, state } from './start'
import type { OpenReckoned, Removed, SaveState } from './state'
import { createUpdates } from './updates'

export type { Library, ScreenPlace, System, Theme, TripDocument } from './documents'
export type { OpenReckoned, Removed, SaveState } from './state'
export { actions, flush, newId, startStore }

export const library: ReadonlySignal<Library> = state.library
export const trips: ReadonlySignal<ReadonlyMap<string, TripDocument>> = state.trips
/** The trips in the reader's order. */
export const tripList: ReadonlySignal<TripDocument[]> = state.tripList
export const openTrip: ReadonlySignal<TripDocument | null> = state.openTrip
/** The open trip settled and reckoned; null while none is open. */
export const reckoned: ReadonlySignal<OpenReckoned | null> = state.reckoned
export const saveState: ReadonlySignal<SaveState> = state.saveState
/** What went wrong with stored records, in words, until `actions.dismissStoreProblem`. */
export const storeProblem: ReadonlySignal<string | null> = state.storeProblem
/** Whether the stored trips have been read. */
export const storeLoaded: ReadonlySignal<boolean> = state.loaded
/** The trip removed last, which `actions.restoreTrip` brings back. */
export const removedTrip: ReadonlySignal<Removed | null> = state.removed
export const canUndo: ReadonlySignal<boolean> = state.canUndo
export const canRedo: ReadonlySignal<boolean> = state.canRedo
/** What undo would take back, in words. */
export const lastLabel: ReadonlySignal<string | null> = state.lastLabel

const updates = createUpdates({
  container: import.meta.env.PROD ? globalThis.navigator?.serviceWorker : undefined,
  settleEdits: async () => {
    await flush()
    return state.saveState.peek().kind === 'saved' || state.trips.peek().size === 0
  },
  reload: () => location.reload(),
})

export const updateWaiting: ReadonlySignal<boolean> = updates.updateWaiting
export const offlineReady: ReadonlySignal<boolean> = updates.offlineReady
export const updateProblem: ReadonlySignal<string | null> = updates.updateProblem
export const { start: startUpdates, applyUpdate } = updates
