// The value of any field in words: in previews of what would change, and where a trip and the shelf differ.

import { choiceWord, type FieldRow } from '../plan'
import { formatQuantity, type Quantity, type System } from '../units'
import { formatsIn } from './formats'

/** "250 g", "strapped on", "none"; null where a row of this kind has no words of its own. */
export function valueText(row: FieldRow | undefined, stored: unknown, system: System): string | null {
  const value = stored ?? (row?.tacit || row?.usual === '' ? undefined : row?.usual)
  if (value === undefined) return row?.as === 'truth' && !row.depends ? 'not said' : 'none'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return row?.as === 'choice' ? choiceWord(row, value) : value
  return typeof value === 'number' && row?.as === 'amount' ? amountText(row.kind, value, system) : null
}

function amountText(kind: Quantity, value: number, system: System): string {
  const formats = formatsIn(system)
  switch (kind) {
    case 'mass':
      return formats.gear(value)
    case 'volume':
      return formatQuantity('volume', value, { system, unit: 'L', digits: 2 })
    case 'length':
      return formats.cm(value)
    case 'share':
      return formats.percent(value)
    case 'count':
      return String(value)
    default:
      return formatQuantity(kind, value, { system, digits: 0 })
  }
}
