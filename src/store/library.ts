// The library record as pure functions: which trips there are and in which order, and joining two tabs' versions.

import { copyName } from '../plan'
import type { Library, TripDocument } from './documents'

/** The name of a second version of a trip that was also changed elsewhere. */
export const otherTabName = ({ draft }: TripDocument): string =>
  copyName({ name: draft.name || 'Trip' }, 'other tab').name!

/** The library with a trip put into the order at an index, or at the end. */
export function withTrip(library: Library, id: string, at = library.order.length): Library {
  if (library.order.includes(id)) return library
  return { ...library, order: library.order.toSpliced(at, 0, id) }
}

/** The index after a trip; the end where there is no such trip. */
export function placeAfter({ order }: Library, id: string): number {
  return order.includes(id) ? order.indexOf(id) + 1 : order.length
}

/**
 * The library as it fits the trips there are: none missing from the order, none too many, an open one that exists.
 * Trips that cannot be read (`isUnread`), as those of a newer version, keep their places.
 */
export function tidied(
  library: Library,
  trips: ReadonlyMap<string, TripDocument>,
  isUnread: (id: string) => boolean,
): Library {
  const known = library.order.filter((id, i, all) => (trips.has(id) || isUnread(id)) && all.indexOf(id) === i)
  const missing = [...trips.keys()].filter(id => !known.includes(id))
  const same = missing.length === 0 && known.length === library.order.length
  const open = library.open !== null && trips.has(library.open) ? library.open : null
  if (same && open === library.open) return library
  return { ...library, open, order: same ? library.order : [...known, ...missing] }
}

/** An order with what is not shown put where it stood before: after the same neighbour, or at the same index. */
export function withUnread(order: string[], before: string[], isShown: (id: string) => boolean): string[] {
  return before.reduce((next, id, i) => {
    if (isShown(id)) return next
    const neighbour = next.indexOf(before[i - 1] ?? '')
    return next.toSpliced(neighbour < 0 ? Math.min(i, next.length) : neighbour + 1, 0, id)
  }, order)
}

/** Joins what two tabs made of one library: what only one of them changed is taken from that one, else ours. */
export function merged(base: Library, ours: Library, theirs: Library): Library {
  if (ours === base) return theirs
  if (theirs === base) return ours
  const pick = <K extends keyof Library>(key: K) => (ours[key] === base[key] ? theirs[key] : ours[key])
  return {
    ...ours,
    open: pick('open'),
    system: pick('system'),
    theme: pick('theme'),
    brightSun: pick('brightSun'),
    largeTargets: pick('largeTargets'),
    packColumns: pick('packColumns'),
    place: pick('place'),
    ...(person => person && { person })(pick('person')),
    order: mergedOrder(base.order, ours.order, theirs.order),
    // Said is said, in whichever tab.
    ...(ours.toldWhy || theirs.toldWhy ? { toldWhy: true } : {}),
  }
}

function mergedOrder(base: string[], ours: string[], theirs: string[]): string[] {
  if (ours === base) return theirs
  const kept = ours.filter(id => theirs.includes(id) || !base.includes(id))
  const added = theirs.filter(id => !base.includes(id) && !ours.includes(id))
  return [...kept, ...added]
}
