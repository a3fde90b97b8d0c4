// From the text of a file that anybody may have written to a backup, or to a sentence that says why it is none. What is
// damaged inside a whole file is left out and listed, entry by entry; a file of a newer version is refused.

import { cleanText, cleanWords } from '../../plan'
import { givenToList } from '../../plan/shelf'
import { countText } from '../../units'
import { BACKUP_CAPS } from './limits'
import { parseJson } from './parse-json'
import { readSettings, readShelf } from './read-shelf'
import { type ReadTrip, readTrips } from './read-trips'
import { BACKUP_FORMAT, BACKUP_VERSION, type Backup } from './types'

export type ReadBackup = { ok: true; backup: Backup } | { ok: false; message: string }

const refuse = (message: string): ReadBackup => ({ ok: false, message })

/** Reads a backup file's text. `readTrip` reads one trip's record of any version. Never throws. */
export function readBackup(text: string, readTrip: ReadTrip): ReadBackup {
  // UTF-16 units are at most the UTF-8 bytes, so this cap never refuses a file under it.
  if (text.length > BACKUP_CAPS.fileBytes)
    return refuse(`The file is larger than ${BACKUP_CAPS.fileBytes / 1e6} MB, the most that is read.`)
  const parsed = parseJson(text)
  return parsed.ok ? backupIn(parsed.value, readTrip) : refuse(parsed.message)
}

/** As {@link readBackup}, for what {@link parseJson} has made of a text. */
export function backupIn(value: unknown, readTrip: ReadTrip): ReadBackup {
  const { format, version, savedOn, trips, shelf, settings, ...others } = branch(value)
  if (format !== BACKUP_FORMAT) return refuse('The file is no backup of Pack Reckoner.')
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuse('The file does not say which version of a backup it is: look for another copy.')
  if (version > BACKUP_VERSION)
    return refuse(
      'The backup was saved by a newer version of Pack Reckoner: reload the app to update it, then open the file again.',
    )
  const tooMany = tooManyOf(trips, shelf)
  if (tooMany) return refuse(tooMany)
  if (!Array.isArray(trips)) return refuse('The file holds no list of trips: look for another copy.')

  const foundTrips = readTrips(trips, readTrip)
  const foundShelf = readShelf(cleanWords(shelf))
  // Of a file of before the packs lay with the trips; where the shelf cannot be read they come in with them.
  const given = foundShelf.shelf && givenToList(foundShelf.shelf, foundTrips.trips)
  const listed = new Map(given?.trips.map(trip => [trip.id, trip]))
  const foundSettings = readSettings(settings)
  const strange = Object.keys(others).map(key => `“${cleanText(key).slice(0, 60)}” is no part of a backup.`)
  return {
    ok: true,
    backup: {
      savedOn: dateIn(savedOn),
      trips: foundTrips.trips.map(trip => listed.get(trip.id) ?? trip),
      shelf: given?.shelf ?? null,
      settings: foundSettings,
      leftOut: [
        ...foundTrips.leftOut,
        ...foundShelf.leftOut,
        ...(foundSettings ? [] : ['The settings cannot be read: yours stay.']),
        ...strange.slice(0, 10),
      ],
      damagedTrips: foundTrips.damaged,
    },
  }
}

function tooManyOf(trips: unknown, shelf: unknown): string | null {
  const { things, bases, packings, packs } = branch(shelf)
  const lists = { trips, things, bases, packings, packs }
  for (const [what, list] of Object.entries(lists)) {
    const most = BACKUP_CAPS[what as keyof typeof lists]
    if (Array.isArray(list) && list.length > most)
      return `The file holds ${countText(list.length)} ${what}; at most ${countText(most)} are read.`
  }
  return null
}

const branch = (value: unknown): Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : {}

const dateIn = (value: unknown): string =>
  typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value) ? value : ''
