// Backups as the screens use them: everything as one text, a backup taken in as one act that can be put back, and the
// snapshots on the device.

import { batch } from '@preact/signals'
import type { UseStore } from 'idb-keyval'
import {
  type Backup,
  type BackupSettings,
  backupName,
  backupPieces,
  type Contents,
  restoring,
  settingsOf,
  type Wishes,
} from '../../files/backup'
import { fileOf, inOneGo, inPortions, type Steps } from '../../files/portions'
import { type BackupNotes, createBackupNotes } from '../backup-note'
import { backupsChanged, dueBackup, snapshotProblem } from '../backup-signals'
import { isErasedElsewhere } from '../erased'
import { BUSY } from '../in-turn'
import { pruned, shelfContentsOf, stepOf, type World } from '../journal'
import { nameOf } from '../messages'
import { tripKey } from '../record-places'
import type { SavedRecords } from '../saved-records'
import type { SnapshotReason } from '../snapshot-file'
import { createSnapshots, dayOf, type SnapshotEnvironment } from '../snapshots'
import type { State } from '../state'
import { puttingBack, type Taken, takingIn } from '../take-in'

/** What another tab changes again and again meanwhile is made in one go in the end. */
const MOST_TRIES = 3

export interface BackupEnvironment extends Omit<SnapshotEnvironment, 'isErased'> {
  state: State
  use: UseStore
  records: Pick<SavedRecords, 'unread' | 'erasure'>
  newId: () => string
}

/** A backup that was taken in. */
export interface TakenIn {
  /** Why what was here could not be kept as a snapshot, in words; null: it could, or nothing was here. */
  problem: string | null
  /** What was here before. */
  before: Contents
  /** What was here before, as a backup file of this name. */
  beforeAsFile: () => Promise<{ name: string; text: Blob }>
  /** What was made or changed since stays. */
  putBack: () => Promise<void>
}

export type Backups = ReturnType<typeof createBackups>

export function createBackups(env: BackupEnvironment) {
  const { state, use, records, now, newId } = env
  const isErased = () => isErasedElsewhere(use, records).catch(() => false)
  const snapshots = createSnapshots({ ...env, isErased })
  const notes: BackupNotes = createBackupNotes({ use, now })

  const contents = (): Contents => {
    return {
      trips: state.tripList.peek(),
      shelf: shelfContentsOf(state.shelf.peek()),
      settings: settingsOf(state.library.peek()),
    }
  }

  /** The contents as a backup file of today. */
  async function file(of = contents()): Promise<{ name: string; text: Blob; day: string }> {
    const day = dayOf(now())
    return { name: backupName(day), text: await fileOf(backupPieces(of, day)), day }
  }

  /** Why it could not be kept, in words, or null. Never rejects: an edit never waits for a snapshot. */
  async function snapshot(reason: SnapshotReason): Promise<string | null> {
    try {
      await snapshots.take(reason, contents())
      snapshotProblem.value = null
    } catch (error) {
      snapshotProblem.value = snapshotText(error)
    }
    backupsChanged.value += 1
    return snapshotProblem.peek()
  }

  /** Makes of what is here what there is to be, as one act. Resolves to what was here. */
  async function goTo(nextOf: (was: Contents) => Steps<Contents>, label: string): Promise<Contents> {
    for (let tries = 1; ; tries++) {
      const [was, start] = [contents(), state.world()]
      const making = made(nextOf(was), start, now())
      const { next, world, parts } = await (tries < MOST_TRIES ? inPortions(making) : inOneGo(making))
      // Another tab's save may have come in between.
      if (!isStill({ ...start, ...was.settings })) continue
      const step = stepOf(state.journal.peek(), { id: newId(), label, parts, now: now() })
      batch(() => {
        if (parts.length > 0) state.record(step)
        state.putWorld({ ...world, removed: pruned(world.removed, state.journal.peek()) })
        const { packColumns: _0, brightSun: _1, largeTargets: _2, ...rest } = state.library.peek()
        state.library.value = { ...rest, ...next.settings }
      })
      return was
    }
  }

  function isStill(seen: World & BackupSettings): boolean {
    const present = { ...state.world(), ...contents().settings }
    return (Object.keys(present) as (keyof typeof present)[]).every(key => present[key] === seen[key])
  }

  /** The backup with new ids for trips whose places are taken by records that were not read, or were erased for good. */
  function besideUnread(backup: Backup): Backup {
    const isTaken = (id: string) =>
      records.unread.has(tripKey(id)) ||
      state.erased.peek().has(id) ||
      (!state.loaded.peek() && !state.trips.peek().has(id))
    return {
      ...backup,
      trips: backup.trips.map(trip => (isTaken(trip.id) ? { ...trip, id: newId() } : trip)),
    }
  }

  return {
    contents,
    file,
    snapshots,
    snapshot,
    lastFile: notes.lastAt,

    /** Notes that this text was saved as a backup file. */
    async noteSaved({ text, day }: { text: Blob; day: string }): Promise<void> {
      dueBackup.value = null
      await notes.noteSaved(text, day)
      backupsChanged.value += 1
    },

    /** Looks whether the reader should be reminded of a backup file. */
    async remind(): Promise<void> {
      dueBackup.value = await notes.due(contents())
    },

    async putOff(): Promise<void> {
      dueBackup.value = null
      await notes.putOff()
    },

    /**
     * Takes a backup in as wished, after a snapshot of what is here: one act, and one step to undo. What is here is
     * looked at only then, since another tab may have changed it. Rejects while the stored trips are being read.
     */
    async takeIn(backup: Backup, wishes: Wishes, label: string): Promise<TakenIn> {
      if (!state.loaded.peek() && state.saveState.peek().kind !== 'memory-only')
        throw new Error('your own trips are still being read: try again in a moment')
      const problem = await snapshot('before')
      const was = await goTo(here => restoring(here, besideUnread(backup), wishes, newId), label)
      const then = contents()
      return {
        problem,
        before: was,
        beforeAsFile: async () => {
          const { name, text } = await file(was)
          return { name: name.replace('.json', '-before.json'), text }
        },
        putBack: async () => {
          await snapshot('back')
          await goTo(now => puttingBack({ was, then, now }, newId), 'The backup taken out again')
        },
      }
    },
  }
}

function* made(next: Steps<Contents>, start: World, now: number): Steps<Taken & { next: Contents }> {
  const contents = yield* next
  return { ...(yield* takingIn(start, contents, now)), next: contents }
}

/** Why a snapshot could not be kept or read, and what to do. */
export function snapshotText(error: unknown): string {
  switch (nameOf(error)) {
    case 'QuotaExceededError':
      return 'This device has no room left for a snapshot: free some space, or remove old snapshots. Your trips are not touched by this.'
    case 'TimeoutError':
      return 'The place where snapshots lie does not answer: save a backup file instead, and reload the app.'
    case BUSY:
      return 'Another tab of the app is busy with the snapshots: close the other tabs, or save a backup file instead.'
    case 'NotSupportedError':
      return 'This browser has no place for snapshots: save a backup file now and then.'
    case 'DataError':
    case 'NotReadableError':
      return 'This snapshot is damaged: choose another one. It is left as it is until you remove it.'
    default:
      return `The snapshots cannot be used (${nameOf(error)}): save a backup file instead.`
  }
}
