// What a table means, before anybody has said so: which row names the columns, what each holds and in which unit, the
// decimal mark, and whether rows of a name alone are headings. All of it may be changed.

import type { System } from '../../units'
import { guessDecimal } from './decimal'
import { amountOf, FIELDS, type FieldName, GEAR, usualUnit } from './fields'
import type { Grid } from './grid'
import { inferColumns, traitsOf } from './infer-columns'
import { type Column, guessHeaderRow, type Layout, namedColumns, sampleOf, widthOf } from './layout'

export type Target = 'trip' | 'shelf'

export type GearColumn = Column<FieldName>

export interface GearLayout extends Layout<FieldName> {
  /** Whether a row with nothing but a name is the heading of a group. */
  headings: boolean
}

export interface GuessOptions {
  target: Target
  system: System
  /** Where the reader has said which row names the columns. */
  headerRow?: number | null
}

/** A layout for the table. Pure; takes every table that could be read. */
export function guessLayout({ rows, separator }: Grid, options: GuessOptions): GearLayout {
  const { target, system } = options
  const headerRow = options.headerRow === undefined ? guessHeaderRow(rows, GEAR) : options.headerRow
  const body = sampleOf(rows, headerRow)
  const headings = headerRow === null ? [] : rows[headerRow]!
  const columns = namedColumns(headings, widthOf(rows), GEAR).map(column =>
    column.field && FIELDS[column.field].shelf && target !== 'shelf' ? { field: null, unit: null } : column,
  )
  const taken = new Set(columns.flatMap(({ field }) => field ?? []))
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

function drop(columns: GearColumn[], taken: Set<FieldName>, field: FieldName, because: FieldName) {
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

function fillByLooks(columns: GearColumn[], taken: Set<FieldName>, { cellsOf, headed }: Body) {
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

/** Whether rows of a name alone begin the table and each is followed by one that has more, as headings are. */
function headingsAmong(body: readonly string[][], columns: readonly GearColumn[]): boolean {
  const name = columns.findIndex(({ field }) => field === 'name')
  const lone = body.map(row => isLone(row, name))
  return columns.length > 1 && lone[0] === true && lone.every((is, i) => !is || lone[i + 1] === false)
}

/** Whether a row holds nothing but its name. */
export const isLone = (row: readonly string[], name: number): boolean =>
  row.every((cell, i) => (cell.trim() !== '') === (i === name))
