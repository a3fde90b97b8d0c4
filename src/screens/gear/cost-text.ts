// What leaving a thing at home would change, or taking along one that is at home.

import type { Effect } from '../../reckon'
import { changeOf, changeText, type Formats } from '../../report'

/** "−0.9 kg, −9.1 L", "+0.9 kg, +9.1 L if taken along" */
export function costText(cost: Effect, formats: Formats): string {
  const change = changeOf(cost)
  if (!change) return 'Cannot be told: the rations rest on it'
  const text = changeText(change, formats)
  if (cost.atHome) return text ? `${text} if taken along` : 'Changes nothing'
  return text || 'Changes nothing'
}
