// A number with a unit, typed as people type it, by its path in what is edited: kept when it cannot be read, with a
// message beside it.

import { useState } from 'preact/hooks'
import { bareUnitOf, editText, formatQuantity } from '../../units'
import { type Asked, QuantityInput, readQuantity } from './QuantityInput'
import { useField, useSystem } from './useField'

interface QuantityFieldProps extends Asked {
  path: string
  /** What counts while the field is empty, and where that comes from. */
  usual?: number | undefined
  usualFrom?: string | undefined
  hint?: string | undefined
  /** Whole numbers that are stepped through. */
  steps?: boolean | undefined
}

export function QuantityField({ path, usual, usualFrom, hint, steps, ...asked }: QuantityFieldProps) {
  const { label, kind, fine, limit } = asked
  const system = useSystem()
  const { value, unread, set } = useField(path)
  // The text while the field is being edited; null: show the stored value.
  const [editing, setEditing] = useState<string | null>(null)
  const bareUnit = bareUnitOf(kind, system, fine)
  const textOf = (amount: unknown) =>
    typeof amount === 'number' ? editText(kind, amount, { system, bareUnit }) : ''
  const text = editing ?? unread ?? textOf(value)
  const read = (typed: string) => readQuantity(typed, { ...asked, system })
  const reading = read(text)
  /** Without zeros that say nothing: 70 kg. */
  const plain = (amount: number) =>
    formatQuantity(kind, amount, { system, unit: bareUnit }).replace(/\.0+(?!\d)/, '')

  function onText(typed: string) {
    setEditing(typed)
    const understood = read(typed)
    if ('message' in understood) set(undefined, typed)
    else set(understood.value)
  }

  return (
    <QuantityInput
      path={path}
      label={label}
      unit={bareUnit}
      text={text}
      reading={reading}
      onText={onText}
      isEditing={editing !== null}
      onEditing={isEditing => setEditing(isEditing ? text : null)}
      hint={hint}
      steps={
        steps
          ? {
              label,
              limit,
              value: 'message' in reading ? undefined : (reading.value ?? usual ?? limit.min),
              onValue: next => set(next),
            }
          : undefined
      }
      // The placeholder shows what counts; where that comes from is said when there is something to say.
      placeholder={textOf(usual)}
      usual={
        usual !== undefined && usualFrom && text === ''
          ? `Counts as ${plain(usual)}: ${usualFrom}.`
          : undefined
      }
      inputMode={kind === 'temperature' ? 'text' : 'decimal'}
    />
  )
}
