// What the store does after the first picture or when something has gone wrong: one download, entered only with
// import(). It reaches for the whole store, so that none of it has to be split off for this.

import { access, actions, flush, newId } from '..'
import { copyTurn, openVault, startSecondCopy } from '../second-copy'
import { dropOthersWords, isAnew, startAnew } from '../session'
import { openPlace } from '../snapshots-place'
import { createStorageStatus, type StorageStatus } from '../storage-status'
import { type Backups, createBackups } from './backups'
import { createErasing, type Erasing } from './erase'
import { followSaves, pageEnvironment, snapshotTurn } from './snapshots-page'

export { sortRecords } from '../load'
export { readEach } from '../read-damaged'
export { startAnew } from '../session'
export type { Snapshot } from '../snapshots'
export type { Facts, FileNote, StorageStatus } from '../storage-status'
export { readSaved } from '../tabs-read'
export { createUpdates } from '../updates'
export { writeChanges } from '../write'
export { type Backups, snapshotText, type TakenIn } from './backups'
export type { Erasing } from './erase'

/** Looks after the second copy from now on. Never rejects: see `secondCopy`. */
export async function startCopy(lost: () => boolean): Promise<void> {
  const open = access()
  const kept = backups()
  if (!open || !kept) return
  const { state } = open
  if (isAnew()) state.tell(ANEW_TEXT)
  if (state.loaded.peek()) dropOthersWords(id => state.trips.peek().has(id) || state.removed.peek().has(id))
  const left = await erasing()?.goOn()
  // What is not erased yet would come back as lost.
  if (left) return state.tell(left)
  followSaves(kept, open)
  await startSecondCopy({ ...open, now: Date.now, newId, flush, lost })
}

/** What the reader can do for the safety of the trips; null before the store was started. */
export function storageStatus(): StorageStatus | null {
  const open = access()
  return open && createStorageStatus(open)
}

const ANEW_TEXT =
  'Everything that Pack Reckoner kept on this device is erased. Files and links that you saved or gave away are not.'

/** What erases for good; null before the store was started. */
export function erasing(): Erasing | null {
  const open = access()
  const kept = backups()
  if (!open || !kept) return null
  const environment = { copyTurn, snapshotTurn, openVault, openPlace, startAnew, now: Date.now }
  return createErasing({ ...open, ...environment, flush, actions, snapshots: kept.snapshots })
}

let made: Backups | null = null

/** Backups and snapshots; null before the store was started. */
export function backups(): Backups | null {
  const open = access()
  if (open) made ??= createBackups({ ...open, ...pageEnvironment(), newId })
  return made
}
