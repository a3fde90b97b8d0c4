// A quantity that belongs to no trip: the text stays with whoever asked for it, read as it is typed, never rewritten,
// and told what is wrong with it only once the field is left.

import { useId, useState } from 'preact/hooks'
import { isWithin, type Limit } from '../../plan'
import { bareUnitOf, formatQuantity, parseQuantity, type Quantity, type System } from '../../units'
import './loose.css'

/** What a text means: its value (none while it is empty) with a word on how it was understood, or what is wrong. */
export type Reading = { value: number | undefined; said?: string | undefined } | { message: string }

interface Asked {
  kind: Quantity
  label: string
  limit: Limit
  system: System
  fine?: boolean
}

/** Reads a text as a quantity within its limits. Never throws. */
export function readQuantity(text: string, { kind, label, limit, system, fine }: Asked): Reading {
  const bareUnit = bareUnitOf(kind, system, fine)
  const show = (amount: number) => formatQuantity(kind, amount, { system, unit: bareUnit })
  const parsed = parseQuantity(kind, text, { system, bareUnit })
  if (!parsed.ok) return { message: parsed.message }
  if (parsed.empty) return { value: undefined }
  const { value, echo } = parsed
  if (!isWithin(value, limit))
    return { message: `${label}: write an amount from ${show(limit.min)} to ${show(limit.max)}.` }
  return { value, said: echo ? `= ${show(value)}` : undefined }
}

interface LooseProps {
  label: string
  unit?: string | undefined
  text: string
  reading: Reading
  onText: (text: string) => void
  hint?: string | undefined
  /** Over the whole width, where it may have a lot to say. */
  wide?: boolean
}

export function LooseField({ label, unit, text, reading, onText, hint, wide }: LooseProps) {
  const id = useId()
  const [editing, setEditing] = useState(false)
  const problem = !editing && 'message' in reading ? reading.message : null
  const said = 'said' in reading ? reading.said : undefined
  const notes = [
    { key: 'problem', text: problem, class: 'problem' },
    { key: 'said', text: said, class: 'echo' },
    { key: 'hint', text: hint, class: 'hint' },
  ].filter(note => note.text)
  return (
    <div class={wide ? 'field across' : 'field'}>
      <label for={id}>
        {label}
        {unit ? <span class="unit"> ({unit})</span> : null}
      </label>
      <div class="control">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={text}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={notes.map(({ key }) => `${id}-${key}`).join(' ') || undefined}
          onInput={event => onText(event.currentTarget.value)}
          onFocus={() => setEditing(true)}
          onBlur={() => setEditing(false)}
        />
        {notes.map(note => (
          <p key={note.key} id={`${id}-${note.key}`} class={note.class}>
            {note.text}
          </p>
        ))}
      </div>
    </div>
  )
}
