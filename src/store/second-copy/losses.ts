// Opening, as the second copy sees it: which acknowledged states the database does not hold any more.

import { getMany } from 'idb-keyval'
import type { Shelf } from '../../plan/shelf'
import { canonicalInTurns, sha256 } from '../canonical'
import type { Library, TripDocument } from '../documents'
import { erasedKey } from '../erased'
import { type Kind, LIBRARY, readRecord, SHELF, TRIP } from '../record-kinds'
import { goneKey, idOf, isTripKey, LIBRARY_KEY, SHELF_KEY } from '../record-places'

import { type CopyEnvironment, recordOf } from './environment'
import { type Entries, type Entry, readCopy } from './manifest'

/**
 * `missing`: the database has no such record; `older`: it has an earlier state; `other`: same revision, other contents;
 * `unreadable`: its record is damaged. `copy` null: the copy of it is damaged too.
 */
export type How = 'missing' | 'older' | 'other' | 'unreadable'
export type Loss =
  | { how: How; key: string; copy: TripDocument | null }
  | { how: 'shelf'; was: How; copy: Shelf | null }
  | { how: 'library'; copy: Library }

export async function findLosses(env: CopyEnvironment, entries: Entries): Promise<Loss[]> {
  const { records, state } = env
  const losses: Loss[] = []
  for (const [key, entry] of Object.entries(entries)) {
    if (!isTripKey(key) || records.gone.has(key) || state.erased.peek().has(idOf(key))) continue
    const how = await lossOf(env, key, entry)
    if (how) losses.push({ how, key, copy: await copyOf(env, { key, entry, kind: TRIP }) })
  }
  const entry = entries[LIBRARY_KEY]
  const isBare = state.tripList.peek().length === 0 || losses.some(({ how }) => how === 'missing')
  const isLost = records.hooks.listDamaged || (isBare && losses.length > 0)
  const library = entry && isLost ? await copyOf(env, { key: LIBRARY_KEY, entry, kind: LIBRARY }) : null
  if (library) losses.push({ how: 'library', copy: library })
  const shelf = entries[SHELF_KEY]
  const was = shelf ? await lossOf(env, SHELF_KEY, shelf) : null
  if (shelf && was)
    losses.push({ how: 'shelf', was, copy: await copyOf(env, { key: SHELF_KEY, entry: shelf, kind: SHELF }) })
  return losses
}

async function lossOf({ records, state, use }: CopyEnvironment, key: string, entry: Entry) {
  if (records.unread.has(key))
    return state.damaged.peek().some(damaged => damaged.key === key) ? 'unreadable' : null
  const note = records.known.get(key)
  // The database holds something later, which the next save brings here.
  if (note?.isBase) return null
  // The shelf is never removed: where there was none, an empty one is known.
  const known = key === SHELF_KEY && note?.revision === 0 ? undefined : note
  // What a page had put aside when it went away is in memory and about to be saved.
  if (!known && state.trips.peek().has(idOf(key))) return null
  if (!known || known.revision < entry.revision) {
    // Another tab may have saved, removed or erased it since this one has read.
    const keys = [key, goneKey(idOf(key)), erasedKey(idOf(key))]
    const [stored, gone, erased] = await getMany<{ revision?: number } | undefined>(keys, use)
    if (gone !== undefined || erased !== undefined || (stored?.revision ?? -1) >= entry.revision) return null
    return known ? 'older' : 'missing'
  }
  if (known.revision > entry.revision) return null
  return (await sha256(await canonicalInTurns(recordOf(key, known)))) === entry.hash ? null : 'other'
}

/** A record read back from the copy; null when the copy is damaged. */
export async function copyOf<T>(
  { vault }: CopyEnvironment,
  { key, entry, kind }: { key: string; entry: Entry; kind: Kind<T> },
): Promise<T | null> {
  const text = await readCopy(vault, key, entry)
  if (text === null) return null
  const found = readRecord(kind, JSON.parse(text))
  return found.ok ? found.value : null
}
