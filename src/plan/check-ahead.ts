// The items of a very long list, checked in portions before the list is settled: `settle` then finds what is known of
// them, and nobody has to wait for all of them in one go.

import { type Branch, hasCopy, isBranch } from './copies'
import type { Draft } from './draft'
import { settle } from './settle'

/** So many items are settled in one go, whether they were checked before or not … */
const IN_ONE_GO = 2000
/** … and of a longer list so many that were not. */
const NEW_IN_LONG = 200
/** So many are checked at once: some tens of milliseconds. */
const PORTION = 500

const unchecked = ({ gear }: Draft): Branch[] =>
  Array.isArray(gear) ? gear.filter(isBranch).filter(item => !hasCopy(item)) : []

/** Whether there is so much to check that it is done in portions, by {@link checkAhead}. */
export function isLongToSettle(draft: Draft): boolean {
  const isLong = Array.isArray(draft.gear) && draft.gear.length > IN_ONE_GO
  return isLong && unchecked(draft).length > NEW_IN_LONG
}

/** Checks the next items that were not checked yet, as in a trip of their own. Never throws. */
export function checkAhead(draft: Draft): void {
  const gear = unchecked(draft).slice(0, PORTION) as unknown as Draft['gear']
  // Settling finds out all that is remembered of an item: what it lacks and how that is mended too.
  settle({ ...draft, gear })
}
