// A row of buttons, each of which opens one part below; one is open at a time, and may lead to another.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

interface Door {
  label: string
  /** What is behind it; `go` opens another one, by its label. */
  draw: (go: (label: string) => void) => ComponentChildren
}

export function Doors({ doors }: { doors: readonly Door[] }) {
  const [open, setOpen] = useState<string | null>(null)
  return (
    <>
      <div class="actions">
        {doors.map(({ label }) => (
          <button
            key={label}
            type="button"
            aria-expanded={open === label}
            onClick={() => setOpen(open === label ? null : label)}
          >
            {label}
          </button>
        ))}
      </div>
      {doors.find(({ label }) => label === open)?.draw(setOpen)}
    </>
  )
}
