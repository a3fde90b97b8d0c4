// What a file is, before anything of it is taken in.

import type { Looked } from '../../files/backup'
import { type Backups, backups } from '../../store/lazy'

export const lookAtFile = (file: File): Promise<Looked> => theBackups().look(file)

/** The app starts the store before it draws anything. */
export function theBackups(): Backups {
  const found = backups()
  if (!found) throw new Error('the store was not started')
  return found
}
