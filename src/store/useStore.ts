// The one door to the browser's database: a `UseStore` for idb-keyval that asks for strict durability, says "done"
// only after the transaction's `complete`, and opens the database anew when the browser has dropped it.

import type { UseStore } from 'idb-keyval'

export const DATABASE = 'pack-reckoner'
const STORE = 'documents'
const VERSION = 1
const OPEN_MS = 5000

/** What kept the database from opening. Other storage errors pass as the browser made them. */
export type StoreFault = 'absent' | 'no-answer' | 'newer'
export type StoreError = Error & { fault: StoreFault }

const storeError = (fault: StoreFault, message: string): StoreError =>
  Object.assign(new Error(message), { fault })

export const faultOf = (error: unknown): StoreFault | null =>
  (error as Partial<StoreError> | null)?.fault ?? null

interface Options {
  factory?: IDBFactory | undefined
  openMs?: number
  /** The database is empty though it was not: thrown away as damaged (Chromium says so), or cleared under the open app. */
  onLost?: (how: 'damaged' | 'cleared') => void
  /** The browser closed the connection by itself. */
  onClosed?: () => void
}

/**
 * Opens the database on first use, and again after it was closed. A failed opening is tried anew at the next use.
 * Rejects with a {@link StoreError} when there is no database, when it does not answer in 5 s, or when a newer
 * version of the app wrote it (nothing is changed then); else with the transaction's own error.
 */
export function createUseStore(options: Options = {}): UseStore {
  let opening: Promise<IDBDatabase> | null = null
  let wasOpen = false

  const drop = () => {
    opening = null
  }

  const handle = () => {
    if (opening) return opening
    const attempt = openDatabase(options, { wasOpen, drop })
    opening = attempt
    attempt.then(
      () => {
        wasOpen = true
      },
      () => {
        if (opening === attempt) drop()
      },
    )
    return attempt
  }

  return async (mode, callback) => {
    try {
      return await transact(await handle(), mode, callback)
    } catch (error) {
      // After any failure the next call opens anew: a database that was once full may refuse for good until then.
      const lost = opening
      drop()
      lost?.then(db => db.close()).catch(() => {})
      if (!isLostConnection(error)) throw error
      return transact(await handle(), mode, callback)
    }
  }
}

/** Trying again on the same connection is useless once the browser has closed it or lost its server (WebKit). */
const isLostConnection = (error: unknown) =>
  ['InvalidStateError', 'UnknownError'].includes((error as Error | null)?.name ?? '')

function openDatabase(
  options: Options,
  { wasOpen, drop }: { wasOpen: boolean; drop: () => void },
): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    // Reading the property alone throws where the browser forbids storage.
    const factory = 'factory' in options ? options.factory : globalThis.indexedDB
    if (!factory) throw storeError('absent', 'there is no IndexedDB here')
    const request = factory.open(DATABASE, VERSION)
    let late = false
    const timer = setTimeout(() => {
      late = true
      reject(storeError('no-answer', 'the database did not open in time'))
    }, options.openMs ?? OPEN_MS)

    request.onupgradeneeded = event => {
      if ((event as { dataLoss?: string }).dataLoss === 'total') options.onLost?.('damaged')
      else if (wasOpen) options.onLost?.('cleared')
      request.result.createObjectStore(STORE)
    }
    request.onerror = () => {
      clearTimeout(timer)
      const newer = request.error?.name === 'VersionError'
      reject(newer ? storeError('newer', 'the database is of a newer version') : request.error)
    }
    request.onsuccess = () => {
      clearTimeout(timer)
      const db = request.result
      if (late) return db.close()
      db.onversionchange = () => {
        db.close()
        drop()
      }
      db.onclose = () => {
        drop()
        options.onClosed?.()
      }
      resolve(db)
    }
  })
}

async function transact<T>(
  db: IDBDatabase,
  mode: IDBTransactionMode,
  callback: (store: IDBObjectStore) => T | PromiseLike<T>,
): Promise<T> {
  const transaction = db.transaction(STORE, mode, { durability: 'strict' })
  // Listeners, because idb-keyval sets the handler properties itself.
  const completed = new Promise<void>((resolve, reject) => {
    transaction.addEventListener('complete', () => resolve())
    transaction.addEventListener('abort', () =>
      reject(transaction.error ?? new DOMException('the transaction was given up', 'AbortError')),
    )
  })
  try {
    const result = await callback(transaction.objectStore(STORE))
    if (mode !== 'readonly') await completed
    else completed.catch(() => {})
    return result
  } catch (error) {
    completed.catch(() => {})
    abort(transaction)
    // The transaction knows the cause; the request that failed with it often does not.
    throw transaction.error ?? error
  }
}

function abort(transaction: IDBTransaction) {
  try {
    transaction.abort()
  } catch {
    // It had ended by itself.
  }
}
