// The Monte Carlo cross-check of a whole plan.

import type { Plan } from '../plan/types'
import { type Reckoned, reckon } from './reckon'
import { type Simulation, type SimulationOptions, simulate } from './simulation'

/**
 * The litres of the fullest moment by `runs` trials instead of the formula, with how far the formula lies off; the same
 * for the same `seed`. Throws RangeError for runs outside 2 to 1,000,000.
 */
export function simulateNeed(
  plan: Plan,
  options: SimulationOptions,
): { ok: true; simulation: Simulation } | Extract<Reckoned, { ok: false }> {
  const reckoned = reckon(plan)
  return reckoned.ok ? { ok: true, simulation: simulate(plan, reckoned.reckoning, options) } : reckoned
}
