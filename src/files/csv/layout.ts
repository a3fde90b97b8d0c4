// How a table is to be read: which row names the columns, what each holds and in which unit, the decimal mark.

import type { Unit } from '../../units'
import type { Catalogue } from './catalogue'
import type { Decimal } from './decimal'
import { readHeading } from './headings'

export interface Column<F extends string> {
  /** null: left out. */
  field: F | null
  /** Of bare numbers; null: the usual one of the field. */
  unit: Unit | null
}

export interface Layout<F extends string> {
  /** The index of the row that names the columns; null where none does. */
  headerRow: number | null
  columns: Column<F>[]
  decimal: Decimal
}

/** A cell of figures is no heading; "3D back" is. */
const FIGURE = /^[~≈]?[\d.,]+\s*(?:%|\p{Sc}|k?g|oz|lbs?|m?l|cm|in)?$/iu

const HEADER_WITHIN = 10
const SAMPLE = 300

/** The first rows below the one that names the columns. */
export const sampleOf = (rows: readonly string[][], headerRow: number | null): string[][] =>
  rows
    .slice(headerRow === null ? 0 : headerRow + 1)
    .filter(isFilled)
    .slice(0, SAMPLE)

export const widthOf = (rows: readonly string[][]): number =>
  rows.reduce((most, row) => Math.max(most, row.length), 0)

/** What the headings say of each column; a field is read from the first that names it. */
export function namedColumns<F extends string>(
  headings: readonly string[],
  width: number,
  catalogue: Catalogue<F>,
): Column<F>[] {
  const taken = new Set<F>()
  return Array.from({ length: width }, (_, i) => {
    const { field, unit } = readHeading(headings[i] ?? '', catalogue)
    if (!field || taken.has(field)) return { field: null, unit: null }
    taken.add(field)
    return { field, unit }
  })
}

/**
 * The first row of words among which two are known, or one with figures below it. Cells of figures are no
 * names of columns, and one cell alone is a title.
 */
export function guessHeaderRow<F extends string>(
  rows: readonly string[][],
  catalogue: Catalogue<F>,
): number | null {
  const width = widthOf(rows)
  const at = rows.slice(0, HEADER_WITHIN).findIndex((row, i) => {
    const filled = row.map(cell => cell.trim()).filter(Boolean)
    if (filled.length < Math.min(2, width) || filled.some(cell => FIGURE.test(cell))) return false
    const named = filled.filter(cell => readHeading(cell, catalogue).field !== null).length
    if (named >= Math.min(2, filled.length)) return named > 0
    return (
      named > 0 &&
      rows.slice(i + 1, i + 1 + HEADER_WITHIN).some(below => below.some(cell => /^\s*\d/.test(cell)))
    )
  })
  return at < 0 ? null : at
}

export const isFilled = (row: readonly string[]): boolean => row.some(cell => cell.trim() !== '')

/** Exports of several pages name the columns again on each. */
export const isSameRow = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((cell, i) => cell === b[i])
