// The undo steps of a trip as they were kept before the journal, each with a whole state, made into steps of the
// journal. Their ids follow from the trip, so that two tabs which do this at once make the same ones. Pure.

import type { History, Step, TripDocument } from './documents'
import { contentsOf } from './journal'
import { difference } from './patch'

/** `past` holds the state before each edit, oldest first; `future` the state after each undone one, newest first. */
export function stepsOfHistory({ past, future }: History, trip: TripDocument): Step[] {
  const undone = future.toReversed()
  const states = [...past, trip, ...undone].map(contentsOf)
  let last = 0
  return [...past, ...undone].flatMap(({ label, at }, i): Step[] => {
    const patch = difference(states[i], states[i + 1])
    // A step that had been undone or redone had lost its time.
    last = Math.max(at, last + 1)
    if (!patch) return []
    const step = { id: `${trip.id}-${i}`, label, at: last, undone: i >= past.length }
    return [
      { format: 'pack-reckoner/step', version: 2, ...step, parts: [{ on: 'trip', id: trip.id, patch }] },
    ]
  })
}
