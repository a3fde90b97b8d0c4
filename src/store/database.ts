// The one door to the browser's database: a `UseStore` for idb-keyval that asks for strict durability, says "done"
// only after the transaction's `complete`, and opens the database anew when the browser has dropped it.

import type { UseStore } from 'idb-keyval'
import { within } from './within'

export const DATABASE = 'pack-reckoner'
const STORE = 'documents'
const VERSION = 1
const OPEN_MS = 5000
/** Longer than an opening, so that its own reason is told. */
const ANSWER_MS = 8000

/** What kept the database from opening. Other storage errors pass as the browser made them. */
export type StoreFault = 'absent' | 'no-answer' | 'newer'
export type StoreError = Error & { fault: StoreFault }

const storeError = (fault: StoreFault, message: string): StoreError =>
  Object.assign(new Error(message), { fault })

export const faultOf = (error: unknown): StoreFault | null =>
  (error as Partial<StoreError> | null)?.fault ?? null

interface Options {
  /** Its name, unless it is the documents'. */
  database?: string
  /** What is called done: written out to the disk (`strict`, unless told otherwise), or handed to the system. */
  durability?: IDBTransactionDurability
  factory?: IDBFactory | undefined
  openMs?: number
  /** The database is empty though it was not: thrown away as damaged (Chromium says so), or cleared under the open app. */
  onLost?: (how: 'damaged' | 'cleared') => void
  /** The browser closed the connection by itself. */
  onClosed?: () => void
  /** The database has opened after all, later than anybody waited for it. */
  onLate?: () => void
}

/**
 * Opens the database on first use, and again after it was closed. A failed opening is tried anew at the next use; one
 * that comes later than 5 s is let in all the same. Rejects with a {@link StoreError} when there is no database, when it
 * does not answer in 5 s, or when a newer version of the app wrote it (nothing is changed then); else with the
 * transaction's own error.
 */
export function createDatabase(options: Options = {}): UseStore {
  const { durability = 'strict' } = options
  let opening: Opening | null = null
  let wasOpen = false

  const drop = (old: Opening) => {
    if (opening === old) opening = null
  }

  function handle(): Opening {
    if (opening) return opening
    const mine: Opening = openDatabase(options, {
      wasOpen,
      onLate(db) {
        if (opening && !opening.take(db)) return db.close()
        mine.db = Promise.resolve(db)
        opening = mine
        wasOpen = true
        options.onLate?.()
      },
      onGone: () => drop(mine),
    })
    opening = mine
    mine.db.then(
      () => {
        wasOpen = true
      },
      () => drop(mine),
    )
    return mine
  }

  return async (mode, callback) => {
    const used = handle()
    try {
      return await transact(await used.db, { mode, durability }, callback)
    } catch (error) {
      // After any failure the next call opens anew: a database that was once full may refuse for good until then.
      drop(used)
      used.db.then(db => db.close()).catch(() => {})
      if (!isLostConnection(error)) throw error
      return transact(await handle().db, { mode, durability }, callback)
    }
  }
}

/** As the store given, but what takes longer than 8 s is rejected with a {@link StoreError}. It may still be done. */
export const patientDatabase =
  (use: UseStore): UseStore =>
  (mode, callback) =>
    within(use(mode, callback), ANSWER_MS).catch(error => {
      if ((error as Error | null)?.name !== 'TimeoutError') throw error
      throw storeError('no-answer', 'the database does not answer')
    })

/** Trying again on the same connection is useless once the browser has closed it or lost its server (WebKit). */
const isLostConnection = (error: unknown) =>
  ['InvalidStateError', 'UnknownError'].includes((error as Error | null)?.name ?? '')

interface Opening {
  db: Promise<IDBDatabase>
  /** Hands a database to those who still wait for this one; false when nobody does any more. */
  take: (db: IDBDatabase) => boolean
}

interface Events {
  wasOpen: boolean
  /** It has opened when it had been given up. */
  onLate: (db: IDBDatabase) => void
  /** It is closed, by the browser or for another tab. */
  onGone: () => void
}

function openDatabase(options: Options, { wasOpen, onLate, onGone }: Events): Opening {
  let [isSettled, isTaken] = [false, false]
  let take: Opening['take'] = () => false
  const db = new Promise<IDBDatabase>((resolve, reject) => {
    // Reading the property alone throws where the browser forbids storage.
    const factory = 'factory' in options ? options.factory : globalThis.indexedDB
    if (!factory) throw storeError('absent', 'there is no IndexedDB here')
    const request = factory.open(options.database ?? DATABASE, VERSION)
    const settled = () => {
      clearTimeout(timer)
      isSettled = true
    }
    const timer = setTimeout(() => {
      settled()
      reject(storeError('no-answer', 'the database did not open in time'))
    }, options.openMs ?? OPEN_MS)
    take = other => {
      if (isSettled) return false
      settled()
      isTaken = true
      resolve(other)
      return true
    }

    request.onupgradeneeded = event => {
      if ((event as { dataLoss?: string }).dataLoss === 'total') options.onLost?.('damaged')
      else if (wasOpen) options.onLost?.('cleared')
      request.result.createObjectStore(STORE)
    }
    request.onerror = () => {
      settled()
      const newer = request.error?.name === 'VersionError'
      reject(newer ? storeError('newer', 'the database is of a newer version') : request.error)
    }
    request.onsuccess = () => {
      const opened = request.result
      if (isTaken) return opened.close()
      opened.onversionchange = () => {
        opened.close()
        onGone()
      }
      opened.onclose = () => {
        onGone()
        options.onClosed?.()
      }
      if (isSettled) return onLate(opened)
      settled()
      resolve(opened)
    }
  })
  return { db, take: other => take(other) }
}

async function transact<T>(
  db: IDBDatabase,
  { mode, durability }: { mode: IDBTransactionMode; durability: IDBTransactionDurability },
  callback: (store: IDBObjectStore) => T | PromiseLike<T>,
): Promise<T> {
  const transaction = db.transaction(STORE, mode, { durability })
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
