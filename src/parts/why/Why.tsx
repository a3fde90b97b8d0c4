// "Why?": one figure and, when it is opened, where it comes from. The panel and the register of sources are fetched
// on the first opening.

import { useState } from 'preact/hooks'
import type { About } from '../../report/why'
import { actions } from '../../store'
import { later } from '../frame'
import type { Go } from './focus-field'
import './why.css'

const Panel = later(async () => (await import('./Panel')).Panel)

export interface WhyProps {
  about: About
  /** The figure that is asked about, with its name. */
  figure: string
  /** Leads to the screen and entry of a field; without it the inputs are not buttons. */
  onGo?: Go | undefined
}

/**
 * `onGo` for the Trip and Gear screens: opens the gear entry of a field, if it is one; the panel itself brings
 * every field that is on the page into view.
 */
export const toField: Go = path => {
  const [screen, id] = path.split('/')
  if (screen === 'gear') actions.setPlace({ screen, detail: `${screen}/${id}`, scrollY: 0 })
}

export function Why({ about, figure, onGo }: WhyProps) {
  const [open, setOpen] = useState(false)
  return (
    <details class="why why-details" onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="why-figure">{figure}</span> <span class="why-ask">Why?</span>
      </summary>
      {open ? <Panel about={about} onGo={onGo} /> : null}
    </details>
  )
}
