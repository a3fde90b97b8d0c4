// What the store does after the first picture or when something has gone wrong: one download, entered only with
// import(). It reaches for the whole store, so that none of it has to be split off for this.

import { access, flush, newId } from '..'
import { createKeeping, type Keeping } from '../keeping'
import { startShadow } from '../shadow-page'

export type { Facts, FileNote, Keeping } from '../keeping'
export { readEach } from '../rescue'
export { createUpdates } from '../updates'

/** Looks after the second copy from now on. Never rejects: see `secondCopy`. */
export async function startCopy(lost: () => boolean): Promise<void> {
  const open = access()
  if (open) await startShadow({ ...open, now: Date.now, newId, flush, lost })
}

/** What the reader can do for the safety of the trips; null before the store was started. */
export function keeping(): Keeping | null {
  const open = access()
  return open && createKeeping(open)
}
