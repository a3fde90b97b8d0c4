// The documents as the database holds them.

import type { ProfilePoint } from '../files'
import type { Draft, TRIP_FORMAT, TRIP_VERSION, Typed } from '../plan'
import type { Shelf } from '../plan/shelf'
import type { Patch } from './patch'

export interface TripDocument {
  format: typeof TRIP_FORMAT
  version: typeof TRIP_VERSION
  id: string
  demo: boolean
  /** Milliseconds since 1970; no two states of a trip share it. */
  changedAt: number
  /** Counts the saves of this trip, in whichever tab. */
  revision: number
  draft: Draft
  typed: Typed
  /** The terrain of the track that the stops were made from. Plan files do not carry it. */
  profile?: ProfilePoint[]
}

export type System = 'metric' | 'us'
export type Theme = 'auto' | 'light' | 'dark'

/** Where the reader was: the screen, what was open on it, and how far it was scrolled. */
export interface ScreenPlace {
  screen: string
  detail: string | null
  scrollY: number
}

export interface Library {
  format: 'pack-reckoner/library'
  version: 1
  open: string | null
  order: string[]
  system: System
  theme: Theme
  /** Black on white, with larger small print. */
  brightSun?: boolean | undefined
  /** All that can be touched is larger, for gloves and rain. */
  largeTargets?: boolean | undefined
  /** The columns chosen for the table of packs; absent: the usual ones. */
  packColumns?: string[] | undefined
  place: ScreenPlace
  /** Of several people the one whose figures are shown, by id. */
  person?: string
  /** It was said on this device that figures can be asked. */
  toldWhy?: boolean
}

/** What a step changed, and where. `forth` as it was made, `back` to take it back. */
export type StepPart =
  | { on: 'trip'; id: string; patch: Patch }
  | { on: 'shelf'; patch: Patch }
  /** A trip moved in the list, from one index to another. */
  | { on: 'order'; id: string; from: number; to: number }
  /** A trip that came into the list (`here`) or left it, at this index; `open`: it is or was open there. */
  | { on: 'list'; id: string; here: boolean; at: number; open: boolean; before: string | null }

/** One step that undo can take back, or redo bring again. */
export interface Step {
  format: 'pack-reckoner/step'
  version: 2
  id: string
  label: string
  /** Milliseconds since 1970; no two steps of a tab share it. */
  at: number
  undone: boolean
  parts: StepPart[]
}

/** A trip that was removed, or whose making was undone, as it was. */
export interface RemovedTrip {
  format: 'pack-reckoner/removed'
  version: 5
  trip: TripDocument
  /** When, in milliseconds since 1970. */
  at: number
  how: 'removed' | 'undone'
}

/** The undo steps of one trip as they were kept before the journal: each with the whole state it leads to. */
export interface History {
  format: 'pack-reckoner/history'
  version: 2
  past: { label: string; at: number; draft: Draft; typed: Typed }[]
  future: { label: string; at: number; draft: Draft; typed: Typed }[]
}

/** What was unsaved when a page went away. */
export interface Unsaved {
  format: 'pack-reckoner/parting'
  version: 6
  /** Trips, and the states of each that it may replace, by their `changedAt`. */
  trips: { document: TripDocument; over: number[] }[]
  /** Of the shelf only what differs: as it is, and the states it was made from, of which the last may be stored or not. */
  shelf: { before: Shelf[]; after: Shelf } | null
  steps: Step[]
}

export const emptyLibrary = (): Library => ({
  format: 'pack-reckoner/library',
  version: 1,
  open: null,
  order: [],
  system: 'metric',
  theme: 'auto',
  place: { screen: 'trip', detail: null, scrollY: 0 },
})
