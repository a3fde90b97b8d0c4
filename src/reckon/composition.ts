// What each thing of the gear adds to the load and to the litres at one moment, so that a figure can be told by its
// parts. The sums over all things are those of moments.ts; water, which is no thing of the gear, comes on top.

import type { Item, Plan } from '../plan/types'
import { overflowShares } from './containers'
import { unitsInPlay } from './ledger'
import { unitsOf } from './provisions'
import { partsOf } from './remedies-parts'
import type { Reckoning } from './types'

export interface ItemComposition {
  item: Item
  /** Mass in the load; nothing for what is worn. */
  kg: number
  /** Litres in the main body before packing losses; of things in a container only what overflows. */
  bodyLitres: number
  /** Litres in outside pockets. */
  pocketLitres: number
  /** Of these figures, the share that is rubbish it has left, 0 to 1. */
  rubbishShare: number
}

/** One entry for each item of the plan, in its order. `reckoning` must be what `reckon(plan)` gave. */
export function compositionAt(plan: Plan, reckoning: Reckoning, moment: number): ItemComposition[] {
  const { gear, stowOf, ledger, stocks } = partsOf(plan, reckoning)
  const stock = stocks[moment]!
  const shares = overflowShares(ledger.containers, unitsOf(stock))
  const untouched = { ...stock, used: { ...stock.left } }
  for (const stream of Object.keys(stock.left) as (keyof typeof stock.left)[]) untouched.used[stream] = 0
  return gear.map((item): ItemComposition => {
    const stow = stowOf(item)
    const units = unitsInPlay(item, stock)
    const pieces = item.count * units
    const inBody = item.inside === null ? (stow === 'main-body' ? 1 : 0) : shares.get(item.inside)!
    return {
      item,
      kg: stow === 'worn' ? 0 : item.massKg * pieces,
      bodyLitres: item.litres * pieces * inBody,
      pocketLitres: item.inside === null && stow === 'outside-pocket' ? item.litres * pieces : 0,
      rubbishShare: units > 0 ? 1 - unitsInPlay(item, untouched) / units : 0,
    }
  })
}
