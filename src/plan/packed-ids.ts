// What was packed before is known by the ids of the shelf, which outlast the trip it was packed for; a plan knows the
// items of its own list.

interface Linked {
  id: string
  shelf?: { id: string } | undefined
}

/**
 * The packings with each thing under the id of the item that is the same thing in this list, as far as one is. Whatever
 * is no packing stays as it is, for the schema to say.
 */
export function withItemIds<T>(packings: T, gear: readonly Linked[]): T {
  if (!Array.isArray(packings)) return packings
  const items = new Set(gear.map(({ id }) => id))
  const byLink = new Map(gear.flatMap(({ id, shelf }) => (shelf ? [[shelf.id, id] as const] : [])).reverse())
  return packings.map(packing => {
    const things = (packing as { things?: unknown } | null)?.things
    if (!Array.isArray(things)) return packing
    const taken = new Set(things.map(thing => thing?.id))
    const known = (id: string) => {
      const item = items.has(id) ? undefined : byLink.get(id)
      return item === undefined || taken.has(item) ? id : item
    }
    return { ...packing, things: things.map(thing => (thing ? { ...thing, id: known(thing.id) } : thing)) }
  }) as T
}
