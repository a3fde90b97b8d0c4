// A closed line that carries its figure: what is behind it opens below.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

interface LineProps {
  label: string
  figure: ComponentChildren
  /** Whose figures these are; see DEVELOPERS.md. */
  figures: 'why' | 'typed' | 'cited'
  isOpen?: boolean
  /** Made only once it is opened. */
  children: () => ComponentChildren
  isMadeAhead?: boolean
}

export function Line({ label, figure, figures, isOpen = false, isMadeAhead = false, children }: LineProps) {
  const [open, setOpen] = useState(isOpen)
  return (
    <details
      class="line"
      open={open}
      data-figures={figures}
      onToggle={event => setOpen(event.currentTarget.open)}
    >
      <summary>
        <h3>{label}</h3>
        <span class="line-figure">{figure}</span>
      </summary>
      {open || isMadeAhead ? <div class="line-body stack">{children()}</div> : null}
    </details>
  )
}
