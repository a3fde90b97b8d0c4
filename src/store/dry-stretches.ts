// The stretches between sources of the open trip, step by step: up to a dozen reckonings, which on a long trip would
// hold up the typing. Whoever asks decides when each step is made, and may stop.

import type { Plan } from '../plan'
import { type DryStretchesSoFar, dryStretchSteps, type Reckoned, reckon } from '../reckon'

export interface DryStretches extends DryStretchesSoFar {
  /** The plan they are reckoned for. */
  plan: Plan
  /** Null: nothing in the gear holds water. */
  capacityLitres: number | null
}

/** What is known at once, then after each reckoning; nothing for a trip that does not settle. */
export function* openDryStretches({
  plan,
  reckoned,
}: {
  plan: Plan
  reckoned: Reckoned
}): Generator<DryStretches, void> {
  if (!reckoned.ok) return
  const { reckoning } = reckoned
  const capacityLitres = reckoning.need.waterCapacityLitres
  for (const soFar of dryStretchSteps(reckon, { plan, reckoning })) yield { ...soFar, plan, capacityLitres }
}
