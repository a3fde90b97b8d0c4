// Which trips take a pack.

import { tripName } from '../../plan'
import { tripList } from '../../store'

/** The trips that take the pack of this id, in the reader's order. */
export const takenOn = (pack: string): { id: string; name: string }[] =>
  tripList.value.flatMap(({ id, draft }) =>
    [draft.takes, ...(draft.people ?? []).map(({ takes }) => takes)].some(takes => takes?.pack === pack)
      ? [{ id, name: tripName(draft) }]
      : [],
  )

/** What a deletion takes away besides, for the words of its undo step; empty where nothing does. */
export function takenWords(pack: string): string {
  const names = takenOn(pack).map(({ name }) => `“${name}”`)
  return names.length > 0 ? `, taken on ${names.join(', ')}` : ''
}
