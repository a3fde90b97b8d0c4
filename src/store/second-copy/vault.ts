// Where the second copy lies: named texts in a folder of their own. Null where the browser offers no place for it.

import { openFolder } from '../folder'
import { COPY_FOLDER } from '../places'

/** Nobody waits for the copy, so that a slow device is given its time. */
const PATIENCE = { answerMs: 5000, writeMs: 10_000 }

export interface Vault {
  /** Null when there is no such text. */
  read(name: string): Promise<string | null>
  /** All of it or nothing: a text half written never shows. */
  write(name: string, text: string): Promise<void>
  remove(name: string): Promise<void>
  names(): Promise<string[]>
}

/** Rejects when the browser has such a place but does not let the app use it, or does not answer. */
export async function openVault(): Promise<Vault | null> {
  const folder = await openFolder(COPY_FOLDER, PATIENCE)
  return folder && { ...folder, read: async name => (await (await folder.read(name))?.text()) ?? null }
}
