// A number with a unit, typed as people type it. The text belongs to the person: it is read, never rewritten under
// their fingers, and kept when it cannot be read, with a message beside it.

import { useId, useState } from 'preact/hooks'
import { isWithin, type Limit } from '../../plan'
import { bareUnitOf, editText, formatQuantity, parseQuantity, type Quantity } from '../../units'
import { useField, useSystem } from './useField'

export interface QuantityFieldProps {
  path: string
  label: string
  kind: Quantity
  limit: Limit
  /** Read bare numbers in the finer unit: g or oz instead of kg or lb. */
  fine?: boolean
  /** What counts while the field is empty, and where that comes from. */
  usual?: number | undefined
  usualFrom?: string | undefined
  hint?: string | undefined
}

interface Note {
  id: string
  class: string
  text: string
}

export function QuantityField({
  path,
  label,
  kind,
  limit,
  fine,
  usual,
  usualFrom,
  hint,
}: QuantityFieldProps) {
  const id = useId()
  const system = useSystem()
  const { value, unread, set } = useField(path)
  // The text while the field is being edited; null: show the stored value.
  const [editing, setEditing] = useState<string | null>(null)
  const bareUnit = bareUnitOf(kind, system, fine)
  const stored = typeof value === 'number' ? editText(kind, value, { system, bareUnit }) : ''
  const text = editing ?? unread ?? stored
  const show = (amount: number) => formatQuantity(kind, amount, { system, unit: bareUnit })
  /** Without zeros that say nothing: 70 kg. */
  const plain = (amount: number) => show(amount).replace(/\.0+(?!\d)/, '')
  const reading = read(text)
  const problem = editing === null && 'message' in reading ? reading.message : null

  function read(typed: string): { value: number | undefined; echo: boolean } | { message: string } {
    const parsed = parseQuantity(kind, typed, { system, bareUnit })
    if (!parsed.ok) return { message: parsed.message }
    if (parsed.empty) return { value: undefined, echo: false }
    const { value: amount, echo } = parsed
    if (!isWithin(amount, limit) || (limit.whole && !Number.isInteger(amount)))
      return {
        message: `${label}: write ${limit.whole ? 'a whole number' : 'an amount'} from ${show(limit.min)} to ${show(limit.max)}.`,
      }
    return { value: amount, echo }
  }

  function onInput(typed: string) {
    setEditing(typed)
    const understood = read(typed)
    if ('message' in understood) set(undefined, typed)
    else set(understood.value)
  }

  const notes: Note[] = []
  const note = (what: string, text: string | undefined | false | null) => {
    if (text) notes.push({ id: `${id}-${what.replace(' ', '-')}`, class: what, text })
  }
  note('problem', problem)
  note('echo', 'echo' in reading && reading.echo && `= ${show(reading.value!)}`)
  note('hint', hint)
  // The placeholder shows what counts; where that comes from is said when there is something to say.
  if (usual !== undefined && usualFrom && text === '')
    note('hint usual', `Counts as ${plain(usual)}: ${usualFrom}.`)

  return (
    <div class="field">
      <label for={id}>
        {label}
        {bareUnit && bareUnit !== 'x' ? <span class="unit"> ({bareUnit})</span> : null}
      </label>
      <div class="control">
        <input
          id={id}
          data-path={path}
          type="text"
          inputMode={kind === 'temperature' ? 'text' : 'decimal'}
          autocomplete="off"
          spellcheck={false}
          value={text}
          placeholder={usual === undefined ? '' : editText(kind, usual, { system, bareUnit })}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={notes.map(note => note.id).join(' ') || undefined}
          onInput={event => onInput(event.currentTarget.value)}
          onFocus={() => setEditing(text)}
          onBlur={() => setEditing(null)}
        />
        {notes.map(note => (
          <p key={note.id} id={note.id} class={note.class}>
            {note.text}
          </p>
        ))}
      </div>
    </div>
  )
}
