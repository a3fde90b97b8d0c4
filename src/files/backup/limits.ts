// What a backup file may hold, declared once for writer, reader, messages and tests. The ends are judgements of ours: a
// hundred trips of two hundred items each come to about 5 MB.

export const BACKUP_CAPS = {
  fileBytes: 30_000_000,
  depth: 24,
  trips: 2000,
  things: 20_000,
  bases: 1000,
  /** In one base. */
  lines: 5000,
  packings: 5000,
  /** A note to a thing. */
  noteChars: 5000,
} as const
