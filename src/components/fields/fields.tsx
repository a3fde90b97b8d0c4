// Words, choices and switches of the open trip, by path.

import { CAPS } from '../../plan'
import { Choice } from './Choice'
import { Labelled } from './Labelled'
import { useField } from './useField'

interface FieldProps {
  path: string
  label: string
  hint?: string | undefined
}

export function TextField({ path, label, hint }: FieldProps) {
  const { value, set } = useField(path)
  return (
    <Labelled wide {...{ label, hint }}>
      {({ id, describedBy }) => (
        <input
          id={id}
          type="text"
          autocomplete="off"
          value={typeof value === 'string' ? value : ''}
          aria-describedby={describedBy}
          onInput={event => set(event.currentTarget.value.slice(0, CAPS.nameLength) || undefined)}
        />
      )}
    </Labelled>
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
  const { value, set } = useField(path)
  return (
    <Labelled {...{ label, hint }}>
      {({ id, describedBy }) => (
        <select
          id={id}
          data-path={path}
          value={typeof value === 'string' ? value : usual}
          aria-describedby={describedBy}
          onChange={event => set(event.currentTarget.value || undefined)}
        >
          {options.map(option => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Labelled>
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
