// How the shelf is looked at: what is sought, in which order, retired things or not; and what is chosen. It stays while
// other screens are open.

import { signal } from '@preact/signals'
import type { Entry } from '../../components/long-list'
import { type Thing, thingsFound } from '../../plan/shelf'

export const ORDERS = [
  { value: 'group', label: 'By group' },
  { value: 'name', label: 'By name' },
  { value: 'mass', label: 'Heaviest first' },
  { value: 'litres', label: 'Largest first' },
  { value: 'weighed', label: 'Longest not weighed' },
] as const
export type Order = (typeof ORDERS)[number]['value']

export interface View {
  sought: string
  order: Order
  withRetired: boolean
}

export const view = signal<View>({ sought: '', order: 'group', withRetired: false })

export function look(part: Partial<View>) {
  view.value = { ...view.peek(), ...part }
}

/** The ids of the chosen things, in the order they were chosen in. */
export const chosen = signal<ReadonlySet<string>>(new Set())

export function choose(ids: Iterable<string>, isChosen: boolean) {
  const next = new Set(chosen.peek())
  for (const id of ids) {
    if (isChosen) next.add(id)
    else next.delete(id)
  }
  chosen.value = next
}

export function chooseNone() {
  chosen.value = new Set()
}

const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })
const litresOf = ({ litres, litresRange }: Thing['item']) => litres ?? litresRange?.typical ?? -1
const BY: Record<Exclude<Order, 'group'>, (a: Thing, b: Thing) => number> = {
  name: (a, b) => collator.compare(a.item.name ?? '', b.item.name ?? ''),
  mass: (a, b) => (b.item.massKg ?? -1) - (a.item.massKg ?? -1),
  litres: (a, b) => litresOf(b.item) - litresOf(a.item),
  weighed: (a, b) => collator.compare(a.weighedOn ?? '', b.weighedOn ?? ''),
}

/** The things in an order; by group the groups come as they first appear, things in them as they lie. */
export function ordered(things: readonly Thing[], order: Order): Thing[] {
  if (order !== 'group') return things.toSorted(BY[order])
  const groups = new Map<string, Thing[]>()
  for (const thing of things) {
    const name = thing.item.group ?? ''
    const group = groups.get(name)
    if (group) group.push(thing)
    else groups.set(name, [thing])
  }
  return [...groups.values()].flat()
}

/** Those of the things that are shown: each word sought is somewhere in name, group or note. */
export function found(things: readonly Thing[], { sought, withRetired }: View): Thing[] {
  return thingsFound(
    things.filter(thing => withRetired || !thing.retired),
    sought,
  )
}

export const groupOf = ({ item }: Thing): string => item.group ?? ''

/** The rows, and by group a heading above each group; a shelf without any group needs none. */
export function entriesOf(things: readonly Thing[], order: Order, group = groupOf): Entry[] {
  const isGrouped = order === 'group' && things.some(thing => group(thing))
  let last: string | null = null
  return things.flatMap((thing): Entry[] => {
    const row = { key: thing.id }
    const heading = group(thing)
    if (!isGrouped || heading === last) return [row]
    last = heading
    return [{ key: `heading/${thing.id}`, heading }, row]
  })
}
