// The items of a very long list, checked in portions before the list is settled: `settle` then finds what is known of
// them, and nobody has to wait for all of them in one go.

import { type Branch, hasCopy, isBranch, knownItem } from './copies'
import type { Draft } from './draft'
import { checkItem } from './known-items'

/** So many items are settled in one go, whether they were checked before or not. */
const IN_ONE_GO = 2000
/** So many are checked at once: some tens of milliseconds. */
const PORTION = 1000

const unchecked = ({ gear }: Draft): Branch[] =>
  Array.isArray(gear) ? gear.filter(isBranch).filter(item => !hasCopy(item)) : []

/** Whether there is so much to check that it is done in portions, by {@link checkAhead}. */
export const isLongToSettle = (draft: Draft): boolean => unchecked(draft).length > IN_ONE_GO

/** Checks the next items that were not checked yet. Never throws. */
export function checkAhead(draft: Draft): void {
  for (const item of unchecked(draft).slice(0, PORTION)) checkItem(knownItem(item))
}
