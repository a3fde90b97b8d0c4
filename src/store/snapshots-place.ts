// Where snapshots lie: a folder apart from the database and from the second copy. Nothing here is waited for for long:
// edits and restoring go on without it.

import { type Folder, openFolder } from './folder'

const FOLDER = 'pack-reckoner-snapshots'
const PATIENCE_MS = 900
const WRITE_MS = 3000

export interface Place extends Folder {
  write(name: string, contents: Blob): Promise<void>
}

/** Null where the browser offers no place. Rejects when it does not answer, or does not let the app use it. */
export const openPlace = (): Promise<Place | null> =>
  within(openFolder(FOLDER)).then(place => place && patient(place))

/** The promise's own outcome, or a rejection with a `TimeoutError` when it takes too long. */
export function within<T>(promise: Promise<T>, ms = PATIENCE_MS): Promise<T> {
  return new Promise((resolve, reject) => {
    const late = () => reject(new DOMException('no answer', 'TimeoutError'))
    const timer = setTimeout(late, ms)
    promise.then(resolve, reject).finally(() => clearTimeout(timer))
  })
}

const patient = ({ names, read, write, remove }: Folder): Place => ({
  names: () => within(names()),
  read: name => within(read(name)),
  write: (name, contents) => within(write(name, contents), WRITE_MS),
  remove: name => within(remove(name)),
})
