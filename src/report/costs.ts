// What each thing costs, and in which order things stand by it. Apart from the words of a change, which the first page needs.

import type { Effect } from '../reckon'
import type { Change } from './changes'

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
