// A folder outside the database whose place does not answer: nobody waits for ever.

import { afterEach, expect, test, vi } from 'vitest'
import { openFolder } from '../../src/store/folder'
import { diskOf, hangs } from './disk'

afterEach(() => vi.unstubAllGlobals())

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
