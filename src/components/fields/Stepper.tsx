// Buttons for one less and one more, around an input that can be typed in as well.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'
import { isWithin, type Limit } from '../../plan'

export interface Steps {
  label: string
  /** What is stepped from; undefined while the text cannot be read: it is not stepped over. */
  value: number | undefined
  limit: Limit
  onValue: (value: number) => void
}

export function Stepper({ label, value, limit, onValue, children }: Steps & { children: ComponentChildren }) {
  const [said, setSaid] = useState('')
  const button = (by: 1 | -1, sign: string, words: string) => {
    const next = (value ?? Number.NaN) + by
    const isPossible = isWithin(next, limit)
    const step = () => {
      if (!isPossible) return
      onValue(next)
      setSaid(`${label}: ${next}`)
    }
    // It keeps the focus at an end of its range.
    return (
      <button
        type="button"
        class="step"
        aria-label={`${words}: ${label}`}
        aria-disabled={!isPossible}
        onClick={step}
      >
        {sign}
      </button>
    )
  }
  return (
    <div class="stepper">
      {button(-1, '−', 'One less')}
      {children}
      {button(1, '+', 'One more')}
      <span class="unseen" role="status">
        {said}
      </span>
    </div>
  )
}
