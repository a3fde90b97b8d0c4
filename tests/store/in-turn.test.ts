// Pieces of work in turn, with the browser's locks and without them.

import { afterEach, describe, expect, test, vi } from 'vitest'
import { inTurn } from '../../src/store/in-turn'

afterEach(() => {
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

/** Locks that hand out one at a time per name, and note what was asked for. */
function fakeLocks() {
  const asked: string[] = []
  const held = new Map<string, Promise<unknown>>()
  const request = (name: string, _options: unknown, work: () => Promise<unknown>) => {
    asked.push(name)
    const next = (held.get(name) ?? Promise.resolve()).then(work)
    held.set(
      name,
      next.catch(() => {}),
    )
    return next
  }
  return { asked, request }
}

describe.each([
  ['without locks', () => ({})],
  ['with locks', () => ({ locks: fakeLocks() })],
])('work in turn %s', (_, browser) => {
  test('runs one piece after the other, and each asker gets its own result', async () => {
    vi.stubGlobal('navigator', browser())
    const alone = inTurn('files')
    const heard: string[] = []
    const work = (name: string) => async () => {
      heard.push(`${name} begins`)
      await new Promise(resolve => setTimeout(resolve))
      heard.push(`${name} ends`)
      return name
    }
    expect(await Promise.all([alone(work('one')), alone(work('two'))])).toEqual(['one', 'two'])
    expect(heard).toEqual(['one begins', 'one ends', 'two begins', 'two ends'])
  })

  test('goes on after a piece that failed, of which its asker hears', async () => {
    vi.stubGlobal('navigator', browser())
    const alone = inTurn('files')
    const failed = alone(() => Promise.reject(new Error('full')))
    const next = alone(async () => 'done')
    await expect(failed).rejects.toThrow('full')
    expect(await next).toBe('done')
  })
})

test('work in turn asks for the lock by its name, so that it waits for other tabs too', async () => {
  const locks = fakeLocks()
  vi.stubGlobal('navigator', { locks })
  const seen: number[] = []
  const [here, there] = [inTurn('files'), inTurn('files')]
  await Promise.all([
    here(async () => {
      await new Promise(resolve => setTimeout(resolve))
      seen.push(1)
    }),
    there(async () => void seen.push(2)),
  ])
  expect(locks.asked).toEqual(['files', 'files'])
  expect(seen).toEqual([1, 2])
})

describe('work that other tabs keep waiting', () => {
  const never = new Promise<never>(() => {})
  const request = async (_name: string, { signal }: { signal: AbortSignal }, work: () => unknown) => {
    await Promise.race([never, new Promise((_, reject) => signal.addEventListener('abort', reject))])
    return work()
  }

  test.each([
    ['that hold the lock', { request }],
    ['though the browser never answers', { request: () => never }],
  ])('for more than three seconds, %s, is refused as busy', async (_, locks) => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    vi.stubGlobal('navigator', { locks })
    const work = vi.fn(async () => 'done')
    const heard = inTurn('files')(work).catch(({ name }) => name)
    await vi.advanceTimersByTimeAsync(2999)
    expect(await Promise.race([heard, Promise.resolve('still waiting')])).toBe('still waiting')
    await vi.advanceTimersByTimeAsync(1)
    expect(await heard).toBe('BusyError')
    expect(work).not.toHaveBeenCalled()
  })

  test('is not begun when its turn comes after it was refused, and the next piece is', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    let hand = () => {}
    const handed = new Promise<void>(resolve => {
      hand = resolve
    })
    const late = (_name: string, _options: unknown, work: () => unknown) => handed.then(work)
    vi.stubGlobal('navigator', { locks: { request: late } })
    const alone = inTurn('files')
    const work = vi.fn(async () => 'done')
    const refused = alone(work).catch(({ name }) => name)
    const next = alone(async () => 'next')
    await vi.advanceTimersByTimeAsync(3000)
    expect(await refused).toBe('BusyError')
    hand()
    expect(await next).toBe('next')
    expect(work).not.toHaveBeenCalled()
  })
})
