// The things whose litres or mass nobody has said: the plan counts them as nothing, so what it comes to is a lower bound
// and no chance can be told of it.

import { fieldPath, itemName, type Plan } from '../plan'
import type { Answer } from '../reckon'
import { counted } from '../units'
import { chanceText } from './formats'

export interface MissingThing {
  name: string
  /** The field that would mend it. */
  path: string
}

export interface Missing {
  litres: MissingThing[]
  mass: MissingThing[]
  /** Nothing is taken at all. */
  gear: boolean
}

export type Figure = 'litres' | 'mass'

const KNOWN = new WeakMap<Plan['gear'], Missing>()

/** Worked out once a list: every set-up asks. */
export function missingOf({ gear }: Pick<Plan, 'gear'>): Missing {
  const known = KNOWN.get(gear)
  if (known) return known
  const without = (field: 'litres' | 'massKg') =>
    gear.flatMap(({ id, name, unknownUpTo }): MissingThing[] =>
      unknownUpTo && unknownUpTo[field] !== null
        ? [{ name: itemName({ name }), path: fieldPath('gear', id, field) }]
        : [],
    )
  const missing = { litres: without('litres'), mass: without('massKg'), gear: takesNothing({ gear }) }
  KNOWN.set(gear, missing)
  return missing
}

/** "3 things without litres"; empty where there are none. */
export function withoutText(missing: Missing, of: Figure): string {
  const count = missing[of].length
  if (count === 0) return ''
  return `${counted(count, 'item')} without ${of === 'litres' ? 'litres' : 'a mass'}`
}

/** "3 things without litres are not in it"; empty where there are none. */
export function notInItText(missing: Missing, of: Figure): string {
  const without = withoutText(missing, of)
  return without && `${without} ${missing[of].length === 1 ? 'is' : 'are'} not in it`
}

/** A figure that what is missing can only raise: "at least 12 L". */
export const leastText = (missing: Missing, of: Figure, text: string): string =>
  missing[of].length > 0 ? `at least ${text}` : text

/**
 * "about 9 chances in 10", of a chance from 0 to 1; null where none can be told, because there is no gear, because
 * things have no litres or because it is open whether the set-up does. `answer`: of the set-up; left out for one that is not judged yet.
 */
export const toldChance = (
  chance: number,
  { missing, answer }: { missing: Missing; answer?: Answer },
): string | null =>
  answer === 'cannot-tell' || missing.gear || missing.litres.length > 0 ? null : chanceText(chance)

/** Nothing is taken: no figure of such a trip is an answer. */
export const takesNothing = ({ gear }: Pick<Plan, 'gear'>): boolean => gear.every(({ count }) => count === 0)
