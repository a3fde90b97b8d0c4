// The rows of a list that are taken, as items of the trip: each beside the others of its group, kinds filling what is open.

import type { Draft, DraftItem } from '../../plan'
import { itemOfKind, type Kind } from '../../plan/kinds'
import { withLitres } from '../../plan/litres'
import type { Understood } from './types'

export interface Taken {
  row: Understood
  kind: Kind | null
}

/** A row as an item without its id. Litres that the list states stand; a kind then gives only build, place and group. */
export function itemOf({ row, kind }: Taken): Omit<DraftItem, 'id'> {
  const { name, massKg, litres, count, group, worn, use, holdsWaterLitres, holdsLitres } = row
  const stated: DraftItem = {
    id: '',
    name,
    ...(massKg === undefined ? {} : { massKg, massFrom: 'stated' }),
    ...(count === undefined || count === 1 ? {} : { count }),
    ...(group ? { group } : {}),
    ...(use ? { use } : {}),
    ...(holdsWaterLitres === undefined ? {} : { holdsWaterLitres }),
    ...(holdsLitres === undefined ? {} : { holdsLitres }),
  }
  const known = kind ? itemOfKind(stated, kind) : stated
  const sized = litres === undefined ? known : withLitres(known, litres, 'stated')
  const { id: _id, ...item } = worn ? ({ ...sized, stow: 'worn' } as const) : sized
  return item
}

/** The draft with the rows as items: behind the last item of the same group, new groups at the end. */
export const addListed = (draft: Draft, taken: readonly Taken[], newId: () => string): Draft =>
  addByGroup(
    draft,
    taken.map(each => ({ ...itemOf(each), id: newId() })),
  )

/** The draft with more items: each behind the last one of its group, new groups at the end. */
export function addByGroup(draft: Draft, items: readonly DraftItem[]): Draft {
  const byGroup = new Map<string, DraftItem[]>()
  for (const item of items) {
    const group = item.group ?? ''
    const others = byGroup.get(group)
    if (others) others.push(item)
    else byGroup.set(group, [item])
  }
  const last = new Map(draft.gear.map((item, index) => [item.group ?? '', index]))
  const gear = draft.gear.flatMap((item, index) => {
    const group = item.group ?? ''
    return last.get(group) === index ? [item, ...(byGroup.get(group) ?? [])] : [item]
  })
  const rest = [...byGroup].flatMap(([group, items]) => (last.has(group) ? [] : items))
  return { ...draft, gear: [...gear, ...rest] }
}
