// The app's one store: the state, its actions, and their place in the browser. `startStore` wires them to the page.

import type { UseStore } from 'idb-keyval'
import { createActions } from './actions'
import { ASIDE, browserLocks, createAside } from './aside'
import { createDatabase, DATABASE, patientDatabase, type StoreError } from './database'
import { deafText } from './messages'
import { createPersistence, type Persistence, type Records } from './persist'
import { unsavedKey } from './record-places'
import { createState } from './state'
import type { Channel, ReadSaved } from './tabs'
import type { createUpdates } from './updates'

/** After this long the app goes on without the stored trips; they are joined in when they come. */
const PATIENCE_MS = 1000
/** The second copy is looked at this long after the start. */
const COPY_AFTER_MS = 1500

/** 16 characters of chance; `crypto.randomUUID` is missing where the page is not served securely. */
export function newId(): string {
  if (chance.at === chance.bytes.length) {
    crypto.getRandomValues(chance.bytes)
    chance.at = 0
  }
  let id = ''
  for (const end = chance.at + 8; chance.at < end; chance.at++)
    id += chance.bytes[chance.at]!.toString(16).padStart(2, '0')
  return id
}

/** Drawn for a thousand ids at once: a table brings twenty thousand, and each drawing is a call to the system. */
const chance = { bytes: new Uint8Array(8000), at: 8000 }

export const state = createState()
export const actions = createActions(state, { now: Date.now, newId })

let persistence: Persistence | null = null

let opened: Opened | null = null

interface Opened extends Pick<Persistence, 'records' | 'stop' | 'goOn' | 'tellErased'> {
  state: typeof state
  use: UseStore
  /** What pages have put aside. */
  useAside: UseStore
}

/** What the parts that are loaded later work with; null until the store was started. */
export const access = () => opened

/** What is loaded later: `store/lazy`. */
export interface Lazy extends Records {
  startCopy: (lost: () => boolean) => Promise<void>
  readEach: (use: UseStore, cause: unknown) => Promise<[string, unknown][]>
  readSaved: ReadSaved
  createUpdates: typeof createUpdates
  /** Shows the app anew, empty: everything was erased. */
  startAnew: () => void
}

/** Set by `startStore`. */
export let loadLazy = (): Promise<Lazy> => Promise.reject(new Error('the store was not started'))

/** Writes what is unsaved now; resolves when it is saved or could not be. Never rejects. */
export const flush = (): Promise<void> => persistence?.flush() ?? Promise.resolve()

/**
 * Reads the stored trips and from then on saves every change. Resolves when they are there, or after about a second
 * without them (`saveState` then says `memory-only`). Never rejects.
 */
export async function startStore(lazy: () => Promise<Lazy>): Promise<void> {
  if (persistence) return
  loadLazy = lazy
  let lost = false
  const readDamaged: Lazy['readEach'] = async (...of) => (await lazy()).readEach(...of)
  const readSaved: ReadSaved = async (...of) => (await lazy()).readSaved(...of)
  const use = createDatabase({
    onLost: how => {
      lost ||= how === 'damaged'
      // Before anything was read there is nothing to write again: the second copy is asked.
      if (state.loaded.peek()) store.emptied()
    },
    onClosed: () => void store.closed(),
    onLate: () => void store.flush(),
  })
  const channel = openChannel()
  const useAside = createDatabase({ database: ASIDE, durability: 'relaxed' })
  const aside = createAside({
    use: useAside,
    key: unsavedKey(newId()),
    locks: browserLocks(),
    clock: () => performance.now(),
  })
  const store = createPersistence(state, {
    use,
    now: Date.now,
    newId,
    channel,
    aside,
    readDamaged,
    readSaved,
    loadRecords: lazy,
    onRead: () => clearTimeout(timer),
    onErased: () => void lazy().then(({ startAnew }) => startAnew()),
  })
  persistence = store
  opened = { ...store, state, use: patientDatabase(use), useAside: patientDatabase(useAside) }

  document.addEventListener('visibilitychange', () => {
    // A page that comes back may find the database in order again.
    if (document.visibilityState === 'hidden' || state.saveState.peek().kind !== 'saved') void store.flush()
  })
  addEventListener('pagehide', store.leave)

  let timer: ReturnType<typeof setTimeout> | undefined
  const patience = new Promise<void>(resolve => {
    timer = setTimeout(() => {
      const slow: Pick<StoreError, 'fault'> = { fault: 'no-answer' }
      if (!state.loaded.peek()) store.memoryOnly(slow)
      resolve()
    }, PATIENCE_MS)
  })
  await Promise.race([store.flush(), patience])
  clearTimeout(timer)

  // At once where trips may be missing, else when the first picture has been drawn.
  const isAllThere = state.trips.peek().size > 0 && state.loaded.peek()
  setTimeout(
    () =>
      lazy()
        .then(({ startCopy }) => startCopy(() => lost))
        .catch(error => {
          state.copy.value = { kind: 'failed', why: String(error) }
        }),
    isAllThere ? COPY_AFTER_MS : 0,
  )
}

/** Null where the browser has none, or refuses it: tabs then compare only when they write. */
function openChannel(): Channel | null {
  try {
    return typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(DATABASE)
  } catch (error) {
    state.tell(deafText(error))
    return null
  }
}
