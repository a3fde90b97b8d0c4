// Which rows of a table are taken: a sum is left, so is one's own pack and what looks like a thing that is there, unless
// it is ticked.

import { needsLitres, type ReadItem } from '../../files/csv'
import { type Kind, kindOf } from '../../plan/kinds'

export interface Taking {
  /** Ticks of the reader, by row. */
  ticks: Readonly<Record<number, boolean>>
  /** What looks like a thing that is there, by row. */
  same: ReadonlyMap<number, unknown>
  addSame: boolean
}

export const isTaken = ({ row, isSum, isPack }: ReadItem, { ticks, same, addSame }: Taking): boolean =>
  ticks[row] ?? !(isSum || isPack || (!addSame && same.has(row)))

/** More rows than this are not matched with kinds: it would take a slow phone many seconds. */
export const MATCHED_ROWS = 2000

/** The kind that stands in for litres the table does not give, where one stands out; kept, since matching is dear. */
export function kindFinder(): (item: ReadItem['item']) => Kind | null {
  const found = new Map<string, Kind | null>()
  return item => {
    if (!needsLitres(item) || !item.name) return null
    const asked = `${item.name}\n${item.massKg}\n${item.use}`
    const known = found.get(asked)
    if (known !== undefined) return known
    const kind = kindOf(item)
    found.set(asked, kind)
    return kind
  }
}
