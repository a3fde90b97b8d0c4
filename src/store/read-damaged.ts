// When one stored record cannot be read, the others still can: each is fetched by itself, and the one that fails is
// handed on as damaged. Also the way out for a damaged record: its raw text first, then its removal.

import { get, keys, promisifyRequest, type UseStore } from 'idb-keyval'
import { nameOf } from './messages'

/** Stands for a record that the browser itself fails to read; no kind of record accepts it, so it counts as damaged. */
interface Unreadable {
  unreadable: string
}

/** All entries, one by one. Rejects with `cause` when not even their keys can be had. */
export async function readEach(use: UseStore, cause: unknown): Promise<[string, unknown][]> {
  const all = await keys<string>(use).catch(() => {
    throw cause
  })
  const found: [string, unknown][] = []
  for (const key of all) found.push([key, await get<unknown>(key, use).catch(unreadable)])
  return found
}

const unreadable = (error: unknown): Unreadable => ({ unreadable: nameOf(error) })

/** A damaged record as text, for a file: JSON as far as it goes, else in words why there is none. */
export async function rawText(use: UseStore, key: string): Promise<string> {
  const value = await get<unknown>(key, use).catch(unreadable)
  return JSON.stringify({ key, value }, null, 1)
}

/** Deletes one record. Resolves when that is on the device. */
export const discard = (use: UseStore, key: string): Promise<void> =>
  use('readwrite', async store => {
    await promisifyRequest(store.delete(key))
  })
