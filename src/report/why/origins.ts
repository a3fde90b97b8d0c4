// Fields as inputs of a reason: what they are called, where they are changed, and where their value comes from, all by
// their rows; a value that differs from the default is the hiker's own.

import { FIELDS } from '../../plan'
import type { PlanContext, WhyInput } from './types'

type Rows = (typeof FIELDS)['settings']

/** Settings with a usual number that says where it comes from. */
type Numeric = {
  [K in keyof Rows]: Rows[K] extends { usual: number; origin: string } ? K : never
}[keyof Rows]

/** With "common practice, no source" while it is as it came; "yours" once it is another. */
export function settingInput(
  { plan }: PlanContext,
  field: Numeric,
  show: (value: number) => string,
): WhyInput {
  const value = plan.settings[field]
  const row: { usual: number; origin: string; label?: string; reason?: string } = FIELDS.settings[field]
  return {
    label: row.reason ?? row.label ?? '',
    value: show(value),
    from: originOf(value, row),
    path: `settings/${field}`,
  }
}

/** The word on where a value comes from. */
export const originOf = (value: number, { usual, origin }: { usual: number; origin: string }): string =>
  value === usual ? origin : 'yours'
