// Backups, and every file that comes in from outside. Loaded when one of them is wanted.
export { BackupSection } from './BackupSection'
export { Received } from './Received'
