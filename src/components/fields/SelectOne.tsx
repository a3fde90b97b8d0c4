// One of several, in a list that opens.

import { useId } from 'preact/hooks'
import { groupedBy } from '../../plan'

interface SelectOneProps<T extends string> {
  label: string
  /** Those of one group stand together under its name. */
  options: readonly { value: T; label: string; group?: string }[]
  chosen: T
  onChoose: (value: T) => void
}

export function SelectOne<T extends string>({ label, options, chosen, onChoose }: SelectOneProps<T>) {
  const id = useId()
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={chosen} onChange={event => onChoose(event.currentTarget.value as T)}>
        {[...groupedBy(options, ({ group = '' }) => group)].map(([group, those]) => {
          const drawn = those.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))
          return group ? (
            <optgroup key={group} label={group}>
              {drawn}
            </optgroup>
          ) : (
            drawn
          )
        })}
      </select>
    </div>
  )
}
