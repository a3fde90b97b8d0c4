// Which trips are compared: all, or the first of very many, but the invented demo only as long as there is nothing else.

import { signal } from '@preact/signals'
import { tripName } from '../../plan'
import type { TripAsked } from '../../report/compare-packs'
import type { TripDocument } from '../../store'

/** What was chosen by hand, by the trip's id; kept while the app is open. */
export const chosen = signal<ReadonlyMap<string, boolean>>(new Map())

/** So many are compared where nothing was chosen by hand: each is a column of the table. */
export const MOST_COMPARED = 20

/** Which of all trips are compared, by their ids. */
export function comparedAmong(all: readonly TripDocument[]): ReadonlySet<string> {
  const onlyDemo = all.every(({ demo }) => demo)
  const first = all.filter(({ demo }) => !demo || onlyDemo).slice(0, MOST_COMPARED)
  const byItself = new Set(first.map(({ id }) => id))
  return new Set(all.flatMap(({ id }) => ((chosen.value.get(id) ?? byItself.has(id)) ? [id] : [])))
}

/** The trips in the reader's order, as the report asks for them. */
export function tripsToCompare(all: readonly TripDocument[]): TripAsked[] {
  const compared = comparedAmong(all)
  return all
    .filter(({ id }) => compared.has(id))
    .map(trip => ({ name: tripName(trip.draft), draft: trip.draft, typed: trip.typed }))
}
