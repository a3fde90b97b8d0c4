// What the screens know of backups, before and after the code that looks after them has come.

import { signal } from '@preact/signals'

/** The reminder to save a backup file, in words. */
export const dueBackup = signal<string | null>(null)
/** Why the last snapshot could not be kept, in words; null: it was, or none was due. */
export const snapshotProblem = signal<string | null>(null)
/** Changes whenever a snapshot was taken or removed, or a backup file noted. */
export const backupsChanged = signal(0)
