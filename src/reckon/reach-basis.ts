// What a pack must hold and bear before the first day's food, and what each day adds: the straight lines under
// reach.ts and reach-curve.ts, for those who tell how far a pack reaches.

import type { Plan } from '../plan/types'
import { bodyLine, growthOf, litresOn } from './reach'
import { partsOf } from './remedies-parts'
import type { Term } from './room'
import type { Reckoning } from './types'

export interface ReachBasis {
  /** The load at the first departure without food for a day and without water: gear, spare rations and the rest. */
  baseKg: number
  /** What a day of food, and of the fuel that is bought with it, adds. */
  dayKg: number
  /** The things in the main body, before packing losses, in the same two states. */
  baseLitres: number
  dayLitres: number
}

/** Things by their own litres, before any packing. */
const BEFORE_LOSSES: Term = { perRigidLitre: 1, perSoftLitre: 1 }

/** `reckoning` must be what `reckon(plan)` gave. The litres of a day are those of the first, while containers fill. */
export function reachBasisOf(plan: Plan, reckoning: Reckoning): ReachBasis {
  const heap = growthOf(partsOf(plan, reckoning))
  const litres = bodyLine(heap, BEFORE_LOSSES)
  const baseLitres = litresOn(litres, 0)
  return {
    baseKg: heap.kg.start,
    dayKg: heap.kg.perDay,
    baseLitres,
    dayLitres: litresOn(litres, 1) - baseLitres,
  }
}
