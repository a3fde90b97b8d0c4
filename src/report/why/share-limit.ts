// The share of body mass that a hiker wants to carry at most, as an input of a reason.

import { defaults, FIELDS } from '../../plan'
import { capital } from '../../units'
import { percentOver } from '../formats'
import { shareLimitName } from '../limit-names'
import { originOf } from './origins'
import type { PlanContext, WhyInput } from './types'

/** The share at which common practice stops, where the load is over it. */
export function commonShare({ reckoning, formats }: PlanContext): WhyInput[] {
  return reckoning.notices.flatMap(notice =>
    notice.code === 'load-over-common-practice'
      ? [
          {
            label: 'Common practice stops at',
            value: `${formats.percent(notice.limit)}; with the lightest pack it is ${percentOver(notice.share, notice.limit, formats)}`,
            from: defaults.PRACTICE,
          },
        ]
      : [],
  )
}

export function shareLimit({ plan, formats }: PlanContext): WhyInput {
  const { carrier } = plan
  const { loadShareLimit: value, ageYears } = carrier
  const usual = defaults.loadShareLimitFor(ageYears)
  return {
    label: capital(shareLimitName(plan)),
    value: formats.percent(value),
    from: originOf(value, { ...FIELDS.carrier.loadShareLimit, usual }),
    path: 'carrier/loadShareLimit',
  }
}
