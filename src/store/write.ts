// What one transaction writes: each changed record is compared with what is stored before it replaces it.
// A version another tab saved in the meantime is joined to ours; where both changed the same field, it is kept as a second
// trip too. A record that cannot be read is left alone.

import { promisifyRequest } from 'idb-keyval'
import { emptyShelf, type MergedShelf, mergeShelves, type Shelf, same } from '../plan/shelf'
import { emptyLibrary, type Library, type TripDocument } from './documents'
import { ALL_ERASED_KEY, type Erased, erasedError, erasedKey, readErased } from './erased'
import { merged, otherTabName } from './library'
import { mergeTrips } from './merge-trips'
import {
  headProblem,
  type Kind,
  kindAt,
  LIBRARY,
  type ReadRecord,
  readRecord,
  SHELF,
  TRIP,
} from './record-kinds'
import {
  asideKey,
  goneKey,
  idOf,
  isTripKey,
  LIBRARY_KEY,
  SHELF_KEY,
  SHELF_REVISION_KEY,
  tripKey,
} from './record-places'

/** A record as this tab last read or wrote it. */
export interface Known {
  value: object
  revision: number
  /** Only what the next merge starts from: what the database holds is this joined to another tab's. */
  isBase?: boolean
}

/** `value` undefined: removed here. `known` undefined: new here. */
export interface Change {
  key: string
  value: object | undefined
  known: Known | undefined
  /** The highest revision this trip is known to have had, where the record itself is gone: counting never goes back. */
  floor?: number | undefined
  /** A trip's: the versions of other tabs that this tab has kept beside it, by the fields that both changed. */
  copies?: ReadonlyMap<string, Known> | undefined
}

export interface Outcome {
  saved: { key: string; value: object; revision: number }[]
  removed: { key: string; revision: number }[]
  /** Trips as written, where another tab's changes were joined to ours. */
  joined: TripDocument[]
  /** Versions of another tab, each a trip of its own after the one it was a version of, for the fields both changed. */
  copies: { trip: TripDocument; of: TripDocument; clashes: string[]; isNew: boolean }[]
  /** Trips whose place is taken by a record that cannot be read: they have a new id. */
  moved: { from: string; trip: TripDocument }[]
  /** Trips removed here but changed elsewhere since: they stay. */
  kept: TripDocument[]
  /** The library as written, where another tab's changes were joined to ours. */
  library: Library | null
  /** The shelf as written, where another tab's changes were joined to ours. */
  shelf: MergedShelf | null
  /** Damaged records that were set aside: from key, to key. */
  aside: { from: string; to: string }[]
  /** Keys whose records cannot be read and were left alone. */
  unread: string[]
  /** Trips that another tab has erased for good, of which something was to be written here. */
  erased: [string, Erased][]
}

/** Records that are written in one go: each is copied as it is given to the database, and a backup brings thousands … */
const MOST_AT_ONCE = 50
/** … and for so long at most, since some are long. */
const PORTION_MS = 20

/**
 * Compares and writes all changes inside the store's transaction. May run again when that has to be repeated. Throws an
 * `erasedError` where everything was erased later than at `erasedAt`, in milliseconds since 1970.
 */
export async function writeChanges(
  store: IDBObjectStore,
  given: Change[],
  { newId, erasedAt = 0 }: { newId: () => string; erasedAt?: number | undefined },
): Promise<Outcome> {
  const outcome: Outcome = {
    saved: [],
    removed: [],
    joined: [],
    copies: [],
    moved: [],
    kept: [],
    library: null,
    shelf: null,
    aside: [],
    unread: [],
    erased: [],
  }
  const read = (key: string) => promisifyRequest<unknown>(store.get(key))
  if ((readErased(await read(ALL_ERASED_KEY))?.at ?? 0) > erasedAt) throw erasedError()
  for (const id of new Set(given.flatMap(tripsIn))) {
    const note = readErased(await read(erasedKey(id)))
    if (!note) continue
    outcome.erased.push([id, note])
    store.delete(tripKey(id))
  }
  const gone = new Set(outcome.erased.map(([id]) => id))
  const changes = given.filter(change => !tripsIn(change).some(id => gone.has(id)))
  const shelfRevision = changes.some(({ key }) => key === SHELF_KEY) ? await read(SHELF_REVISION_KEY) : 0
  const isAsKnown = ({ key, known }: Change) =>
    key === SHELF_KEY && shelfRevision === known?.revision && known?.revision !== 0
  const stored = await Promise.all(changes.map(change => (isAsKnown(change) ? null : read(change.key))))
  await inPortions(async (change, was) => {
    if (isTripKey(change.key)) await writeTrip(change, was)
  })
  await inPortions((change, was) => {
    if (change.key === LIBRARY_KEY) writeLibrary(change, was)
    else if (change.key === SHELF_KEY) writeShelf(change, was)
    else if (!isTripKey(change.key)) writePlain(change, was)
  })
  return outcome

  async function inPortions(write: (change: Change, was: unknown) => void | Promise<void>) {
    let [since, written] = [performance.now(), 0]
    for (const [i, change] of changes.entries()) {
      await write(change, stored[i])
      if (++written < MOST_AT_ONCE && performance.now() - since < PORTION_MS) continue
      // The answer keeps the transaction open while the page goes on.
      await promisifyRequest(store.getKey(LIBRARY_KEY))
      ;[since, written] = [performance.now(), 0]
    }
  }

  function put(key: string, value: object, revision: number, record = value) {
    store.put(record, key)
    outcome.saved.push({ key, value, revision })
  }

  function remove(key: string, revision: number) {
    store.delete(key)
    outcome.removed.push({ key, revision })
  }

  async function writeTrip({ key, value, known, floor = 0, copies }: Change, was: unknown) {
    const found = readStored(TRIP, was)
    const theirs = found?.ok ? found.value : null
    const isNewer = theirs !== null && theirs.revision > (known?.revision ?? 0)
    if (found && !found.ok) outcome.unread.push(key)
    if (!value) {
      if (isNewer) outcome.kept.push(theirs)
      else if (!found || found.ok) {
        const revision = Math.max(known?.revision ?? 0, floor) + 1
        remove(key, revision)
        store.put(revision, goneKey(idOf(key)))
      }
      return
    }
    const ours = value as TripDocument
    if (found && !found.ok) {
      const trip = { ...ours, id: newId(), revision: 1 }
      store.put(trip, tripKey(trip.id))
      outcome.moved.push({ from: ours.id, trip })
      return
    }
    const revision = Math.max(theirs?.revision ?? 0, known?.revision ?? 0, ours.revision, floor) + 1
    if (!known) store.delete(goneKey(ours.id))
    if (!isNewer || sameContents(ours, theirs)) return put(key, ours, revision, { ...ours, revision })
    const { trip, clashes } = mergeTrips({ base: known?.value as TripDocument | undefined, ours, theirs })
    if (clashes.length > 0) await keepBeside(theirs, { of: ours, clashes, copies })
    const record = { ...trip, revision }
    outcome.joined.push(record)
    put(key, ours, revision, record)
  }

  /** Keeps another tab's version as a trip of its own; in place of the last one kept for the same fields, if nobody has changed that. */
  async function keepBeside(
    theirs: TripDocument,
    { of, clashes, copies }: { of: TripDocument; clashes: string[]; copies: Change['copies'] },
  ) {
    const last = copies?.get(clashes.join(' '))
    const lastId = last && (last.value as TripDocument).id
    const there = lastId ? readStored(TRIP, await read(tripKey(lastId))) : null
    const isLeft = there?.ok && there.value.revision === last?.revision
    const trip = secondVersion(theirs, isLeft ? lastId! : newId())
    if (isLeft) trip.revision = last!.revision + 1
    store.put(trip, tripKey(trip.id))
    outcome.copies.push({ trip, of, clashes, isNew: !isLeft })
  }

  function writeLibrary({ key, value, known }: Change, was: unknown) {
    const found = readStored(LIBRARY, was)
    if (found && !found.ok && !setAside(key, was, found)) return
    const ours = value as Library
    const base = (known?.value as Library | undefined) ?? emptyLibrary()
    // Which trip is open, and where the reader is, are this tab's own.
    const theirs = found?.ok && { ...found.value, open: ours.open, place: ours.place }
    const record = theirs ? merged(base, ours, theirs) : ours
    outcome.library = record
    put(key, ours, 0, record)
  }

  function writeShelf({ key, value, known, floor = 0 }: Change, was: unknown) {
    const ours = value as Shelf
    const knownRevision = known?.revision ?? 0
    // Null: as this tab knows it.
    const found = was === null ? null : readStored(SHELF, was)
    if (found && !found.ok && !setAside(key, was, found)) return
    const theirs = found?.ok && found.value.revision > knownRevision ? found.value : null
    const base = (known?.value as Shelf | undefined) ?? emptyShelf()
    const joined = theirs ? mergeShelves({ base, ours, theirs }, newId) : null
    const revision = Math.max(theirs?.revision ?? 0, knownRevision, ours.revision, floor) + 1
    outcome.shelf = joined
    put(key, ours, revision, { ...(joined?.shelf ?? ours), revision })
    store.put(revision, SHELF_REVISION_KEY)
  }

  /** Whether a record that cannot be read was moved out of the way; one of a newer version is left where it is. */
  function setAside(key: string, was: unknown, { reason }: { reason: 'newer' | 'damaged' }): boolean {
    if (reason === 'newer') {
      outcome.unread.push(key)
      return false
    }
    const to = asideKey(key, newId())
    store.put(was, to)
    outcome.aside.push({ from: key, to })
    return true
  }

  function writePlain({ key, value }: Change, was: unknown) {
    // Its head only: what was damaged at the start is known.
    const kind = kindAt(key)
    if (kind && was !== undefined && headProblem(kind, was)) outcome.unread.push(key)
    else if (value) put(key, value, 0)
    else remove(key, 0)
  }
}

/** The trips of which a change would write something. */
const tripsIn = ({ key, value }: Change): string[] =>
  (value && kindAt(key)?.tripsOf?.(value, idOf(key))) ?? []

const readStored = <T>(kind: Kind<T>, stored: unknown): ReadRecord<T> | null =>
  stored === undefined ? null : readRecord(kind, stored)

/** Another tab's version of a trip as a trip of its own. */
export const secondVersion = (trip: TripDocument, id: string): TripDocument => ({
  ...trip,
  id,
  revision: 1,
  draft: { ...trip.draft, name: otherTabName(trip) },
})

/** Whether two versions of a trip hold the same. The terrain that only one of them has is worth keeping too. */
export const sameContents = (a: TripDocument, b: TripDocument) =>
  same([a.draft, a.typed, a.profile], [b.draft, b.typed, b.profile])
