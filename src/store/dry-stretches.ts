// The stretches between sources of the open trip. Up to a dozen reckonings: nothing is computed before it is read, and
// a reader who subscribes would pay for every keystroke, so `peek()` at it when the typing has stopped.

import { computed, type ReadonlySignal } from '@preact/signals'
import type { Plan } from '../plan'
import { type DryStretch, dryStretchesOf } from '../reckon'
import { state } from './start'

export interface DryStretches {
  /** The plan they were reckoned for. */
  plan: Plan
  stretches: DryStretch[]
}

/** Null while no trip is open, or the open one does not settle. */
export const dryStretches: ReadonlySignal<DryStretches | null> = computed(() => {
  const open = state.reckoned.value
  if (!open?.reckoned.ok) return null
  const { plan, reckoned } = open
  return { plan, stretches: dryStretchesOf(plan, reckoned.reckoning) }
})
