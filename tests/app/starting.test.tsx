// The app starts in a browser of which one part throws: it draws itself all the same, or the plain page says why not.
// Each part is one that starting uses; which of the two comes is written beside it.

import { act } from '@testing-library/preact'
import { IDBFactory } from 'fake-indexeddb'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'

const refuse = () => {
  throw new DOMException('from the test', 'SecurityError')
}
/** Makes the very mention of it throw. */
const forbid = (of: object, name: string) => {
  const before = Object.getOwnPropertyDescriptor(of, name)
  Object.defineProperty(of, name, { configurable: true, get: refuse })
  return () => {
    if (before) Object.defineProperty(of, name, before)
    else Reflect.deleteProperty(of, name)
  }
}
const replace = (of: object, name: string) => {
  const before = (of as Record<string, unknown>)[name]
  const put = (value: unknown) =>
    Object.defineProperty(of, name, { configurable: true, writable: true, value })
  put(refuse)
  return () => void put(before)
}

const PARTS: [string, 'app' | 'plain', () => () => void][] = [
  ['nothing', 'app', () => () => {}],
  ['indexedDB', 'app', () => forbid(globalThis, 'indexedDB')],
  ['indexedDB.open', 'app', () => replace(globalThis.indexedDB, 'open')],
  ['BroadcastChannel', 'app', () => stub('BroadcastChannel', refuse)],
  ['navigator.locks', 'app', () => forbid(navigator, 'locks')],
  ['navigator.storage', 'app', () => forbid(navigator, 'storage')],
  ['navigator.serviceWorker', 'app', () => forbid(navigator, 'serviceWorker')],
  ['caches', 'app', () => forbid(globalThis, 'caches')],
  ['localStorage', 'app', () => forbid(globalThis, 'localStorage')],
  ['crypto.getRandomValues', 'plain', () => replace(crypto, 'getRandomValues')],
  ['document.addEventListener', 'plain', () => replace(document, 'addEventListener')],
  ['matchMedia', 'plain', () => replace(globalThis, 'matchMedia')],
  ['scrollTo', 'plain', () => replace(globalThis, 'scrollTo')],
]

function stub(name: string, value: unknown) {
  vi.stubGlobal(name, value)
  return () => {}
}

/** Starts the app, a failure told as the browser tells it. Its effects run here too, not in the midst of a later test. */
const start = () =>
  act(async () => {
    const { started } = await import('../../src/main')
    await started.catch(reason => dispatchEvent(Object.assign(new Event('unhandledrejection'), { reason })))
  })

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory())
  document.body.innerHTML = '<p id="opening">Opening…</p><div id="app"></div>'
  vi.resetModules()
})
afterEach(() => {
  dispatchEvent(new Event('app-drawn'))
  vi.unstubAllGlobals()
})

test.each(PARTS)('where %s throws, the %s stands there', async (_, what, breakIt) => {
  await import('../../src/guard')
  const mend = breakIt()
  try {
    await start()
  } finally {
    mend()
  }
  const text = document.getElementById('app')?.textContent ?? ''
  const isPlain = text.includes('The app stopped while it was starting')
  expect(text).toMatch(isPlain ? 'SecurityError' : 'Plan a trip')
  expect(isPlain ? 'plain' : 'app').toBe(what)
})

test('a browser that keeps nothing at all draws the app, which says so', async () => {
  const mend = [
    forbid(globalThis, 'indexedDB'),
    stub('BroadcastChannel', refuse),
    forbid(globalThis, 'caches'),
  ]
  await import('../../src/store/lazy')
  await start()
  for (const each of mend) each()
  expect(document.getElementById('app')?.textContent).toContain('lets the app keep nothing')
})
