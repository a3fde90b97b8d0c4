// The worker that packs a plan at chance thousands of times, so that the page never waits for it. One plan, then it is
// ended.

import { simulate } from '../../reckon'
import type { SimulationAsked, SimulationTold } from './messages'

// Only the page that started it can write to a worker of its own.
addEventListener('message', ({ data }: MessageEvent<SimulationAsked>) => {
  const { plan, reckoning, runs, seed } = data
  const onTried = (tried: number) => tell({ kind: 'tried', tried })
  tell({ kind: 'done', simulation: simulate(plan, reckoning, { runs, seed, onTried }) })
})

const tell = (told: SimulationTold) => postMessage(told)
