// The share of body mass that a hiker wants to carry at most, as an input of a reason.

import { defaults } from '../../plan'
import { originOf } from './origins'
import type { WhyContext, WhyInput } from './types'

export function shareLimit({ plan: { carrier }, shown }: WhyContext): WhyInput {
  const { loadShareLimit: value, ageYears } = carrier
  const usual = defaults.loadShareLimitFor(ageYears)
  return {
    label: 'Your limit',
    value: shown.percent(value),
    from: originOf(value, usual, defaults.DEFAULT_ORIGINS.loadShareLimit),
    path: 'carrier/loadShareLimit',
  }
}
