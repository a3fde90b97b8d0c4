// After the trip: the ration that was really eaten, by what came home.

import type { FoodPlanned, Plan } from '../../plan'
import { type Reckoning, sectionsFrom, stowsOf, usedFrom } from '../../reckon'
import type { Formats } from '../formats'

export interface OwnRation {
  /** A full day's food as the list has it, and as it was really eaten, kg. */
  listedKg: number
  ownKg: number
  planned: FoodPlanned
  overKg: number
}

/**
 * Null where the list has no food, nothing of it is eaten, or more came home than was packed. `reckoning` must be what
 * `reckon(plan)` gave. `before`: the food of the plan before a ration was taken on, by which it is then told.
 */
export function ownRation(
  plan: Plan,
  reckoning: Reckoning,
  { overKg, before }: { overKg: number; before?: FoodPlanned | undefined },
): OwnRation | null {
  const gear = plan.gear.filter(({ atHome }) => !atHome)
  const stowOf = stowsOf(gear)
  // What is worn is no part of the load that the food is counted in.
  const food = gear.filter(item => item.use === 'daily' && stowOf(item) !== 'worn')
  const listedKg = food.reduce((sum, { massKg, count }) => sum + massKg * count, 0)
  if (listedKg === 0) return null
  const planned = before ?? plannedFood(plan, reckoning, listedKg)
  const { packedKg, rations } = planned
  if (rations === 0 || overKg >= packedKg) return null
  return { listedKg, ownKg: (packedKg - overKg) / rations, planned, overKg }
}

function plannedFood(plan: Plan, reckoning: Reckoning, listedKg: number): FoodPlanned {
  const eatenKg = sectionsFrom(plan, 0).reduce((sum, section) => {
    const used = usedFrom(plan, reckoning, { use: 'daily', ...section })
    return sum + (used.at(-1)?.amount ?? 0)
  }, 0)
  return { packedKg: eatenKg + reckoning.moments.at(-1)!.kg.daily, rations: eatenKg / listedKg }
}

export const ownRationText = ({ ownKg, listedKg }: OwnRation, { gear }: Formats): string =>
  gear(ownKg) === gear(listedKg)
    ? `You ate what the list says: ${gear(listedKg)} a day.`
    : `You ate about ${gear(ownKg)} a day; the list says ${gear(listedKg)}.`

export const ownRationLines = (
  { planned: { packedKg, rations }, overKg, listedKg, ownKg }: OwnRation,
  { kg, gear }: Formats,
): { label: string; value: string }[] => [
  { label: 'Packed and bought, as planned', value: kg(packedKg) },
  { label: 'Left over', value: kg(overKg) },
  { label: 'Full days of food, as planned', value: rations.toFixed(1) },
  { label: 'A day by the list', value: gear(listedKg) },
  { label: 'A day as eaten', value: gear(ownKg) },
]
