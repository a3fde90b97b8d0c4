// Which trips are compared: all, but the invented demo only as long as there is nothing else.

import { signal } from '@preact/signals'
import { tripName } from '../../plan'
import type { TripAsked } from '../../report/compare-packs'
import type { TripDocument } from '../../store'

/** What was chosen by hand, by the trip's id; kept while the app is open. */
export const chosen = signal<ReadonlyMap<string, boolean>>(new Map())

export function isCompared(trip: TripDocument, all: readonly TripDocument[]): boolean {
  return chosen.value.get(trip.id) ?? (!trip.demo || all.every(other => other.demo))
}

/** The trips in the reader's order, as the report asks for them. */
export function tripsToCompare(all: readonly TripDocument[]): TripAsked[] {
  return all
    .filter(trip => isCompared(trip, all))
    .map(trip => ({ name: tripName(trip.draft), draft: trip.draft, typed: trip.typed }))
}
