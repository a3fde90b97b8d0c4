import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { createUpdates } from '../../src/store/updates'

class FakeWorker extends EventTarget {
  state: ServiceWorkerState = 'installing'
  postMessage = vi.fn()
}

class FakeRegistration extends EventTarget {
  waiting: FakeWorker | null = null
  installing: FakeWorker | null = null
}

function page({ controlled = true, settles = true, waiting = false } = {}) {
  const registration = new FakeRegistration()
  if (waiting) registration.waiting = new FakeWorker()
  const container = Object.assign(new EventTarget(), {
    controller: (controlled ? {} : null) as object | null,
    // As soon as a worker is active, which is before it has taken charge of any page.
    ready: Promise.resolve(),
    register: vi.fn(async () => registration),
  })
  const log: string[] = []
  const settleEdits = vi.fn(async () => {
    log.push('edits')
    return settles
  })
  const reload = vi.fn(() => void log.push('reload'))
  const updates = createUpdates({ container, settleEdits, reload })
  const takeOver = () => {
    container.controller = {}
    container.dispatchEvent(new Event('controllerchange'))
  }
  /** A new version arrives and waits. */
  const arrive = () => {
    const worker = new FakeWorker()
    registration.installing = worker
    registration.dispatchEvent(new Event('updatefound'))
    registration.installing = null
    registration.waiting = worker
    worker.dispatchEvent(new Event('statechange'))
    return worker
  }
  return { ...updates, registration, container, settleEdits, reload, log, takeOver, arrive }
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

describe('a new version', () => {
  test('is announced when it waits, whether found at the start or later', async () => {
    const early = page({ waiting: true })
    await early.start()
    expect(early.updateWaiting.value).toBe(true)
    const lazy = page()
    await lazy.start()
    expect(lazy.updateWaiting.value).toBe(false)
    lazy.arrive()
    expect(lazy.updateWaiting.value).toBe(true)
  })

  test('that does not arrive whole is said, and one that gives its place to a later one is not', async () => {
    const { registration, updateProblem, updateWaiting, ...updates } = page()
    await updates.start()
    const whole = updates.arrive()
    for (const state of ['installed', 'redundant'] as const) {
      whole.state = state
      whole.dispatchEvent(new Event('statechange'))
    }
    expect(updateProblem.value).toBeNull()

    updateWaiting.value = false
    registration.waiting = null
    const torn = new FakeWorker()
    registration.installing = torn
    registration.dispatchEvent(new Event('updatefound'))
    torn.state = 'redundant'
    torn.dispatchEvent(new Event('statechange'))
    expect(updateProblem.value).toMatch(/did not arrive whole and was not let in/)
    expect(updateWaiting.value).toBe(false)
  })

  test('takes over when asked: edits first, then the message, then one reload', async () => {
    const { start, arrive, applyUpdate, takeOver, log, reload } = page()
    await start()
    const worker = arrive()
    expect(await applyUpdate()).toBe(true)
    expect(log).toEqual(['edits'])
    expect(worker.postMessage).toHaveBeenCalledWith({ type: 'SKIP_WAITING' })
    takeOver()
    expect(reload).toHaveBeenCalledTimes(1)
  })

  test('that does not take over within ten seconds is loaded all the same', async () => {
    const { start, arrive, applyUpdate, reload } = page()
    await start()
    arrive()
    await applyUpdate()
    vi.advanceTimersByTime(9999)
    expect(reload).not.toHaveBeenCalled()
    vi.advanceTimersByTime(1)
    expect(reload).toHaveBeenCalledTimes(1)
  })

  test('that is taking over after ten seconds is not loaded in the midst of it', async () => {
    const { start, arrive, applyUpdate, reload } = page()
    await start()
    const worker = arrive()
    await applyUpdate()
    worker.state = 'activating'
    vi.advanceTimersByTime(60_000)
    expect(reload).not.toHaveBeenCalled()
    worker.state = 'activated'
    worker.dispatchEvent(new Event('statechange'))
    expect(reload).toHaveBeenCalledTimes(1)
  })

  test('waits on while edits cannot be saved', async () => {
    const { start, arrive, applyUpdate, reload, updateWaiting } = page({ settles: false })
    await start()
    const worker = arrive()
    expect(await applyUpdate()).toBe(false)
    vi.advanceTimersByTime(15_000)
    expect(worker.postMessage).not.toHaveBeenCalled()
    expect(reload).not.toHaveBeenCalled()
    expect(updateWaiting.value).toBe(true)
  })

  test('taken by another tab saves the edits here and reloads only when asked', async () => {
    const { start, takeOver, applyUpdate, log, updateWaiting, settleEdits } = page()
    await start()
    takeOver()
    expect(settleEdits).toHaveBeenCalledTimes(1)
    vi.advanceTimersByTime(15_000)
    expect(log).toEqual(['edits'])
    expect(updateWaiting.value).toBe(true)
    await applyUpdate()
    expect(log).toEqual(['edits', 'edits', 'reload'])
  })

  test('asked for when there is none does nothing', async () => {
    const { start, applyUpdate, reload } = page()
    await start()
    expect(await applyUpdate()).toBe(false)
    vi.advanceTimersByTime(15_000)
    expect(reload).not.toHaveBeenCalled()
  })
})

describe('the first worker', () => {
  test('makes the app ready without a network once this page is served by it, and is no update', async () => {
    const { start, arrive, takeOver, offlineReady, updateWaiting, reload } = page({ controlled: false })
    await start()
    arrive()
    expect(offlineReady.value).toBe(false)
    takeOver()
    expect(offlineReady.value).toBe(true)
    expect(updateWaiting.value).toBe(false)
    expect(reload).not.toHaveBeenCalled()
  })

  test('of an earlier visit has the app ready at once', async () => {
    const { start, offlineReady } = page({ controlled: true })
    await start()
    expect(offlineReady.value).toBe(true)
  })

  test('that cannot be registered is told in words', async () => {
    const { start, container, updateProblem } = page()
    container.register.mockRejectedValueOnce(new TypeError('no such file'))
    await start()
    expect(updateProblem.value).toContain('no such file')
  })

  test('a browser without workers is no problem', async () => {
    const updates = createUpdates({ container: undefined, settleEdits: async () => true, reload: () => {} })
    await updates.start()
    expect(updates.updateProblem.value).toBeNull()
    expect(await updates.applyUpdate()).toBe(false)
  })

  test('is registered through the one policy, which allows nothing else', async () => {
    const createPolicy = vi.fn((_name: string, rules: { createScriptURL: (url: string) => string }) => rules)
    vi.stubGlobal('trustedTypes', { createPolicy })
    const { start, container } = page()
    await start()
    expect(createPolicy).toHaveBeenCalledWith('app-sw', expect.anything())
    expect(container.register).toHaveBeenCalledWith('./sw.js')
    const rules = createPolicy.mock.calls[0]![1]
    expect(rules.createScriptURL('./sw.js')).toBe('./sw.js')
    for (const other of ['/sw.js', './sw.js?x', 'https://example.org/sw.js', ''])
      expect(() => rules.createScriptURL(other)).toThrow(TypeError)
  })
})
