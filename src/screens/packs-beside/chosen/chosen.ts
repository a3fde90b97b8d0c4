// Which packs stand side by side, and for which trips: kept while the app is open.

import { signal } from '@preact/signals'

export const MOST_BESIDE = 4

/** Pack and set-up by their ids, as one text. */
export const keyOf = (pack: string, setup: string): string => `${pack}/${setup}`

/** In the order in which they were chosen, as `keyOf` names them. */
export const chosenSetups = signal<readonly string[]>([])

/** One more; the first of four goes. */
export function setBeside(key: string) {
  const others = chosenSetups.peek().filter(other => other !== key)
  chosenSetups.value = [...others, key].slice(-MOST_BESIDE)
}

/** `shown`: those that stand there, chosen or not. */
export function takeOut(key: string, shown: readonly string[] = chosenSetups.peek()) {
  chosenSetups.value = shown.filter(other => other !== key)
}

/** What was ticked by hand, by the trip's id; the open trip is to begin with. */
export const besideTrips = signal<ReadonlyMap<string, boolean>>(new Map())

export function tickTrip(id: string, isTicked: boolean) {
  besideTrips.value = new Map(besideTrips.peek()).set(id, isTicked)
}
