// The open trip settled and reckoned: the engine, fetched once a trip is open, so that the first page need not wait for it.

import { type Draft, type Settled, settle, type Typed } from '../plan'
import { type Reckoned, reckon } from '../reckon'

/** The open trip as a plan, what had to be left out of it, and what the engine makes of it. */
export interface OpenReckoned extends Settled {
  reckoned: Reckoned
}

export { checkAhead, isLongToSettle } from '../plan'
export { openDryStretches } from './dry-stretches'

export function reckonOpen(draft: Draft, typed: Typed): OpenReckoned {
  const settled = settle(draft, typed)
  return { ...settled, reckoned: reckon(settled.plan) }
}
