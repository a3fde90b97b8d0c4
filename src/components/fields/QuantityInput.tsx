// The input under every quantity, in words about how its text was read: one that is edited in place, one that belongs to
// no trip, a count in a list. The text belongs to the person: it is never rewritten under their fingers.

import { useId } from 'preact/hooks'
import { isWithin, type Limit } from '../../plan'
import { bareUnitOf, formatQuantity, parseQuantity, type Quantity, type System } from '../../units'
import { Stepper, type Steps } from './Stepper'

/** What a text means: its value (none while it is empty) with a word on how it was understood, or what is wrong. */
export type Reading = { value: number | undefined; said?: string | undefined } | { message: string }

/** What is asked for in a field. */
export interface Asked {
  kind: Quantity
  label: string
  limit: Limit
  /** Read bare numbers in the finer unit: g or oz instead of kg or lb. */
  fine?: boolean | undefined
}

/** Reads a text as a quantity within its limits. Never throws. */
export function readQuantity(
  text: string,
  { kind, label, limit, fine, system }: Asked & { system: System },
): Reading {
  const bareUnit = bareUnitOf(kind, system, fine)
  const show = (amount: number) => formatQuantity(kind, amount, { system, unit: bareUnit })
  const parsed = parseQuantity(kind, text, { system, bareUnit })
  if (!parsed.ok) return { message: parsed.message }
  if (parsed.empty) return { value: undefined }
  const { value, echo } = parsed
  if (!isWithin(value, limit) || (limit.whole && !Number.isInteger(value)))
    return { message: askedFor(label, limit, show) }
  return { value, said: echo ? `= ${show(value)}` : undefined }
}

export const askedFor = (label: string, { min, max, whole }: Limit, show: (amount: number) => string) =>
  `${label}: write ${whole ? 'a whole number' : 'an amount'} from ${show(min)} to ${show(max)}.`

interface TextProps {
  text: string
  reading: Reading
  onText: (text: string) => void
  /** While it is edited, nothing is said to be wrong. */
  isEditing?: boolean
  onEditing?: (isEditing: boolean) => void
  hint?: string | undefined
  /** What counts while it is empty, in words. */
  usual?: string | undefined
  placeholder?: string
  inputMode?: 'decimal' | 'numeric' | 'text'
  path?: string | undefined
  /** Buttons beside it step through its values. */
  steps?: Steps | undefined
  id?: string
  class?: string
  'aria-label'?: string
}

/** The input with its notes. */
export function QuantityText(props: TextProps) {
  const {
    text,
    reading,
    onText,
    isEditing,
    onEditing,
    hint,
    usual,
    path,
    inputMode = 'decimal',
    steps,
    ...rest
  } = props
  const own = useId()
  const { id = own } = rest
  const problem = !isEditing && 'message' in reading ? reading.message : undefined
  const notes = [
    { key: 'problem', class: 'problem', text: problem },
    { key: 'echo', class: 'echo', text: 'said' in reading ? reading.said : undefined },
    { key: 'hint', class: 'hint', text: hint },
    { key: 'hint-usual', class: 'hint usual', text: usual },
  ].filter(note => note.text)
  const input = (
    <input
      {...rest}
      id={id}
      data-path={path}
      type="text"
      inputMode={inputMode}
      autocomplete="off"
      spellcheck={false}
      value={text}
      aria-invalid={problem ? 'true' : undefined}
      aria-describedby={notes.map(({ key }) => `${id}-${key}`).join(' ') || undefined}
      onInput={event => onText(event.currentTarget.value)}
      onFocus={() => onEditing?.(true)}
      onBlur={() => onEditing?.(false)}
    />
  )
  return (
    <>
      {steps ? <Stepper {...steps}>{input}</Stepper> : input}
      {notes.map(note => (
        <p key={note.key} id={`${id}-${note.key}`} class={note.class}>
          {note.text}
        </p>
      ))}
    </>
  )
}

type InputProps = Omit<TextProps, 'id' | 'class' | 'aria-label'> & {
  label: string
  unit?: string | undefined
  /** Over the whole width, where it may have a lot to say. */
  wide?: boolean | undefined
}

/** The same under its label. */
export function QuantityInput({ label, unit, wide, ...text }: InputProps) {
  const id = useId()
  return (
    <div class={wide ? 'field across' : 'field'}>
      <label for={id}>
        {label}
        {unit && unit !== 'x' ? <span class="unit"> ({unit})</span> : null}
      </label>
      <div class="control">
        <QuantityText {...text} id={id} />
      </div>
    </div>
  )
}
