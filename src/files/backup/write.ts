// Everything as one text. Characters that steer the line they stand in are left out here as they are when it is read, so
// that a backup which was read and is written again is the same to the byte.

import { cleanWords } from '../../plan'
import { SHELF_FORMAT, SHELF_VERSION, type ShelfContents } from '../../plan/shelf'
import { canonicalPieces } from './canonical'
import { BACKUP_FORMAT, BACKUP_VERSION, type BackupSettings, type BackupTrip, type Contents } from './types'

/** The text of a backup file. `savedOn`: YYYY-MM-DD. The same contents and date give the same bytes. */
export const backupText = (contents: Contents, savedOn: string): string =>
  [...backupPieces(contents, savedOn)].join('')

/** As `backupText`, piece after piece: of thousands of trips the text takes longer than a page may stand still. */
export function* backupPieces(contents: Contents, savedOn: string): Generator<string> {
  const { settings, shelf, trips } = contents
  const backup = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    savedOn,
    settings: settingsOf(settings),
    shelf: shelfRecord(shelf),
    trips: trips.map(tripRecord),
  }
  yield* canonicalPieces(backup, cleanWords)
  yield '\n'
}

/** The settings among others, without what is as usual. */
export const settingsOf = ({
  system,
  theme,
  brightSun,
  largeTargets,
  packColumns,
}: BackupSettings): BackupSettings => ({
  system,
  theme,
  ...(brightSun && { brightSun }),
  ...(largeTargets && { largeTargets }),
  ...(packColumns && { packColumns }),
})

/** The name of a backup file. */
export const backupName = (savedOn: string): string => `pack-reckoner-${savedOn}.json`

/** A trip as a backup holds it, whatever else the store keeps with it. */
function tripRecord({ format, version, id, demo, changedAt, draft, typed, profile }: BackupTrip) {
  return { format, version, id, demo, changedAt, draft, typed, ...(profile && { profile }) }
}

const shelfRecord = ({ things, bases, packings, packs, figures, typed }: ShelfContents) => ({
  format: SHELF_FORMAT,
  version: SHELF_VERSION,
  things,
  bases,
  packings,
  packs,
  ...(figures && { figures }),
  typed,
})
