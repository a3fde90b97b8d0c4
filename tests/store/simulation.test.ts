// Trials off the page's thread, with a worker of the test's own: done, cancelled, broken off, never started.

import { describe, expect, it } from 'vitest'
import demo from '../../data/demo-plan.json'
import { type Plan, parsePlan } from '../../src/plan'
import { reckon, simulate, simulateNeed } from '../../src/reckon'
import { runSimulation, type SimulationWorker } from '../../src/store/simulation'
import type { SimulationAsked, SimulationTold } from '../../src/store/simulation/messages'
import { inSilence } from '../tools/silence'

function demoPlan(): Plan {
  const parsed = parsePlan(demo)
  if (!parsed.ok) throw new Error('the demo plan was refused')
  return parsed.plan
}

function demoReckoned() {
  const plan = demoPlan()
  const reckoned = reckon(plan)
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  return { plan, reckoning: reckoned.reckoning }
}

/** A worker that answers as `answer` does; messages cross by structured clone, as between threads. */
function fakeWorker(
  answer: (asked: SimulationAsked, tell: (told: SimulationTold) => void, worker: SimulationWorker) => void,
) {
  const state = { terminated: 0 }
  const worker: SimulationWorker = {
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    terminate: () => void state.terminated++,
    postMessage(asked: SimulationAsked) {
      const tell = (told: SimulationTold) =>
        worker.onmessage?.call(worker as Worker, new MessageEvent('message', { data: structuredClone(told) }))
      queueMicrotask(() => answer(structuredClone(asked), tell, worker))
    },
  }
  return { state, startWorker: () => worker }
}

const asked = (
  startWorker: () => SimulationWorker,
  signal = new AbortController().signal,
  shares: number[] = [],
) => ({
  ...demoReckoned(),
  runs: 2000,
  seed: 7,
  signal,
  startWorker,
  onProgress: (share: number) => shares.push(share),
})

describe('a trial', () => {
  it('gives what the engine gives for the same seed, tells how far it is, and ends its worker', async () => {
    const { state, startWorker } = fakeWorker(({ plan, reckoning, runs, seed }, tell) => {
      const onTried = (tried: number) => tell({ kind: 'tried', tried })
      tell({ kind: 'done', simulation: simulate(plan, reckoning, { runs, seed, onTried }) })
    })
    const shares: number[] = []
    const end = await runSimulation(asked(startWorker, undefined, shares))
    const direct = simulateNeed(demoPlan(), { runs: 2000, seed: 7 })
    expect(end).toEqual({ ok: true, simulation: direct.ok && direct.simulation })
    expect(shares).toEqual([0, 0.5])
    expect(state.terminated).toBe(1)
  })

  it('ends at once when it is cancelled, before or while it runs', async () => {
    const stop = new AbortController()
    const { state, startWorker } = fakeWorker(() => stop.abort())
    expect(await runSimulation(asked(startWorker, stop.signal))).toEqual({
      ok: false,
      message: 'Simulation cancelled.',
    })
    expect(state.terminated).toBe(1)
    expect(await runSimulation(asked(startWorker, stop.signal))).toMatchObject({ ok: false })
  })

  it('is given up, and said to be, once nothing has been heard of it for a minute', async () => {
    const { state, startWorker } = fakeWorker(() => {})
    const [before, end] = await inSilence(() => runSimulation(asked(startWorker)))
    expect(before).toBeNull()
    expect(end).toEqual({ ok: false, message: expect.stringMatching(/for 60 seconds.*try again/) })
    expect(state.terminated).toBe(1)
  })

  it('says so where the worker breaks off, or none can be started', async () => {
    const breaking = fakeWorker((_, _tell, worker) =>
      worker.onerror?.call(worker as Worker, new Event('error') as ErrorEvent),
    )
    const broken = await runSimulation(asked(breaking.startWorker))
    expect(broken).toEqual({ ok: false, message: expect.stringContaining('Reload the app') })
    expect(breaking.state.terminated).toBe(1)
    const none = asked(() => {
      throw new Error('no workers here')
    })
    expect(await runSimulation(none)).toEqual(broken)
  })
})
