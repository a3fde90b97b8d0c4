// The other tabs of the app: told what was saved here, and read when they have saved.

import type { UseStore } from 'idb-keyval'
import { deafText, nameOf } from './messages'
import { tripKey } from './record-places'
import type { SavedRecords } from './saved-records'
import type { State } from './state'
import type { Outcome } from './write'

/** The part of a BroadcastChannel that is used. */
export interface Channel {
  postMessage: (message: unknown) => void
  onmessage: ((event: MessageEvent) => void) | null
}

export interface Tab {
  state: State
  records: SavedRecords
  use: UseStore
  /** Writes what is unsaved here. */
  flush: () => Promise<void>
  /** Everything was erased elsewhere. */
  letGo: () => Promise<void>
}

/** Takes in what another tab has saved under these keys: `tabs-read.ts`, loaded when it is first needed. */
export type ReadSaved = (tab: Tab, keys: string[]) => Promise<void>

/** The key that was saved; null for what says something else, as another version of the app may. */
function savedKey(message: unknown): string | null {
  const { type, key, revision } = { ...(message as { type: unknown; key: unknown; revision: unknown }) }
  return type === 'saved' && typeof key === 'string' && typeof revision === 'number' ? key : null
}

/** Listens to the other tabs; the returned function tells them what a transaction has written. */
export function joinTabs(
  tab: Tab,
  channel: Channel | null,
  read: ReadSaved,
): (outcome: Pick<Outcome, 'saved' | 'removed' | 'copies' | 'moved'>) => void {
  const { state, records } = tab
  let isDumb = false

  /** What is saved is saved, whether the others hear of it or not. */
  function announce(key: string, revision: number) {
    try {
      channel?.postMessage({ type: 'saved', key, revision })
    } catch (error) {
      if (!isDumb) state.tell(deafText(error))
      isDumb = true
    }
  }

  const waiting = new Set<string>()
  let isReading = false

  const failed = (error: unknown) =>
    state.tell(`What another tab saved could not be read (${nameOf(error)}): reload this page to see it.`)

  /** Reads what the others have saved; what is announced meanwhile is read together, next. */
  async function follow(key: string) {
    waiting.add(key)
    if (isReading) return
    isReading = true
    // The messages of one save come one by one.
    await undefined
    while (waiting.size > 0) {
      const keys = [...waiting].filter(key => state.loaded.peek() && !records.unread.has(key))
      waiting.clear()
      if (keys.length > 0) await read(tab, keys).catch(failed)
    }
    isReading = false
  }

  if (channel)
    channel.onmessage = ({ data }) => {
      const key = savedKey(data)
      if (key !== null) void follow(key)
    }

  return outcome => {
    for (const { key, revision } of [...outcome.saved, ...outcome.removed]) announce(key, revision)
    for (const { trip } of [...outcome.copies, ...outcome.moved]) announce(tripKey(trip.id), trip.revision)
  }
}
