// The other tabs of the app: told what was saved here, and read when they have saved. A trip with unsaved edits is not
// replaced: the next write finds the other version and keeps both.

import { batch } from '@preact/signals'
import { getMany, type UseStore } from 'idb-keyval'
import * as z from 'zod/mini'
import type { Books } from './books'
import { HISTORY, LIBRARY, type Library, readRecord, TRIP } from './documents'
import { merged } from './library'
import { nameOf } from './messages'
import type { State } from './state'
import { historyKey, isTripKey, LIBRARY_KEY, type Outcome, tripKey } from './write'

/** The part of a BroadcastChannel that is used. */
export interface Channel {
  postMessage: (message: unknown) => void
  onmessage: ((event: MessageEvent) => void) | null
}

interface Tab {
  state: State
  books: Books
  use: UseStore
  channel: Channel | null
  /** Writes what is unsaved here. */
  flush: () => Promise<void>
}

const savedMessage = z.strictObject({ type: z.literal('saved'), key: z.string(), revision: z.number() })

/** Listens to the other tabs; the returned function tells them what a transaction has written. */
export function joinTabs({ state, books, use, channel, flush }: Tab): (outcome: Outcome) => void {
  const announce = (key: string, revision: number) => {
    if (isTripKey(key) || key === LIBRARY_KEY) channel?.postMessage({ type: 'saved', key, revision })
  }

  async function reload(key: string) {
    if (!state.loaded.peek() || books.unread.has(key)) return
    if (isTripKey(key) && books.isChanged(key)) return flush()
    const id = key.slice(tripKey('').length)
    try {
      const [stored, history] = await getMany<unknown>([key, historyKey(id)], use)
      if (key === LIBRARY_KEY) return reloadLibrary(stored)
      if (books.isChanged(key)) return await flush()
      batch(() => reloadTrip(id, stored, history))
    } catch (error) {
      state.tell(`What another tab saved could not be read (${nameOf(error)}): reload this page to see it.`)
    }
  }

  function reloadTrip(id: string, stored: unknown, history: unknown) {
    if (stored === undefined) {
      books.known.delete(tripKey(id))
      books.known.delete(historyKey(id))
      return state.dropTrip(id)
    }
    const found = readRecord(TRIP, stored)
    // Written by another version of the app: what is here stays, and is compared again before anything is written.
    if (!found.ok) return
    if (found.value.revision <= (books.known.get(tripKey(id))?.revision ?? 0)) return
    const past = readRecord(HISTORY, history)
    if (past.ok) {
      books.known.set(historyKey(id), { value: past.value, revision: 0 })
      state.putHistory(id, past.value)
    }
    books.take(found.value)
  }

  /** Order and settings are shared between tabs; which trip is open and where, is each tab's own. */
  function reloadLibrary(stored: unknown) {
    const found = readRecord(LIBRARY, stored)
    if (!found.ok) return
    const ours = state.library.peek()
    const base = books.known.get(LIBRARY_KEY)!.value as Library
    const theirs = { ...found.value, open: ours.open, place: ours.place }
    books.known.set(LIBRARY_KEY, { value: theirs, revision: 0 })
    state.library.value = merged(base, ours, theirs)
  }

  if (channel)
    channel.onmessage = ({ data }) => {
      const message = savedMessage.safeParse(data)
      if (message.success) void reload(message.data.key)
    }

  return outcome => {
    for (const { key, revision } of [...outcome.saved, ...outcome.removed]) announce(key, revision)
    for (const { trip } of [...outcome.copies, ...outcome.moved]) announce(tripKey(trip.id), trip.revision)
  }
}
