// What the store does after the first picture or when something has gone wrong: one download, entered only with
// import(). It reaches for the whole store, so that none of it has to be split off for this.

import { access, flush, newId } from '..'
import { createKeeping, type Keeping } from '../keeping'
import { startShadow } from '../shadow-page'
import { type Backups, createBackups } from './backups'
import { followSaves, pageEnvironment } from './snapshots-page'

export type { Facts, FileNote, Keeping } from '../keeping'
export { readEach } from '../rescue'
export type { Snapshot } from '../snapshots'
export { readSaved } from '../tabs-read'
export { createUpdates } from '../updates'
export { type Backups, snapshotText, type TakenIn } from './backups'

/** Looks after the second copy from now on. Never rejects: see `secondCopy`. */
export async function startCopy(lost: () => boolean): Promise<void> {
  const open = access()
  const kept = backups()
  if (open && kept) followSaves(kept, open)
  if (open) await startShadow({ ...open, now: Date.now, newId, flush, lost })
}

/** What the reader can do for the safety of the trips; null before the store was started. */
export function keeping(): Keeping | null {
  const open = access()
  return open && createKeeping(open)
}

let made: Backups | null = null

/** Backups and snapshots; null before the store was started. */
export function backups(): Backups | null {
  const open = access()
  if (open) made ??= createBackups({ ...open, ...pageEnvironment(), newId })
  return made
}
