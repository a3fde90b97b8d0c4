// What each thing of the open trip costs, an item a step: each is a reckoning, and together they would hold up the typing.

import type { Plan } from '../plan'
import { type Effect, effectSteps, type Reckoned } from '../reckon'

/** In the list's order; nothing for a trip that does not settle. */
export function* openEffects({
  listed,
  reckoned,
}: {
  listed: Plan
  reckoned: Reckoned
}): Generator<Effect, void> {
  if (reckoned.ok) yield* effectSteps(listed, reckoned.reckoning)
}
