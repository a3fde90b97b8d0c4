// "Why?": one figure, or a card of figures, and when it is opened what they are made of and rest on. The panel and the
// register of sources are fetched on the first opening.

import type { ComponentChildren } from 'preact'
import { useRef, useState } from 'preact/hooks'
import type { About } from '../../report/why'
import { later } from '../frame'
import './why.css'

const Panel = later(async () => (await import('./Panel')).Panel)

export interface WhyProps {
  about: About
  /** The figure that is asked about, with its name. */
  figure: string
  /** What else there is to say when it is open, before the reasons. */
  children?: ComponentChildren
}

export function Why({ about, figure, children }: WhyProps) {
  const [open, setOpen] = useState(false)
  const details = useRef<HTMLDetailsElement>(null)
  const close = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !details.current?.open) return
    event.stopPropagation()
    details.current.open = false
    details.current.querySelector('summary')?.focus()
  }
  return (
    <details
      ref={details}
      class="why why-details"
      onToggle={event => setOpen(event.currentTarget.open)}
      onKeyDown={close}
    >
      <summary>
        <span class="why-figure">{figure}</span> <span class="why-ask">Why?</span>
      </summary>
      {open ? (
        <>
          {children}
          <Panel about={about} />
        </>
      ) : null}
    </details>
  )
}
