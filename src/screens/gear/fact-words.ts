// The facts of an item in words, as they are told where a trip and the shelf differ.

import { choiceWord, type DraftItem, FIELDS, type FieldRow, fieldWord } from '../../plan'
import type { OfferedField, ThingFacts } from '../../plan/shelf'
import { formatsIn } from '../../report'
import { formatQuantity, type Quantity, type System } from '../../units'
import { rangeOf } from './kind-words'

/** What only the app knows has none. */
const rowOf = (field: keyof ThingFacts): FieldRow | undefined =>
  (FIELDS.item as Readonly<Record<string, FieldRow>>)[field]

/** "mass", "place" */
export const factWord = (field: keyof ThingFacts): string => rowOf(field)?.told ?? fieldWord(field)

/** "250 g", "strapped on", "none" */
export function factText(field: keyof ThingFacts, stored: unknown, system: System): string {
  const row = rowOf(field)
  const value = stored ?? (row?.tacit || row?.usual === '' ? undefined : row?.usual)
  if (value === undefined) return row?.as === 'truth' && !row.depends ? 'not said' : 'none'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return row?.as === 'choice' ? choiceWord(row, value) : value
  if (field === 'litresRange') {
    const { low = 0, high = 0 } = value as NonNullable<DraftItem['litresRange']>
    return rangeOf({ low, high }, system)
  }
  if (typeof value !== 'number' || row?.as !== 'amount') return 'worked out from its use'
  return amountText(row.kind, value, system)
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

/** What counts the same is no difference worth a word: one, and nothing said of how many. */
export function saidFields(fields: readonly OfferedField[], system: System): OfferedField[] {
  return fields.filter(({ field, from, to }) => factText(field, from, system) !== factText(field, to, system))
}
