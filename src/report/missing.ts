// The things whose litres or mass nobody has said: the plan counts them as nothing, so what it comes to is a lower bound
// and no chance can be told of it.

import { fieldPath, itemName, type Plan } from '../plan'
import { counted } from '../units'

export interface MissingThing {
  name: string
  /** The field that would mend it. */
  path: string
}

export interface Missing {
  litres: MissingThing[]
  mass: MissingThing[]
}

export function missingOf({ gear }: Pick<Plan, 'gear'>): Missing {
  const without = (field: 'litres' | 'massKg') =>
    gear.flatMap(({ id, name, unknownUpTo }): MissingThing[] =>
      unknownUpTo && unknownUpTo[field] !== null
        ? [{ name: itemName({ name }), path: fieldPath('gear', id, field) }]
        : [],
    )
  return { litres: without('litres'), mass: without('massKg') }
}

/** "3 things without litres"; empty where there are none. */
export function withoutText(missing: Missing, of: keyof Missing): string {
  const count = missing[of].length
  if (count === 0) return ''
  return `${counted(count, 'thing')} without ${of === 'litres' ? 'litres' : 'a mass'}`
}

/** "is" or "are", for what {@link withoutText} says. */
export const verbFor = (missing: Missing, of: keyof Missing) => (missing[of].length === 1 ? 'is' : 'are')

/** Nothing is taken: no figure of such a trip is an answer. */
export const takesNothing = ({ gear }: Pick<Plan, 'gear'>): boolean => gear.every(({ count }) => count === 0)
