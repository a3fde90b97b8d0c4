// A few alternatives side by side, each a full touch target.

import { useId } from 'preact/hooks'

interface ChoiceProps<T extends string> {
  label: string
  options: readonly { value: T; label: string }[]
  chosen: T
  onChoose: (value: T) => void
  /** The field of the open trip it edits, if it edits one. */
  path?: string
}

export function Choice<T extends string>({ label, options, chosen, onChoose, path }: ChoiceProps<T>) {
  const name = useId()
  return (
    <fieldset class="field wide choice" data-path={path}>
      <legend>{label}</legend>
      <div class="options">
        {options.map(option => (
          <label key={option.value} class="option">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={chosen === option.value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
