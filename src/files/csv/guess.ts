// What a table means, before anybody has said so: which row names the columns, what each holds and in which unit, the
// decimal mark, and whether rows of a name alone are headings. All of it may be changed.

import type { System, Unit } from '../../units'
import { type Decimal, guessDecimal } from './decimal'
import { amountOf, FIELDS, type FieldName, usualUnit } from './fields'
import type { Grid } from './grid'
import { readHeading } from './headings'
import { inferColumns, traitsOf } from './infer-columns'

export type Target = 'trip' | 'shelf'

export interface Column {
  /** null: left out. */
  field: FieldName | null
  /** Of bare numbers; null: the usual one of the field. */
  unit: Unit | null
}

export interface Layout {
  /** The index of the row that names the columns; null where none does. */
  headerRow: number | null
  columns: Column[]
  decimal: Decimal
  /** Whether a row with nothing but a name is the heading of a group. */
  headings: boolean
}

export interface GuessOptions {
  target: Target
  system: System
  /** Where the reader has said which row names the columns. */
  headerRow?: number | null
}

const HEADER_WITHIN = 10
const SAMPLE = 300

/** A layout for the table. Pure; takes every table that could be read. */
export function guessLayout({ rows, separator }: Grid, options: GuessOptions): Layout {
  const { target, system } = options
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0)
  const headerRow = options.headerRow === undefined ? guessHeaderRow(rows, width) : options.headerRow
  const body = rows
    .slice(headerRow === null ? 0 : headerRow + 1)
    .filter(isFilled)
    .slice(0, SAMPLE)
  const named = headerRow === null ? [] : (rows[headerRow] ?? []).map(readHeading)
  const taken = new Set<FieldName>()
  const columns = Array.from({ length: width }, (_, i): Column => {
    const { field, unit } = named[i] ?? { field: null, unit: null }
    if (!field || taken.has(field) || (FIELDS[field].shelf && target !== 'shelf'))
      return { field: null, unit: null }
    taken.add(field)
    return { field, unit }
  })
  // The mass of one piece makes that of all needless; so does energy by mass that of a piece.
  drop(columns, taken, 'massOfAll', 'mass')
  drop(columns, taken, 'kcalEach', 'kcal')
  const cellsOf = (i: number) => body.map(row => row[i]?.trim() ?? '')
  fillByLooks(columns, taken, { cellsOf, headed: headerRow !== null && taken.has('name') })
  const numbers = columns.flatMap(({ field }, i) => (field && amountOf(field) ? cellsOf(i) : []))
  return {
    headerRow,
    columns: columns.map(({ field, unit }) => ({ field, unit: unit ?? usualUnit(field, system) })),
    decimal: guessDecimal(numbers, separator),
    headings: !taken.has('group') && headingsAmong(body, columns),
  }
}

function drop(columns: Column[], taken: Set<FieldName>, field: FieldName, because: FieldName) {
  if (!taken.has(because)) return
  const at = columns.findIndex(column => column.field === field)
  if (at < 0) return
  columns[at] = { field: null, unit: null }
  taken.delete(field)
}

interface Body {
  cellsOf: (column: number) => string[]
  headed: boolean
}

function fillByLooks(columns: Column[], taken: Set<FieldName>, { cellsOf, headed }: Body) {
  const open = columns.flatMap(({ field }, i) => (field === null ? [i] : []))
  const fields = inferColumns(
    open.map(i => traitsOf(cellsOf(i))),
    taken,
    { headed },
  )
  open.forEach((at, i) => {
    const field = fields[i] ?? null
    columns[at] = { field, unit: null }
    if (field) taken.add(field)
  })
}

/**
 * The first row of words among which two are known, or one with figures below it. Cells that begin with a digit are no
 * names of columns, and one cell alone is a title.
 */
function guessHeaderRow(rows: readonly string[][], width: number): number | null {
  const at = rows.slice(0, HEADER_WITHIN).findIndex((row, i) => {
    const filled = row.map(cell => cell.trim()).filter(Boolean)
    if (filled.length < Math.min(2, width) || filled.some(cell => /^[\d.,]+/.test(cell))) return false
    const named = filled.filter(cell => readHeading(cell).field !== null).length
    if (named >= Math.min(2, filled.length)) return named > 0
    return (
      named > 0 &&
      rows.slice(i + 1, i + 1 + HEADER_WITHIN).some(below => below.some(cell => /^\s*\d/.test(cell)))
    )
  })
  return at < 0 ? null : at
}

export const isFilled = (row: readonly string[]): boolean => row.some(cell => cell.trim() !== '')

/** Whether rows of a name alone begin the table and each is followed by one that has more, as headings are. */
function headingsAmong(body: readonly string[][], columns: readonly Column[]): boolean {
  const name = columns.findIndex(({ field }) => field === 'name')
  const lone = body.map(row => isLone(row, name))
  return columns.length > 1 && lone[0] === true && lone.every((is, i) => !is || lone[i + 1] === false)
}

/** Whether a row holds nothing but its name. */
export const isLone = (row: readonly string[], name: number): boolean =>
  row.every((cell, i) => (cell.trim() !== '') === (i === name))
