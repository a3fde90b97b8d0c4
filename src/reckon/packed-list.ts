// What a packing of the list at one moment would be recorded as: the litres it is reckoned to take, and what is open
// about them.

import type { PastPacking, Plan } from '../plan/types'
import { partsOf } from './remedies-parts'
import { spreadOf } from './spread'
import type { Reckoning } from './types'

/** The things are those that have a part in the doubt. `reckoning` must be what `reckon(plan)` gave. */
export function packedListAt(
  plan: Plan,
  reckoning: Reckoning,
  moment: number,
): Pick<PastPacking, 'W' | 'd' | 'things'> {
  const parts = partsOf(plan, reckoning)
  const { modelLitres, list } = spreadOf(parts, reckoning.moments[moment]!, parts.stocks[moment]!)
  return { W: modelLitres, d: list.d, things: list.things.filter(({ u }) => u > 0) }
}
