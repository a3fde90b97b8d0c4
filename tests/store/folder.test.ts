// A folder outside the database whose place does not answer: nobody waits for ever.

import { afterEach, expect, test, vi } from 'vitest'
import { openFolder } from '../../src/store/folder'
import { diskOf, hangs } from './disk'

const caches = Object.getOwnPropertyDescriptor(globalThis, 'caches')

afterEach(() => {
  vi.unstubAllGlobals()
  if (caches) Object.defineProperty(globalThis, 'caches', caches)
  else Reflect.deleteProperty(globalThis, 'caches')
})

const SOON = { answerMs: 20, writeMs: 40 }
const nameOf = (error: unknown) => (error as Error).name

test('a folder gives back what was written, and null for what is not there', async () => {
  diskOf()
  const folder = await openFolder('copy', SOON)
  await folder!.write('a', 'text')
  expect(await (await folder!.read('a'))?.text()).toBe('text')
  expect(await folder!.read('b')).toBeNull()
  expect(await folder!.names()).toEqual(['a'])
  await folder!.remove('a')
  expect(await folder!.names()).toEqual([])
})

test('where caches may not even be mentioned, the private file system is used all the same', async () => {
  diskOf()
  Object.defineProperty(globalThis, 'caches', {
    configurable: true,
    get: () => {
      throw new DOMException('', 'SecurityError')
    },
  })
  const folder = await openFolder('copy', SOON)
  await folder!.write('a', 'text')
  expect(await folder!.names()).toEqual(['a'])
})

test('a folder that was removed behind the back of the app is made anew', async () => {
  const disk = diskOf()
  const folder = await openFolder('copy', SOON)
  await folder!.write('a', 'text')
  disk.folders.delete('copy')
  expect(await folder!.names()).toEqual([])
  expect(await folder!.read('a')).toBeNull()
  await folder!.write('b', 'more')
  expect([...disk.folders.get('copy')!.keys()]).toEqual(['b'])
})

test('a cache that was removed behind the back of the app is made anew', async () => {
  const held = new Map<string, Map<string, Response>>()
  const open = async (name: string) => {
    const answers = held.get(name) ?? new Map<string, Response>()
    held.set(name, answers)
    return {
      keys: async () => [...answers.keys()].map(url => ({ url: new URL(url, 'https://example.org').href })),
      put: async (url: string, answer: Response) => void answers.set(url, answer),
    }
  }
  vi.stubGlobal('FileSystemFileHandle', undefined)
  vi.stubGlobal('caches', { open })
  const folder = await openFolder('copy', SOON)
  await folder!.write('a', 'text')
  held.delete('copy')
  expect(await folder!.names()).toEqual([])
  await folder!.write('b', 'more')
  expect(held.get('copy')?.size).toBe(1)
})

test('a place that does not open in time is given up', async () => {
  const disk = diskOf()
  disk.open = hangs
  expect(await openFolder('copy', SOON).catch(nameOf)).toBe('TimeoutError')
})

test('a writing that does not end in time is given up', async () => {
  const disk = diskOf()
  disk.close = hangs
  const folder = await openFolder('copy', SOON)
  expect(await folder!.write('a', 'text').catch(nameOf)).toBe('TimeoutError')
})
