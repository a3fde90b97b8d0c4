// The import off the page's thread, with a worker of the test's own: cancelling, failing, and messages of odd shape.

import { describe, expect, it } from 'vitest'
import { importGpx, type WorkerLike } from '../../src/files/gpx/import'
import { measureGpx } from '../../src/files/gpx/job'
import { workerMessage } from '../../src/files/gpx/messages'
import { isReadRequest } from '../../src/files/gpx/request'
import { inSilence } from '../tools/silence'
import { gpx, point, track } from './tracks'

const text = gpx(track(point(46, 7, '<ele>1</ele>'), point(46.1, 7, '<ele>2</ele>')))
const file = new File([text], 'walk.gpx')

/** A worker that answers a request as `answer` does; messages cross by structured clone, as between threads. */
function fakeWorker(answer: (say: (data: unknown) => void, worker: WorkerLike) => unknown) {
  const state = { terminated: 0 }
  const worker: WorkerLike = {
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    terminate: () => void state.terminated++,
    postMessage(request: unknown) {
      if (!isReadRequest(request)) throw new Error('not a request to read')
      void answer(
        data =>
          worker.onmessage?.call(
            worker as Worker,
            new MessageEvent('message', { data: structuredClone(data) }),
          ),
        worker,
      )
    },
  }
  return { state, startWorker: () => worker }
}

describe('importGpx', () => {
  it('gives what the worker measured, with progress, and ends the worker', async () => {
    const shares: number[] = []
    const { state, startWorker } = fakeWorker(async say => {
      const result = await measureGpx(file, { onProgress: share => say({ kind: 'progress', share }) })
      say({ kind: 'done', result })
    })
    const result = await importGpx(file, { startWorker, onProgress: share => shares.push(share) })
    expect(result).toMatchObject({ ok: true, tracks: [{ points: 2, km: expect.closeTo(11.1, 1) }] })
    expect(shares.at(-1)).toBe(1)
    expect(state.terminated).toBe(1)
  })

  it('passes on what the worker refused', async () => {
    const { startWorker } = fakeWorker(async say =>
      say({ kind: 'done', result: await measureGpx(new Blob(['no'])) }),
    )
    expect(await importGpx(file, { startWorker })).toMatchObject({
      ok: false,
      message: expect.stringContaining('not an XML'),
    })
  })

  it('ends the worker at once when it is cancelled, and does not start one for a cancelled signal', async () => {
    const stop = new AbortController()
    const { state, startWorker } = fakeWorker(() => stop.abort())
    const result = await importGpx(file, { startWorker, signal: stop.signal })
    expect(result).toMatchObject({ ok: false, message: expect.stringContaining('cancelled') })
    expect(state.terminated).toBe(1)
    const never = () => {
      throw new Error('started')
    }
    expect(await importGpx(file, { startWorker: never, signal: stop.signal })).toEqual(result)
  })

  it('gives a worker up, and says so, once nothing has been heard of it for a minute', async () => {
    const { state, startWorker } = fakeWorker(() => {})
    const [before, end] = await inSilence(() => importGpx(file, { startWorker }))
    expect(before).toBeNull()
    expect(end).toMatchObject({ ok: false, message: expect.stringMatching(/for 60 seconds.*as it was/) })
    expect(state.terminated).toBe(1)
  })

  it('refuses 50 MB before a worker is started', async () => {
    const large = { size: 50_000_000 } as File
    let started = 0
    const { startWorker } = fakeWorker(() => {})
    const counting = () => {
      started += 1
      return startWorker()
    }
    expect(await importGpx(large, { startWorker: counting })).toMatchObject({
      ok: false,
      message: expect.stringContaining('30 MB'),
    })
    expect(started).toBe(0)
  })

  const failed = { ok: false, message: expect.stringContaining('your trip is as it was') }

  it('says so where workers do not start, break off, or speak otherwise than agreed', async () => {
    const none = () => {
      throw new TypeError('no workers here')
    }
    expect(await importGpx(file, { startWorker: none })).toMatchObject(failed)
    const broken = fakeWorker((_say, worker) =>
      worker.onerror?.call(worker as Worker, new Event('error') as ErrorEvent),
    )
    expect(await importGpx(file, broken)).toMatchObject(failed)
    expect(broken.state.terminated).toBe(1)
    const odd = fakeWorker(say =>
      say({ kind: 'done', result: { ok: true, tracks: [{ km: 'far' }], notes: [] } }),
    )
    expect(await importGpx(file, odd)).toMatchObject(failed)
    const unreadable = fakeWorker((_say, worker) =>
      worker.onmessageerror?.call(worker as Worker, new MessageEvent('messageerror')),
    )
    expect(await importGpx(file, unreadable)).toMatchObject(failed)
  })
})

describe('messages', () => {
  it('from a worker are believed only in the agreed shape', async () => {
    const result = await measureGpx(file)
    if (!result.ok) throw new Error(result.message)
    const [measured] = result.tracks
    const done = (changes: object) =>
      workerMessage({ kind: 'done', result: { ...result, tracks: [{ ...measured, ...changes }] } })
    expect(done({})).not.toBeNull()
    expect(done({ km: Number.NaN })).toBeNull()
    expect(done({ stepKm: 0 })).toBeNull()
    expect(done({ sums: { ...measured!.sums, hours: new Float64Array(1) } })).toBeNull()
    expect(done({ sums: { ...measured!.sums, hours: [1, 2] } })).toBeNull()
    for (const message of [
      null,
      'done',
      { kind: 'progress', share: 2 },
      { kind: 'else' },
      { kind: 'done', result: { ok: true, tracks: [], notes: [] } },
    ])
      expect(workerMessage(message)).toBeNull()
  })

  it('to a worker are heard only as a request to read a file', () => {
    expect(isReadRequest({ kind: 'read', file })).toBe(true)
    for (const message of [
      null,
      'read',
      { kind: 'read' },
      { kind: 'read', file: 'walk.gpx' },
      { kind: 'write', file },
    ])
      expect(isReadRequest(message)).toBe(false)
  })
})
