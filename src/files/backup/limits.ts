// What a backup file may hold, declared once for writer, reader, messages and tests. The ends are judgements of ours: a
// hundred trips of two hundred items each come to about 5 MB.

export const BACKUP_CAPS = {
  fileBytes: 30_000_000,
  depth: 24,
  /** In one list or object, of whatever kind: several times as many as in the longest there is. */
  entries: 100_000,
  /** Brackets and commas in all. A backup has ten characters or more to each, as each field has a line of its own. */
  values: 3_000_000,
  trips: 2000,
  things: 20_000,
  bases: 1000,
  /** In one base. */
  lines: 5000,
  packings: 5000,
  packs: 5000,
  /** A note to a thing. */
  noteChars: 5000,
  /** Chosen for the table of packs, and the name of one: far more than there are. */
  columns: 100,
  columnChars: 100,
} as const
