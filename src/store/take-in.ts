// From what there is to what there is to be, as one step of the journal: trips that go, come, move and change, and the
// shelf. Pure, trip by trip. Used where a whole backup is taken in, and to put everything back as it was.

import { type Contents, sameTrip } from '../files/backup'
import type { Steps } from '../files/portions'
import { emptyShelf, mergeShelves, same } from '../plan/shelf'
import type { StepPart, TripDocument } from './documents'
import {
  moved,
  type OpenWorld,
  shelfContentsOf,
  shelfParts,
  takeAway,
  touched,
  tripParts,
  type World,
  withShelfContents,
} from './journal'
import { withUnread } from './library'

export interface Taken {
  world: World
  parts: StepPart[]
}

/** The world with these contents, and the parts of the step that leads there, trip by trip. `now`: ms since 1970. */
export function* takingIn(
  start: World,
  { trips, shelf }: Pick<Contents, 'trips' | 'shelf'>,
  now: number,
): Steps<Taken> {
  const parts: StepPart[] = []
  const world: OpenWorld = { ...start, trips: new Map(start.trips), removed: new Map(start.removed) }
  const wanted = new Set(trips.map(({ id }) => id))
  for (const id of start.order) {
    yield
    if (wanted.has(id)) continue
    const at = world.order.indexOf(id)
    const part = { on: 'list', id, here: false, at, open: world.open === id, before: null } as const
    if (takeAway(world, part, { at: now, how: 'removed' })) parts.push(part)
  }

  const { trips: documents, removed } = world
  let order = world.order.filter(id => documents.has(id))
  for (const [at, trip] of trips.entries()) {
    yield
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
  }
  const open = world.open ?? order[0] ?? null
  order = withUnread(order, start.order, id => start.trips.has(id))

  const next = new Map<string, TripDocument>()
  for (const trip of trips) {
    yield
    const listed = documents.get(trip.id)!
    const document = documentOf(listed, trip)
    next.set(trip.id, document)
    parts.push(...tripParts(listed, document))
  }
  const isSameShelf = same(shelfContentsOf(start.shelf), shelf)
  const nextShelf = isSameShelf ? start.shelf : touched(withShelfContents(start.shelf, shelf), now)
  parts.push(...shelfParts(start.shelf, nextShelf))
  return { world: { trips: next, removed, shelf: nextShelf, order, open }, parts }
}

/** What there was, with what was made or changed since a backup was taken in: that is no part of what it brought. */
export function* puttingBack(
  { was, then, now }: Record<'was' | 'then' | 'now', Contents>,
  newId: () => string,
): Steps<Contents> {
  const brought = new Map(then.trips.map(trip => [trip.id, trip]))
  const since: Contents['trips'] = []
  for (const trip of now.trips) {
    yield
    const left = brought.get(trip.id)
    if (!left || (left !== trip && !sameTrip(left, trip))) since.push(trip)
  }
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
