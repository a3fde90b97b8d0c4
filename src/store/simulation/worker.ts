// The worker for what takes long: it packs a plan at chance thousands of times, or shares out what several people carry, so
// that the page never waits for it. One plan, then it is ended.

import { whenAsked } from '../../files/worker'
import { reckonParty, sharedFrom, simulate } from '../../reckon'
import type { SharingAsked, SharingTold, SimulationAsked, SimulationTold } from './messages'

export const address = import.meta.url

whenAsked<SharingAsked>('share-out', asked => tell(sharedOut(asked)))
whenAsked<SimulationAsked>('try', ({ plan, reckoning, runs, seed }) => {
  const onTried = (tried: number) => tell({ kind: 'tried', tried })
  tell({ kind: 'done', simulation: simulate(plan, reckoning, { runs, seed, onTried }) })
})

function sharedOut({ plan }: SharingAsked): SharingTold {
  const reckoned = reckonParty(plan)
  if (!reckoned.ok) return { ok: false, message: reckoned.problem.said }
  const { party } = reckoned
  return { ok: true, shared: sharedFrom(plan, party), split: party.split }
}

const tell = (told: SimulationTold | SharingTold) => postMessage(told)
