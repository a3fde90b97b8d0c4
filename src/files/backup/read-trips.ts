// The trips of a backup, one by one: a damaged one is left out and said, and spoils no other.

import { checkDraft, checkTyped, cleanWords, TRIP_FORMAT, TRIP_VERSION } from '../../plan'
import type { BackupTrip } from './types'

/** Reads one trip's record of any version: the store's own reader. */
export type ReadTrip = (
  record: unknown,
) => { ok: true; value: BackupTrip } | { ok: false; reason: 'newer' | 'damaged'; message: string }

interface FoundTrips {
  trips: BackupTrip[]
  leftOut: string[]
  damaged: string[]
}

/** The end of the year 9999: past it, dates cannot be written any more. */
const LAST_MS = 253_402_300_799_999
const ID_CHARS = 200

export function readTrips(records: unknown[], readTrip: ReadTrip): FoundTrips {
  const found: FoundTrips = { trips: [], leftOut: [], damaged: [] }
  const taken = new Set<string>()
  for (const [i, unclean] of records.entries()) {
    const record = cleanWords(unclean)
    const name = `Trip ${i + 1}${nameIn(record)}`
    const read = readOne(record, readTrip)
    const why = !read.ok ? read.why : taken.has(read.trip.id) ? 'is in the file twice' : null
    if (!read.ok || why !== null) {
      found.leftOut.push(`${name} ${why}: it is left out.`)
      const id = (record as { id?: unknown } | null)?.id
      if (typeof id === 'string' && !taken.has(id)) found.damaged.push(id)
      continue
    }
    taken.add(read.trip.id)
    found.trips.push(read.trip)
    if (read.leftOut.length > 0)
      found.leftOut.push(`${name}: ${listed(read.leftOut)} cannot be read and is left out.`)
  }
  return found
}

type ReadOne = { ok: true; trip: BackupTrip; leftOut: string[] } | { ok: false; why: string }

function readOne(record: unknown, readTrip: ReadTrip): ReadOne {
  // The count of saves belongs to the device.
  const read = readTrip(isObject(record) ? { ...record, revision: 0 } : record)
  if (!read.ok) return { ok: false, why: read.message }
  const { id, demo, changedAt, draft, typed, profile } = read.value
  if (id === '' || id.length > ID_CHARS) return { ok: false, why: 'is damaged (id)' }
  if (!Number.isInteger(changedAt) || changedAt < 0 || changedAt > LAST_MS)
    return { ok: false, why: 'is damaged (changedAt)' }
  const checked = checkDraft(draft)
  if (!checked.ok) return { ok: false, why: checked.message }
  const trip: BackupTrip = {
    format: TRIP_FORMAT,
    version: TRIP_VERSION,
    id,
    demo,
    changedAt,
    draft: checked.draft,
    typed: checkTyped(checked.draft, typed),
    ...(profile && { profile: profile.map(({ km, eleM }) => ({ km, eleM })) }),
  }
  return { ok: true, trip, leftOut: checked.leftOut }
}

/** The first places, and how many more. */
export function listed(places: string[]): string {
  const more = places.length - 5
  const first = places.slice(0, 5).map(place => place.slice(0, 80))
  return first.join(', ') + (more > 0 ? ` and ${more} more values` : '')
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null

/** The name in a record that may be anything: ` “Ridge”`, or nothing. */
function nameIn(record: unknown): string {
  const name = (record as { draft?: { name?: unknown } } | null | undefined)?.draft?.name
  return typeof name === 'string' && name ? ` “${name.slice(0, 60)}”` : ''
}
