// From what there is to what there is to be, as one step of the journal: trips that go, come, move and change, and the
// shelf. Pure. Used where a whole backup is taken in, and to put everything back as it was.

import { type Contents, sameTrip } from '../files/backup'
import { emptyShelf, mergeShelves, same } from '../plan/shelf'
import type { StepPart, TripDocument } from './documents'
import { moved, partsBetween, shelfContentsOf, takenAway, touched, type World } from './journal'
import { withUnread } from './library'

export interface Taken {
  world: World
  parts: StepPart[]
}

/** The world with these contents, and the parts of the step that leads there. `now`: ms since 1970. */
export function takenIn(
  start: World,
  { trips, shelf }: Pick<Contents, 'trips' | 'shelf'>,
  now: number,
): Taken {
  const parts: StepPart[] = []
  let world = start
  const wanted = new Set(trips.map(({ id }) => id))
  for (const id of start.order) {
    if (wanted.has(id)) continue
    const at = world.order.indexOf(id)
    const part = { on: 'list', id, here: false, at, open: world.open === id, before: null } as const
    const next = takenAway(world, part, { at: now, how: 'removed' })
    if (!next) continue
    parts.push(part)
    world = next
  }

  const [documents, removed] = [new Map(world.trips), new Map(world.removed)]
  let order = world.order.filter(id => documents.has(id))
  trips.forEach((trip, at) => {
    const { id } = trip
    if (!documents.has(id)) {
      parts.push({ on: 'list', id, here: true, at, open: false, before: null })
      // One that was removed comes back as it was then, and becomes the wanted one: the step leads back to both.
      documents.set(id, removed.get(id)?.trip ?? { ...trip, revision: 0 })
      removed.delete(id)
      order = order.toSpliced(at, 0, id)
    } else if (order[at] !== id) {
      parts.push({ on: 'order', id, from: order.indexOf(id), to: at })
      order = moved(order, id, at)
    }
  })
  const open = world.open ?? order[0] ?? null
  order = withUnread(order, start.order, id => start.trips.has(id))
  const listed: World = { ...world, trips: documents, removed, order, open }

  const changed = trips.map((trip): [string, TripDocument] => [
    trip.id,
    documentOf(documents.get(trip.id)!, trip),
  ])
  const isSameShelf = same(shelfContentsOf(start.shelf), shelf)
  const next: World = {
    ...listed,
    trips: new Map(changed),
    shelf: isSameShelf ? start.shelf : touched({ ...start.shelf, ...shelf }, now),
  }
  return { world: next, parts: [...parts, ...partsBetween(listed, next)] }
}

/** What there was, with what was made or changed since a backup was taken in: that is no part of what it brought. */
export function putBack(
  { was, then, now }: Record<'was' | 'then' | 'now', Contents>,
  newId: () => string,
): Contents {
  const brought = new Map(then.trips.map(trip => [trip.id, trip]))
  const since = now.trips.filter(trip => {
    const left = brought.get(trip.id)
    return !left || (left !== trip && !sameTrip(left, trip))
  })
  const trips = new Map([...was.trips, ...since].map(trip => [trip.id, trip]))
  if (same(then.shelf, now.shelf)) return { ...was, trips: [...trips.values()] }
  const [base, ours, theirs] = [then, was, now].map(({ shelf }) => ({ ...emptyShelf(), ...shelf }))
  const { shelf } = mergeShelves({ base: base!, ours: ours!, theirs: theirs! }, newId)
  return { ...was, trips: [...trips.values()], shelf: shelfContentsOf(shelf) }
}

/** The stored document with the wanted contents; two states of a trip never share their time. */
function documentOf(here: TripDocument, wanted: Contents['trips'][number]): TripDocument {
  if (sameTrip(here, wanted)) return here
  const { id, demo, draft, typed, profile } = wanted
  const { format, version, revision } = here
  const changedAt = wanted.changedAt === here.changedAt ? here.changedAt + 1 : wanted.changedAt
  return { format, version, id, demo, changedAt, revision, draft, typed, ...(profile && { profile }) }
}
