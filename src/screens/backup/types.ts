// What every reader of a file from outside is given.

/** Tells a snapshot of this device, opened like a file, from one. */
export const SNAPSHOT_TYPE = 'application/x-pack-reckoner-snapshot'

export interface OpenerProps {
  file: File
  /** Called when the file is done with, taken in or not. */
  onDone: () => void
}
