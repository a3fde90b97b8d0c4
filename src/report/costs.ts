// What each thing costs, in words, and in which order things stand by it. Apart from the words of a change, which the
// first page needs.

import type { Item } from '../plan'
import type { Effect } from '../reckon'
import { listText } from '../units'
import { type Change, changeText } from './changes'
import type { Formats } from './formats'

export interface Cost {
  effect: Effect
  /** The thing, as the plan has it. */
  item: Pick<Item, 'unknownUpTo'>
}

/** "−0.9 kg, −9.1 L", "−0.9 kg, litres not known", "+0.9 kg, +9.1 L if taken along". */
export function costText({ effect, item }: Cost, formats: Formats): string {
  const change = changeOf(effect)
  if (!change) return CANNOT_BE_TOLD
  const known = changeText(change, formats)
  const told = known && effect.atHome ? `${known} if taken along` : known
  return [told, unknownText(item)].filter(text => text !== '').join(', ') || CHANGES_NOTHING
}

export const CHANGES_NOTHING = 'changes nothing'
export const CANNOT_BE_TOLD = 'cannot be told: the rations rest on it'

/** A figure nobody has said is 0 in the sums, which is no news of what the thing costs. */
export function unknownText({ unknownUpTo }: Cost['item']): string {
  const names = [
    unknownUpTo?.massKg == null ? [] : 'mass',
    unknownUpTo?.litres == null ? [] : 'litres',
  ].flat()
  return names.length > 0 ? `${listText(names)} not known` : ''
}

/** The likely litres, and the load with all the water; null where one of the two plans would be refused. */
export function changeOf({ bodyLitres, peakLoadFullWaterKg }: Effect): Change | null {
  if (bodyLitres === null || peakLoadFullWaterKg === null) return null
  return { litres: bodyLitres, kg: peakLoadFullWaterKg }
}

/** Sorts by what takes the room: the most litres first, then the most kilograms; what cannot be told comes last. */
export function byRoom(a: Change | null, b: Change | null): number {
  if (!a || !b) return Number(!a) - Number(!b)
  const [x, y] = [a, b].map(({ litres, kg }) => ({ litres: Math.abs(litres), kg: Math.abs(kg) })) as [
    Change,
    Change,
  ]
  return Math.abs(x.litres - y.litres) > 1e-9 ? y.litres - x.litres : y.kg - x.kg
}
