// Marks on things of a trip, and a trip without all that is noted of it. Pure.

import type { Draft } from './draft'
import { fieldPath, setField } from './field-path'
import type { Marks } from './trip-log'

/** The lists of marks. */
type MarkList = 'packed' | 'unused'

export const isMarked = (marks: Marks | undefined, id: string): boolean =>
  marks !== undefined && Object.hasOwn(marks, id)

/** The draft with an item marked, or not any more. */
export const mark = (draft: Draft, list: MarkList, id: string, isOn: boolean): Draft =>
  setField(draft, fieldPath('log', list, id), isOn || undefined)

/** A copy begins anew: nothing of it is packed yet. */
export function withoutLog({ log: _log, ...draft }: Draft): Draft {
  return draft
}
