// What was found in the database.

import type { Shelf } from '../plan/shelf'
import type { Library, RemovedTrip, Step, TripDocument, Unsaved } from './documents'
import type { Erased } from './erased'
import type { Damaged } from './state'

export interface Loaded {
  library: Library | null
  /** As stored. */
  trips: Map<string, TripDocument>
  shelf: Shelf | null
  removed: Map<string, RemovedTrip>
  steps: Step[]
  /** Trips as a page left them without saving; they take the place of the stored ones, or are new. */
  unsaved: TripDocument[]
  /** What pages had not saved of the shelf. */
  shelfLeft: NonNullable<Unsaved['shelf']>[]
  /** Steps that are not stored as such yet. */
  unsavedSteps: Step[]
  /** Keys of damaged records that are to be written anew. */
  anew: Set<string>
  /** Records that have served: to be deleted. */
  done: string[]
  /** Keys whose records cannot be read: never written. */
  unread: string[]
  /** Those of them that are damaged, and what they are, in words. */
  damaged: Damaged[]
  /** Keys of trips removed on purpose, and their last revision. */
  gone: [string, number][]
  /** Trips erased for good. */
  erased: [string, Erased][]
  /** The erasure of everything, if there was one. */
  allErased: Erased | null
  problems: string[]
}

/** Of an empty database. */
export const nothingLoaded = (): Loaded => ({
  library: null,
  trips: new Map(),
  shelf: null,
  removed: new Map(),
  steps: [],
  unsaved: [],
  shelfLeft: [],
  unsavedSteps: [],
  anew: new Set(),
  done: [],
  unread: [],
  damaged: [],
  gone: [],
  erased: [],
  allErased: null,
  problems: [],
})
