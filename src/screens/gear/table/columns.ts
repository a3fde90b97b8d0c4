// The columns of the table of gear: what each is called, how much room it needs, and which go first where there is none.

import type { DraftItem } from '../../../plan'

/** The facts of an item that are edited in a cell. */
export type CellField = keyof Pick<
  DraftItem,
  'name' | 'massKg' | 'litres' | 'count' | 'stow' | 'use' | 'build' | 'group' | 'massFrom' | 'litresFrom'
>

export type ColumnKey = CellField | 'cost'

export interface Column {
  key: ColumnKey
  head: string
  /** Its least width. */
  rem: number
  /** 0: always there; else the lower, the sooner it is there. */
  rank: number
  isFigure?: true
}

const COLUMNS: readonly Column[] = [
  { key: 'name', head: 'Name', rem: 8.5, rank: 0 },
  { key: 'massKg', head: 'Mass', rem: 6.5, rank: 0, isFigure: true },
  { key: 'litres', head: 'Litres', rem: 6.5, rank: 0, isFigure: true },
  { key: 'count', head: 'Count', rem: 4.5, rank: 3, isFigure: true },
  { key: 'stow', head: 'Where', rem: 7.5, rank: 2 },
  { key: 'cost', head: 'If at home', rem: 7.5, rank: 1 },
  { key: 'use', head: 'Used up', rem: 8, rank: 4 },
  { key: 'build', head: 'Soft or rigid', rem: 8, rank: 5 },
  { key: 'group', head: 'Group', rem: 8, rank: 6 },
  { key: 'massFrom', head: 'Mass from', rem: 6.5, rank: 7 },
  { key: 'litresFrom', head: 'Litres from', rem: 9.5, rank: 8 },
]

/** The grip before the columns, and the two buttons after them. */
const BUTTONS_REM = 6.75

/** The columns that fit beside each other, in their order. */
export function columnsFor(widthRem: number, hasCosts: boolean): Column[] {
  const offered = COLUMNS.filter(({ key }) => key !== 'cost' || hasCosts)
  const taken = new Set<Column>()
  let left = widthRem - BUTTONS_REM
  for (const column of offered.toSorted((a, b) => a.rank - b.rank)) {
    if (column.rank > 0 && column.rem > left) continue
    taken.add(column)
    left -= column.rem
  }
  return offered.filter(column => taken.has(column))
}

/** Which take more of the room that is left. */
const GROWS: Partial<Record<ColumnKey, number>> = { name: 3, cost: 1.6 }

/** Their widths, for a grid. */
export const widthsOf = (columns: readonly Column[]): string =>
  [
    '2rem',
    ...columns.map(({ key, rem }) => `minmax(${rem}rem, ${GROWS[key] ?? 1}fr)`),
    '2.25rem 2.5rem',
  ].join(' ')
