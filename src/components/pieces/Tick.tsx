// A row that is ticked: all of it is the target.

import type { ComponentChildren } from 'preact'
import './tick.css'

interface TickProps {
  isOn: boolean
  onTick: (isOn: boolean) => void
  /** Set in, as what is in the row above. */
  within?: boolean
  children: ComponentChildren
}

export function Tick({ isOn, onTick, within = false, children }: TickProps) {
  return (
    <li class={within ? 'to-tick within' : 'to-tick'}>
      <label>
        <input type="checkbox" checked={isOn} onChange={event => onTick(event.currentTarget.checked)} />
        <span>{children}</span>
      </label>
    </li>
  )
}
