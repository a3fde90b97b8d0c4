// What the app has stored in the database of its site, read and written from a page of that site.
import type { Page } from 'playwright-core'

/** Each record with its key, in the order of keys. */
export type Records = [key: string, value: unknown][]

/** Everything that lies in the database, or what lies under keys that begin so. */
export const storedRecords = (page: Page, begin = ''): Promise<Records> =>
  page.evaluate(
    prefix =>
      new Promise<Records>((resolve, reject) => {
        const request = indexedDB.open('pack-reckoner')
        request.onerror = () => reject(request.error)
        request.onsuccess = () => {
          const database = request.result
          const found: Records = []
          const transaction = database.transaction('documents')
          const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`)
          transaction.objectStore('documents').openCursor(range).onsuccess = event => {
            const cursor = (event.target as IDBRequest<IDBCursorWithValue | null>).result
            if (!cursor) return
            found.push([String(cursor.key), cursor.value])
            cursor.continue()
          }
          transaction.oncomplete = () => {
            database.close()
            resolve(found)
          }
          transaction.onabort = () => reject(transaction.error)
        }
      }),
    begin,
  )

/** Puts records beside what is there; makes the database where there is none. */
export const storeRecords = (page: Page, records: Records): Promise<void> =>
  page.evaluate(
    all =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('pack-reckoner', 1)
        request.onupgradeneeded = () => request.result.createObjectStore('documents')
        request.onerror = () => reject(request.error)
        request.onsuccess = () => {
          const database = request.result
          const transaction = database.transaction('documents', 'readwrite')
          for (const [key, value] of all) transaction.objectStore('documents').put(value, key)
          transaction.oncomplete = () => {
            database.close()
            resolve()
          }
          transaction.onabort = () => reject(transaction.error)
        }
      }),
    records,
  )
