// Two tabs' versions of a trip joined field by field and thing by thing, over the state both were made from. What only
// one of them changed is taken from it; what one removed and the other changed stays. Pure.

import { type Draft, fieldPath, pathParts, stillTyped, type Typed } from '../plan'
import { mergedOrder, same, type Versions } from '../plan/shelf'
import type { TripDocument } from './documents'
import { byId, isBranch, isThings, own, type Thing } from './patch'

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

function joined({ base, ours, theirs }: Versions<unknown>, at: string[], clashes: string[]): unknown {
  if (same(ours, base) || same(ours, theirs)) return theirs
  if (same(theirs, base)) return ours
  if (isMergeable(ours) && isMergeable(theirs))
    return joinedLists({ base: isMergeable(base) ? base : [], ours, theirs }, at, clashes)
  if (isBranch(ours) && isBranch(theirs)) {
    const was = isBranch(base) ? base : {}
    const names = new Set([...Object.keys(ours), ...Object.keys(theirs)])
    const parts = [...names].flatMap(name => {
      const versions = { base: own(was, name), ours: own(ours, name), theirs: own(theirs, name) }
      const made = joined(versions, [...at, name], clashes)
      return made === undefined ? [] : [[name, made] as const]
    })
    return Object.fromEntries(parts)
  }
  clashes.push(fieldPath(...at))
  return ours
}

function joinedLists({ base, ours, theirs }: Versions<Thing[]>, at: string[], clashes: string[]): unknown[] {
  const [was, mine, other] = [byId(base), byId(ours), byId(theirs)]
  return mergedOrder({ base, ours, theirs }).flatMap(id => {
    const [b, o, t] = [was.get(id), mine.get(id), other.get(id)]
    if (o && t) return [joined({ base: b, ours: o, theirs: t }, [...at, id], clashes)]
    const only = o ?? t
    // Removed on one side: it stays where the other has changed it since.
    return only && !(b && same(only, b)) ? [only] : []
  })
}

/** A file may hold one id twice: such a list is one value. */
const isMergeable = (value: unknown): value is Thing[] => isThings(value) && byId(value).size === value.length
