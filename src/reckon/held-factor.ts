// Differences between two plans hold the hiker's own packing factor: what was packed before bears on a list of things,
// and would move the factor with the list.

import type { Plan } from '../plan/types'
import type { Reckoning } from './types'

/** The plan without packings and packs, and with the factor that was reckoned as its own. */
export const withFactorHeld = (plan: Plan, { need }: Reckoning): Plan => ({
  ...plan,
  packs: [],
  packings: [],
  settings: { ...plan.settings, personalFactor: need.factor },
})
