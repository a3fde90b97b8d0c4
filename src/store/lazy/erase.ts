// Erasing for good: a removed trip, or everything on this device, in every place where the app keeps something. What was
// cut off, or could not reach a place, is gone on with at the next start.

import { promisifyRequest, type UseStore } from 'idb-keyval'
import type { Actions } from '../actions'
import { backupsChanged } from '../backup-signals'
import { ALL_ERASED_KEY, type Erased, erasedKey, erasedNote, mentions, readErased } from '../erased'
import { type Folder, removeCache, removeOther } from '../folder'
import { COPY_FOLDER, RECEIVED_CACHE, SNAPSHOT_FOLDER } from '../places'
import { kindAt, readRecord, STEP, UNSAVED } from '../record-kinds'
import { goneKey, historyKey, removedKey, tripKey } from '../record-places'
import type { SavedRecords } from '../saved-records'
import { eraseFromCopy, type Vault } from '../second-copy'
import { dropOthersWords } from '../session'
import type { Snapshots } from '../snapshots'
import type { State } from '../state'
import { FILES_KEY, withoutNote } from '../storage-status'
import { whyText } from '../why-not'

type Turn = <T>(work: () => Promise<T>) => Promise<T>

export interface EraseEnvironment {
  state: State
  records: Pick<SavedRecords, 'isChanged' | 'erasure'>
  actions: Pick<Actions, 'eraseTrip'>
  use: UseStore
  /** What pages have put aside. */
  useAside: UseStore
  now: () => number
  /** Writes what is unsaved. */
  flush: () => Promise<void>
  /** Writes nothing from now on; and again. */
  stop: () => Promise<void>
  goOn: () => void
  tellErased: () => void
  startAnew: () => void
  openVault: () => Promise<Vault | null>
  openPlace: () => Promise<Pick<Folder, 'names' | 'remove'> | null>
  copyTurn: Turn
  snapshotTurn: Turn
  snapshots: Pick<Snapshots, 'eraseTrip'>
}

export type Erasing = ReturnType<typeof createErasing>

/** Each resolves with what could not be reached, in words, or null when nothing is left. None rejects. */
export function createErasing(env: EraseEnvironment) {
  const { state, records, use, useAside, now } = env

  async function tripOutside(id: string): Promise<string | null> {
    const left = await each({
      'the database': () => use('readwrite', store => eraseRecords(store, id)),
      'the words put aside': () => useAside('readwrite', store => eraseParts(store, id)),
      'the second copy': () => inCopy(vault => eraseFromCopy(vault, tripKey(id))),
      'the snapshots': () => env.snapshots.eraseTrip(id),
      'the browser’s cache': removeOthers,
    })
    dropOthersWords(other => other !== id)
    backupsChanged.value += 1
    if (!left) state.erase([[id, erasedNote(now(), true)]])
    return left
  }

  async function allOutside({ at }: Erased): Promise<string | null> {
    const left = await each({
      'the words put aside': () => useAside('readwrite', store => promisifyRequest(store.clear())),
      'the second copy': () => inCopy(empty),
      'the snapshots': () =>
        env.snapshotTurn(async () => {
          const place = await env.openPlace()
          if (place) await empty(place)
        }),
      'the browser’s cache': async () => {
        await removeOthers()
        await removeCache(RECEIVED_CACHE)
      },
    })
    if (left) return left
    const done = erasedNote(at, true)
    return each({
      'the database': () => use('readwrite', store => promisifyRequest(store.put(done, ALL_ERASED_KEY))),
    })
  }

  const inCopy = (work: (vault: Vault) => Promise<void>) =>
    env.copyTurn(async () => {
      const vault = await env.openVault()
      if (vault) await work(vault)
    })

  return {
    /** Erases a removed trip for good, with every undo step that mentions it. */
    async trip(id: string): Promise<string | null> {
      env.actions.eraseTrip(id)
      await env.flush()
      if (records.isChanged(erasedKey(id)) || records.isChanged(removedKey(id)))
        return said(['the database (it could not be written)'])
      return tripOutside(id)
    },

    /** Erases all that is kept here, in all tabs, and starts anew. */
    async everything(): Promise<string | null> {
      await env.stop()
      let note: Erased | null = null
      const left = await each({
        'the database': () =>
          use('readwrite', async store => {
            const before = readErased(await promisifyRequest(store.get(ALL_ERASED_KEY)))
            note = erasedNote(Math.max(now(), (before?.at ?? 0) + 1))
            store.clear()
            store.put(note, ALL_ERASED_KEY)
          }),
      })
      if (left || !note) {
        env.goOn()
        return left
      }
      // This tab still holds what it knew before, so it counts as one that has not heard: it writes nothing either.
      env.tellErased()
      const outside = await allOutside(note)
      if (!outside) env.startAnew()
      return outside
    },

    /** Goes on with what an earlier page could not end. */
    async goOn(): Promise<string | null> {
      const all = records.erasure.ofAll
      const left = all && !all.done ? await allOutside(all) : null
      if (left) return left
      if (all) records.erasure.ofAll = erasedNote(all.at, true)
      for (const [id, { done }] of state.erased.peek()) if (!done) await tripOutside(id)
      return null
    },
  }
}

/** Does every piece of work, each for a place; which of them failed and why, in words. */
async function each(works: Record<string, () => Promise<unknown>>): Promise<string | null> {
  const failed: string[] = []
  for (const [place, work] of Object.entries(works))
    try {
      await work()
    } catch (error) {
      failed.push(`${place} (${whyText(error)})`)
    }
  return failed.length > 0 ? said(failed) : null
}

const said = (places: string[]) =>
  `Not everything is erased yet. Something may still lie in: ${places.join('; ')}. Close the other tabs of the app and try again; the next start of the app tries by itself too.`

async function empty({ names, remove }: Pick<Folder, 'names' | 'remove'>): Promise<void> {
  for (const name of await names()) await remove(name)
}

async function removeOthers(): Promise<void> {
  await removeOther(COPY_FOLDER)
  await removeOther(SNAPSHOT_FOLDER)
}

/** Whether a record that may be anything names a trip. */
const names = (record: unknown, id: string) => (JSON.stringify(record) ?? '').includes(JSON.stringify(id))

/** What no save removes by itself: records that this version cannot read, and notes. */
async function eraseRecords(store: IDBObjectStore, id: string): Promise<void> {
  for (const key of [tripKey(id), removedKey(id), goneKey(id), historyKey(id)]) store.delete(key)
  const keys = (await promisifyRequest(store.getAllKeys())).map(String)
  for (const key of keys.filter(key => kindAt(key) === STEP || kindAt(key) === UNSAVED))
    if (names(await promisifyRequest<unknown>(store.get(key)), id)) store.delete(key)
  const files = await promisifyRequest<unknown>(store.get(FILES_KEY))
  if (files) store.put(withoutNote(files, id), FILES_KEY)
}

async function eraseParts(store: IDBObjectStore, id: string): Promise<void> {
  for (const key of (await promisifyRequest(store.getAllKeys())).map(String)) {
    const stored = await promisifyRequest<unknown>(store.get(key))
    if (!names(stored, id)) continue
    const { ok, value } = { value: null, ...readRecord(UNSAVED, stored) }
    if (!ok || !value) {
      store.delete(key)
      continue
    }
    const trips = value.trips.filter(({ document }) => document.id !== id)
    const steps = value.steps.filter(step => !mentions(step, id))
    if (trips.length + steps.length > 0 || value.shelf) store.put({ ...value, trips, steps }, key)
    else store.delete(key)
  }
}
