// What the last edit of the open trip has changed: the figures after it less those before it, and the answers that are
// others now.

import { computed, type ReadonlySignal } from '@preact/signals'
import type { changeBetween, LastChange, OpenReckoned } from './reckoning'

interface Asked {
  /** Of the open trip. */
  trip: string | undefined
  /** The step that was done last, undone ones apart: typing on in one field is one step. */
  step: string | undefined
  open: OpenReckoned | null
  /** Null: the engine is not there yet. */
  changeBetween: typeof changeBetween | null
}

/** Null while nothing was changed since the trip was opened, or where one of the two has no figures. */
export function lastChangeOf(asked: () => Asked): ReadonlySignal<LastChange | null> {
  let of: Pick<Asked, 'trip' | 'step'> = { trip: undefined, step: undefined }
  let before: OpenReckoned | null = null
  let now: OpenReckoned | null = null
  return computed(() => {
    const { trip, step, open, changeBetween } = asked()
    if (trip !== of.trip) [before, now] = [null, null]
    else if (step !== of.step) before = now
    of = { trip, step }
    // While a long list is checked the figures are those of before.
    now = open ?? now
    return before && open && before !== open ? (changeBetween?.(before, open) ?? null) : null
  })
}
