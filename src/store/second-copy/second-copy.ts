// A second copy of every saved trip and of the shelf outside IndexedDB, because a damaged database vanishes whole, or in part without a
// word. Only what the database has acknowledged is copied; only a removal that it acknowledged takes a copy away.

import { promisifyRequest } from 'idb-keyval'
import { canonical, canonicalInTurns, sha256 } from '../canonical'
import type { TripDocument } from '../documents'
import { isErasedElsewhere } from '../erased'
import { goneKey, idOf, isTripKey } from '../record-places'
import { NO_ANSWER, whyText } from '../why-not'
import type { Known } from '../write'
import { type CopyEnvironment, isCopied, recordOf } from './environment'
import { lend } from './lend'
import { findLosses } from './losses'
import { type Entries, fileOf, readCopy, readManifest, sweep, writeManifest } from './manifest'
import { GONE_TEXT, restore } from './restore'

/** So many files are read again each time; the others have their turn. */
const LOOKED_AT = 50

export function createSecondCopy(env: CopyEnvironment) {
  const { state, records, use, vault, now, lost, alone } = env
  /** What is in the copy, by what it was made of. */
  const copied = new Map<string, object>()
  /** Where the look at what lies in the copy goes on. */
  let lookedTo = 0
  /** Records whose copies have become trips of their own: from key, to key. */
  const replaced = new Map<string, string>()
  let checked = false

  /** Compares what the database held with the copy and brings back what is missing. Rejects when it cannot be read. */
  const check = () =>
    alone(async () => {
      const manifest = await readManifest(vault)
      if (manifest.kind === 'newer') {
        state.copy.value = { kind: 'newer' }
        return
      }
      if (!state.loaded.peek()) {
        if (manifest.kind === 'read') await lend(env, manifest)
        if (!state.loaded.peek()) state.copy.value = { kind: 'failed', why: NO_ANSWER }
        return
      }
      checked = true
      const losses = manifest.kind === 'read' ? await findLosses(env, manifest.entries) : []
      restore(env, losses, replaced)
      if (lost() && manifest.kind === 'none') state.tell(GONE_TEXT)
    })

  /** Brings the copy up to what the database has acknowledged. Never rejects: see `state.copy`. */
  async function sync() {
    try {
      if (state.loaded.peek() && !checked) await check()
      if (checked) await alone(copy)
    } catch (error) {
      state.copy.value = { kind: 'failed', why: whyText(error) }
    }
  }

  async function copy() {
    if (await isErasedElsewhere(use, records)) return
    const manifest = await readManifest(vault)
    if (manifest.kind === 'newer') {
      state.copy.value = { kind: 'newer' }
      return
    }
    const entries: Entries = manifest.kind === 'read' ? { ...manifest.entries } : {}
    const gone = [...records.gone]
    const before = canonical(entries)
    const saved = [...records.known].filter(entry => isCopied(...entry) && !records.unread.has(entry[0]))
    const { sound, missing } = await look(entries)
    const removed = await removedElsewhere(saved.map(([key]) => key).filter(key => !sound.has(key)))
    for (const [key, known] of saved)
      if (!removed.has(key) && !(sound.has(key) && copied.get(key) === known.value))
        await copyRecord(entries, sound, [key, known])
    for (const key of gone) delete entries[key]
    // Of what only another tab knows there is no copy until that tab makes it.
    for (const key of missing) if (!sound.has(key)) delete entries[key]
    for (const [key, by] of replaced) if (records.unread.has(key) && entries[by]) delete entries[key]
    if (canonical(entries) !== before || manifest.kind === 'none') {
      await writeManifest(vault, entries, now())
      await sweep(vault, entries)
    }
    for (const [key, known] of saved) copied.set(key, known.value)
    if (gone.length > 0) await letGo(gone)
    const trips = Object.keys(entries).filter(key => isTripKey(key) && sound.has(key)).length
    state.copy.value = { kind: 'kept', at: now(), trips }
  }

  /**
   * What lies there may have gone, or come to harm, behind the app's back. `sound`: whose files are there, and, of those
   * that are next in turn, are what was written; `missing`: whose files are not there.
   */
  async function look(entries: Entries): Promise<{ sound: Set<string>; missing: string[] }> {
    const files = new Set(await vault.names())
    const keys = Object.keys(entries)
    const isThere = (key: string) => files.has(fileOf(key, entries[key]!.hash))
    const sound = new Set(keys.filter(isThere))
    const next = keys.slice(lookedTo, lookedTo + LOOKED_AT)
    lookedTo = lookedTo + LOOKED_AT < keys.length ? lookedTo + LOOKED_AT : 0
    for (const key of next) if ((await readCopy(vault, key, entries[key]!)) === null) sound.delete(key)
    return { sound, missing: keys.filter(key => !isThere(key)) }
  }

  /** Those of the keys under which the database has nothing any more: another tab has removed them from the copy too. */
  async function removedElsewhere(keys: string[]): Promise<Set<string>> {
    if (keys.length === 0) return new Set()
    const counts = await use('readonly', store =>
      Promise.all(keys.map(key => promisifyRequest(store.count(key)))),
    )
    return new Set(keys.filter((_, i) => counts[i] === 0))
  }

  async function copyRecord(entries: Entries, sound: Set<string>, [key, known]: [string, Known]) {
    const entry = entries[key]
    const by = replaced.get(key)
    const isNewer = sound.has(key) && entry && entry.revision > known.revision
    // Another tab has copied a later state, or this copy is to be saved as a trip of its own first.
    if (isNewer || (by && !records.known.has(by))) return
    const text = await canonicalInTurns(recordOf(key, known))
    const hash = await sha256(text)
    if (entry?.hash !== hash || !sound.has(key)) await vault.write(fileOf(key, hash), text)
    const { changedAt = 0 } = known.value as Partial<TripDocument>
    entries[key] = { hash, revision: known.revision, changedAt }
    sound.add(key)
  }

  /** The copy holds these removed trips no longer, so the database need not remember them. */
  async function letGo(keys: string[]) {
    await use('readwrite', store => {
      for (const key of keys) store.delete(goneKey(idOf(key)))
    })
    for (const key of keys) records.gone.delete(key)
  }

  return { check, sync }
}
