// What on the shelf may stand in for an item: the likely ones first, by the words of its name and by its group. Pure.

import type { DraftItem } from '../draft'
import { plainLetters } from '../sought'
import type { Shelf, Thing } from './types'

export interface Candidates {
  /** Of the same kind as far as name and group tell, the most alike first. */
  likely: Thing[]
  /** All the others, in the order of the shelf. */
  others: Thing[]
}

/** Without what the trip has already, what was retired, and what is an alternative to the item as it is. */
export function candidatesFor(item: DraftItem, gear: readonly DraftItem[], shelf: Shelf): Candidates {
  const taken = new Set([...gear.map(it => it.shelf?.id), ...(item.swaps ?? []).map(({ id }) => id)])
  const free = shelf.things.filter(({ id, retired }) => !retired && !taken.has(id))
  const likenessOf = likenessTo(item)
  const alike = free
    .map(thing => ({ thing, likeness: likenessOf(thing) }))
    .filter(({ likeness }) => likeness > 0)
    .sort((a, b) => b.likeness - a.likeness)
    .map(({ thing }) => thing)
  const likely = new Set(alike)
  return { likely: alike, others: free.filter(thing => !likely.has(thing)) }
}

/** The last word of a name says what it is: "bag" in "summer bag". Weights are a judgement of ours. */
function likenessTo(item: DraftItem): (thing: Thing) => number {
  const words = wordsIn(item.name)
  const group = groupKey(item.group)
  return ({ item: other }) => {
    const theirs = wordsIn(other.name)
    const shared = theirs.filter(word => words.includes(word)).length
    const isSameHead = words.length > 0 && words.at(-1) === theirs.at(-1)
    return shared + (isSameHead ? 2 : 0) + (group !== '' && group === groupKey(other.group) ? 1 : 0)
  }
}

const wordsIn = (name = ''): string[] => plainLetters(name).match(/\p{L}{3,}/gu) ?? []
const groupKey = (group = '') => plainLetters(group).trim()
