// When the last backup file was saved and what was in it, so that the reader can be reminded: gently, after two weeks,
// when things have changed since, and not again for two weeks once it was put off.

import { get, set, type UseStore } from 'idb-keyval'
import * as z from 'zod/mini'
import { backupPieces, type Contents, isEmpty } from '../files/backup'
import { fileOf } from '../files/portions'
import { sha256 } from './canonical'

const KEY = 'backup'
const FORMAT = 'pack-reckoner/backup-note'
const DAY_MS = 86_400_000
const REMIND_DAYS = 14

const time = z.optional(z.number())
const shape = z.object({
  format: z.literal(FORMAT),
  version: z.literal(1),
  /** When there was first something worth a backup. Milliseconds since 1970, as all here. */
  since: z.number(),
  /** The last backup file. */
  at: time,
  /** The date and the SHA-256 of its text: the same contents with that date give the same text. */
  day: z.optional(z.string()),
  hash: z.optional(z.string()),
  /** When the reminder was put off. */
  quietAt: time,
})
type Note = z.infer<typeof shape>

export type BackupNotes = ReturnType<typeof createBackupNotes>

export function createBackupNotes({ use, now }: { use: UseStore; now: () => number }) {
  const read = async (): Promise<Note | null> => {
    const found = shape.safeParse(await get<unknown>(KEY, use))
    return found.success ? found.data : null
  }
  async function write(part: Partial<Note>): Promise<void> {
    const note = (await read()) ?? { format: FORMAT, version: 1, since: now() }
    await set(KEY, { ...note, ...part }, use)
  }

  return {
    /** When the last backup file was saved; null: none was noted. */
    lastAt: async (): Promise<number | null> => (await read())?.at ?? null,

    noteSaved: async (text: Blob, day: string): Promise<void> =>
      write({ at: now(), day, hash: await sha256(text) }),

    putOff: (): Promise<void> => write({ quietAt: now() }),

    /** The reminder in words; null while there is none to give. */
    async due(contents: Contents): Promise<string | null> {
      const own = { ...contents, trips: contents.trips.filter(({ demo }) => !demo) }
      if (isEmpty(own)) return null
      const note = await read()
      if (!note) {
        await write({})
        return null
      }
      const last = Math.max(note.at ?? note.since, note.quietAt ?? 0)
      if (now() - last <= REMIND_DAYS * DAY_MS) return null
      if (note.at === undefined)
        return 'No backup file has been saved yet: what you entered lies in this browser only. More → “Backup” saves one.'
      if (note.day && (await sha256(await fileOf(backupPieces(contents, note.day)))) === note.hash)
        return null
      const days = Math.floor((now() - note.at) / DAY_MS)
      return `The last backup file is ${days} days old, and there are changes since. More → “Backup” saves one.`
    },
  }
}
