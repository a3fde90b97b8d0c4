// Marks on things of a trip, how it was weighed, and a trip without all that is noted of it. Pure.

import type { Takes } from './app-fields'
import type { Draft, Typed } from './draft'
import { fieldPath, pathParts, setField } from './field-path'
import { takesPath } from './people'
import type { Marks } from './trip-log'

/** The lists of marks. */
const MARK_LISTS = ['packed', 'unused'] as const
type MarkList = (typeof MARK_LISTS)[number]

export const isMarked = (marks: Marks | undefined, id: string): boolean =>
  marks !== undefined && Object.hasOwn(marks, id)

/** The draft with an item marked, or not any more. */
export const mark = (draft: Draft, list: MarkList, id: string, isOn: boolean): Draft =>
  setField(draft, fieldPath('log', list, id), isOn || undefined)

/** The draft with an item in no list of marks: it is another by now. */
export const unmarked = (draft: Draft, id: string): Draft =>
  MARK_LISTS.reduce((made, list) => mark(made, list, id, false), draft)

/** The draft weighed in that pack, which is then the one taken, of several people by that one; without one, what was taken stays. */
export function withWeighedIn(draft: Draft, pack: Takes | undefined, person: string | null): Draft {
  const noted = setField(draft, 'log/weighedBare', pack ? undefined : true)
  return pack ? setField(noted, takesPath(draft, person), pack) : noted
}

/** A copy begins anew: nothing of it is packed yet. */
export function withoutLog({ log: _log, ...draft }: Draft): Draft {
  return draft
}

/** The unread texts of the plan alone, without those of what is noted of the trip. */
export const withoutLogTexts = (typed: Typed): Typed =>
  Object.fromEntries(Object.entries(typed).filter(([path]) => pathParts(path)[0] !== 'log'))
