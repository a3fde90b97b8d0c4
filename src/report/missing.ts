// The things whose litres or mass nobody has said: the plan counts them as nothing, so what it comes to is a lower bound
// and no chance can be told of it.

import { type LeftOut, type Plan, pathParts } from '../plan'

export interface MissingThing {
  name: string
  /** The field that would mend it. */
  path: string
}

export interface Missing {
  litres: MissingThing[]
  mass: MissingThing[]
}

export const NOTHING_MISSING: Missing = { litres: [], mass: [] }

/** `leftOut` must be what settling gave with this plan. */
export function missingOf({ plan, leftOut }: { plan: Plan; leftOut: readonly LeftOut[] }): Missing {
  const without = (field: 'litres' | 'massKg') =>
    leftOut.flatMap(({ path, what }) => {
      const [area, id, at] = pathParts(path)
      if (area !== 'gear' || at !== field) return []
      // A text that cannot be read beside litres by kind leaves those standing.
      const counted = plan.gear.find(item => item.id === id)?.[field] ?? 0
      return counted > 0 ? [] : [{ name: what, path }]
    })
  return { litres: without('litres'), mass: without('massKg') }
}

/** "3 things without litres"; empty where there are none. */
export function withoutText(missing: Missing, of: keyof Missing): string {
  const count = missing[of].length
  if (count === 0) return ''
  return `${count} ${count === 1 ? 'thing' : 'things'} without ${of === 'litres' ? 'litres' : 'a mass'}`
}

/** "is" or "are", for what {@link withoutText} says. */
export const verbFor = (missing: Missing, of: keyof Missing) => (missing[of].length === 1 ? 'is' : 'are')
