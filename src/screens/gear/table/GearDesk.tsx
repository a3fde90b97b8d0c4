// The table of gear, and beside it all about the item that is open.

import type { ComponentChildren } from 'preact'
import { useLayoutEffect, useRef } from 'preact/hooks'
import { GearTable, type TableProps } from './GearTable'
import { useWidth } from './use-width'

interface DeskProps extends Omit<TableProps, 'widthRem'> {
  /** The open item with its editor, as an entry of a list. */
  drawOpen: (id: string) => ComponentChildren
}

/** The least width for a table with an editor beside it; in less it lies over the table. */
const BESIDE_REM = 54
const EDITOR_REM = 23.5

export function GearDesk({ drawOpen, ...table }: DeskProps) {
  const { opened } = table
  const { ref, rem } = useWidth()
  const isBeside = rem >= BESIDE_REM
  const editor = useRef<HTMLUListElement>(null)
  const before = useRef(opened)
  // From the table one goes on in the editor, and back when it closes; from elsewhere to the field that was asked for.
  useLayoutEffect(() => {
    const was = before.current
    before.current = opened
    const isHere = ref.current?.contains(document.activeElement) || document.activeElement === document.body
    if (was === opened || !isHere) return
    if (opened) editor.current?.querySelector<HTMLElement>('.summary')?.focus()
    else ref.current?.querySelector<HTMLElement>('[role="grid"] [tabindex="0"]')?.focus()
  }, [opened])
  return (
    <div ref={ref}>
      <GearTable {...table} widthRem={opened && isBeside ? rem - EDITOR_REM : rem} />
      {opened ? (
        <ul
          ref={editor}
          class={isBeside ? 'rows item-side' : 'rows item-side floating'}
          aria-label="All about one item"
        >
          {drawOpen(opened)}
        </ul>
      ) : null}
    </div>
  )
}
