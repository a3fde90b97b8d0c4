// Where the second copy lies: named texts outside IndexedDB, in the origin's private file system, or in the Cache API
// where that cannot be written from a page (Safari before 26). Null where the browser offers neither.

const FOLDER = 'pack-reckoner-copy'

export interface Vault {
  /** Null when there is no such text. */
  read(name: string): Promise<string | null>
  /** All of it or nothing: a text half written never shows. */
  write(name: string, text: string): Promise<void>
  remove(name: string): Promise<void>
  names(): Promise<string[]>
}

/** Rejects when the browser has such a place but does not let the app use it. */
export async function openVault(): Promise<Vault | null> {
  const { FileSystemFileHandle: file, caches } = globalThis as Partial<typeof globalThis>
  const isWritable = file !== undefined && 'createWritable' in file.prototype
  if (isWritable && 'getDirectory' in navigator.storage) return inFiles()
  return caches ? inCache() : null
}

/** A file written with createWritable takes the place of the old one only when it is closed. */
async function inFiles(): Promise<Vault> {
  const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle(FOLDER, { create: true })
  return {
    read: name =>
      folder.getFileHandle(name).then(async handle => (await handle.getFile()).text(), nullIfMissing),
    async write(name, text) {
      const stream = await (await folder.getFileHandle(name, { create: true })).createWritable()
      await stream.write(text)
      await stream.close()
    },
    async remove(name) {
      await folder.removeEntry(name).catch(nullIfMissing)
    },
    async names() {
      const found: string[] = []
      for await (const name of folder.keys()) found.push(name)
      return found
    },
  }
}

function nullIfMissing(error: unknown): null {
  if (error instanceof DOMException && error.name === 'NotFoundError') return null
  throw error
}

async function inCache(): Promise<Vault> {
  const cache = await caches.open(FOLDER)
  const url = (name: string) => `./${FOLDER}/${encodeURIComponent(name)}`
  return {
    read: async name => (await (await cache.match(url(name)))?.text()) ?? null,
    write: (name, text) => cache.put(url(name), new Response(text)),
    async remove(name) {
      await cache.delete(url(name))
    },
    names: async () =>
      (await cache.keys()).map(({ url }) => decodeURIComponent(new URL(url).pathname.split('/').at(-1)!)),
  }
}
