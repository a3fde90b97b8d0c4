// What each thing costs: the need with it against the need without it, each reckoned in full, since uncertainties, the
// room for water and what spills from containers all move with it.

import type { Plan } from '../plan/types'
import { withFactorHeld } from './held-factor'
import { reckon } from './reckon'
import type { Need, Reckoning } from './types'

const FIGURES = ['bodyLitres', 'bodyLitresSafe', 'peakLoadKg', 'peakLoadFullWaterKg'] as const
type Figure = (typeof FIGURES)[number]

/**
 * The need without an item minus the need with it; of one at home the need with it minus the need without it. Litres and
 * kg; null where one of the two would be refused.
 */
export interface Effect extends Record<Figure, number | null> {
  id: string
  atHome: boolean
}

/** One for each item, in the plan's order. `reckoning` must be what `reckon(plan)` gave. */
export const effectsOf = (plan: Plan, reckoning: Reckoning): Effect[] => [...effectSteps(plan, reckoning)]

/** As {@link effectsOf}, an item a step: each is a whole reckoning. */
export function* effectSteps(plan: Plan, reckoning: Reckoning): Generator<Effect, void> {
  const held = withFactorHeld(plan, reckoning)
  const now = needIn(held)
  for (const { id, atHome } of plan.gear) {
    const gear = held.gear.map(item => (item.id === id ? { ...item, atHome: !atHome } : item))
    const changed = needIn({ ...held, gear })
    const differences = FIGURES.map(figure => [figure, now && changed ? changed[figure] - now[figure] : null])
    yield { id, atHome, ...(Object.fromEntries(differences) as Record<Figure, number | null>) }
  }
}

function needIn(plan: Plan): Need | null {
  const reckoned = reckon(plan)
  return reckoned.ok ? reckoned.reckoning.need : null
}
