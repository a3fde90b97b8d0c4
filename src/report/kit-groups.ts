// The gear of a load by the hiker's own groups, so that a heap of "gear" can be told apart: the largest by name, all
// else together. The same groups whatever the moment, so that a picture keeps its layers.

import type { Plan } from '../plan'

type Item = Plan['gear'][number]

/** So many are named; a fifth layer of gear could hardly be told from the others. */
const MOST_NAMED = 3

const OTHER_GEAR = 'Other gear'

const KEPT = new WeakMap<Plan['gear'], string[]>()

/** The names of the groups, the largest by litres first and "Other gear" last where there is any. */
export function kitGroups({ gear }: Pick<Plan, 'gear'>): readonly string[] {
  const known = KEPT.get(gear)
  if (known) return known
  const sizes = new Map<string, number>()
  let hasOther = false
  for (const item of gear) {
    if (item.use !== 'kept' || item.count === 0 || item.stow === 'worn') continue
    const name = item.group.trim()
    if (name) sizes.set(name, (sizes.get(name) ?? 0) + sizeOf(item))
    else hasOther = true
  }
  const named = [...sizes].sort((a, b) => b[1] - a[1]).map(([name]) => name)
  const most = named.length === MOST_NAMED + 1 && !hasOther ? MOST_NAMED + 1 : MOST_NAMED
  const groups = named.slice(0, most)
  if (hasOther || named.length > most) groups.push(OTHER_GEAR)
  KEPT.set(gear, groups)
  return groups
}

/** Which of `kitGroups` an item is in: its index. */
export function groupOf({ group }: Item, groups: readonly string[]): number {
  const at = groups.indexOf(group.trim())
  return at < 0 ? groups.length - 1 : at
}

/** Litres where it has any; of two groups without, the heavier comes first. */
const sizeOf = ({ litres, massKg, count }: Item) => count * (litres + massKg / 1000)
