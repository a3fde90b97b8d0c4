// An item in a line: what it weighs, what it takes, and where it rides if that is not the main body.

import { choiceWord, type DraftItem, FIELDS } from '../../plan'
import { formatsIn } from '../../report'
import type { System } from '../../units'
import { rangeOf } from './kind-words'

/** How the mass of what is used up is to be understood. */
export const USES = { kept: '', daily: 'a day', nightly: 'a night', spread: 'over the trip' } as const

/** "250 g a day", "1.5 L", "pocket": what there is to say, without the item's name and count. */
export function itemFacts(item: Omit<DraftItem, 'id'>, system: System): string[] {
  const { fuel, massKg, litres, litresRange, count = 1, use = 'kept', stow = 'main-body' } = item
  // The name's line says how many there are.
  const each = count > 1 ? 'each' : ''
  const mass = fuel ? 'mass from its use' : massKg === undefined ? 'no mass' : formatsIn(system).gear(massKg)
  const facts = [
    [mass, massKg === undefined || fuel ? '' : each, USES[use]].filter(Boolean).join(' '),
    [litresText(item, system), litres || litresRange ? each : ''].filter(Boolean).join(' '),
    stow === 'main-body' ? '' : choiceWord(FIELDS.item.stow, stow),
  ]
  return facts.filter(Boolean)
}

/** A range of a kind stands for the litres while it is there. */
function litresText({ litres, litresRange }: Omit<DraftItem, 'id'>, system: System): string {
  if (litresRange)
    return `${rangeOf({ low: litresRange.low ?? 0, high: litresRange.high ?? 0 }, system)} by kind`
  if (litres === undefined) return 'no litres'
  return litres === 0 ? '' : formatsIn(system).litres(litres)
}
