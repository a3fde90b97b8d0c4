// The stretches between sources of the open trip, step by step: up to a dozen reckonings, which on a long trip would
// hold up the typing. Whoever asks decides when each step is made, and may stop.

import type { Plan } from '../plan'
import { type DryStretchesSoFar, dryStretchSteps as engineSteps, reckon } from '../reckon'
import { state } from './start'

export interface DryStretches extends DryStretchesSoFar {
  /** The plan they are reckoned for. */
  plan: Plan
  /** Null: nothing in the gear holds water. */
  capacityLitres: number | null
}

/** What is known at once, then after each reckoning; nothing while no trip is open, or the open one does not settle. */
export function* dryStretchSteps(): Generator<DryStretches, void> {
  const open = state.reckoned.peek()
  if (!open?.reckoned.ok) return
  const { plan, reckoned } = open
  const { reckoning } = reckoned
  const capacityLitres = reckoning.need.waterCapacityLitres
  for (const soFar of engineSteps(reckon, { plan, reckoning })) yield { ...soFar, plan, capacityLitres }
}
