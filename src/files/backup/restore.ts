// What there is after a backup was taken in, as a pure function of what was here, the file and the reader's wishes.
// Merging takes nothing away but what the reader gives up for the file's; what is the same stays the object it was.

import { copyName, type DraftPack } from '../../plan'
import { type Base, ownerIn, ownersOf, type Packing, type ShelfContents, type Thing } from '../../plan/shelf'
import { inOneGo, type Steps } from '../portions'
import { isEmpty, sameAs, samePack, sameThing, sameTrip } from './compare'
import type { Backup, BackupTrip, Contents } from './types'

/** For what is here and in the file, but not the same. */
export type Choice = 'both' | 'file' | 'mine'

export interface Wishes {
  how: 'merge' | 'replace'
  /** By the id of a trip; `both` where there is none. */
  trips: Readonly<Record<string, Choice>>
  shelf: Choice
}

/** Everything as it is to be from now on. Ids of copies come from `newId`. */
export const restored = (...given: Parameters<typeof restoring>): Contents => inOneGo(restoring(...given))

/** As `restored`, trip by trip. */
export function* restoring(
  here: Contents,
  file: Backup,
  wishes: Wishes,
  newId: () => string,
): Steps<Contents> {
  const taken = yield* wishes.how === 'replace'
    ? replaced(here, file)
    : mergedContents(here, file, wishes, newId)
  return { ...taken, trips: [...new Map(taken.trips.map(trip => [trip.id, trip])).values()] }
}

function* replaced(here: Contents, file: Backup): Steps<Contents> {
  const byId = new Map(here.trips.map(trip => [trip.id, trip]))
  const trips: BackupTrip[] = []
  for (const trip of file.trips) {
    yield
    const ours = byId.get(trip.id)
    trips.push(ours !== undefined && sameTrip(ours, trip) ? ours : trip)
  }
  // What the file holds only in a damaged form is no reason to lose what is here.
  const kept = file.damagedTrips.flatMap(id => byId.get(id) ?? [])
  return {
    trips: [...trips, ...kept],
    shelf: file.shelf ?? here.shelf,
    settings: file.settings ?? here.settings,
  }
}

function* mergedContents(here: Contents, file: Backup, wishes: Wishes, newId: () => string): Steps<Contents> {
  const trips = yield* merged(here.trips, file.trips, {
    isSame: sameTrip,
    choose: id => wishes.trips[id] ?? 'both',
    copy: (trip): BackupTrip => ({
      ...trip,
      id: newId(),
      draft: { ...trip.draft, name: fromFile(trip.draft.name || 'Trip') },
    }),
  })
  const shelf = file.shelf
    ? yield* mergedShelf(here.shelf, file.shelf, { choice: wishes.shelf, newId })
    : here.shelf
  return {
    trips,
    shelf,
    // Where there is nothing yet, nothing of one's own can be meant.
    settings: isEmpty(here) ? (file.settings ?? here.settings) : here.settings,
  }
}

interface ShelfWish {
  choice: Choice
  newId: () => string
}

function* mergedShelf(
  here: ShelfContents,
  file: ShelfContents,
  { choice, newId }: ShelfWish,
): Steps<ShelfContents> {
  const choose = () => choice
  const things = yield* merged<Thing>(here.things, file.things, {
    isSame: sameThing,
    choose,
    copy: thing => ({
      ...thing,
      id: newId(),
      item: { ...thing.item, name: fromFile(thing.item.name || 'Item') },
    }),
  })
  const lists = {
    things,
    bases: yield* merged<Base>(here.bases, file.bases, {
      isSame: sameAs,
      choose,
      copy: base => ({ ...base, id: newId(), name: fromFile(base.name || 'Kit') }),
    }),
    packings: yield* merged<Packing>(here.packings, file.packings, {
      isSame: sameAs,
      choose,
      copy: packing => ({ ...packing, id: newId() }),
    }),
    packs: yield* merged<DraftPack>(here.packs, file.packs, {
      isSame: samePack,
      choose,
      copy: pack => ({ ...pack, id: newId(), name: fromFile(pack.name || 'Pack') }),
    }),
  }
  const figures = choice === 'file' ? (file.figures ?? here.figures) : (here.figures ?? file.figures)
  return { ...lists, ...(figures && { figures }), typed: typedOf({ lists, here, file }) }
}

/** Unread text goes with the thing or pack it was typed at. */
function typedOf({
  lists,
  here,
  file,
}: {
  lists: Pick<ShelfContents, 'things' | 'packs'>
  here: ShelfContents
  file: ShelfContents
}) {
  const ours = new Set<object>([...here.things, ...here.packs])
  const from = (source: ShelfContents, isWanted: (part: object) => boolean) => {
    const owners = ownersOf({
      things: lists.things.filter(isWanted),
      packs: lists.packs.filter(isWanted),
    })
    return Object.entries(source.typed).filter(([path]) => owners.has(ownerIn(path)))
  }
  const isOurs = (part: object) => ours.has(part)
  return Object.fromEntries([...from(here, isOurs), ...from(file, part => !isOurs(part))])
}

interface Merging<T> {
  isSame: (a: T, b: T) => boolean
  choose: (id: string) => Choice
  copy: (entry: T) => T
}

/** Ours in our order, a second version after the one it is of, then what is new in the file's order. */
function* merged<T extends { id: string }>(
  here: T[],
  file: T[],
  { isSame, choose, copy }: Merging<T>,
): Steps<T[]> {
  const theirs = new Map(file.map(entry => [entry.id, entry]))
  const ours = new Set(here.map(({ id }) => id))
  const kept: T[] = []
  for (const entry of here) {
    yield
    const other = theirs.get(entry.id)
    const choice = !other || isSame(entry, other) ? 'mine' : choose(entry.id)
    if (choice !== 'file') kept.push(entry)
    if (choice !== 'mine' && other) kept.push(choice === 'file' ? other : copy(other))
  }
  return [...kept, ...file.filter(({ id }) => !ours.has(id))]
}

const fromFile = (name: string) => copyName({ name }, 'from the file').name!
