// The columns that tables of one kind may hold: read by the guess, the reader, the writer and the screen alike.

import type { FieldRow } from '../../plan'
import { bareUnitOf, type System, type Unit } from '../../units'
import type { Decimal } from './decimal'

export type CellValue = string | number | boolean
/** `why`: half a sentence, no capital, no full stop. */
export type CellRead = { value: CellValue | null } | { why: string }

export interface Field {
  label: string
  reading: FieldRow | { as: 'unit' }
  /** Where it stands in what a row becomes. Without it, the field is read and never written. */
  path?: readonly [string, string?]
  /** Headings that mean it, besides its label. */
  heading?: RegExp
  /** Of bare numbers, where it is not the usual one. */
  unit?: Unit
  /** Reads a cell of it, where words of a choice or a number alone are too narrow. */
  read?: (line: string, decimal: Decimal) => CellRead
  /** Only the shelf keeps it. */
  shelf?: true
}

export interface Catalogue<F extends string> {
  fields: Readonly<Record<F, Field>>
  /** In the order in which a heading is held against them: the narrower ones first. */
  narrowFirst: readonly F[]
  /** The field that a unit alone as a heading stands for. */
  ofUnit: (word: string) => F | null
  /** Headings of what belongs to a part alone: no field. */
  ofParts?: RegExp
  /** Headings of what is reckoned from other columns: no field. */
  reckoned?: RegExp
}

/** Whether a column of amounts may have a unit, and then of which kind. */
export const amountIn = ({ reading }: Field) => (reading.as === 'amount' ? reading : null)

/** The unit of bare numbers in a field, where nothing names one. */
export function unitIn(field: Field, system: System): Unit | null {
  const amount = amountIn(field)
  return amount ? (field.unit ?? bareUnitOf(amount.kind, system, amount.fine)) : null
}
