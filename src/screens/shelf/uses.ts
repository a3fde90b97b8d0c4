// The things by id, in how many trips each is, and which are in the open one. Worked out anew when something changes.

import { computed } from '@preact/signals'
import { openTrip, shelf, trips } from '../../store'

export const thingsById = computed(() => new Map(shelf.value.things.map(thing => [thing.id, thing])))

/** By the id of a thing: in how many trips it is used. */
export const tripsUsing = computed((): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { draft } of trips.value.values()) {
    const used = new Set(draft.gear.map(item => item.shelf?.id))
    for (const id of used) if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1)
  }
  return counts
})

/** The things that are in the open trip. */
export const inOpenTrip = computed(
  (): ReadonlySet<string> =>
    new Set((openTrip.value?.draft.gear ?? []).flatMap(({ shelf }) => (shelf ? [shelf.id] : []))),
)
