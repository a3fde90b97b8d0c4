// The order of a list that two tabs have changed. Pure.

export interface Versions<T> {
  /** What both were made from. */
  base: T
  ours: T
  theirs: T
}

interface Named {
  id: string
}

/** The ids of both lists: in ours' order where we have moved something, else in theirs, and what only one holds after its neighbour. */
export function mergedOrder({ base, ours, theirs }: Versions<readonly Named[]>): string[] {
  const [lead, follow] = isReordered(base, ours) ? [ours, theirs] : [theirs, ours]
  return withMissing(
    lead.map(({ id }) => id),
    follow.map(({ id }) => id),
  )
}

/** Whether what both still hold stands in another order. */
function isReordered(base: readonly Named[], ours: readonly Named[]): boolean {
  const held = new Set(ours.map(({ id }) => id))
  const kept = base.filter(({ id }) => held.has(id)).map(({ id }) => id)
  const was = new Set(kept)
  const now = ours.filter(({ id }) => was.has(id)).map(({ id }) => id)
  return kept.some((id, i) => id !== now[i])
}

/** An order with what only another one holds put in after its neighbour there; at the end where it has none. */
function withMissing(order: string[], other: string[]): string[] {
  const held = new Set(order)
  if (other.every(id => held.has(id))) return order
  const first: string[] = []
  const after = new Map<string, string[]>()
  let group = first
  for (const id of other) {
    if (!held.has(id)) {
      group.push(id)
      continue
    }
    group = []
    after.set(id, group)
  }
  if (after.size === 0) return [...order, ...first]
  return [...first, ...order.flatMap(id => [id, ...(after.get(id) ?? [])])]
}
