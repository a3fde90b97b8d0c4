// Details whose contents are made only while they are open: what takes long is not worked out for nobody.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

interface WhenOpenProps {
  summary: ComponentChildren
  class?: string
  children: () => ComponentChildren
}

export function WhenOpen({ summary, class: className, children }: WhenOpenProps) {
  const [open, setOpen] = useState(false)
  return (
    <details class={className} onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open ? children() : null}
    </details>
  )
}
