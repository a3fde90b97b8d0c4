// What rides in the main body at one moment, heap by heap: a container with all that is in it is one, and so is the
// water. Together they weigh what the moment says the main body holds.

import type { Item, Plan } from '../plan/types'
import { unitsInPlay } from './ledger'
import { partsOf } from './remedies-parts'
import type { Reckoning } from './types'

export interface Heap {
  /** Null: the water, whatever holds it. */
  item: Item | null
  kg: number
  /** Litres it takes of the main body, before packing losses. */
  litres: number
}

/** `reckoning` must be what `reckon(plan)` gave; `moment` an index of its moments. Heaps of no mass are left out. */
export function ridingAt(plan: Plan, reckoning: Reckoning, moment: number): Heap[] {
  const { gear, stowOf, stocks, water } = partsOf(plan, reckoning)
  const stock = stocks[moment]!
  const inBody = gear.filter(item => stowOf(item) === 'main-body')
  const kgOf = (item: Item) => item.massKg * item.count * unitsInPlay(item, stock)
  const contents = new Map<string, number>()
  for (const item of inBody)
    if (item.inside !== null) contents.set(item.inside, (contents.get(item.inside) ?? 0) + kgOf(item))
  const heaps: Heap[] = inBody
    .filter(item => item.inside === null)
    .map(item => ({
      item,
      kg: kgOf(item) + (contents.get(item.id) ?? 0),
      litres: item.litres * item.count * unitsInPlay(item, stock),
    }))
  const { bodyLitres, softBodyLitres } = water.aboard[moment]!
  heaps.push({ item: null, kg: bodyLitres, litres: softBodyLitres })
  return heaps.filter(heap => heap.kg > 0)
}
