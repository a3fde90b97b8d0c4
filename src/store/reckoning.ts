// The open trip settled and reckoned: the engine, fetched once a trip is open, so that the first page need not wait for it.

import { signal } from '@preact/signals'
import { checkAhead, type Draft, isLongToSettle, type Plan, type Settled, settle, type Typed } from '../plan'
import { type OnTheWay, onTheWay, type Reckoned, reckon, takenAlong } from '../reckon'

/** The open trip as a plan of what is taken along, what had to be left out of it, and what the engine makes of it. */
export interface OpenReckoned extends Settled {
  /** The plan with what stays at home. */
  listed: Plan
  reckoned: Reckoned
  /** The place of the pack that the trip takes in the plan; null where none is taken, or it is not judged. */
  taken: number | null
}

export { describeField, fieldWord } from '../plan'
export { givenToList } from '../plan/shelf'
export { changeBetween, type LastChange } from './change-between'
export { openDryStretches } from './dry-stretches'
export { openEffects } from './open-effects'

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
  return reckonedOf(settled, draft.takes?.pack)
}

/** The packs judged apart from any trip. */
export const reckonApart = (draft: Draft, typed: Typed): OpenReckoned => reckonedOf(settle(draft, typed))

function reckonedOf(settled: Settled, pack = ''): OpenReckoned {
  const { plan: listed } = settled
  const at = settled.packIds.indexOf(pack)
  const taken = at < 0 ? null : at
  return { ...settled, plan: takenAlong(listed), listed, reckoned: reckon(listed), taken }
}

/** Resupplies whose missing is looked at: each is a reckoning, and the page waits. */
const MOST_SKIPPED = 8

/** What should be left on leaving a stop of the open trip; null for a trip that does not settle, and for no stop on the way. */
export function openOnTheWay({ plan, reckoned }: OpenReckoned, stop: number): OnTheWay | null {
  const isOnTheWay = stop > 0 && stop < plan.trip.stops.length - 1
  return reckoned.ok && isOnTheWay ? onTheWay(plan, reckoned.reckoning, stop, MOST_SKIPPED) : null
}
