// The origin's private file system in memory, as far as the store uses it, which can be made to hang.

import { vi } from 'vitest'

export const hangs = () => new Promise<void>(() => {})

/** Puts it in the place of the browser's. What it waits for before it answers can be changed. */
export function diskOf() {
  const folders = new Map<string, Map<string, Blob>>()
  const disk = { folders, open: async () => {}, close: async () => {} }

  const handleOf = (files: Map<string, Blob>, name: string) => ({
    getFile: async () => files.get(name),
    createWritable: async () => {
      let written = new Blob([])
      return {
        write: async (contents: Blob | string) => {
          written = new Blob([contents])
        },
        close: async () => {
          await disk.close()
          files.set(name, written)
        },
      }
    },
  })
  const folderOf = (files: Map<string, Blob>) => ({
    keys: async function* () {
      yield* files.keys()
    },
    entries: async function* () {
      for (const name of files.keys()) yield [name, handleOf(files, name)]
    },
    getFileHandle: async (name: string, { create = false } = {}) => {
      if (!files.has(name) && !create) throw new DOMException('', 'NotFoundError')
      if (!files.has(name)) files.set(name, new Blob([]))
      return handleOf(files, name)
    },
    removeEntry: async (name: string) => {
      if (!files.delete(name)) throw new DOMException('', 'NotFoundError')
    },
  })
  const root = {
    getDirectoryHandle: async (name: string) => {
      const files = folders.get(name) ?? new Map<string, Blob>()
      folders.set(name, files)
      return folderOf(files)
    },
  }
  vi.stubGlobal('FileSystemFileHandle', { prototype: { createWritable: 0 } })
  vi.stubGlobal('navigator', {
    storage: {
      getDirectory: async () => {
        await disk.open()
        return root
      },
    },
  })
  return disk
}
