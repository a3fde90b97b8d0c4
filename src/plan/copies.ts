// Copies of what a draft holds, so that a document made of them can be mended. The copy of an item is made once and kept
// as long as the item is the same in all its fields.

import { APP_FIELDS, withoutAppFields } from './app-fields'
import { CAPS } from './caps'

export type Branch = Record<string, unknown>

export const isBranch = (value: unknown): value is Branch =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A deep copy; what lies deeper than the cap is undefined. */
export function copied(value: unknown, depth: number): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (depth === 0) return undefined
  if (Array.isArray(value)) return value.map(entry => copied(entry, depth - 1))
  return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, copied(child, depth - 1)]))
}

/** The parts of a list that may be read as such. */
export const entries = (value: unknown): Branch[] => (Array.isArray(value) ? value.filter(isBranch) : [])

/** An item or a pack lies in a list in the draft. */
export const PART_DEPTH = CAPS.depth - 3

/** The item as a document has it, under this id and without what only the app knows. */
export function freshItem(item: Branch, id: string): Branch {
  return { ...(copied(withoutAppFields(item), PART_DEPTH) as Branch), id }
}

const known = new WeakMap<object, Branch>()

/** Whether there is a copy of the item, as one of the same fields or of others. */
export const hasCopy = (item: object): boolean => known.has(item)

/** As {@link freshItem} under the item's own id, and the same object again for the same item: it must not be changed. */
export function knownItem(item: Branch): Branch {
  const before = known.get(item)
  // Nobody should change an item in place. Should somebody, then what was found of it before does not count.
  if (before && isStillLike(before, item)) return before
  const copy = freshItem(item, item.id as string)
  known.set(item, copy)
  return copy
}

function isStillLike(copy: Branch, item: Branch): boolean {
  let left = Object.keys(copy).length
  for (const key in item) {
    if (APP_FIELDS.has(key) || !Object.hasOwn(item, key)) continue
    if (!Object.hasOwn(copy, key) || !isCopyOf(copy[key], item[key], PART_DEPTH - 1)) return false
    left--
  }
  return left === 0
}

/** Whether `copy` is what `copied` makes of a value at this depth. */
export function isCopyOf(copy: unknown, value: unknown, depth: number): boolean {
  if (typeof value !== 'object' || value === null) return Object.is(copy, value)
  if (depth === 0) return copy === undefined
  if (typeof copy !== 'object' || copy === null || Array.isArray(copy) !== Array.isArray(value)) return false
  const keys = Object.keys(value)
  if (Object.keys(copy).length !== keys.length) return false
  return keys.every(key => isCopyOf((copy as Branch)[key], (value as Branch)[key], depth - 1))
}
