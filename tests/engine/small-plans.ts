// Small plans by hand for the tests: two stops and a leg, and what is asked for besides.

import type { ItemDocument, PackDocument, Plan, PlanDocument, StopDocument } from '../../src/plan'
import { type Reckoned, type Reckoning, reckon } from '../../src/reckon'
import { planOf } from './plans'

export interface Small {
  carrier?: Partial<PlanDocument['carrier']>
  stops?: StopDocument[]
  water?: NonNullable<PlanDocument['trip']['water']>
  meals?: NonNullable<PlanDocument['trip']['meals']>
  weather?: NonNullable<PlanDocument['trip']['weather']>
  wet?: boolean
  gear?: ItemDocument[]
  packs?: PackDocument[]
  settings?: NonNullable<PlanDocument['settings']>
}

const twoStops: StopDocument[] = [{ name: 'Start' }, { name: 'End', leg: { km: 4 } }]
export const noWater = { litresPerHour: 0, campLitres: 0, reserveLitres: 0 }

/**
 * A day with food to carry, then a long dry one: with the litre that {@link hungryAndDry} holds the start is heaviest,
 * with all the water wanted the spring is.
 */
export const dryAfterSpring: StopDocument[] = [
  { name: 'Start', water: 'sure' },
  { name: 'Spring', water: 'sure', nights: 1, leg: { km: 4, hours: 1 } },
  { name: 'End', leg: { km: 24, hours: 7 } },
]
export const hungryAndDry: ItemDocument[] = [
  { id: 'kit', name: 'Kit', massKg: 1, litres: 4, massFrom: 'scale' },
  { id: 'bottle', name: 'Bottle', massKg: 0.1, litres: 1, massFrom: 'scale', holdsWaterLitres: 1 },
  { id: 'food', name: 'Food', massKg: 1, litres: 2, use: 'daily' },
]

export function documentOf({
  carrier,
  stops,
  water,
  meals,
  weather,
  wet,
  gear,
  packs,
  settings,
}: Small): PlanDocument {
  return {
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 70, heightCm: 175, ageYears: 35, sex: 'male', ...carrier },
    trip: {
      stops: stops ?? twoStops,
      water: water ?? {},
      meals: meals ?? {},
      weather: weather ?? {},
      wet: wet ?? true,
    },
    gear: gear ?? [],
    packs: packs ?? [],
    settings: settings ?? {},
  }
}

export const smallPlan = (small: Small): Plan => planOf(documentOf(small))

/** What the engine makes of a plan that is known to settle. */
export function answered(plan: Plan): Extract<Reckoned, { ok: true }> {
  const result = reckon(plan)
  if (!result.ok) throw new Error(result.problem.message)
  return result
}

export const reckoned = (plan: Plan): Reckoning => answered(plan).reckoning

export const reckonSmall = (small: Small): Reckoning => reckoned(smallPlan(small))
