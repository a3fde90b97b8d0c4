// The value of an equation that is asked about a plan: the plan's limits hold its inputs inside the equation's ranges.

import type { Outcome } from '../equations'

/** Throws RangeError, naming the field, where the equation refuses after all. */
export function given<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new RangeError(`${outcome.field} is ${outcome.got}`)
  return outcome.value
}
