// Reasons that are plain: a sum with all its parts, or a figure with what went in. What they do not say is empty.

import { parseQuantity, type Quantity, type System } from '../../units'
import type { Explanation, WhyPart } from './types'

type Rest = Partial<Omit<Explanation, 'title' | 'says' | 'result'>>
type Told = Pick<Explanation, 'title' | 'says' | 'result'> & Rest

/** An explanation of which only what there is to say is given. */
export const told = (given: Told): Explanation => ({
  equation: '',
  inputs: [],
  range: { bounds: [], note: '' },
  instead: null,
  sourceKeys: [],
  ignores: '',
  others: null,
  ...given,
})

interface Sum extends Omit<Rest, 'parts' | 'rounded'> {
  title: string
  says: string
  kind: Quantity
  system: System
  /** How the parts, and the result unless `text` says otherwise, are shown. */
  show: (value: number) => string
  parts: readonly Unshown[]
  text?: string
}

/** A part without its words: it is shown as the sum's others are. */
export type Unshown = Omit<WhyPart, 'text'> & { text?: string }

/** The parts that add something, the largest first, and their sum. */
export function sumOf({ kind, system, show, parts: all, text, ...rest }: Sum): Explanation {
  const parts = all
    .filter(part => part.value !== 0)
    .map(part => ({ ...part, text: part.text ?? signed(part.value, show) }))
    .sort(
      (a, b) =>
        Number(a.isRest ?? false) - Number(b.isRest ?? false) || Math.abs(b.value) - Math.abs(a.value),
    )
  const value = parts.reduce((sum, part) => sum + part.value, 0)
  const result = { value, text: text ?? signed(value, show) }
  const asShown = parts.reduce((sum, part) => sum + read(part.text), 0)
  // What cannot be read back counts as rounded.
  const rounded = !(Math.abs(asShown - read(signed(value, show))) <= 1e-6)
  return told({ ...rest, result, parts, rounded })

  function read(words: string): number {
    const bare = words.replace('− ', '')
    const parsed = parseQuantity(kind, kind === 'number' ? bare.replace(/[^\d.]/g, '') : bare, { system })
    const amount = parsed.ok && !parsed.empty ? parsed.value : Number.NaN
    return words.startsWith('− ') ? -amount : amount
  }
}

const signed = (value: number, show: (value: number) => string) =>
  value < 0 ? `− ${show(-value)}` : show(value)
