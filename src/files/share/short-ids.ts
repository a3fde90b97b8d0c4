// Items and people under short ids: those of the app are chance, which no packing makes smaller, and say nothing to a
// reader.

import type { WrittenPlan } from '../../plan'

/** The same plan with its items and people named by their place in the list. */
export function withShortIds(document: WrittenPlan): WrittenPlan {
  const { gear, people, split, packings } = document
  const shortIn = (list: readonly { id: string }[] = []) => {
    const short = new Map(list.map(({ id }, i) => [id, i.toString(36)]))
    return (id: string) => short.get(id) ?? id
  }
  const item = shortIn(gear)
  const person = shortIn(people)
  return {
    ...document,
    ...(people && { people: people.map(each => ({ ...each, id: person(each.id) })) }),
    ...(split?.by !== undefined && { split: { by: person(split.by) } }),
    ...(packings && {
      packings: packings.map(each =>
        each.person === undefined ? each : { ...each, person: person(each.person) },
      ),
    }),
    ...(gear && {
      gear: gear.map(each => ({
        ...each,
        id: item(each.id),
        ...(each.inside !== undefined && { inside: item(each.inside) }),
        ...(each.owner !== undefined && { owner: person(each.owner) }),
        ...(each.carriedBy !== undefined && { carriedBy: person(each.carriedBy) }),
      })),
    }),
  }
}
