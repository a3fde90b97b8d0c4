// How many of a thing, and where it rides: short fields for lists. What is typed is kept until it reads as a number.

import { useState } from 'preact/hooks'
import { isWithin, LIMITS, type Stow } from '../../plan'
import { PLACES } from '../gear'

interface CountFieldProps {
  name: string
  count: number
  /** Called with every number that can be read. */
  onCount: (count: number) => void
  onUnread?: (isUnread: boolean) => void
}

export function CountField({ name, count, onCount, onUnread }: CountFieldProps) {
  // The text while it is no number; null: the count is shown.
  const [text, setText] = useState<string | null>(null)
  const isUnread = text !== null && countOf(text) === null
  const onInput = (typed: string) => {
    const read = countOf(typed)
    setText(typed)
    if (read === null) onUnread?.(true)
    else onCount(read)
  }
  const { min, max } = LIMITS.item.count
  return (
    <>
      <input
        type="text"
        inputMode="numeric"
        autocomplete="off"
        class="count"
        aria-label={`How many of ${name}`}
        aria-invalid={isUnread ? 'true' : undefined}
        value={text ?? String(count)}
        onInput={event => onInput(event.currentTarget.value)}
        onBlur={() => {
          if (!isUnread) setText(null)
        }}
      />
      {isUnread ? (
        <p class="problem">
          How many: write a whole number from {min} to {max}.
        </p>
      ) : null}
    </>
  )
}

/** A whole number of pieces within its limits; null where the text is none. */
function countOf(text: string): number | null {
  const count = /^\s*\d+\s*$/.test(text) ? Number(text) : Number.NaN
  return isWithin(count, LIMITS.item.count) ? count : null
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
      {Object.entries(PLACES).map(([value, label]) => (
        <option key={value} value={value}>
          {label}
        </option>
      ))}
    </select>
  )
}
