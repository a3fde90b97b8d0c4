// Remedies with the engine at hand; apart from remedies.ts, which the engine's own folder order keeps below it.

import type { Plan } from '../plan/types'
import { reckon } from './reckon'
import { remediesBy } from './remedies'
import type { Remedy } from './remedies-types'
import type { Reckoning } from './types'

/**
 * The smallest changes that make the set-up at `setupIndex` of `reckoning.packs` do and fit nine times in ten, the
 * least inconvenient first; none when it does already, or when nothing helps (then see `shortfallOf`). `reckoning` is what `reckon(plan)` gave.
 * Throws RangeError when there is no such set-up.
 */
export function remediesFor(plan: Plan, reckoning: Reckoning, setupIndex: number): Remedy[] {
  return remediesBy(reckon, { plan, reckoning, setupIndex })
}
