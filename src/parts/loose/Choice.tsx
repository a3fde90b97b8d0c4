// A few alternatives side by side that belong to no trip: how a list is ordered, what a tag says.

import { useId } from 'preact/hooks'

interface ChoiceProps<T extends string> {
  label: string
  options: readonly { value: T; label: string }[]
  chosen: T
  onChoose: (value: T) => void
}

export function Choice<T extends string>({ label, options, chosen, onChoose }: ChoiceProps<T>) {
  const name = useId()
  return (
    <fieldset class="field wide choice">
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
