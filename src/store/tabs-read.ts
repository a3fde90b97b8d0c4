// What another tab has saved, taken in here, all of one save at once.

import { batch } from '@preact/signals'
import { getMany } from 'idb-keyval'
import { byId, SHELF_LISTS, type Shelf, same, type WithId } from '../plan/shelf'
import type { Library } from './documents'
import { ALL_ERASED_KEY, readErased } from './erased'
import { merged } from './library'
import { type Kind, LIBRARY, REMOVED, readRecord, SHELF, STEP, TRIP } from './record-kinds'
import { areaOf, idOf, isTripKey, LIBRARY_KEY, SHELF_KEY, tripKey } from './record-places'
import { dropOthersWords } from './session'
import type { Tab } from './tabs'

/** Takes in what is stored under these keys. Rejects when it cannot be read. */
export async function readSaved({ state, records, use, flush, letGo }: Tab, keys: string[]): Promise<void> {
  const stored = await getMany<unknown>(keys, use)
  const everything = readErased(stored[keys.indexOf(ALL_ERASED_KEY)])
  if (everything && everything.at > (records.erasure.ofAll?.at ?? 0)) return letGo()
  let isUnsaved = false
  batch(() => {
    keys.forEach((key, i) => {
      const erased = key.startsWith('erased/') ? readErased(stored[i]) : null
      if (erased) {
        records.takeErased([[idOf(key), erased]])
        dropOthersWords(id => id !== idOf(key))
      } else if (key === LIBRARY_KEY) reloadLibrary(stored[i])
      // What is unsaved is left to the save, which finds the other version and joins both: it may be under way already,
      // and knows what it was made from.
      else if ((key === SHELF_KEY || isTripKey(key)) && records.isChanged(key)) isUnsaved = true
      else if (key === SHELF_KEY) reloadShelf(stored[i])
      else if (isTripKey(key)) reloadTrip(idOf(key), stored[i])
      else reloadPlain(key, stored[i])
    })
  })
  if (isUnsaved) await flush()

  function reloadTrip(id: string, stored: unknown) {
    if (stored === undefined) {
      records.known.delete(tripKey(id))
      return state.dropTrip(id)
    }
    const found = readRecord(TRIP, stored)
    // Written by another version of the app: what is here stays, and is compared again before anything is written.
    if (!found.ok) return
    if (found.value.revision <= (records.known.get(tripKey(id))?.revision ?? 0)) return
    records.take(found.value)
  }

  function reloadShelf(stored: unknown) {
    const known = records.known.get(SHELF_KEY)!
    const found = readRecord(SHELF, stored)
    if (!found.ok || found.value.revision <= known.revision) return
    const theirs = alike(found.value, known.value as Shelf)
    records.known.set(SHELF_KEY, { value: theirs, revision: theirs.revision })
    state.shelf.value = theirs
  }

  /** Undo steps and removed trips: each is written whole or deleted, and is the same in all tabs. */
  function reloadPlain(key: string, stored: unknown) {
    const id = idOf(key)
    const read = <T extends object>(kind: Kind<T>, take: (value: T | null) => void) => {
      const found = stored === undefined ? null : readRecord(kind, stored)
      if (found && !found.ok) return
      if (found) records.known.set(key, { value: found.value, revision: 0 })
      else records.known.delete(key)
      take(found?.value ?? null)
    }
    if (areaOf(key) === 'step')
      read(STEP, step => {
        if (step) state.putSteps([step], 'another')
        else state.journal.value = state.journal.peek().filter(other => other.id !== id)
      })
    if (areaOf(key) === 'removed')
      read(REMOVED, record => {
        const removed = new Map(state.removed.peek())
        if (record) removed.set(id, record)
        else removed.delete(id)
        state.removed.value = removed
      })
  }

  /** Order and settings are shared between tabs; which trip is open and where, is each tab's own. */
  function reloadLibrary(stored: unknown) {
    const found = readRecord(LIBRARY, stored)
    if (!found.ok) return
    const ours = state.library.peek()
    const base = records.known.get(LIBRARY_KEY)!.value as Library
    const theirs = { ...found.value, open: ours.open, place: ours.place }
    records.known.set(LIBRARY_KEY, { value: theirs, revision: 0 })
    state.library.value = merged(base, ours, theirs)
  }
}

/** The shelf as read, with each part that is the same as before being the very same: what shows it is not drawn anew. */
function alike(shelf: Shelf, before: Shelf): Shelf {
  const lists = SHELF_LISTS.map(list => {
    const held = byId<WithId>(before[list])
    const parts = shelf[list].map(part => {
      const was = held.get(part.id)
      return was && same(was, part) ? was : part
    })
    return [list, parts]
  })
  return { ...shelf, ...Object.fromEntries(lists) }
}
