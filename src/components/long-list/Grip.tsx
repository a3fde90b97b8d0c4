// The grip of a row: dragged by finger or mouse, and moved by the arrow keys while it has the focus.

import { useMemo } from 'preact/hooks'
import type { Mover } from './mover'
import { createMover } from './mover'

export const useMover = () => useMemo(createMover, [])

/** What every grip of the page is described by; drawn once with each list. */
const HOW = 'how-grips-move'

interface GripProps {
  mover: Mover
  id: string
  name: string
  /** In a table, whose own keys move the row, Tab passes it. */
  inGrid?: boolean
}

export function Grip({ mover, id, name, inGrid = false }: GripProps) {
  const row = { key: id, name }
  return (
    <button
      type="button"
      class="grip"
      aria-label={`Move ${name}`}
      aria-describedby={HOW}
      tabIndex={inGrid ? -1 : undefined}
      title={inGrid ? 'Drag it (or Alt with ↑ ↓)' : undefined}
      onPointerDown={event => mover.start(event, row)}
      onKeyDown={event => mover.press(event, row)}
    >
      <svg viewBox="0 0 12 18" width="12" height="18" aria-hidden="true">
        <path d="M3 3h.01M9 3h.01M3 9h.01M9 9h.01M3 15h.01M9 15h.01" />
      </svg>
    </button>
  )
}

/** How grips work and what the last one did, for those who cannot see it. */
export function MoveWords({ mover }: { mover: Mover }) {
  return (
    <div class="unseen">
      <p id={HOW}>Drag it, or press the arrow keys; Home and End take it to the ends.</p>
      <p role="status">{mover.said.value}</p>
    </div>
  )
}

/** Where the dragged row would go, and its name under the pointer. */
export function DragMarks({ mover, as: Mark }: { mover: Mover; as: 'li' | 'div' }) {
  const drag = mover.drag.value
  if (!drag) return null
  return (
    <>
      {drag.lineY === null ? null : (
        <Mark class="drop-line" aria-hidden="true" style={{ insetBlockStart: `${drag.lineY}px` }} />
      )}
      <Mark class="dragged" aria-hidden="true" style={{ insetBlockStart: `${drag.y}px` }}>
        {drag.name}
      </Mark>
    </>
  )
}
