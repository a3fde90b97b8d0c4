// What the parts of the second copy work with, and the form in which a record goes into it.

import type { UseStore } from 'idb-keyval'
import { emptyLibrary, type Library } from '../documents'
import { areaOf, LIBRARY_KEY, PLACES } from '../record-places'
import type { SavedRecords } from '../saved-records'
import type { State } from '../state'
import type { Known } from '../write'
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

export function isCopied(key: string, { revision, isBase }: Known): boolean {
  const area = areaOf(key)
  const copied = area && PLACES[area].copied
  return !isBase && (copied === 'always' || (copied === 'saved' && revision > 0))
}
