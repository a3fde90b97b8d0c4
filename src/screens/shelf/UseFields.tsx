// How many of a thing, and where it rides: short fields for lists. What is typed is kept until it reads as a number.

import { useState } from 'preact/hooks'
import { askedFor, QuantityText } from '../../components/fields'
import { choiceWord, FIELDS, isWithin, type Stow } from '../../plan'

interface CountFieldProps {
  name: string
  count: number
  /** Called with every number that can be read. */
  onCount: (count: number) => void
  onUnread?: (isUnread: boolean) => void
}

export function CountField({ name, count, onCount, onUnread }: CountFieldProps) {
  // The text while it is no number; null: the count is shown.
  const [typed, setTyped] = useState<string | null>(null)
  const text = typed ?? String(count)
  const reading = readCount(text)
  return (
    <QuantityText
      class="count"
      aria-label={`How many of ${name}`}
      inputMode="numeric"
      text={text}
      reading={reading}
      onText={next => {
        const read = readCount(next)
        setTyped(next)
        if (read.value === undefined) onUnread?.(true)
        else onCount(read.value)
      }}
      onEditing={isEditing => {
        if (!isEditing && reading.value !== undefined) setTyped(null)
      }}
    />
  )
}

/** A whole number of pieces within its limits. */
function readCount(text: string) {
  const { count } = FIELDS.item
  const value = /^\s*\d+\s*$/.test(text) ? Number(text) : Number.NaN
  if (isWithin(value, count)) return { value }
  return { value: undefined, message: askedFor(count.label, count, String) }
}

interface PlaceFieldProps {
  name: string
  stow: Stow
  onPlace: (stow: Stow) => void
}

export function PlaceField({ name, stow, onPlace }: PlaceFieldProps) {
  return (
    <select
      aria-label={`Where ${name} rides`}
      value={stow}
      onChange={event => onPlace(event.currentTarget.value as Stow)}
    >
      {Object.keys(FIELDS.item.stow.choices).map(value => (
        <option key={value} value={value}>
          {choiceWord(FIELDS.item.stow, value)}
        </option>
      ))}
    </select>
  )
}
