// The kinds of records and how a stored one is read: format, version, migrations, shape. Strict about structure, lenient
// about a draft's values: `settle` copes with those. Loaded once something is stored; where each is kept stands apart.

import * as z from 'zod/mini'
import { withoutOldNo } from '../plan'
import type { Shelf } from '../plan/shelf'
import type { History, Library, RemovedTrip, Step, TripDocument, Unsaved } from './documents'
import { type Area, areaOf, PLACES, type RecordPlace } from './record-places'

/** A kind of record: its current shape, and how each older version becomes the next (`ladder[0]`: 1 to 2). */
export interface Kind<T> extends RecordPlace {
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
const pack = thing({ setups: list(thing()) })

const draft = z.looseObject({
  carrier: z.looseObject({}),
  people: z.optional(list(thing())),
  split: part,
  shared: part,
  trip: z.looseObject({ stops: list(thing({ leg: part })), pace: part, water: part, meals: part }),
  gear: list(thing({ fuel: part })),
  packs: list(pack),
  settings: part,
  log: part,
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
  packs: list(pack),
  figures: z.optional(z.looseObject({ under: part, measure: part })),
  typed,
})

/** 1 to 2 of a trip, the shelf and a step: "no" is said, and no more what nobody said. */
const said = (old: unknown) => ({ ...(withoutOldNo(old) as object), version: 2 })
/** 2 to 3 of a trip: its packs go to the list of packs, which is not done here (`own-packs.ts`). */
const tripWithoutPacks = (old: unknown) => ({ ...(old as object), version: 3 })
/** 3 to 4 of a trip: it may hold what is noted on packing day, on the way and after. */
const tripWithLog = (old: unknown) => ({ ...(old as object), version: 4 })
/** 4 to 5 of a trip: it may be of several people. */
const tripOfSeveral = (old: unknown) => ({ ...(old as object), version: 5 })
/** 2 to 3 of the shelf: it holds the packs too. */
const withPacks = (old: unknown) => ({ ...(old as object), version: 3, packs: [] })

export const TRIP: Kind<TripDocument> = {
  ...PLACES.trip,
  format: 'pack-reckoner/trip',
  ladder: [said, tripWithoutPacks, tripWithLog, tripOfSeveral],
  shape: tripShape,
}

export const LIBRARY: Kind<Library> = {
  ...PLACES.library,
  format: 'pack-reckoner/library',
  ladder: [],
  shape: z.object({
    open: z.nullable(z.string()),
    order: list(z.string()),
    system: z.enum(['metric', 'us']),
    theme: z.enum(['auto', 'light', 'dark']),
    brightSun: z.optional(z.boolean()),
    largeTargets: z.optional(z.boolean()),
    packColumns: z.optional(list(z.string())),
    place: z.object({ screen: z.string(), detail: z.nullable(z.string()), scrollY: z.number() }),
    person: z.optional(z.string()),
    toldWhy: z.optional(z.boolean()),
  }),
}

export const SHELF: Kind<Shelf> = {
  ...PLACES.shelf,
  format: 'pack-reckoner/shelf',
  ladder: [said, withPacks],
  shape: shelfShape,
}

export const STEP: Kind<Step> = {
  ...PLACES.step,
  format: 'pack-reckoner/step',
  ladder: [said],
  shape: stepShape,
}

export const REMOVED: Kind<RemovedTrip> = {
  ...PLACES.removed,
  format: 'pack-reckoner/removed',
  // As its trip.
  ladder: [
    old => ({ ...(old as object), version: 2, trip: said((old as RemovedTrip).trip) }),
    old => ({ ...(old as object), version: 3, trip: tripWithoutPacks((old as RemovedTrip).trip) }),
    old => ({ ...(old as object), version: 4, trip: tripWithLog((old as RemovedTrip).trip) }),
    old => ({ ...(old as object), version: 5, trip: tripOfSeveral((old as RemovedTrip).trip) }),
  ],
  shape: z.object({ trip: tripShape, at: z.number(), how: z.enum(['removed', 'undone']) }),
}

/** Read, and made into steps of the journal; never written any more. */
export const HISTORY: Kind<History> = {
  ...PLACES.history,
  format: 'pack-reckoner/history',
  // As the trips of its time.
  ladder: [said],
  shape: z.object({ past: list(oldStep), future: list(oldStep) }),
}

export const UNSAVED: Kind<Unsaved> = {
  ...PLACES.parting,
  format: 'pack-reckoner/parting',
  ladder: [
    // 1 to 2: the shelf and the undo steps are put aside too.
    old => ({ ...(old as object), version: 2, shelf: null, steps: [] }),
    // 2 to 3, and 3 to 4: as the trips, the shelf and the steps in it.
    old => ({
      ...unsavedBy(old as Unsaved, said, said),
      version: 3,
      steps: (old as Unsaved).steps.map(said),
    }),
    old => ({ ...unsavedBy(old as Unsaved, tripWithoutPacks, withPacks), version: 4 }),
    // 4 to 5, and 5 to 6: as the trips.
    old => ({ ...unsavedBy(old as Unsaved, tripWithLog, shelf => shelf), version: 5 }),
    old => ({ ...unsavedBy(old as Unsaved, tripOfSeveral, shelf => shelf), version: 6 }),
  ],
  shape: z.object({
    trips: list(z.object({ document: tripShape, over: list(z.number()) })),
    shelf: z.nullable(z.object({ before: list(shelfShape), after: shelfShape })),
    steps: list(stepShape),
  }),
}

type Rung = (old: unknown) => unknown

const unsavedBy = ({ trips, shelf, ...rest }: Unsaved, ofTrip: Rung, ofShelf: Rung) => ({
  ...rest,
  trips: trips.map(trip => ({ ...trip, document: ofTrip(trip.document) })),
  shelf: shelf && { before: shelf.before.map(ofShelf), after: ofShelf(shelf.after) },
})

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

const KINDS: Record<Area, Kind<unknown>> = {
  trip: TRIP,
  library: LIBRARY,
  shelf: SHELF,
  step: STEP,
  removed: REMOVED,
  history: HISTORY,
  parting: UNSAVED,
}

/** The kind of what is kept under a key; null for notes, which are no documents. */
export function kindAt(key: string): Kind<unknown> | null {
  const area = areaOf(key)
  return area && KINDS[area]
}
