// A closed part of the help; what is in it is made once it is opened, and opened from elsewhere too.

import type { ComponentChildren } from 'preact'

interface PartProps {
  id: string
  title: string
  /** Whose figures these are; see DEVELOPERS.md. */
  figures: 'why' | 'typed' | 'cited'
  isOpen: boolean
  onToggle: (isOpen: boolean) => void
  children: () => ComponentChildren
}

export function Part({ id, title, figures, isOpen, onToggle, children }: PartProps) {
  return (
    <details
      id={id}
      class="help-part"
      open={isOpen}
      data-figures={figures}
      onToggle={event => {
        const { open } = event.currentTarget
        if (open !== isOpen) onToggle(open)
      }}
    >
      <summary>
        <h2>{title}</h2>
      </summary>
      {isOpen ? <div class="help-body stack">{children()}</div> : null}
    </details>
  )
}
