// One of several, in a list that opens.

import { useId } from 'preact/hooks'

interface SelectOneProps<T extends string> {
  label: string
  options: readonly { value: T; label: string }[]
  chosen: T
  onChoose: (value: T) => void
}

export function SelectOne<T extends string>({ label, options, chosen, onChoose }: SelectOneProps<T>) {
  const id = useId()
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={chosen} onChange={event => onChoose(event.currentTarget.value as T)}>
        {options.map(({ value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </div>
  )
}
