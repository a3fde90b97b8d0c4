// In which order the gear stands: as it is listed, or by what takes the room. Kept while the app is open.

import { signal } from '@preact/signals'
import type { DraftItem } from '../../plan'
import { byRoom, changeOf } from '../../report'
import type { Costs } from './use-costs'

export const gearOrder = signal<'listed' | 'room'>('listed')

/** The things that cost most first; those whose cost is not known come last, as they are listed. */
export function sortedByRoom(gear: readonly DraftItem[], costs: Costs): DraftItem[] {
  const changes = new Map(
    gear.map(item => {
      const cost = costs.get(item.id)
      return [item, cost ? changeOf(cost.effect) : null]
    }),
  )
  return gear.toSorted((a, b) => byRoom(changes.get(a) ?? null, changes.get(b) ?? null))
}
