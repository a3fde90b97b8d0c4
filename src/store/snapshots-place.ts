// Where snapshots lie: a folder apart from the database and from the second copy. Nothing here is waited for for long:
// edits and restoring go on without it.

import { type Folder, openFolder } from './folder'

export interface Place extends Folder {
  write(name: string, contents: Blob): Promise<void>
}

/** Null where the browser offers no place. Rejects when it does not answer, or does not let the app use it. */
export const openPlace = (): Promise<Place | null> =>
  openFolder('pack-reckoner-snapshots', { answerMs: 900, writeMs: 3000 })
