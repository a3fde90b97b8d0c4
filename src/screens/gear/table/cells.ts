// What stands in a cell while it is not edited.

import { rangeOf, USES } from '../../../components/item-words'
import { choiceWord, type DraftItem, defaults, FIELDS, type FieldRow } from '../../../plan'
import { valueText } from '../../../report'
import { capital, type System } from '../../../units'
import type { CellField } from './columns'

export interface CellText {
  text: string
  /** Nobody said so: it is what counts until somebody does. */
  isUsual?: boolean
  /** It follows from something else, and is changed in the item’s editor. */
  isLocked?: boolean
}

export const rowOf = (field: CellField): FieldRow => FIELDS.item[field]

/** What is left to say of a field nobody has filled. */
const NOTHING: Partial<Record<CellField, string>> = { massKg: 'no mass', litres: 'no litres', group: '–' }

export function cellText(item: DraftItem, field: CellField, system: System): CellText {
  const { litresRange, use = defaults.ITEM.use } = item
  if (field === 'massKg' && item.fuel) return { text: 'from its use', isLocked: true }
  if (field === 'litres' && litresRange) {
    const { low = 0, high = 0 } = litresRange
    return { text: `${rangeOf({ low, high }, system)} by kind`, isLocked: true }
  }
  if (field === 'litresFrom' && litresRange)
    return { text: capital(choiceWord(FIELDS.item.litresFrom, 'kind')), isLocked: true }
  const row = rowOf(field)
  const value = item[field] ?? usualOf(item, field)
  const isUsual = item[field] === undefined
  if (value === undefined || value === '') return { text: NOTHING[field] ?? '', isUsual: true }
  if (row.as === 'choice') return { text: capital(choiceWord(row, String(value))), isUsual }
  const per = field === 'massKg' ? USES[use] : ''
  return { text: [valueText(row, value, system), per].filter(Boolean).join(' '), isUsual }
}

/** What counts while nothing is said. */
export function usualOf(item: DraftItem, field: CellField): string | number | undefined {
  if (field === 'build' && item.holdsLitres !== undefined) return 'rigid'
  const { usual } = rowOf(field)
  return typeof usual === 'string' || typeof usual === 'number' ? usual : undefined
}

/** What the items are sorted by: undefined where it is not known, which comes last. */
export function sortValue(item: DraftItem, field: CellField): number | string | undefined {
  if (field === 'litres' && item.litresRange) return item.litresRange.typical
  const row = rowOf(field)
  const value = item[field] ?? usualOf(item, field)
  if (row.as === 'choice') return Object.keys(row.choices).indexOf(String(value))
  return typeof value === 'number' || (typeof value === 'string' && value !== '') ? value : undefined
}
