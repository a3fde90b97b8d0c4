// Where snapshots lie: a folder apart from the database and from the second copy. Nothing here is waited for for long:
// edits and restoring go on without it.

import { type Folder, openFolder } from './folder'
import { SNAPSHOT_FOLDER } from './places'

export interface Place extends Folder {
  write(name: string, contents: Blob): Promise<void>
}

/** Null where the browser offers no place. Rejects when it does not answer, or does not let the app use it. */
export const openPlace = (): Promise<Place | null> =>
  openFolder(SNAPSHOT_FOLDER, { answerMs: 900, writeMs: 3000 })
