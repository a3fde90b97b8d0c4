// Where snapshots lie: files in the origin's private file system, apart from the database and from the second copy; in
// the Cache API where those cannot be written from a page. Nothing here is waited for
// for long: edits and restoring go on without it.

const FOLDER = 'pack-reckoner-snapshots'
const PATIENCE_MS = 900
const WRITE_MS = 3000

export interface Place {
  names(): Promise<string[]>
  /** Null when there is no such file. */
  read(name: string): Promise<Blob | null>
  /** All of it or nothing: a file half written never shows. */
  write(name: string, contents: Blob): Promise<void>
  remove(name: string): Promise<void>
}

/** Null where the browser offers no place. Rejects when it does not answer, or does not let the app use it. */
export const openPlace = (): Promise<Place | null> => within(opened()).then(place => place && patient(place))

/** The promise's own outcome, or a rejection with a `TimeoutError` when it takes too long. */
export function within<T>(promise: Promise<T>, ms = PATIENCE_MS): Promise<T> {
  return new Promise((resolve, reject) => {
    const late = () => reject(new DOMException('no answer', 'TimeoutError'))
    const timer = setTimeout(late, ms)
    promise.then(resolve, reject).finally(() => clearTimeout(timer))
  })
}

const patient = ({ names, read, write, remove }: Place): Place => ({
  names: () => within(names()),
  read: name => within(read(name)),
  write: (name, contents) => within(write(name, contents), WRITE_MS),
  remove: name => within(remove(name)),
})

async function opened(): Promise<Place | null> {
  const { FileSystemFileHandle: file, caches } = globalThis as Partial<typeof globalThis>
  const isWritable = file !== undefined && 'createWritable' in file.prototype
  if (isWritable && 'getDirectory' in navigator.storage) return inFiles()
  return caches ? inCache() : null
}

async function inFiles(): Promise<Place> {
  const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true })
  return {
    async names() {
      const found: string[] = []
      for await (const name of folder.keys()) found.push(name)
      return found
    },
    read: name => folder.getFileHandle(name).then(handle => handle.getFile(), nullIfMissing),
    async write(name, contents) {
      try {
        const stream = await (await folder.getFileHandle(name, { create: true })).createWritable()
        await stream.write(contents)
        await stream.close()
      } catch (error) {
        // The empty file that stood in for it goes too; the first error is the one to be told.
        await folder.removeEntry(name).catch(() => {})
        throw error
      }
    },
    async remove(name) {
      await folder.removeEntry(name).catch(nullIfMissing)
    },
  }
}

function nullIfMissing(error: unknown): null {
  if (error instanceof DOMException && error.name === 'NotFoundError') return null
  throw error
}

async function inCache(): Promise<Place> {
  const cache = await caches.open(FOLDER)
  const url = (name: string) => `./${FOLDER}/${encodeURIComponent(name)}`
  return {
    names: async () =>
      (await cache.keys()).map(({ url }) => decodeURIComponent(new URL(url).pathname.split('/').at(-1)!)),
    read: async name => (await (await cache.match(url(name)))?.blob()) ?? null,
    write: (name, contents) => cache.put(url(name), new Response(contents)),
    async remove(name) {
      await cache.delete(url(name))
    },
  }
}
