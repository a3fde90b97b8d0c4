// What the reader can do so that trips are kept: ask the browser to promise it, know when a plan file was last saved,
// and get rid of a damaged record once its text is in a file.

import { type ReadonlySignal, signal } from '@preact/signals'
import { get, type UseStore, update } from 'idb-keyval'
import * as z from 'zod/mini'
import { discard, rawText } from './read-damaged'
import { isTripKey } from './record-places'
import type { SavedRecords } from './saved-records'
import type { State } from './state'
import { within } from './within'

export const FILES_KEY = 'files'
const FORMAT = 'pack-reckoner/files'
const ANSWER_MS = 3000

/** A plan file of a trip: when it was saved, and the state of the trip in it (`changedAt`). Milliseconds since 1970. */
export interface FileNote {
  at: number
  changedAt: number
}

/** Null: the browser does not say. */
export interface Facts {
  promised: boolean | null
  usedBytes: number | null
}

export interface StorageStatus {
  /** What the browser says of this app's storage. */
  facts(): Promise<Facts>
  /** Asks the browser to keep it; whether it promises. To be called from a tap: some browsers ask the reader. */
  askToKeep(): Promise<boolean>
  /** The last plan file of a trip; null when none was noted. */
  lastFile(tripId: string): Promise<FileNote | null>
  /** Changes whenever a plan file is noted. */
  noted: ReadonlySignal<number>
  /** Notes that the trip, as it is now, was saved as a plan file. */
  noteFile(tripId: string): Promise<void>
  /** A damaged record as text. */
  damagedText(key: string): Promise<string>
  /** Deletes a damaged record whose text was read before; throws for any other. */
  discardDamaged(key: string): Promise<void>
}

const shape = z.object({
  format: z.literal(FORMAT),
  version: z.literal(1),
  files: z.record(z.string(), z.object({ at: z.number(), changedAt: z.number() })),
})

const noted = signal(0)
/** Texts that have been handed out, so that nothing is discarded unread. */
const handedOut = new Set<string>()

const notesIn = (stored: unknown) => {
  const found = shape.safeParse(stored)
  return found.success ? found.data.files : {}
}

/** The record of plan files without that of one trip. */
export function withoutNote(stored: unknown, tripId: string): object {
  const { [tripId]: _gone, ...files } = notesIn(stored)
  return { format: FORMAT, version: 1, files }
}

export function createStorageStatus({
  state,
  use,
  records,
}: {
  state: State
  use: UseStore
  records: SavedRecords
}): StorageStatus {
  return {
    async facts() {
      const { storage } = navigator as Partial<Navigator>
      const promised = (await within(Promise.resolve(storage?.persisted?.()), ANSWER_MS)) ?? null
      const usedBytes = (await within(Promise.resolve(storage?.estimate?.()), ANSWER_MS))?.usage ?? null
      return { promised, usedBytes }
    },
    askToKeep: async () => (await (navigator as Partial<Navigator>).storage?.persist?.()) ?? false,
    lastFile: async tripId => notesIn(await get<unknown>(FILES_KEY, use))[tripId] ?? null,
    async noteFile(tripId) {
      const trip = state.trips.peek().get(tripId)
      if (!trip) return
      const note: FileNote = { at: Date.now(), changedAt: trip.changedAt }
      await update<unknown>(
        FILES_KEY,
        stored => ({ format: FORMAT, version: 1, files: { ...notesIn(stored), [tripId]: note } }),
        use,
      )
      noted.value += 1
    },
    noted,
    async damagedText(key) {
      const text = await rawText(use, key)
      handedOut.add(key)
      return text
    },
    async discardDamaged(key) {
      if (!handedOut.has(key))
        throw new Error(`the text of ${key} was not read before it was to be discarded`)
      if (!state.damaged.peek().some(damaged => damaged.key === key))
        throw new Error(`${key} is not a damaged record`)
      await discard(use, key)
      records.unread.delete(key)
      // A copy of it that was kept is not to come back as lost.
      if (isTripKey(key)) records.gone.add(key)
      state.damaged.value = state.damaged.peek().filter(damaged => damaged.key !== key)
    },
  }
}
