// What a figure nobody has said may be at the most, where the thing's name tells its kind: its high end says more than
// the general bound.

import type { Item, Plan } from '../types'
import { highEndOf } from './guess'

/** Items are never changed in place, so each is looked up once. */
const KEPT = new WeakMap<Item, Item>()

/** The plan with the bounds of unknown figures taken from the kinds that the names tell. */
export function withKindsEnds<P extends Pick<Plan, 'gear'>>(plan: P): P {
  if (plan.gear.every(({ unknownUpTo }) => unknownUpTo === null)) return plan
  return { ...plan, gear: plan.gear.map(item => (item.unknownUpTo ? withKindsEnd(item) : item)) }
}

function withKindsEnd(item: Item): Item {
  const kept = KEPT.get(item)
  if (kept) return kept
  const { name, use, count, massKg, massFrom, holdsLitres, holdsWaterLitres, unknownUpTo } = item
  const known = massKg > 0 ? { massKg, massFrom } : {}
  const holds = { holdsWaterLitres, ...(holdsLitres === null ? {} : { holdsLitres }) }
  const end = highEndOf({ name, use, count, ...known, ...holds })
  const bounded = (bound: number | null | undefined, most: number) => (bound == null ? null : most)
  const unknown = end && {
    massKg: bounded(unknownUpTo?.massKg, end.massKg),
    litres: bounded(unknownUpTo?.litres, end.litres),
  }
  const found = unknown ? { ...item, unknownUpTo: unknown } : item
  KEPT.set(item, found)
  return found
}
