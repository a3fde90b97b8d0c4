// Two tabs' versions of a trip joined field by field and thing by thing, over the state both were made from. What only
// one of them changed is taken from it; what one removed and the other changed stays. Pure.

import { type Draft, pathParts, stillTyped, type Typed } from '../plan'
import { joined, type Versions } from '../plan/shelf'
import type { TripDocument } from './documents'

/** Stands for the terrain of the track among the fields. */
export const PROFILE = 'profile'

export interface MergedTrip {
  trip: TripDocument
  /** Paths of the fields that both changed, each into something else: ours stand in `trip`. */
  clashes: string[]
}

interface TripVersions extends Pick<Versions<TripDocument>, 'ours' | 'theirs'> {
  /** Undefined where it is not known: then all that differs clashes. */
  base: TripDocument | undefined
}

/** Ours joined with theirs, as a state later than both. */
export function mergeTrips({ base, ours, theirs }: TripVersions): MergedTrip {
  const clashes: string[] = []
  const of = <T>(pick: (trip: TripDocument) => T, ...at: string[]) =>
    joined({ base: base && pick(base), ours: pick(ours), theirs: pick(theirs) }, at, clashes) as T
  const draft = of<Draft>(trip => trip.draft)
  const typed = of<Typed>(trip => trip.typed, 'typed')
  const profile = of(trip => trip.profile, PROFILE)
  const { profile: _old, ...rest } = ours
  return {
    trip: {
      ...rest,
      draft,
      typed: stillTyped(draft, typed),
      ...(profile && { profile }),
      changedAt: Math.max(ours.changedAt, theirs.changedAt) + 1,
      revision: Math.max(ours.revision, theirs.revision),
    },
    clashes: [...new Set(clashes.map(fieldOf))],
  }
}

/** A typed text is found by the path of its field. */
function fieldOf(path: string): string {
  const [head, field] = pathParts(path)
  return head === 'typed' && field ? field : path
}
