// Words, choices and switches of the open trip, by path.

import { useId } from 'preact/hooks'
import { CAPS } from '../../plan'
import { Choice } from './Choice'
import { useField } from './useField'

interface FieldProps {
  path: string
  label: string
  hint?: string | undefined
}

export function TextField({ path, label, hint }: FieldProps) {
  const id = useId()
  const { value, set } = useField(path)
  return (
    <div class="field wide">
      <label for={id}>{label}</label>
      <div class="control">
        <input
          id={id}
          type="text"
          autocomplete="off"
          value={typeof value === 'string' ? value : ''}
          aria-describedby={hint ? `${id}-hint` : undefined}
          onInput={event => set(event.currentTarget.value.slice(0, CAPS.nameLength) || undefined)}
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

export interface Option {
  value: string
  label: string
}

interface ChoiceProps extends FieldProps {
  options: readonly Option[]
  /** What counts while nothing is chosen. */
  usual: string
}

/** A few alternatives of the open trip. */
export function ChoiceField({ path, label, options, usual }: ChoiceProps) {
  const { value, set } = useField(path)
  const chosen = typeof value === 'string' ? value : usual
  return <Choice path={path} label={label} options={options} chosen={chosen} onChoose={set} />
}

/** Many alternatives; an empty value stands for none. */
export function SelectField({ path, label, options, usual, hint }: ChoiceProps) {
  const id = useId()
  const { value, set } = useField(path)
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="control">
        <select
          id={id}
          data-path={path}
          value={typeof value === 'string' ? value : usual}
          onChange={event => set(event.currentTarget.value || undefined)}
        >
          {options.map(option => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
        {hint ? <p class="hint">{hint}</p> : null}
      </div>
    </div>
  )
}

/** Yes, no, or nobody said: then nothing is stored. */
export function YesNoField({ path, label, hint }: FieldProps) {
  const { value, set } = useField(path)
  const chosen = value === true ? 'yes' : value === false ? 'no' : 'unsaid'
  return (
    <>
      <Choice
        path={path}
        label={label}
        options={YES_NO}
        chosen={chosen}
        onChoose={said => set(said === 'unsaid' ? undefined : said === 'yes')}
      />
      {hint ? <p class="hint">{hint}</p> : null}
    </>
  )
}

const YES_NO = [
  { value: 'unsaid', label: 'Not said' },
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const

export function ToggleField({ path, label, usual, hint }: FieldProps & { usual: boolean }) {
  const { value, set } = useField(path)
  return (
    <div class="field wide">
      <label class="toggle">
        <input
          type="checkbox"
          data-path={path}
          checked={typeof value === 'boolean' ? value : usual}
          onChange={event => set(event.currentTarget.checked)}
        />
        <span>{label}</span>
      </label>
      {hint ? <p class="hint">{hint}</p> : null}
    </div>
  )
}
