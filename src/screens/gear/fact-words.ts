// The facts of an item in words, as they are told where a trip and the shelf differ.

import { rangeOf } from '../../components/item-words'
import { type DraftItem, FIELDS, type FieldRow, fieldWord } from '../../plan'
import type { OfferedField, ThingFacts } from '../../plan/shelf'
import { valueText } from '../../report'
import type { System } from '../../units'

/** What only the app knows has none. */
const rowOf = (field: keyof ThingFacts): FieldRow | undefined =>
  (FIELDS.item as Readonly<Record<string, FieldRow>>)[field]

/** "mass", "place" */
export const factWord = (field: keyof ThingFacts): string => rowOf(field)?.told ?? fieldWord(field)

/** "250 g", "strapped on", "none" */
export function factText(field: keyof ThingFacts, stored: unknown, system: System): string {
  if (field === 'litresRange' && stored !== undefined) {
    const { low = 0, high = 0 } = stored as NonNullable<DraftItem['litresRange']>
    return rangeOf({ low, high }, system)
  }
  return valueText(rowOf(field), stored, system) ?? 'worked out from its use'
}

/** What counts the same is no difference worth a word: one, and nothing said of how many. */
export function saidFields(fields: readonly OfferedField[], system: System): OfferedField[] {
  return fields.filter(({ field, from, to }) => factText(field, from, system) !== factText(field, to, system))
}
