// Which cell a key leads to. Pure.

/** A cell by its row and its column. */
export interface At {
  row: string
  column: string
}

export interface Sheet {
  /** The rows from above, the head and the headings of groups among them. */
  rows: readonly string[]
  /** Those of items. */
  items: readonly string[]
  columns: readonly string[]
  /** Heads and headings have nothing in some columns. */
  has: (at: At) => boolean
}

/** Rows that a page key passes. */
const PAGE = 12

type Step = (at: { row: number; column: number }, last: { row: number; column: number }) => [number, number]

const STEPS: Readonly<Record<string, Step>> = {
  ArrowUp: ({ row, column }) => [row - 1, column],
  ArrowDown: ({ row, column }) => [row + 1, column],
  ArrowLeft: ({ row, column }) => [row, column - 1],
  ArrowRight: ({ row, column }) => [row, column + 1],
  Home: ({ row }) => [row, 0],
  End: ({ row }, last) => [row, last.column],
  PageUp: ({ row, column }) => [Math.max(1, row - PAGE), column],
  PageDown: ({ row, column }) => [row + PAGE, column],
  'Ctrl+Home': () => [1, 0],
  'Ctrl+End': (_, last) => [last.row, last.column],
}

/** The cell that a key leads to, kept within the table; null for a key that leads nowhere. */
export function cellByKey({ rows, columns, has }: Sheet, at: At, key: string): At | null {
  const step = Object.hasOwn(STEPS, key) ? STEPS[key] : undefined
  const from = { row: rows.indexOf(at.row), column: columns.indexOf(at.column) }
  if (!step || from.row < 0 || from.column < 0) return null
  const last = { row: rows.length - 1, column: columns.length - 1 }
  const to = step(from, last)
  const column = columns[Math.min(Math.max(0, to[1]), last.column)]!
  const start = Math.min(Math.max(0, to[0]), last.row)
  const isThere = (row: string) => has({ row, column })
  const [above, below] = [rows.slice(0, start + 1).findLast(isThere), rows.slice(start).find(isThere)]
  const row = to[0] < from.row && key !== 'Ctrl+Home' ? (above ?? below) : (below ?? above)
  return row === undefined ? at : { row, column }
}

/** The next cell on the way of Tab, or the one before, that can be edited: along the row, then in the next one. */
export function nextToEdit(
  { rows, columns }: Sheet,
  at: At,
  by: 1 | -1,
  isOpen: (at: At) => boolean,
): At | null {
  const width = columns.length
  let index = rows.indexOf(at.row) * width + columns.indexOf(at.column)
  for (index += by; index >= 0 && index < rows.length * width; index += by) {
    const next = { row: rows[Math.floor(index / width)]!, column: columns[index % width]! }
    if (isOpen(next)) return next
  }
  return null
}

/** The row to go on in when one is taken away: the next, else the one before. */
export function rowAfter({ items }: Sheet, gone: string): string | null {
  const at = items.indexOf(gone)
  return items[at + 1] ?? items[at - 1] ?? null
}

/** The row of an item below, or above; the same at either end. */
export function itemBeside({ items }: Sheet, row: string, by: 1 | -1): string {
  return items[items.indexOf(row) + by] ?? row
}
