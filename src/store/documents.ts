// The records as the database holds them, and how a stored one is read: format, version, migrations, shape.
// Strict about structure, lenient about a draft's values: `settle` copes with those.

import * as z from 'zod/mini'
import type { ProfilePoint } from '../files'
import { type Draft, type Typed, withoutOldNo } from '../plan'
import type { Shelf } from '../plan/shelf'
import type { Patch } from './patch'

export interface TripDocument {
  format: 'pack-reckoner/trip'
  version: 2
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
  place: ScreenPlace
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
  version: 2
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
  version: 3
  /** Trips, and the states of each that it may replace, by their `changedAt`. */
  trips: { document: TripDocument; over: number[] }[]
  /** Of the shelf only what differs: as it is, and the states it was made from, of which the last may be stored or not. */
  shelf: { before: Shelf[]; after: Shelf } | null
  steps: Step[]
}

/** A kind of record: its current shape, and how each older version becomes the next (`ladder[0]`: 1 to 2). */
export interface Kind<T> {
  format: string
  ladder: readonly ((old: unknown) => unknown)[]
  shape: z.ZodMiniType<unknown>
  /** Names the type that `shape` stands for. */
  type?: T
}

export type ReadRecord<T> =
  | { ok: true; value: T }
  | { ok: false; reason: 'newer' | 'damaged'; message: string }

const list = <T extends z.core.SomeType>(entry: T) => z.array(entry)
const thing = (rest: z.core.$ZodLooseShape = {}) => z.looseObject({ id: z.string(), ...rest })
const part = z.optional(z.looseObject({}))

const draft = z.looseObject({
  carrier: z.looseObject({}),
  trip: z.looseObject({ stops: list(thing({ leg: part })), pace: part, water: part, meals: part }),
  gear: list(thing({ fuel: part })),
  packs: list(thing({ setups: list(thing()) })),
  settings: part,
})
const typed = z.record(z.string(), z.string())

/** As many points as the track reader keeps. */
const MOST_PROFILE_POINTS = 400
const profile = z
  .array(z.object({ km: z.number().check(z.gte(0)), eleM: z.nullable(z.number()) }))
  .check(z.maxLength(MOST_PROFILE_POINTS))

const tripShape = z.object({
  id: z.string(),
  demo: z.boolean(),
  changedAt: z.number(),
  revision: z.number(),
  draft,
  typed,
  profile: z.optional(profile),
})
const oldStep = z.object({ label: z.string(), at: z.number(), draft, typed })
const stepShape = z.object({
  id: z.string(),
  label: z.string(),
  at: z.number(),
  undone: z.boolean(),
  // What is in a part is found out when it is applied: one that does not fit is passed over.
  parts: list(z.looseObject({ on: z.enum(['trip', 'shelf', 'order', 'list']) })),
})
const shelfShape = z.object({
  changedAt: z.number(),
  revision: z.number(),
  things: list(thing({ item: z.looseObject({}), changed: z.record(z.string(), z.number()) })),
  bases: list(thing({ name: z.string(), lines: list(z.looseObject({ thing: z.string() })) })),
  packings: list(thing({ said: z.looseObject({ how: z.string() }) })),
  typed,
})

/** 1 to 2 of a trip, the shelf and a step: "no" is said, and no more what nobody said. */
const said = (old: unknown) => ({ ...(withoutOldNo(old) as object), version: 2 })

export const TRIP: Kind<TripDocument> = { format: 'pack-reckoner/trip', ladder: [said], shape: tripShape }

export const LIBRARY: Kind<Library> = {
  format: 'pack-reckoner/library',
  ladder: [],
  shape: z.object({
    open: z.nullable(z.string()),
    order: list(z.string()),
    system: z.enum(['metric', 'us']),
    theme: z.enum(['auto', 'light', 'dark']),
    place: z.object({ screen: z.string(), detail: z.nullable(z.string()), scrollY: z.number() }),
  }),
}

export const SHELF: Kind<Shelf> = { format: 'pack-reckoner/shelf', ladder: [said], shape: shelfShape }

export const STEP: Kind<Step> = { format: 'pack-reckoner/step', ladder: [said], shape: stepShape }

export const REMOVED: Kind<RemovedTrip> = {
  format: 'pack-reckoner/removed',
  // 1 to 2: as its trip.
  ladder: [old => ({ ...(old as object), version: 2, trip: said((old as RemovedTrip).trip) })],
  shape: z.object({ trip: tripShape, at: z.number(), how: z.enum(['removed', 'undone']) }),
}

/** Read, and made into steps of the journal; never written any more. */
export const HISTORY: Kind<History> = {
  format: 'pack-reckoner/history',
  // As the trips of its time.
  ladder: [said],
  shape: z.object({ past: list(oldStep), future: list(oldStep) }),
}

export const UNSAVED: Kind<Unsaved> = {
  format: 'pack-reckoner/parting',
  ladder: [
    // 1 to 2: the shelf and the undo steps are put aside too.
    old => ({ ...(old as object), version: 2, shelf: null, steps: [] }),
    // 2 to 3: as the trips, the shelf and the steps in it.
    old => unsavedSaid(old as Unsaved),
  ],
  shape: z.object({
    trips: list(z.object({ document: tripShape, over: list(z.number()) })),
    shelf: z.nullable(z.object({ before: list(shelfShape), after: shelfShape })),
    steps: list(stepShape),
  }),
}

function unsavedSaid({ trips, shelf, steps, ...rest }: Unsaved) {
  return {
    ...rest,
    version: 3,
    trips: trips.map(trip => ({ ...trip, document: said(trip.document) })),
    shelf: shelf && { before: shelf.before.map(said), after: said(shelf.after) },
    steps: steps.map(said),
  }
}

const head = z.object({ format: z.string(), version: z.number().check(z.gte(1), z.multipleOf(1)) })

type Unreadable = Extract<ReadRecord<unknown>, { ok: false }>

const damaged = (why: string): Unreadable => ({
  ok: false,
  reason: 'damaged',
  message: `is damaged (${why})`,
})

/** Whether a stored record is of its kind and of a version this app knows; null if so. Looks at its head only. */
export function headProblem({ format, ladder }: Kind<unknown>, stored: unknown): Unreadable | null {
  const found = head.safeParse(stored)
  if (!found.success || found.data.format !== format) return damaged('it is not what its place asks for')
  if (found.data.version <= ladder.length + 1) return null
  return { ok: false, reason: 'newer', message: 'was saved by a newer version of Pack Reckoner' }
}

/** Reads a stored record: brings an older one up to date, and tells a newer one from a damaged one. Never throws. */
export function readRecord<T>(kind: Kind<T>, stored: unknown): ReadRecord<T> {
  const problem = headProblem(kind, stored)
  if (problem) return problem
  try {
    const { version } = stored as { version: number }
    const value = kind.ladder.slice(version - 1).reduce((old, climb) => climb(old), stored)
    const checked = kind.shape.safeParse(value)
    if (checked.success) return { ok: true, value: value as T }
    return damaged(checked.error.issues[0]?.path.join('/') || 'its shape')
  } catch (error) {
    return damaged(error instanceof Error ? error.message : String(error))
  }
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
