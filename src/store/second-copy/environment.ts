// What the parts of the second copy work with, and the form in which a record goes into it.

import type { UseStore } from 'idb-keyval'
import { emptyLibrary, type Library } from '../documents'
import type { SavedRecords } from '../saved-records'
import type { State } from '../state'
import { isTripKey, type Known, LIBRARY_KEY, SHELF_KEY } from '../write'
import type { Vault } from './vault'

export interface CopyEnvironment {
  state: State
  records: SavedRecords
  use: UseStore
  now: () => number
  newId: () => string
  vault: Vault
  /** Whether the browser said that it had thrown the database away as damaged. */
  lost: () => boolean
  /** Runs one piece of work at a time, over all tabs where the browser has locks. */
  alone: (work: () => Promise<void>) => Promise<void>
}

/** A record as the database has it: its revision is counted when it is written. Where the reader was is not copied. */
export const recordOf = (key: string, { value, revision }: Known): object =>
  key === LIBRARY_KEY ? { ...(value as Library), place: emptyLibrary().place } : { ...value, revision }

/** Trips, the list of them, and a shelf that was ever saved are copied; undo steps and removed trips are not. */
export const isCopied = (key: string, { revision }: Known) =>
  isTripKey(key) || key === LIBRARY_KEY || (key === SHELF_KEY && revision > 0)
