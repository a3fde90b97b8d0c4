// The backups of the store, for the screens that show them.

import { type Backups, backups } from '../../store/lazy'

/** The app starts the store before it draws anything. */
export function theBackups(): Backups {
  const found = backups()
  if (!found) throw new Error('the store was not started')
  return found
}
