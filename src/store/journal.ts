// The journal: what undo can take back, over all that changes data – trips, the shelf, the list of trips – in one order.
// A step holds only the difference it made, so that fifty of them, with what is noted between them, cost little. Pure.

import type { Draft, Typed } from '../plan'
import { isBranch, type Shelf, type ShelfContents } from '../plan/shelf'
import type { RemovedTrip, Step, StepPart, TripDocument } from './documents'
import { difference, patched, REFUSED, type Way } from './patch'

const MOST_STEPS = 50
/** With the notes between them, of which ticking a list makes many. */
const MOST_WITH_NOTES = 300
/** As many removed trips are offered to be brought back. */
const MOST_REMOVED = 10

/** All that undo reaches. */
export interface World {
  trips: ReadonlyMap<string, TripDocument>
  removed: ReadonlyMap<string, RemovedTrip>
  shelf: Shelf
  order: string[]
  open: string | null
}

export interface Contents {
  draft: Draft
  typed: Typed
}

export type Journal = readonly Step[]

export const contentsOf = ({ draft, typed }: Contents): Contents => ({ draft, typed })
export const shelfContentsOf = ({
  format: _f,
  version: _v,
  changedAt: _c,
  revision: _r,
  ...contents
}: Shelf) => contents satisfies ShelfContents

/** The shelf with other contents. */
export const withShelfContents = (
  { format, version, changedAt, revision }: Shelf,
  contents: ShelfContents,
): Shelf => ({ format, version, changedAt, revision, ...contents })

const doneIn = (journal: Journal) => journal.filter(({ undone }) => !undone)
export const lastDone = (journal: Journal): Step | undefined => doneIn(journal).at(-1)
/** What was undone last: the oldest of what was. */
export const lastUndone = (journal: Journal): Step | undefined => journal.find(({ undone }) => undone)

/** The parts of a step that leads from one world to another, for what can be compared: not for trips made or removed. */
export function partsBetween(before: World, after: World): StepPart[] {
  const parts: StepPart[] = []
  for (const [id, trip] of after.trips) parts.push(...tripParts(before.trips.get(id), trip))
  return [...parts, ...shelfParts(before.shelf, after.shelf)]
}

/** The part of a step that changes a trip, if it is changed; none for a new one. */
export function tripParts(was: TripDocument | undefined, trip: TripDocument): StepPart[] {
  const patch = was && was !== trip ? difference(contentsOf(was), contentsOf(trip)) : null
  return patch ? [{ on: 'trip', id: trip.id, patch }] : []
}

/** The part of a step that changes the shelf, if it is changed. */
export function shelfParts(was: Shelf, shelf: Shelf): StepPart[] {
  const patch = was === shelf ? null : difference(shelfContentsOf(was), shelfContentsOf(shelf))
  return patch ? [{ on: 'shelf', patch }] : []
}

/** The journal with a step more; what had been undone cannot be redone any more, and the oldest steps go. */
export function withStep(journal: Journal, step: Step): Journal {
  const all = [...doneIn(journal).filter(({ id }) => id !== step.id), step].slice(-MOST_WITH_NOTES)
  // Only from the old end: a step is undone from the state that the next one was made from.
  let steps = 0
  const past = all.findLastIndex(other => {
    if (!isNote(other)) steps++
    return steps > MOST_STEPS
  })
  return all.slice(past + 1)
}

/** Whether a step only notes something of a trip: a tick, a time, a reading. */
export const isNote = ({ parts }: Pick<Step, 'parts'>): boolean =>
  parts.length > 0 &&
  parts.every(part => part.on === 'trip' && insideOf(insideOf(part.patch, 'draft'), 'log') !== null)

/** What a patch changes inside one part, where that is all it changes. A damaged one may be of any shape. */
function insideOf(patch: unknown, name: string): unknown {
  const keys = isBranch(patch) ? patch.keys : null
  if (!Array.isArray(keys) || keys.length !== 1 || !Array.isArray(keys[0])) return null
  return keys[0][0] === name ? (keys[0][1] ?? null) : null
}

/** A step just done: its time is later than that of all there are, so that it stands last. */
export function stepOf(
  journal: Journal,
  { now, ...step }: Pick<Step, 'id' | 'label' | 'parts'> & { now: number },
): Step {
  const at = Math.max(now, (journal.at(-1)?.at ?? 0) + 1)
  return { format: 'pack-reckoner/step', version: 2, ...step, at, undone: false }
}

/** Two states of a trip or of the shelf never share their time, so that it tells them apart. */
export const touched = <T extends { changedAt: number }>(record: T, now: number): T => ({
  ...record,
  changedAt: Math.max(now, record.changedAt + 1),
})

export const inOrder = (steps: Iterable<Step>): Journal =>
  [...steps].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))

/** The world without a step, or with it again; null where it does not fit what is there by now. */
export function travelled(world: World, { parts }: Step, way: Way, now: number): World | null {
  try {
    const ordered = way === 'forth' ? parts : parts.toReversed()
    return changed(world, open => ordered.every(part => takePart(open, part, way, now)))
  } catch {
    // A step of a shape that only another version of the app can make or damage can leave: it does not fit either.
    return null
  }
}

/** A world that is changed in place: a step may have thousands of parts, and copying for each would take seconds. */
export interface OpenWorld extends World {
  trips: Map<string, TripDocument>
  removed: Map<string, RemovedTrip>
}

/** A copy of the world as `change` leaves it; null where that fails. */
export function changed(world: World, change: (open: OpenWorld) => boolean): World | null {
  const open = { ...world, trips: new Map(world.trips), removed: new Map(world.removed) }
  return change(open) ? open : null
}

function takePart(world: OpenWorld, part: StepPart, way: Way, now: number): boolean {
  switch (part.on) {
    case 'trip': {
      const trip = world.trips.get(part.id)
      const made = trip ? patched(contentsOf(trip), part.patch, way) : REFUSED
      if (!trip || made === REFUSED) return false
      world.trips.set(part.id, touched({ ...trip, ...(made as Contents) }, now))
      world.open = part.id
      return true
    }
    case 'shelf': {
      const made = patched(shelfContentsOf(world.shelf), part.patch, way)
      if (made === REFUSED) return false
      world.shelf = touched(withShelfContents(world.shelf, made as ShelfContents), now)
      return true
    }
    case 'order':
      world.order = moved(world.order, part.id, way === 'forth' ? part.to : part.from)
      return true
    case 'list':
      return (way === 'forth') === part.here
        ? bringBack(world, part)
        : takeAway(world, part, { at: now, how: part.here ? 'undone' : 'removed' })
  }
}

export function moved(order: string[], id: string, to: number): string[] {
  const rest = order.filter(other => other !== id)
  return rest.length === order.length ? order : rest.toSpliced(to, 0, id)
}

type ListPart = Extract<StepPart, { on: 'list' }>

/** The trip back from among the removed ones; false where it cannot be. */
export function bringBack(world: OpenWorld, { id, at, open }: Pick<ListPart, 'id' | 'at' | 'open'>): boolean {
  const record = world.removed.get(id)
  if (!record || world.trips.has(id)) return false
  world.removed.delete(id)
  world.trips.set(id, record.trip)
  world.order = world.order.toSpliced(at, 0, id)
  if (open) world.open = id
  return true
}

/** The trip away, kept among the removed ones; false where it is not there. */
export function takeAway(
  world: OpenWorld,
  { id, before }: Pick<ListPart, 'id' | 'before'>,
  { at, how }: Pick<RemovedTrip, 'at' | 'how'>,
): boolean {
  const trip = world.trips.get(id)
  if (!trip) return false
  world.trips.delete(id)
  // No two share their time, so that they stand in order.
  let time = at
  for (const other of world.removed.values()) time = Math.max(time, other.at + 1)
  world.removed.set(id, { format: 'pack-reckoner/removed', version: 5, trip, at: time, how })
  world.order = world.order.filter(other => other !== id)
  if (world.open === id) world.open = before && world.trips.has(before) ? before : null
  return true
}

/** The removed trips that are offered to be brought back, the last one first. */
export const offered = (removed: World['removed']): RemovedTrip[] =>
  [...removed.values()]
    .filter(({ how }) => how === 'removed')
    .sort((a, b) => b.at - a.at)
    .slice(0, MOST_REMOVED)

/** Without those that are neither offered nor needed for a step. The same map where none goes. */
export function pruned(removed: World['removed'], journal: Journal): World['removed'] {
  const wanted = new Set(offered(removed).map(({ trip }) => trip.id))
  for (const { parts } of journal) for (const part of parts) if (part.on === 'list') wanted.add(part.id)
  const kept = [...removed].filter(([id]) => wanted.has(id))
  return kept.length === removed.size ? removed : new Map(kept)
}
