// What documents stored before "nobody said" could be told from "no" hold of riding outside: their false was also what a
// switch left behind that had been tried, so it says nothing.

import { isBranch } from './copies'

const FIELD = 'mayRideOutside'

/** A stored record without each false of the field, in its items and in the changes (`[field, { from, to }]`) it keeps. */
export function withoutOldNo(value: unknown): unknown {
  if (Array.isArray(value)) {
    const [field, change] = value
    return field === FIELD && isBranch(change)
      ? [field, Object.fromEntries(Object.entries(change).filter(([, said]) => said !== false))]
      : value.map(withoutOldNo)
  }
  if (!isBranch(value)) return value
  const kept = Object.entries(value).filter(([field, said]) => field !== FIELD || said !== false)
  return Object.fromEntries(kept.map(([field, child]) => [field, withoutOldNo(child)]))
}
