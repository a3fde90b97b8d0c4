// Which rows look like a thing that is there already: by its name, whatever the case, blanks and marks, and by its mass
// where both have one. A judgement of ours, made to catch the same list brought in twice.

import { type DraftItem, groupedBy } from '../../plan'
import type { ReadItem } from './types'

type Known = Pick<DraftItem, 'name' | 'massKg'>

/** A scale shows grams; lists round to them. */
const SAME_KG = 0.001

const keyOf = (name: string | undefined) =>
  (name ?? '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

/** The rows that look like one of the things, by row; the value is the index of that thing. */
export function looksSame(items: readonly ReadItem[], known: readonly Known[]): Map<number, number> {
  const byName = groupedBy([...known.keys()], i => keyOf(known[i]!.name))
  const same = new Map<number, number>()
  for (const { row, item } of items) {
    const key = keyOf(item.name)
    // Names without a letter or figure say too little to be the same.
    const found = key ? byName.get(key)?.find(i => isNear(item.massKg, known[i]!.massKg)) : undefined
    if (found !== undefined) same.set(row, found)
  }
  return same
}

const isNear = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined || Math.abs(a - b) <= SAME_KG
