// The rows of a table as items: each comes out as one, or as a problem with its row, column, text and how to mend it.

import { CAPS } from '../../plan'
import { inOneGo, type Steps } from '../portions'
import { cellReader } from './cell'
import { FIELDS } from './fields'
import type { Grid } from './grid'
import { type GearLayout, isLone } from './guess'
import { inContainers } from './inside'
import { isFilled, isSameRow } from './layout'
import { readRow } from './read-row'
import { lineOf, startOf } from './texts'
import type { TableRead } from './types'

/** Reads every row below the headings by the layout; `containers`: names of those in the gear already. Never throws. */
export const readRows = (...given: Parameters<typeof readingRows>): TableRead =>
  inOneGo(readingRows(...given))

/** As `readRows`, row by row. */
export function* readingRows(
  grid: Grid,
  layout: GearLayout,
  containers: readonly string[] = [],
): Steps<TableRead> {
  const read: TableRead = { items: [], problems: [], groups: 0 }
  const { headerRow, columns, headings } = layout
  const name = columns.findIndex(({ field }) => field === 'name')
  const header = headerRow === null ? null : grid.rows[headerRow]!
  const above = headerRow ?? -1
  const reading = { grid, layout, readCell: cellReader(FIELDS) }
  let group: string | undefined
  for (const [i, cells] of grid.rows.entries()) {
    yield
    if (i <= above || !isFilled(cells) || (header && isSameRow(cells, header))) continue
    if (headings && isLone(cells, name) && !grid.slips.has(i)) {
      group = startOf(lineOf(cells[name]!).replace(/:$/, ''), CAPS.nameLength)
      read.groups++
      continue
    }
    const { item, problems } = readRow(reading, i, group)
    read.problems.push(...problems)
    if (item) read.items.push(item)
  }
  return inContainers(read, columns, containers)
}
