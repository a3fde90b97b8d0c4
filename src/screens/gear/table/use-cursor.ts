// The cursor of the table: in which cell it is, whether that is edited, and which keys lead where.

import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { Left } from './CellField'
import { type At, cellByKey, itemBeside, nextToEdit, rowAfter, type Sheet } from './moves'

/** The row of the head. */
export const HEAD = 'head'

/** The cell the cursor is in; `typed` while it is edited: what was typed on it, null where its own text is. */
export interface Cursor extends At {
  typed?: string | null
}

export interface Doing {
  /** What may be typed on a cell; null where it is not edited there. */
  edits: (at: At) => RegExp | null
  /** What a key does in a cell. */
  keys: Readonly<Record<string, (at: At) => void>>
  /** The cursor was led elsewhere, by more than the end of an edit. */
  onStep: () => void
  /** Moves a row up or down. */
  onMove: (row: string, key: string) => void
}

/** `within`: whether the focus is in the table, and how to say so. */
export function useCursor(
  sheet: Sheet,
  doing: Doing,
  within: readonly [boolean, (isWithin: boolean) => void],
) {
  const [isWithin, setWithin] = within
  const grid = useRef<HTMLDivElement>(null)
  const [cursor, setCursor] = useState<Cursor | null>(null)
  /** Whether the cell still has to get the focus. */
  const isDue = useRef(false)
  const items = useRef(sheet.items)

  const go = (to: Cursor) => {
    isDue.current = to.typed === undefined
    setCursor(to)
  }

  // What had the cursor may be gone, as by an undo: it goes on in the next row.
  const isLost = cursor !== null && !sheet.items.includes(cursor.row) && items.current.includes(cursor.row)
  const row = isLost ? nearest(items.current, sheet.items, cursor.row) : cursor?.row
  const first = sheet.items[0] ?? HEAD
  const at: Cursor = {
    ...(isLost ? {} : cursor),
    row: row !== undefined && sheet.rows.includes(row) ? row : first,
    column: sheet.columns.includes(cursor?.column ?? '') ? cursor!.column : sheet.columns[0]!,
  }
  useLayoutEffect(() => {
    if (isLost && (isWithin || document.activeElement === document.body)) isDue.current = true
    items.current = sheet.items
    if (!isDue.current) return
    const cell = grid.current?.querySelector<HTMLElement>(
      `[data-cell="${CSS.escape(`${at.row}/${at.column}`)}"]`,
    )
    if (!cell) return
    isDue.current = false
    ;(cell.querySelector('button') ?? cell).focus()
  })

  const edit = (to: At, typed: string | null = null) => {
    if (doing.edits(to)) go({ ...to, typed })
  }

  function onKeyDown(event: KeyboardEvent) {
    const target = event.target as HTMLElement
    const here = cellOf(target)
    if (!here || target.closest('.cell-field')) return
    const { key } = event
    const isMoving = event.altKey && (key === 'ArrowUp' || key === 'ArrowDown')
    const isItem = sheet.items.includes(here.row)
    if (isMoving && isItem) {
      event.preventDefault()
      go(here)
      return doing.onMove(here.row, key)
    }
    if (event.altKey || event.metaKey) return
    const to = cellByKey(sheet, here, event.ctrlKey ? `Ctrl+${key}` : key)
    if (to) {
      event.preventDefault()
      doing.onStep()
      return go(to)
    }
    if (event.ctrlKey || !isItem) return
    const isButton = target.closest('button') !== null
    if (!isButton && (key === 'Enter' || key === 'F2')) {
      event.preventDefault()
      if (doing.edits(here)) edit(here)
      else doing.keys.o?.(here)
    } else if (Object.hasOwn(doing.keys, key)) {
      event.preventDefault()
      doing.keys[key]!(here)
    } else if (!isButton && key.length === 1 && doing.edits(here)?.test(key)) {
      event.preventDefault()
      edit(here, key)
    }
  }

  function onClick(event: MouseEvent) {
    const target = event.target as HTMLElement
    const here = cellOf(target)
    if (!here || target.closest('.cell-field, button')) return
    doing.onStep()
    if (doing.edits(here)) edit(here)
    else if (here.column === 'cost') go(here)
    else doing.keys.o?.(here)
  }

  function onFocusIn(event: FocusEvent) {
    setWithin(true)
    const here = cellOf(event.target as HTMLElement)
    if (here && (here.row !== at.row || here.column !== at.column)) setCursor(here)
  }

  function onFocusOut({ relatedTarget, target }: FocusEvent) {
    const isAway = relatedTarget === null && document.activeElement === target
    if (!isAway && !(relatedTarget instanceof Node && grid.current?.contains(relatedTarget))) setWithin(false)
  }

  /** How the edit of the cursor’s cell ends. */
  function leave(how: Left) {
    const { typed: _typed, ...here } = at
    if (how === 'gone') return setCursor(now => (now && isSame(now, here) ? here : now))
    if (how === 'next' || how === 'before') {
      const to = nextToEdit(sheet, here, how === 'next' ? 1 : -1, cell => doing.edits(cell) !== null)
      return to ? go({ ...to, typed: null }) : go(here)
    }
    const by = how === 'down' ? 1 : how === 'up' ? -1 : null
    go(by ? { ...here, row: itemBeside(sheet, here.row, by) } : here)
  }

  /** The cursor goes to the row after one that is taken away. */
  const pass = ({ row, column }: At) => {
    const next = rowAfter(sheet, row)
    if (next) go({ row: next, column })
  }

  return { at, go, pass, leave, grid, on: { onKeyDown, onClick, onFocusIn, onFocusOut } }
}

const isSame = (a: At, b: At) => a.row === b.row && a.column === b.column

function cellOf(target: HTMLElement): At | null {
  const name = target.closest<HTMLElement>('[data-cell]')?.dataset.cell
  if (name === undefined) return null
  const cut = name.lastIndexOf('/')
  return { row: name.slice(0, cut), column: name.slice(cut + 1) }
}

/** The first row after one that is gone that is still there, else the last one before it. */
function nearest(before: readonly string[], now: readonly string[], gone: string): string | undefined {
  const at = before.indexOf(gone)
  const there = (row: string) => now.includes(row)
  return before.slice(at).find(there) ?? before.slice(0, at).findLast(there)
}
