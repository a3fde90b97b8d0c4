// Everything the app keeps as one file, and back. Loaded when somebody saves or opens one.
export { canonical, canonicalPieces } from './canonical'
export {
  bringsNothing,
  type Compared,
  type Comparison,
  compareBackup,
  comparing,
  isEmpty,
  sameTrip,
} from './compare'
export { BACKUP_CAPS } from './limits'
export { type Looked, lookAt } from './look'
export { type ReadBackup, readBackup } from './read'
export type { ReadTrip } from './read-trips'
export { type Choice, restored, restoring, type Wishes } from './restore'
export type { Backup, BackupSettings, BackupTrip, Contents } from './types'
export { backupName, backupPieces, backupText, settingsOf } from './write'
