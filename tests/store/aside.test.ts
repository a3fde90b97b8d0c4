// Last words put aside: at once where that is cheap, and with rests where a trip is so long that it is not.

import { IDBFactory } from 'fake-indexeddb'
import { get } from 'idb-keyval'
import { afterEach, expect, test, vi } from 'vitest'
import { createAside } from '../../src/store/aside'
import { createDatabase } from '../../src/store/database'
import type { Unsaved } from '../../src/store/documents'
import { turns } from './tab'

afterEach(() => vi.useRealTimers())

const words = (text: string): Unsaved => ({
  format: 'pack-reckoner/parting',
  version: 6,
  trips: [],
  shelf: null,
  steps: [{ format: 'pack-reckoner/step', version: 2, id: text, label: '', at: 1, undone: false, parts: [] }],
})

/** Putting something aside takes so long here. */
function asideThatTakes(ms: number) {
  const use = createDatabase({ factory: new IDBFactory(), database: 'aside' })
  let at = 0
  const aside = createAside({ use, key: 'parting/me', locks: undefined, clock: () => at })
  const put = async (text: string, atOnce = false) => {
    aside.put(() => {
      at += ms
      return words(text)
    }, atOnce)
    await turns()
  }
  const stored = async () => (await get<Unsaved>('parting/me', use))?.steps[0]?.id
  return { aside, put, stored }
}

test('each word lies aside at once', async () => {
  const { aside, put, stored } = asideThatTakes(4)
  await put('a')
  expect(await stored()).toBe('a')
  await put('ab')
  expect(await stored()).toBe('ab')
  await aside.clear()
  expect(await stored()).toBeUndefined()
})

test('where that takes long, the page is let rest, though never for 100 ms, nor in its last moment', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
  const { put, stored } = asideThatTakes(10)
  await put('a')
  await put('ab')
  expect(await stored()).toBe('a')
  await vi.advanceTimersByTimeAsync(90)
  await turns()
  expect(await stored()).toBe('ab')
  await put('abc')
  expect(await stored()).toBe('ab')
  await put('abcd', true)
  expect(await stored()).toBe('abcd')
})
