// A named folder of files outside IndexedDB: in the origin's private file system, or in the Cache API where that cannot
// be written from a page (Safari before 26).

import { within } from './within'

export interface Folder {
  names(): Promise<string[]>
  /** Null when there is no such file. */
  read(name: string): Promise<Blob | null>
  /** All of it or nothing: a file half written never shows. */
  write(name: string, contents: Blob | string): Promise<void>
  remove(name: string): Promise<void>
}

/** How long each answer, and each writing, is waited for, ms. */
export interface Patience {
  answerMs: number
  writeMs: number
}

/**
 * Null where the browser offers no place. Rejects when it has one but does not let the app use it; as all that the
 * folder does, with a `TimeoutError` when that takes too long.
 */
export async function openFolder(name: string, patience: Patience): Promise<Folder | null> {
  const folder = await within(placeOf(name), patience.answerMs)
  return folder && patient(folder, patience)
}

const patient = ({ names, read, write, remove }: Folder, { answerMs, writeMs }: Patience): Folder => ({
  names: () => within(names(), answerMs),
  read: name => within(read(name), answerMs),
  write: (name, contents) => within(write(name, contents), writeMs),
  remove: name => within(remove(name), answerMs),
})

/** Whether files of the origin's private file system can be written from a page. */
function isWritable(): boolean {
  const { FileSystemFileHandle: file } = globalThis as Partial<typeof globalThis>
  return file !== undefined && 'createWritable' in file.prototype && 'getDirectory' in navigator.storage
}

// Asked for only where it is needed: where the Cache API is forbidden, its very mention throws.
const hasCaches = () => 'caches' in globalThis && Boolean(globalThis.caches)

/** Removes a folder from the place that is not in use: an earlier version of the browser may have kept one there. */
export async function removeOther(folder: string): Promise<void> {
  if (!isWritable()) {
    const root = await globalThis.navigator?.storage?.getDirectory?.().catch(() => null)
    await root?.removeEntry(folder, { recursive: true }).catch(nullIfMissing)
  } else await removeCache(folder)
}

/** Removes a cache, if there is one. */
export async function removeCache(name: string): Promise<void> {
  if (cachesAllowed()) await caches.delete(name)
}

function cachesAllowed(): boolean {
  try {
    return hasCaches()
  } catch {
    // What is forbidden holds nothing.
    return false
  }
}

async function placeOf(folder: string): Promise<Folder | null> {
  if (isWritable()) return inFiles(folder)
  return hasCaches() ? inCache(folder) : null
}

/**
 * A file written with createWritable takes the place of the old one only when it is closed. The folder is asked for
 * anew each time: when it was removed, one that is held takes in nothing any more.
 */
async function inFiles(of: string): Promise<Folder> {
  const open = async () => (await navigator.storage.getDirectory()).getDirectoryHandle(of, { create: true })
  await open()
  return {
    async names() {
      const found: string[] = []
      for await (const name of (await open()).keys()) found.push(name)
      return found
    },
    read: async name => (await open()).getFileHandle(name).then(handle => handle.getFile(), nullIfMissing),
    async write(name, contents) {
      const folder = await open()
      const handle = await folder.getFileHandle(name, { create: true })
      try {
        const stream = await handle.createWritable()
        await stream.write(contents)
        await stream.close()
      } catch (error) {
        // The empty file that stood in for a new one goes too; the first error is the one to be told.
        const isEmpty = await handle
          .getFile()
          .then(({ size }) => size === 0)
          .catch(() => false)
        if (isEmpty) await folder.removeEntry(name).catch(() => {})
        throw error
      }
    },
    async remove(name) {
      await (await open()).removeEntry(name).catch(nullIfMissing)
    },
  }
}

function nullIfMissing(error: unknown): null {
  if (error instanceof DOMException && error.name === 'NotFoundError') return null
  throw error
}

/** Opened anew each time: one that is held though it was removed takes in what nobody finds again. */
async function inCache(of: string): Promise<Folder> {
  const open = () => caches.open(of)
  await open()
  const url = (name: string) => `./${of}/${encodeURIComponent(name)}`
  return {
    names: async () =>
      (await (await open()).keys()).map(({ url }) =>
        decodeURIComponent(new URL(url).pathname.split('/').at(-1)!),
      ),
    read: async name => (await (await (await open()).match(url(name)))?.blob()) ?? null,
    write: async (name, contents) => (await open()).put(url(name), new Response(contents)),
    async remove(name) {
      await (await open()).delete(url(name))
    },
  }
}
