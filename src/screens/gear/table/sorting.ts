// The order of the table: as the gear is listed, or by a column. What is stored keeps its order.

import type { DraftItem } from '../../../plan'
import { sortedByRoom } from '../order'
import type { Costs } from '../use-costs'
import { sortValue } from './cells'
import type { ColumnKey } from './columns'

export interface Sort {
  by: ColumnKey
  way: 'ascending' | 'descending'
}

/** One press of a head sorts, the next turns it round, the third gives the own order back. */
export function afterPress(sort: Sort | null, key: ColumnKey): Sort | null {
  if (sort?.by !== key) return { by: key, way: key === 'cost' ? 'descending' : 'ascending' }
  return sort.way === 'ascending' ? { by: key, way: 'descending' } : null
}

/** The items by a column; those whose figure is not known come last, equal ones as they are listed. */
export function sortedBy(gear: readonly DraftItem[], { by, way }: Sort, costs: Costs | null): DraftItem[] {
  // What takes the room begins with the most, and has no other way.
  if (by === 'cost') return sortedByRoom(gear, costs ?? new Map())
  const values = new Map(gear.map(item => [item, sortValue(item, by)]))
  const sign = way === 'ascending' ? 1 : -1
  return gear.toSorted((a, b) => {
    const [x, y] = [values.get(a), values.get(b)]
    if (x === undefined || y === undefined) return Number(x === undefined) - Number(y === undefined)
    return sign * (typeof x === 'number' && typeof y === 'number' ? x - y : words.compare(`${x}`, `${y}`))
  })
}

const words = new Intl.Collator(undefined, { numeric: true, sensitivity: 'base' })

/** Rows that stay where they are while others change: what is gone goes, what is new comes last. */
export function keptOrder<T extends { key: string }>(before: readonly T[], now: readonly T[]): T[] {
  const there = new Map(now.map(entry => [entry.key, entry]))
  const kept = before.flatMap(({ key }) => there.get(key) ?? [])
  const known = new Set(kept.map(({ key }) => key))
  return [...kept, ...now.filter(({ key }) => !known.has(key))]
}
