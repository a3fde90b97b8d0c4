// One row of a table as an item, or as what is in the way.

import { capital, type Unit } from '../../units'
import { isOwnPack, isSumName, saidIn } from '../list'
import { unitNamed } from './amount'
import type { cellReader } from './cell'
import type { FieldName } from './fields'
import { type Grid, SEPARATORS } from './grid'
import type { GearLayout } from './guess'
import { TABLE_CAPS } from './limits'
import { brokenRule, itemOf, thingWordsOf, type Values } from './row'
import { lineOf, startOf } from './texts'
import type { ReadItem, RowProblem } from './types'

/** What a problem shows of a cell. */
const SHOWN = 80

/** A table on its way through. */
export interface Reading {
  grid: Grid
  layout: GearLayout
  readCell: ReturnType<typeof cellReader<FieldName>>
}

/** What is in the way in the cell of a column (from 0; null: in the row), and why. */
export type Tell = (column: number | null, text: string, why: string) => void

export function problemTeller(
  problems: RowProblem[],
  { row, header }: { row: number; header: readonly string[] | null },
): Tell {
  return (at, text, why) => {
    const column = at === null ? null : { number: at + 1, name: startOf(lineOf(header?.[at] ?? ''), SHOWN) }
    problems.push({ row, column, text: shown(text), why: sentence(why) })
  }
}

/** Tells what is wrong with the row itself: its quotes, or more cells than there are names of columns. */
export function slipOf(grid: Grid, index: number, header: readonly string[] | null, tell: Tell): void {
  const cells = grid.rows[index]!
  const slip = grid.slips.get(index)
  const beyond = header ? cells.findIndex((cell, i) => i >= header.length && cell.trim() !== '') : -1
  if (slip) tell(null, cells.find(cell => cell.includes('"')) ?? cells[0] ?? '', slip)
  else if (header && beyond >= 0) tell(null, cells[beyond]!, tooMany(cells.length, header.length, grid))
}

/** Reads the row at an index, under the heading of its group if it has one: an item, or one or more problems. */
export function readRow(
  { grid, layout, readCell }: Reading,
  index: number,
  heading?: string,
): { item: ReadItem | null; problems: RowProblem[] } {
  const row = index + 1
  const cells = grid.rows[index]!
  const header = layout.headerRow === null ? null : grid.rows[layout.headerRow]!
  const problems: RowProblem[] = []
  const tell = problemTeller(problems, { row, header })
  slipOf(grid, index, header, tell)
  if (problems.length > 0) return { item: null, problems }

  const values: Values = {}
  const massUnit = unitOfRow(cells, layout, tell)
  layout.columns.forEach(({ field, unit }, i) => {
    const text = cells[i]?.trim() ?? ''
    if (!field || field === 'massUnit' || text === '') return
    if (text.length > TABLE_CAPS.cellLength) {
      tell(i, text, `it has ${text.length} characters; up to ${TABLE_CAPS.cellLength} are read: shorten it`)
      return
    }
    const isMass = field === 'mass' || field === 'massOfAll'
    const read = readCell(text, field, { unit: (isMass && massUnit) || unit, decimal: layout.decimal })
    if ('why' in read) tell(i, text, read.why)
    else if (read.value !== null) values[field] = read.value
  })
  const columnOf = (field: FieldName) => layout.columns.findIndex(column => column.field === field)
  const has = (field: FieldName) => columnOf(field) >= 0
  // Another cell in place of the name's, which is empty, tells the reader which row is meant.
  if (!values.name && problems.length === 0)
    tell(null, cells.filter(cell => cell.trim()).join(', '), noName(has('name')))
  if (problems.length > 0) return { item: null, problems }

  if (values.group === undefined && heading !== undefined) values.group = heading
  const doubts = readWords(values, has)
  const item = itemOf(values, has)
  const broken = brokenRule(item, values)
  if (broken) {
    const at = columnOf(broken.field)
    tell(at < 0 ? null : at, cells[at] ?? '', broken.why)
    return { item: null, problems }
  }
  const inside =
    typeof values.inside === 'string' && values.inside !== '' ? { inside: { name: values.inside } } : {}
  const { name = '' } = item
  const looks = { isSum: isSumName(name), isPack: isOwnPack(name) }
  return { item: { row, item, ...inside, thing: thingWordsOf(values), doubts, ...looks }, problems }
}

/**
 * Takes from the name and the group what no column of the table says, and gives what was in doubt. Tables of ours say
 * all there is to say: their names are left as they are.
 */
function readWords(values: Values, has: (field: FieldName) => boolean): string[] {
  if (has('massFrom') && has('litresFrom')) return []
  const { name, group, count, holdsWater, holdsLitres, use, place, worn } = values
  if (typeof name !== 'string') return []
  const said = saidIn(name, {
    ...(typeof group === 'string' && { group }),
    ...(typeof count === 'number' && { count }),
  })
  values.name = said.name
  if (said.count !== undefined) values.count = said.count
  if (said.holdsWaterLitres !== undefined) values.holdsWater = holdsWater ?? said.holdsWaterLitres
  if (said.holdsLitres !== undefined) values.holdsLitres = holdsLitres ?? said.holdsLitres
  if (said.use !== undefined) values.use = use ?? said.use
  if (said.worn && place === undefined) values.worn = worn ?? true
  return said.doubts
}

/** The unit that the row itself names for its mass, if the table has a column of them. */
function unitOfRow(cells: readonly string[], { columns }: GearLayout, tell: Tell): Unit | null {
  const at = columns.findIndex(({ field }) => field === 'massUnit')
  const text = lineOf(cells[at] ?? '')
  if (text === '') return null
  const unit = unitNamed('mass', text)
  if (unit === null) tell(at, text, 'it is no unit of mass: write g, kg, oz or lb')
  return unit
}

const noName = (hasColumn: boolean) =>
  hasColumn ? 'it has no name: write what it is' : 'no column holds the names: choose which one does'

function tooMany(has: number, named: number, { separator }: Grid): string {
  const { many = '' } = SEPARATORS.find(({ value }) => value === separator) ?? {}
  return `the row has ${has} cells where the headings name ${named}: put a text with ${many} in quotes`
}

const shown = (text: string): string => {
  const line = lineOf(startOf(text, SHOWN * 4))
  return line.length > SHOWN ? `${startOf(line, SHOWN)}…` : line
}

const sentence = (why: string): string => `${capital(why)}.`
