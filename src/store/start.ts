// The app's one store: the state, its actions, and their place in the browser. `startStore` wires them to the page.

import { createActions } from './actions'
import { createPersistence } from './persist'
import { createState } from './state'
import type { Channel } from './tabs'
import { createUseStore, DATABASE, type StoreError } from './useStore'

/** After this long the app goes on without the stored trips; they are joined in when they come. */
const PATIENCE_MS = 1000

/** 16 characters of chance; `crypto.randomUUID` is missing where the page is not served securely. */
export const newId = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(8)), byte => byte.toString(16).padStart(2, '0')).join('')

export const state = createState()
export const actions = createActions(state, { now: Date.now, newId })

let persistence: ReturnType<typeof createPersistence> | null = null

/** Writes what is unsaved now; resolves when it is saved or could not be. Never rejects. */
export const flush = (): Promise<void> => persistence?.flush() ?? Promise.resolve()

/**
 * Reads the stored trips and from then on saves every change. Resolves when they are there, or after about a second
 * without them (`saveState` then says `memory-only`). Never rejects.
 */
export async function startStore(): Promise<void> {
  if (persistence) return
  const use = createUseStore({
    onDataLoss: () =>
      state.tell(
        'The browser found its storage damaged and started it anew: trips saved here before are gone. Import them from a file.',
      ),
  })
  const store = createPersistence(state, { use, now: Date.now, newId, channel: openChannel() })
  persistence = store

  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void store.flush()
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
}

/** Null where the browser has none: tabs then compare only when they write. */
function openChannel(): Channel | null {
  return typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(DATABASE)
}
