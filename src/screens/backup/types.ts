// What every reader of a file from outside is given.

export interface OpenerProps {
  file: File
  /** Called when the file is done with, taken in or not. */
  onDone: () => void
}
