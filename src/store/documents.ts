// The records as the database holds them, and how a stored one is read: format, version, migrations, shape.
// Strict about structure, lenient about a draft's values: `settle` copes with those.

import * as z from 'zod/mini'
import type { ProfilePoint } from '../files'
import type { Draft, Typed } from '../plan'

export interface TripDocument {
  format: 'pack-reckoner/trip'
  version: 1
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

/** The state before an edit (in `past`) or after it (in `future`). */
export interface Step {
  label: string
  /** The field that was typed in, so that more typing there joins this step. */
  path?: string
  at: number
  draft: Draft
  typed: Typed
}

export interface History {
  format: 'pack-reckoner/history'
  version: 1
  past: Step[]
  future: Step[]
}

/** What was unsaved when a page went away, and the states of that trip it may replace, by their `changedAt`. */
export interface Parting {
  format: 'pack-reckoner/parting'
  version: 1
  trips: { document: TripDocument; over: number[] }[]
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
const step = z.object({ label: z.string(), path: z.optional(z.string()), at: z.number(), draft, typed })

export const TRIP: Kind<TripDocument> = { format: 'pack-reckoner/trip', ladder: [], shape: tripShape }

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

export const HISTORY: Kind<History> = {
  format: 'pack-reckoner/history',
  ladder: [],
  shape: z.object({ past: list(step), future: list(step) }),
}

export const PARTING: Kind<Parting> = {
  format: 'pack-reckoner/parting',
  ladder: [],
  shape: z.object({ trips: list(z.object({ document: tripShape, over: list(z.number()) })) }),
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

export const emptyHistory = (): History => ({
  format: 'pack-reckoner/history',
  version: 1,
  past: [],
  future: [],
})
