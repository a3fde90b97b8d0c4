// Earlier states of a trip, as far back as undo reaches. Entered only by what shows them, so that the first page needs
// none of it.

import type { TripDocument } from '../documents'
import { state } from '../start'
import { type PastState, pastStates } from './states'

export type { PastState } from './states'

/** The states of a trip before each step that changed it, the latest first. */
export const pastOf = (trip: TripDocument): PastState[] => {
  const kept = state.trips.peek().get(trip.id)
  return kept ? [...pastStates(kept, state.journal.peek())] : []
}
