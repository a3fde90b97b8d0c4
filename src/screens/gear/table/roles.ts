// The roles of a table that is laid out as a grid, of which only the rows near the window are drawn: elements of a table
// have a layout of their own.

import type { Sort } from './sorting'

export const ROLES = {
  /** `rows`: how many there are, drawn or not. */
  grid: (label: string, rows: number) =>
    ({ role: 'grid', 'aria-label': label, 'aria-rowcount': rows }) as const,
  group: { role: 'rowgroup' },
  /** `index`: counted from 1, the head among them. */
  row: (index: number) => ({ role: 'row', 'aria-rowindex': index }) as const,
  head: (way?: Sort['way']) => ({ role: 'columnheader', 'aria-sort': way }) as const,
  name: { role: 'rowheader' },
  cell: { role: 'gridcell' },
} as const
