// The open trip settled and reckoned: the engine, fetched once a trip is open, so that the first page need not wait for it.

import { signal } from '@preact/signals'
import { checkAhead, type Draft, isLongToSettle, type Settled, settle, type Typed } from '../plan'
import { type Reckoned, reckon } from '../reckon'

/** The open trip as a plan, what had to be left out of it, and what the engine makes of it. */
export interface OpenReckoned extends Settled {
  reckoned: Reckoned
  /** The place of the pack that the trip takes in the plan; null where none is taken, or it is not judged. */
  taken: number | null
}

export { givenToList } from '../plan/shelf'
export { openDryStretches } from './dry-stretches'

/** Counts the portions in which very long lists were checked. */
const portions = signal(0)
let next: ReturnType<typeof setTimeout> | undefined

/** Null while so many items are to be checked that the page must answer in between; whoever reads it then hears again. */
export function reckonOpen(draft: Draft, typed: Typed): OpenReckoned | null {
  clearTimeout(next)
  // Asked for again after each portion.
  void portions.value
  if (isLongToSettle(draft)) {
    next = setTimeout(() => {
      checkAhead(draft)
      portions.value += 1
    })
    return null
  }
  const settled = settle(draft, typed)
  const at = settled.packIds.indexOf(draft.takes?.pack ?? '')
  return { ...settled, reckoned: reckon(settled.plan), taken: at < 0 ? null : at }
}
