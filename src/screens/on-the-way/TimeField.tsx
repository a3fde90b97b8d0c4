// A time of day that is noted of the trip, in minutes after midnight.

import { useId } from 'preact/hooks'
import { useField } from '../../components/fields'
import { clockText } from '../../report/really-left'

interface TimeFieldProps {
  path: string
  label: string
  hint?: string
}

export function TimeField({ path, label, hint }: TimeFieldProps) {
  const id = useId()
  const { value, set } = useField(path)
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="control">
        <input
          id={id}
          data-path={path}
          type="time"
          value={typeof value === 'number' ? clockText(value) : ''}
          aria-describedby={hint ? `${id}-hint` : undefined}
          onChange={event => set(minutesOf(event.currentTarget.value))}
        />
        {hint ? (
          <p id={`${id}-hint`} class="hint">
            {hint}
          </p>
        ) : null}
      </div>
    </div>
  )
}

/** Undefined while the browser has no whole time of it. */
function minutesOf(text: string): number | undefined {
  const found = /^(\d\d):(\d\d)/.exec(text)
  return found ? 60 * Number(found[1]) + Number(found[2]) : undefined
}
