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
  /** The browser found its copy damaged and started an empty one (Chromium says so). */
  onDataLoss?: () => void
}

/**
 * Opens the database on first use, and again after it was closed. A failed opening is tried anew at the next use.
 * Rejects with a {@link StoreError} when there is no database, when it does not answer in 5 s, or when a newer
 * version of the app wrote it (nothing is changed then); else with the transaction's own error.
 */
export function createUseStore(options: Options = {}): UseStore {
  let opening: Promise<IDBDatabase> | null = null

  const drop = () => {
    opening = null
  }

  const handle = () => {
    if (opening) return opening
    const attempt = openDatabase(options, drop)
    opening = attempt
    attempt.catch(() => {
      if (opening === attempt) drop()
    })
    return attempt
  }

  return async (mode, callback) => {
    try {
      return await transact(await handle(), mode, callback)
    } catch (error) {
      if (!isLostConnection(error)) throw error
      const lost = opening
      drop()
      lost?.then(db => db.close()).catch(() => {})
      return transact(await handle(), mode, callback)
    }
  }
}

/** Trying again on the same connection is useless once the browser has closed it or lost its server (WebKit). */
const isLostConnection = (error: unknown) =>
  ['InvalidStateError', 'UnknownError'].includes((error as Error | null)?.name ?? '')

function openDatabase(options: Options, drop: () => void): Promise<IDBDatabase> {
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
      if ((event as { dataLoss?: string }).dataLoss === 'total') options.onDataLoss?.()
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
      db.onclose = drop
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
