// What typing in a field of a trip or of a thing changes: the value itself, and the range of litres that follows a mass.

import type { Draft, DraftItem } from './draft'
import { fieldAt, fieldPath, pathParts, setField as put } from './field-path'
import { changeItem, followingMass } from './litres'

/** The draft with another value at the path, as `setField` of field-path.ts; a range that follows a mass does so. */
export function setField(draft: Draft, path: string, value: unknown): Draft {
  const next = put(draft, path, value)
  const [area, id, field] = pathParts(path)
  if (next === draft || area !== 'gear' || !id || !field) return next
  const item = fieldAt(next, fieldPath(area, id)) as DraftItem | undefined
  // Nothing follows in nearly every item: its list then stays the same.
  return item?.litresPerKg ? changeItem(next, id, of => followingMass(of, field)) : next
}

/** The same for an item by itself: `massKg`, `litresRange/high`. */
export function setItemField<T extends Partial<DraftItem>>(item: T, path: string, value: unknown): T {
  const next = put(item, path, value)
  return next === item ? item : (followingMass(next as DraftItem, pathParts(path)[0]!) as T)
}
