// The rows that are taken as items of a trip or things of the shelf: one edit, pure; ids and the time come from outside.

import type { Draft, DraftItem } from '../../plan'
import { itemOfKind, type Kind } from '../../plan/kinds'
import { factsOf, type Outside, type Shelf, stamps, type Thing, type ThingFacts } from '../../plan/shelf'
import { addByGroup } from '../list'
import type { ReadItem } from './types'

export interface Adopted {
  rows: readonly ReadItem[]
  /** Rows left out since they look like a thing that is there: by row, the id of the item there. */
  same?: ReadonlyMap<number, string>
  /** The kind that gives a row its litres, if one does. */
  kindOf?: (item: ThingFacts) => Kind | null
}

/** The draft with the rows as items, each beside its group, in the containers that they ride in. */
export function addTable(draft: Draft, { rows, same, kindOf }: Adopted, newId: () => string): Draft {
  const ids = new Map<number, string>(same)
  for (const { row } of rows) ids.set(row, newId())
  const items = rows.map(({ row, item, inside }): DraftItem => {
    const container = inside && ('row' in inside ? ids.get(inside.row) : containerNamed(draft, inside.name))
    return { ...withKind(item, kindOf), ...(container ? { inside: container } : {}), id: ids.get(row)! }
  })
  return addByGroup(draft, items)
}

/** The shelf with the rows as things, at its end. */
export function shelveTable(shelf: Shelf, { rows, kindOf }: Adopted, { newId, now }: Outside): Shelf {
  const made = rows.map(({ item: read, thing }): Thing => {
    // What a table says of a trip, as that a thing stays at home, is no fact of the thing.
    const item = factsOf({ ...withKind(read, kindOf), id: '' })
    return { ...thing, id: newId(), item, changed: stamps(item, now) }
  })
  return { ...shelf, things: [...shelf.things, ...made] }
}

const containerNamed = ({ gear }: Draft, name: string) =>
  gear.find(item => item.holdsLitres !== undefined && item.name === name)?.id

/** A kind fills what the table leaves open; what the table says stands. */
function withKind(item: ThingFacts, kindOf: Adopted['kindOf']): ThingFacts {
  const kind = needsLitres(item) ? kindOf?.(item) : null
  if (!kind) return item
  const { id: _id, ...known } = itemOfKind({ ...item, id: '' }, kind)
  return { ...known, ...item }
}

/** Whether nothing is said of a row's litres yet, so that a kind may give them. */
export const needsLitres = (item: ThingFacts): boolean =>
  item.litres === undefined && item.litresRange === undefined && item.litresFrom === undefined
