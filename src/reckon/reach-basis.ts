// What a pack must hold and bear before the first day's food, and what each day adds: the straight lines under
// reach.ts and reach-curve.ts, for those who tell how far a pack reaches.

import type { Plan } from '../plan/types'
import { overflowOf, total } from './ledger'
import { stockFor } from './reach'
import { partsOf } from './remedies-parts'
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

/** `reckoning` must be what `reckon(plan)` gave. The litres of a day are those of the first, while containers fill. */
export function reachBasisOf(plan: Plan, reckoning: Reckoning): ReachBasis {
  const parts = partsOf(plan, reckoning)
  const at = (days: number) => {
    const stock = stockFor(days, parts)
    const inside = total(parts.ledger, stock, 'rigidLitres') + total(parts.ledger, stock, 'softLitres')
    return {
      kg: total(parts.ledger, stock, 'kg'),
      litres: inside + overflowOf(parts.ledger, stock).overflowLitres,
    }
  }
  const [none, one] = [at(0), at(1)]
  return {
    baseKg: none.kg,
    dayKg: one.kg - none.kg,
    baseLitres: none.litres,
    dayLitres: one.litres - none.litres,
  }
}
