// The worker that packs a plan at chance thousands of times, so that the page never waits for it. One plan, then it is
// ended.

import { whenAsked } from '../../files/worker'
import { simulate } from '../../reckon'
import type { SimulationAsked, SimulationTold } from './messages'

export const address = import.meta.url

whenAsked<SimulationAsked>('try', ({ plan, reckoning, runs, seed }) => {
  const onTried = (tried: number) => tell({ kind: 'tried', tried })
  tell({ kind: 'done', simulation: simulate(plan, reckoning, { runs, seed, onTried }) })
})

const tell = (told: SimulationTold) => postMessage(told)
