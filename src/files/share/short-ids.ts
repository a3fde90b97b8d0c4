// Items under short ids: those of the app are chance, which no packing makes smaller, and say nothing to a reader.

import type { PlanDocument } from '../../plan'

/** The same plan with its items named by their place in the list. */
export function withShortIds(document: PlanDocument): PlanDocument {
  const { gear } = document
  if (!gear) return document
  const short = new Map(gear.map(({ id }, i) => [id, i.toString(36)]))
  return {
    ...document,
    gear: gear.map(item => ({
      ...item,
      id: short.get(item.id) ?? item.id,
      ...(item.inside === undefined ? {} : { inside: short.get(item.inside) ?? item.inside }),
    })),
  }
}
