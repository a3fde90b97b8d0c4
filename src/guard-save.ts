// Saves what is stored where the app cannot be drawn. It imports nothing, as guard.ts, which fetches it when it is asked to.

type Kept = Record<string, unknown>

const ANSWER_MS = 3000

/** Saves a backup file of what is stored, as it is, and says so. */
export async function saveStored(): Promise<string> {
  const found = await inTime(documents()).catch(() => null)
  const records = found && Object.keys(found).length > 0 ? found : await inTime(copies())
  const { order = [], system = 'metric', theme = 'auto', ...device } = (records.library ?? {}) as Kept
  const { brightSun, largeTargets, packColumns } = device
  const trips = Object.entries(records).flatMap(([key, value]) => (key.startsWith('trip/') ? [value] : []))
  const at = ({ id }: Kept) => (order as unknown[]).indexOf(id)
  trips.sort((a, b) => at(a as Kept) - at(b as Kept))
  if (trips.length === 0 && !records.shelf) return 'Nothing stored was found.'
  const savedOn = new Date().toISOString().slice(0, 10)
  const head = { format: 'pack-reckoner/backup', version: 1, savedOn }
  const none = { format: 'pack-reckoner/shelf', version: 1, things: [], bases: [], packings: [], typed: {} }
  const shelf = records.shelf ?? none
  const settings = { system, theme, brightSun, largeTargets, packColumns }
  const text = JSON.stringify({ ...head, settings, shelf, trips }, null, 1)
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
  link.download = `pack-reckoner-${savedOn}-stored.json`
  link.click()
  return `${trips.length === 1 ? '1 trip is' : `${trips.length} trips are`} in the file, which is with your downloads. The app opens it under More, “Backup”.`
}

/** All records of the database by their keys. */
function documents(): Promise<Kept> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('pack-reckoner')
    // It is not there, and is not to be made here.
    request.onupgradeneeded = () => request.transaction?.abort()
    request.onerror = () => reject(request.error)
    request.onsuccess = () => {
      const store = request.result.transaction('documents').objectStore('documents')
      const [keys, values] = [store.getAllKeys(), store.getAll()]
      values.onerror = () => reject(values.error)
      values.onsuccess = () => {
        request.result.close()
        resolve(Object.fromEntries(keys.result.map((key, i) => [String(key), values.result[i]])))
      }
    }
  })
}

/** What the second copy holds in the private file system: of each record the latest. */
async function copies(): Promise<Kept> {
  const root = await navigator.storage.getDirectory()
  const folder = await root.getDirectoryHandle('pack-reckoner-copy')
  const found: Record<string, Kept> = {}
  for await (const [name, handle] of folder.entries()) {
    const key = /^(.+)\.[0-9a-f]{64}\.json$/.exec(name)?.[1]
    if (!key) continue
    const record = JSON.parse(await (await (handle as FileSystemFileHandle).getFile()).text())
    const at = decodeURIComponent(key)
    if (Number(found[at]?.revision ?? -1) < Number(record.revision ?? 0)) found[at] = record
  }
  return found
}

function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), ANSWER_MS)
    promise.then(resolve, reject)
  })
}
