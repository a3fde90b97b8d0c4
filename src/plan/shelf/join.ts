// Two versions of a value joined field by field and thing by thing, over the state both were made from. What only one of
// them changed is taken from it; what one removed and the other changed stays. Pure.

import { fieldPath } from '../field-path'
import { mergedOrder, type Versions } from './order'
import { byId, isBranch, isThings, own, type WithId } from './plain'
import { same } from './same'

/** Ours with theirs; the paths of what both changed, each into something else, go to `clashes`: ours stand there. */
export function joined({ base, ours, theirs }: Versions<unknown>, at: string[], clashes: string[]): unknown {
  if (same(ours, base) || same(ours, theirs)) return theirs
  if (same(theirs, base)) return ours
  if (isMergeable(ours) && isMergeable(theirs))
    return joinedLists({ base: isMergeable(base) ? base : [], ours, theirs }, at, clashes)
  if (isBranch(ours) && isBranch(theirs)) {
    const was = isBranch(base) ? base : {}
    const names = new Set([...Object.keys(ours), ...Object.keys(theirs)])
    const parts = [...names].flatMap(name => {
      const versions = { base: own(was, name), ours: own(ours, name), theirs: own(theirs, name) }
      const made = joined(versions, [...at, name], clashes)
      return made === undefined ? [] : [[name, made] as const]
    })
    return Object.fromEntries(parts)
  }
  clashes.push(fieldPath(...at))
  return ours
}

function joinedLists({ base, ours, theirs }: Versions<WithId[]>, at: string[], clashes: string[]): unknown[] {
  const [was, mine, other] = [byId(base), byId(ours), byId(theirs)]
  return mergedOrder({ base, ours, theirs }).flatMap(id => {
    const [b, o, t] = [was.get(id), mine.get(id), other.get(id)]
    if (o && t) return [joined({ base: b, ours: o, theirs: t }, [...at, id], clashes)]
    const only = o ?? t
    // Removed on one side: it stays where the other has changed it since.
    return only && !(b && same(only, b)) ? [only] : []
  })
}

/** A file may hold one id twice: such a list is one value. */
const isMergeable = (value: unknown): value is WithId[] =>
  isThings(value) && byId(value).size === value.length
