// A tab hears that everything was erased in two ways: its own save is refused, and another tab tells it.

import { beforeEach, expect, test, vi } from 'vitest'

const reload = vi.fn()
const kept = new Map<string, string>()

beforeEach(() => {
  reload.mockClear()
  vi.stubGlobal('location', { reload })
  vi.stubGlobal('sessionStorage', {
    setItem: (key: string, value: string) => kept.set(key, value),
    getItem: (key: string) => kept.get(key) ?? null,
    removeItem: (key: string) => kept.delete(key),
  })
})

/** What a page that has just been loaded knows of its session. */
const nextPage = async () => {
  vi.resetModules()
  return import('../../src/store/session')
}

test('a page starts anew once, however often it hears that everything was erased, and the next one says so once', async () => {
  const { startAnew } = await nextPage()
  startAnew()
  startAnew()
  expect(reload).toHaveBeenCalledTimes(1)
  const { isAnew } = await nextPage()
  expect([isAnew(), isAnew()]).toEqual([true, false])
  expect((await nextPage()).isAnew()).toBe(false)
})

test('a page that is just going away does not say it in place of the next one', async () => {
  const old = await nextPage()
  old.startAnew()
  expect(old.isAnew()).toBe(false)
  expect((await nextPage()).isAnew()).toBe(true)
})
