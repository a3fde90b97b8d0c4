// Dated snapshots of everything, on the device, apart from the database: the last ten, at most one a day and one before
// each backup that is taken in. What cannot be read is never removed by itself. Works over any place; see snapshots-page.ts.

import { backupPieces, type Contents, canonicalPieces, isEmpty } from '../files/backup'
import { fileOf } from '../files/portions'
import { sha256 } from './canonical'
import { nameOf } from './messages'
import { type Head, packSnapshot, readHead, type SnapshotReason, snapshotText } from './snapshot-file'
import type { Place } from './snapshots-place'

export const MOST_SNAPSHOTS = 10
/** All snapshots together take no more than this; the newest stays in any case. */
const MOST_BYTES = 30_000_000

/** The browser keeps other files beside one that is being written. */
const ENDING = '.snapshot'

/** `head` null: damaged (`bytes` 0: not even its size can be read), or written by a newer version of the app. */
export interface Snapshot {
  name: string
  bytes: number
  head: Head | null
  state: 'whole' | 'damaged' | 'newer'
}

export interface SnapshotEnvironment {
  /** Null: the browser has no place for them. */
  place: () => Promise<Place | null>
  now: () => number
  /** Whether another tab has erased everything that this one still shows. */
  isErased?: () => Promise<boolean>
  /** Runs one piece of work at a time, over all tabs where the browser has locks. */
  alone: <T>(work: () => Promise<T>) => Promise<T>
}

export type Snapshots = ReturnType<typeof createSnapshots>

export function createSnapshots({ place, now, isErased, alone }: SnapshotEnvironment) {
  async function needPlace(): Promise<Place> {
    const there = await place()
    if (!there) throw new DOMException('no place for snapshots', 'NotSupportedError')
    return there
  }

  /** Newest first; what cannot be read comes last. */
  async function list(): Promise<Snapshot[]> {
    const there = await needPlace()
    const names = (await there.names()).filter(name => name.endsWith(ENDING))
    const found = await Promise.all(names.map(name => look(there, name)))
    return found.flatMap(each => each ?? []).sort((a, b) => (b.head?.at ?? 0) - (a.head?.at ?? 0))
  }

  async function write(reason: SnapshotReason, contents: Contents): Promise<void> {
    const there = await needPlace()
    const [at, { trips, shelf }] = [now(), contents]
    const day = dayOf(at)
    const facts = { at, day, ...asHead(reason), trips: trips.length, things: shelf.things.length }
    const file = await packSnapshot(await fileOf(backupPieces(contents, day)), facts)
    await there.write(`${at}-${reason}${ENDING}`, file)
    await prune(there)
  }

  async function prune(there: Place): Promise<void> {
    let bytes = 0
    const whole = (await list()).filter(({ state }) => state === 'whole')
    for (const [i, each] of whole.entries()) {
      bytes += each.bytes
      if (i >= MOST_SNAPSHOTS || (i > 0 && bytes > MOST_BYTES)) await there.remove(each.name)
    }
  }

  return {
    list: () => alone(list),

    /** Takes one now, unless the newest holds the same. Nothing is taken of nothing. Rejects when it cannot be kept. */
    take: (reason: SnapshotReason, contents: Contents): Promise<boolean> =>
      alone(async () => {
        if (isEmpty(contents) || (await isErased?.())) return false
        const [newest, ...others] = (await list()).flatMap(({ head }) => head ?? [])
        const today = dayOf(now())
        const isDone = [newest, ...others].some(head => head?.reason === 'day' && head.day === today)
        if (reason === 'day' && isDone) return false
        if (newest && (await sha256(await fileOf(backupPieces(contents, newest.day)))) === newest.hash)
          return false
        await write(reason, contents)
        return true
      }),

    /** The backup in a snapshot. Rejects when it is damaged or gone. */
    text: async (name: string): Promise<string> => {
      const file = await (await needPlace()).read(name)
      const text = file && (await snapshotText(file))
      if (text === null) throw new DOMException('the snapshot is damaged', 'DataError')
      return text
    },

    /** The file as it is, whatever it is: the way out for a damaged one. It stays readable when that is removed. */
    raw: async (name: string): Promise<Blob | null> => {
      const file = await (await needPlace()).read(name)
      return file && new Blob([await file.arrayBuffer()])
    },

    /** Puts a removed one back. */
    keep: (name: string, file: Blob): Promise<void> =>
      alone(async () => (await needPlace()).write(name, file)),

    /**
     * Writes every snapshot that holds a trip anew without it. One that cannot be read may hold it too: it goes, as does
     * one with nothing else in it.
     */
    eraseTrip: (id: string): Promise<void> =>
      alone(async () => {
        const there = await place()
        for (const name of (await there?.names()) ?? []) await eraseIn(there!, name, id)
      }),

    remove: (name: string): Promise<void> => alone(async () => (await needPlace()).remove(name)),
  }
}

async function eraseIn(there: Place, name: string, id: string): Promise<void> {
  const file = name.endsWith(ENDING) ? await there.read(name).catch(nullUnlessSilent) : null
  const read = file && (await readHead(file).catch(nullUnlessSilent))
  const text = file && (await snapshotText(file).catch(nullUnlessSilent))
  if (!read?.ok || !text) return there.remove(name)
  const backup = JSON.parse(text)
  const trips = backup.trips.filter((trip: { id?: unknown }) => trip.id !== id)
  if (trips.length === backup.trips.length) return
  const { at, day, reason, back, things } = read.head
  if (trips.length + things === 0) return there.remove(name)
  const facts = { at, day, reason, ...(back && { back }), trips: trips.length, things }
  const pieces = canonicalPieces({ ...backup, trips })
  await there.write(name, await packSnapshot(new Blob([await fileOf(pieces), '\n']), facts))
}

/** What cannot be read is damaged; a place that does not answer says nothing of its files. */
function nullUnlessSilent(error: unknown): null {
  if (nameOf(error) === 'TimeoutError') throw error
  return null
}

async function look(there: Place, name: string): Promise<Snapshot | null> {
  let bytes = 0
  try {
    const file = await there.read(name)
    // Another tab may have removed it meanwhile; an empty one is what is left of a writing that was cut off.
    if (!file?.size) return null
    bytes = file.size
    const read = await readHead(file)
    return read.ok
      ? { name, bytes, head: read.head, state: 'whole' }
      : { name, bytes, head: null, state: read.reason }
  } catch (error) {
    // A place that does not answer is no fault of the file's. What cannot be read is, and stops no other one.
    if (nameOf(error) === 'TimeoutError') throw error
    return { name, bytes, head: null, state: 'damaged' }
  }
}

/** What versions that know two reasons only can read too. */
const asHead = (reason: SnapshotReason): Pick<Head, 'reason' | 'back'> =>
  reason === 'back' ? { reason: 'before', back: true } : { reason }

/** The day of a moment where the reader is: YYYY-MM-DD. */
export function dayOf(ms: number): string {
  const date = new Date(ms)
  const two = (n: number) => String(n).padStart(2, '0')
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
}
