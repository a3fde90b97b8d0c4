// Files looked at off the page's thread, with a worker of the test's own: done, cancelled, broken off, never started.

import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import demo from '../../data/demo-plan.json'
import { backupText, type Looked, lookAt } from '../../src/files/backup'
import type { AskedWorker } from '../../src/files/worker'
import { lookInWorker } from '../../src/store/look'
import { type LookAsked, type LookTold, messagesOf } from '../../src/store/look/messages'
import { anyContents, empty, readTrip } from '../files/backups'
import { inSilence } from '../tools/silence'

const json = (value: unknown) => new File([JSON.stringify(value)], 'some file.json')
const plan = json(demo)

/** A worker that answers as `answer` does; what it tells crosses by structured clone, as between threads. */
function fakeWorker(
  answer: (file: File, tell: (told: LookTold) => void, worker: AskedWorker) => Promise<void> | void,
) {
  const state = { ended: 0, portions: 0, longest: 0 }
  const worker: AskedWorker = {
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    terminate: () => void state.ended++,
    postMessage({ file }: LookAsked) {
      const tell = (told: LookTold) => {
        state.portions += 1
        state.longest = Math.max(state.longest, 'text' in told ? told.text.length : 0)
        worker.onmessage?.call(worker as Worker, new MessageEvent('message', { data: structuredClone(told) }))
      }
      queueMicrotask(() => void answer(file, tell, worker))
    },
  }
  return { state, startWorker: () => worker }
}

const reads = async (file: File, tell: (told: LookTold) => void) => {
  for (const told of messagesOf(await lookAt(file, readTrip))) tell(told)
}

const problemsOf = (looked: Looked) => (looked.kind === 'unread' ? looked.problems.join(' ') : looked.kind)

describe('a file that is looked at', () => {
  it('gives what lookAt gives, whatever the file is, and ends its worker', async () => {
    const others = [
      '',
      '{}',
      'See #plan=1.AbC-_ please',
      'name,weight\nTent,1\n',
      '<gpx version="1.1">',
      '%PDF-1.7',
    ]
    for (const file of [
      plan,
      json({ ...demo, gear: 7 }),
      ...others.map(text => new File([text], 'some file')),
    ]) {
      const { state, startWorker } = fakeWorker(reads)
      expect(await lookInWorker(file, { startWorker })).toEqual(await lookAt(file, readTrip))
      expect(state.ended).toBe(1)
    }
  })

  it('gives every backup as it is', async () => {
    await fc.assert(
      fc.asyncProperty(anyContents, async contents => {
        const file = new File([backupText(contents, '2026-01-02')], 'backup.json')
        const looked = await lookInWorker(file, fakeWorker(reads))
        expect(looked).toEqual(await lookAt(file, readTrip))
        expect(looked.kind).toBe('backup')
      }),
      { numRuns: 20 },
    )
  })

  it('crosses in portions where it is long, none of them longer than the page reads at once', async () => {
    const things = Array.from({ length: 8000 }, (_, i) => ({
      id: `t${i}`,
      item: { name: `Thing ${i}` },
      changed: {},
    }))
    const contents = { ...empty(), shelf: { ...empty().shelf, things } }
    const file = new File([backupText(contents, '2026-01-02')], 'backup.json')
    const { state, startWorker } = fakeWorker(reads)
    const looked = await lookInWorker(file, { startWorker })
    expect(looked).toMatchObject({ kind: 'backup', backup: { shelf: { things: { length: 8000 } } } })
    expect(state.portions).toBeGreaterThan(2)
    expect(state.longest).toBeLessThan(300_000)
  })

  it('is read no further once nobody waits for it', async () => {
    const left = new AbortController()
    const { state, startWorker } = fakeWorker(() => left.abort())
    expect(problemsOf(await lookInWorker(plan, { signal: left.signal, startWorker }))).toMatch(/stopped/)
    expect(state.ended).toBe(1)
  })

  it('is given up, and may be tried again, once nothing has been heard of it for a minute', async () => {
    const { state, startWorker } = fakeWorker(() => {})
    const [before, looked] = await inSilence(() => lookInWorker(plan, { startWorker }))
    expect(before).toBeNull()
    expect(looked).toMatchObject({ kind: 'unread', canTryAgain: true })
    expect(problemsOf(looked!)).toMatch(/nothing had been heard of it for 60 seconds.*try again/)
    expect(state.ended).toBe(1)
  })

  it('is waited for as long as its reader goes on', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] })
    try {
      const heard: { tell?: (told: LookTold) => void } = {}
      const { startWorker } = fakeWorker((_, tell) => {
        heard.tell = tell
      })
      const looking = lookInWorker(plan, { startWorker })
      for (let i = 0; i < 10; i++) {
        await vi.advanceTimersByTimeAsync(50_000)
        heard.tell?.({ kind: 'reading' })
      }
      heard.tell?.({ kind: 'done', text: JSON.stringify({ kind: 'table' }) })
      expect(await looking).toEqual({ kind: 'table' })
      expect(vi.getTimerCount()).toBe(0)
    } finally {
      vi.useRealTimers()
    }
  })

  it('is not opened, and says so, where its reader breaks off or does not start', async () => {
    const broken = fakeWorker((_, __, worker) =>
      worker.onerror?.call(worker as Worker, new Event('error') as ErrorEvent),
    )
    expect(problemsOf(await lookInWorker(plan, broken))).toMatch(
      /did not start or broke off\. Reload the app/,
    )
    const startWorker = () => {
      throw new Error('no workers here')
    }
    expect(problemsOf(await lookInWorker(plan, { startWorker }))).toMatch(/did not start or broke off/)
  })
})
