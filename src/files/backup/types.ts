// A full backup: all that the app keeps for its reader, as one document. What belongs to the device alone (which trip is
// open, undo steps, counts of saves) is no part of it.

import type { Draft, TRIP_FORMAT, TRIP_VERSION, Typed } from '../../plan'
import type { ShelfContents } from '../../plan/shelf'
import type { ProfilePoint } from '../gpx'

export const BACKUP_FORMAT = 'pack-reckoner/backup'
/** 2: the packs lie with the shelf. 3: trips hold what was noted on packing day, on the way and after. 4: they may be of several people. */
export const BACKUP_VERSION = 4

/** A trip as the store keeps it, without the count of its saves. */
export interface BackupTrip {
  format: typeof TRIP_FORMAT
  version: typeof TRIP_VERSION
  id: string
  demo: boolean
  changedAt: number
  draft: Draft
  typed: Typed
  profile?: ProfilePoint[]
}

export interface BackupSettings {
  system: 'metric' | 'us'
  theme: 'auto' | 'light' | 'dark'
  brightSun?: boolean | undefined
  largeTargets?: boolean | undefined
  /** The columns of the table of packs; absent: the usual ones. */
  packColumns?: string[] | undefined
}

/** Everything: the trips in the reader's order, the shelf, the settings. */
export interface Contents {
  trips: BackupTrip[]
  shelf: ShelfContents
  settings: BackupSettings
}

/** What could be read of a file. Null: that part is damaged or missing, and what is here is to stay. */
export interface Backup {
  /** YYYY-MM-DD, as the file says. */
  savedOn: string
  trips: BackupTrip[]
  shelf: ShelfContents | null
  settings: BackupSettings | null
  /** What is damaged or unknown and was left out, a sentence each. */
  leftOut: string[]
  /** The ids of trips that are in the file but damaged. */
  damagedTrips: string[]
}
