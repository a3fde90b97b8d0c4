import { IDBFactory } from 'fake-indexeddb'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { emptyDraft } from '../../src/plan'
import { sortRecords } from '../../src/store/load'
import { writeChanges } from '../../src/store/write'

const notHere = () => {
  throw new Error('not here')
}
/** What is loaded later, without a second copy. */
const noCopy = async () => ({
  startCopy: async () => {},
  readEach: notHere,
  readSaved: notHere,
  createUpdates: notHere,
  startAnew: notHere,
  sortRecords,
  writeChanges,
})

/** A page as the store sees it, with a store of its own. */
async function openPage(indexedDB: unknown) {
  vi.resetModules()
  const window = new EventTarget()
  const document = Object.assign(new EventTarget(), { visibilityState: 'visible' })
  vi.stubGlobal('document', document)
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window))
  vi.stubGlobal('indexedDB', indexedDB)
  const store = await import('../../src/store')
  const hide = () => {
    document.visibilityState = 'hidden'
    document.dispatchEvent(new Event('visibilitychange'))
  }
  return { store, hide, leave: () => window.dispatchEvent(new Event('pagehide')) }
}

const hasRun = (check: () => void) => vi.waitFor(check, { interval: 1 })

beforeEach(() => {
  vi.stubGlobal('BroadcastChannel', undefined)
})
afterEach(() => {
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

describe('starting the store', () => {
  test('reads what an earlier page has saved', async () => {
    const factory = new IDBFactory()
    const first = await openPage(factory)
    await first.store.startStore(noCopy)
    first.store.actions.createTrip({ ...emptyDraft(), name: 'Kept' })
    await first.store.flush()
    const second = await openPage(factory)
    await second.store.startStore(noCopy)
    expect(second.store.openTrip.value?.draft.name).toBe('Kept')
    expect(second.store.storeLoaded.value).toBe(true)
  })

  test('without IndexedDB the app works in memory, and says so', async () => {
    const { store } = await openPage(undefined)
    await store.startStore(noCopy)
    expect(store.saveState.value.kind).toBe('memory-only')
    store.actions.createTrip(emptyDraft())
    await store.flush()
    expect(store.openTrip.value).not.toBeNull()
  })

  test('where the browser throws at the very mention of storage, too', async () => {
    const page = await openPage(undefined)
    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('', 'SecurityError')
      },
    })
    await page.store.startStore(noCopy)
    expect(page.store.saveState.value.kind).toBe('memory-only')
  })

  test.each([1000, 6000])(
    'storage that answers after %i ms holds the start up for a second only; trips are joined in when they come',
    async ms => {
      const factory = new IDBFactory()
      const first = await openPage(factory)
      await first.store.startStore(noCopy)
      first.store.actions.createTrip({ ...emptyDraft(), name: 'Late' })
      await first.store.flush()

      vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
      let answer = () => {}
      const slow = {
        open: (name: string, version: number) => {
          if (name !== 'pack-reckoner') return factory.open(name, version)
          const request = {} as IDBOpenDBRequest
          answer = () => {
            const real = factory.open(name, version)
            real.onsuccess = event => {
              Object.defineProperty(request, 'result', { value: real.result })
              request.onsuccess?.(event)
            }
          }
          return request
        },
      }
      const { store } = await openPage(slow)
      const starting = store.startStore(noCopy)
      await vi.advanceTimersByTimeAsync(1000)
      await starting
      expect(store.saveState.value).toMatchObject({
        kind: 'memory-only',
        message: expect.stringContaining('does not answer'),
      })
      await vi.advanceTimersByTimeAsync(ms - 1000)
      store.actions.createTrip({ ...emptyDraft(), name: 'Meanwhile' })
      answer()
      vi.useRealTimers()
      await hasRun(() => expect(store.saveState.value.kind).toBe('saved'))
      expect(store.tripList.value.map(({ draft }) => draft.name).sort()).toEqual(['Late', 'Meanwhile'])
      expect(store.openTrip.value?.draft.name).toBe('Meanwhile')
    },
  )

  test.each(['hide', 'leave'] as const)('a page that goes away (%s) saves at once', async way => {
    const factory = new IDBFactory()
    const page = await openPage(factory)
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    await page.store.startStore(noCopy)
    page.store.actions.createTrip({ ...emptyDraft(), name: 'Going' })
    expect(page.store.saveState.value.kind).toBe('saving')
    page[way]()
    vi.useRealTimers()
    await hasRun(() => expect(page.store.saveState.value.kind).toBe('saved'))
    const next = await openPage(factory)
    await next.store.startStore(noCopy)
    expect(next.store.openTrip.value?.draft.name).toBe('Going')
  })

  test('a second call does nothing', async () => {
    const factory = new IDBFactory()
    const open = vi.spyOn(factory, 'open')
    const { store } = await openPage(factory)
    await Promise.all([store.startStore(noCopy), store.startStore(noCopy)])
    const names = open.mock.calls.map(([name]) => name)
    expect(names.sort()).toEqual(['pack-reckoner', 'pack-reckoner-aside'])
  })
})
