// A long table or list of which the first part is drawn, and more when it is asked for: for what cannot be scrolled past
// row by row, as a table is.

import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

/** Up to here all of it is drawn, unless told otherwise. */
const WHOLE = 60
/** So many are drawn at first, and with each press. */
const PORTION = 50

/**
 * How many of `count` are drawn, and the line with the button for more, which is null where all are. `what`: the things
 * in the plural, as "days". Up to `whole` all are drawn.
 */
export function usePortions(
  count: number,
  what: string,
  whole = WHOLE,
): { drawn: number; more: ComponentChildren } {
  const [asked, setAsked] = useState(PORTION)
  if (count <= whole || asked >= count) return { drawn: count, more: null }
  const next = Math.min(PORTION, count - asked)
  return {
    drawn: asked,
    more: (
      <p class="portion">
        {asked} of {count} {what} are shown.{' '}
        <button type="button" class="quiet" onClick={() => setAsked(asked + PORTION)}>
          Show {next} more {what}
        </button>
      </p>
    ),
  }
}
