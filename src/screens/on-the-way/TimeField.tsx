// A time of day that is noted of the trip, in minutes after midnight.

import { Labelled, useField } from '../../components/fields'
import { clockText } from '../../report/really-left'

interface TimeFieldProps {
  path: string
  label: string
  hint?: string
}

export function TimeField({ path, label, hint }: TimeFieldProps) {
  const { value, set } = useField(path)
  return (
    <Labelled {...{ label, hint }}>
      {({ id, describedBy }) => (
        <input
          id={id}
          data-path={path}
          type="time"
          value={typeof value === 'number' ? clockText(value) : ''}
          aria-describedby={describedBy}
          onChange={event => set(minutesOf(event.currentTarget.value))}
        />
      )}
    </Labelled>
  )
}

/** Undefined while the browser has no whole time of it. */
function minutesOf(text: string): number | undefined {
  const found = /^(\d\d):(\d\d)/.exec(text)
  return found ? 60 * Number(found[1]) + Number(found[2]) : undefined
}
