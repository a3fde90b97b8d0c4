// After the trip: the ration that was really eaten, by what came home.

import type { Plan } from '../../plan'
import { type Reckoning, stowsOf, usedFrom } from '../../reckon'
import type { Formats } from '../formats'

export interface OwnRation {
  /** A full day's food as the list has it, and as it was really eaten, kg. */
  listedKg: number
  ownKg: number
  /** Full rations that the plan eats, and what it packs and buys for them with all that is spare, kg. */
  rations: number
  packedKg: number
  overKg: number
}

/** Null where the list has no food, nothing of it is eaten, or more came home than was packed. `reckoning` must be what `reckon(plan)` gave. */
export function ownRation(plan: Plan, reckoning: Reckoning, overKg: number): OwnRation | null {
  const { stops } = plan.trip
  const gear = plan.gear.filter(({ atHome }) => !atHome)
  const stowOf = stowsOf(gear)
  // What is worn is no part of the load that the food is counted in.
  const food = gear.filter(item => item.use === 'daily' && stowOf(item) !== 'worn')
  const listedKg = food.reduce((sum, { massKg, count }) => sum + massKg * count, 0)
  const borders = stops.flatMap(({ resupply }, i) =>
    i === 0 || i === stops.length - 1 || resupply ? [i] : [],
  )
  const eatenKg = borders.slice(1).reduce((sum, to, i) => {
    const used = usedFrom(plan, reckoning, { use: 'daily', from: borders[i]!, to })
    return sum + (used.at(-1)?.amount ?? 0)
  }, 0)
  const packedKg = eatenKg + reckoning.moments.at(-1)!.kg.daily
  const rations = listedKg > 0 ? eatenKg / listedKg : 0
  if (rations === 0 || overKg >= packedKg) return null
  return { listedKg, ownKg: (packedKg - overKg) / rations, rations, packedKg, overKg }
}

export const ownRationText = ({ ownKg, listedKg }: OwnRation, { gear }: Formats): string =>
  gear(ownKg) === gear(listedKg)
    ? `You ate what the list says: ${gear(listedKg)} a day.`
    : `You ate about ${gear(ownKg)} a day; the list says ${gear(listedKg)}.`

export const ownRationLines = (
  { packedKg, overKg, rations, listedKg, ownKg }: OwnRation,
  { kg, gear }: Formats,
): { label: string; value: string }[] => [
  { label: 'Packed and bought, as planned', value: kg(packedKg) },
  { label: 'Left over', value: kg(overKg) },
  { label: 'Full days of food, as planned', value: rations.toFixed(1) },
  { label: 'A day by the list', value: gear(listedKg) },
  { label: 'A day as eaten', value: gear(ownKg) },
]
