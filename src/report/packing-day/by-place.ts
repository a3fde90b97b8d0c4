// The gear as it is packed: by place, contents under their container, nothing that is not taken.

import type { Item, Stow } from '../../plan'

export interface PackedRow {
  item: Item
  /** Whether it rides inside the row above that is not. */
  within: boolean
}

export interface PackedPlace {
  stow: Stow
  title: string
  rows: PackedRow[]
}

const PLACES: readonly { stow: Stow; title: string }[] = [
  { stow: 'main-body', title: 'Main body' },
  { stow: 'outside-pocket', title: 'Pockets' },
  { stow: 'strapped-on', title: 'Strapped on' },
  { stow: 'worn', title: 'Worn and in hand' },
]

/** Every item that is taken, once: a container's contents go where it goes. Places with nothing in them are left out. */
export function packedByPlace(gear: readonly Item[]): PackedPlace[] {
  const taken = gear.filter(item => item.count > 0)
  const ids = new Set(taken.map(item => item.id))
  // What a container that stays at home would hold is packed by itself.
  const isInside = ({ inside }: Item) => inside !== null && ids.has(inside)
  const contents = new Map<string | null, PackedRow[]>(taken.map(item => [item.id, []]))
  for (const item of taken) contents.get(item.inside)?.push({ item, within: true })
  const rowsOf = (item: Item): PackedRow[] => [{ item, within: false }, ...contents.get(item.id)!]
  const tops = taken.filter(item => !isInside(item))
  return PLACES.map(place => ({
    ...place,
    rows: tops.filter(item => item.stow === place.stow).flatMap(rowsOf),
  })).filter(place => place.rows.length > 0)
}
