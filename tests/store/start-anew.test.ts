// A tab hears that everything was erased in two ways: its own save is refused, and another tab tells it.

import { expect, test, vi } from 'vitest'
import { isAnew, startAnew } from '../../src/store/session'

test('a page starts anew once, however often it hears that everything was erased', () => {
  const reload = vi.fn()
  const kept = new Map<string, string>()
  vi.stubGlobal('location', { reload })
  vi.stubGlobal('sessionStorage', {
    setItem: (key: string, value: string) => kept.set(key, value),
    getItem: (key: string) => kept.get(key) ?? null,
    removeItem: (key: string) => kept.delete(key),
  })
  startAnew()
  startAnew()
  expect(reload).toHaveBeenCalledTimes(1)
  expect([isAnew(), isAnew()]).toEqual([true, false])
})
