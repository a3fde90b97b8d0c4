// A scale reading shared out over guesses, put into the list. Pure.

import type { Draft } from './draft'
import { fieldPath } from './field-path'
import { setField } from './set-field'
import type { Spread } from './trip-log'

/** The draft with these masses, each kg, and what they were guessed as first. */
export function withSpread(draft: Draft, masses: readonly (Spread & { id: string })[]): Draft {
  return masses.reduce(
    (next, { id, fromKg, toKg }) =>
      setField(setField(next, fieldPath('gear', id, 'massKg'), toKg), fieldPath('log', 'spread', id), {
        fromKg,
        toKg,
      }),
    draft,
  )
}
