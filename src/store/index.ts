// What the screens may use: signals to read, actions to change, and the start of both.

import type { ReadonlySignal } from '@preact/signals'
import type { Library, TripDocument } from './documents'
import type { Keeping } from './keeping'
import { access, actions, flush, newId, startStore, state } from './start'
import type { CopyState, Damaged, OpenReckoned, Removed, SaveState } from './state'
import { createUpdates } from './updates'

export type { Library, ScreenPlace, System, Theme, TripDocument } from './documents'
export { type DryStretches, dryStretches } from './dry-stretches'
export type { Facts, FileNote, Keeping } from './keeping'
export type { CopyState, Damaged, OpenReckoned, Removed, SaveState } from './state'
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
/** Stored records that are damaged and left alone until they are discarded. */
export const damagedRecords: ReadonlySignal<Damaged[]> = state.damaged
/** The second copy of the trips, outside the database. */
export const secondCopy: ReadonlySignal<CopyState> = state.copy
/** What the reader can do for the safety of the trips. Rejects when its code cannot be loaded; null before the start. */
export const keeping = async (): Promise<Keeping | null> =>
  access && (await import('./keeping')).createKeeping(access)
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
