// How much of what is used up goes into the pack.

import type { Plan } from '../../plan'
import { compositionAt, type Reckoning } from '../../reckon'
import { counted } from '../../units'
import type { Formats } from '../formats'

/** "2.3 kg, 4.5 rations", by item; only of what is used up. `reckoning` must be what `reckon(plan)` gave. */
export function amountsToPack(plan: Plan, reckoning: Reckoning, formats: Formats): Map<string, string> {
  const amounts = new Map<string, string>()
  for (const { item, kg } of compositionAt(plan, reckoning, 0)) {
    if (item.use === 'kept' || item.use === 'spread' || !(kg > 0)) continue
    const units = Number((kg / (item.massKg * item.count)).toFixed(1))
    const what = item.use === 'daily' ? counted(units, 'ration') : counted(units, 'night')
    amounts.set(item.id, `${formats.gear(kg)}, ${what}`)
  }
  return amounts
}
