// The rows of a table as packs: each is read cell by cell, then those of one pack are put together.

import { amountIn } from './catalogue'
import { cellReader } from './cell'
import type { Grid } from './grid'
import { isFilled, isSameRow } from './layout'
import { TABLE_CAPS } from './limits'
import {
  bareFigure,
  bodyAndCollar,
  currencyIn,
  lowerEnd,
  PACK_FIELDS,
  type PackFieldName,
} from './packs-fields'
import type { PackLayout } from './packs-guess'
import { joinRows, type PackRow, type PackValues, type TablePack } from './packs-join'
import { problemTeller, slipOf } from './read-row'
import type { RowProblem } from './types'

export interface PacksRead {
  packs: TablePack[]
  problems: RowProblem[]
  /** What was decided where the table could be read in another way, a sentence each. */
  doubts: string[]
}

/** Reads every row below the headings by the layout. A row with a cell that cannot be read is left out. Never throws. */
export function readPackRows(grid: Grid, layout: PackLayout): PacksRead {
  const { headerRow } = layout
  const header = headerRow === null ? null : grid.rows[headerRow]!
  const readCell = cellReader(PACK_FIELDS)
  const problems: RowProblem[] = []
  const rows: PackRow[] = []
  const doubts: string[] = []
  grid.rows.forEach((cells, i) => {
    if (i <= (headerRow ?? -1) || !isFilled(cells) || (header && isSameRow(cells, header))) return
    const tell = problemTeller(problems, { row: i + 1, header })
    const before = problems.length
    slipOf(grid, i, header, tell)
    const values: PackValues = {}
    layout.columns.forEach(({ field, unit }, at) => {
      const text = cells[at]?.trim() ?? ''
      if (!field || text === '' || problems.length > before + MOST_OF_A_ROW) return
      if (text.length > TABLE_CAPS.cellLength) {
        tell(
          at,
          text,
          `it has ${text.length} characters; up to ${TABLE_CAPS.cellLength} are read: shorten it`,
        )
        return
      }
      for (const [name, part] of partsOf(field, text, i + 1, doubts)) {
        const plain = amountIn(PACK_FIELDS[name]) ? bareFigure(part) : part
        const read = readCell(plain, name, { unit, decimal: layout.decimal })
        // A pack is worth having without its price.
        if ('why' in read && name === 'price') doubts.push(`Row ${i + 1}: the price “${text}” is left out.`)
        else if ('why' in read) tell(at, text, read.why)
        else if (read.value !== null) values[name] = read.value
      }
      if (field === 'price') currencyOf(values, [text, header?.[at] ?? ''])
    })
    nameOf(values)
    if (problems.length === before && !values.name)
      tell(null, cells.filter(cell => cell.trim()).join(', '), 'it has no name: write which pack it is')
    if (problems.length > before) return
    if (isSum(String(values.name)))
      doubts.push(`Row ${i + 1}: “${values.name}” is left out as a sum of the others.`)
    else rows.push({ row: i + 1, values })
  })
  const joined = joinRows(rows)
  return {
    packs: joined.packs,
    problems: [...problems, ...joined.problems].sort((a, b) => a.row - b.row),
    doubts: [...doubts, ...joined.doubts],
  }
}

const isSum = (name: string): boolean =>
  /^(?:(?:sub|grand )?totals?|sum|average|mean|median|min(?:imum)?|max(?:imum)?)$/i.test(name)

/** A cell of one field, as what it says of one or two. */
function partsOf(
  field: PackFieldName,
  text: string,
  row: number,
  doubts: string[],
): [PackFieldName, string][] {
  const both = field === 'body' || field === 'total' ? bodyAndCollar(text) : null
  if (both)
    return [
      [field, both[0]],
      ['collar', both[1]],
    ]
  const low = field === 'rated' || field === 'ratedFrameOut' ? lowerEnd(bareFigure(text)) : null
  if (low === null) return [[field, text]]
  doubts.push(`Row ${row}: of the range ${text} its lower end is taken.`)
  return [[field, low]]
}

/** More than these of one row are not told. */
const MOST_OF_A_ROW = 10

function currencyOf(values: PackValues, texts: readonly string[]) {
  if (values.price === undefined || values.currency !== undefined) return
  const found = texts.map(currencyIn).find(currency => currency !== null)
  if (found) values.currency = found
}

/** The maker's name before the product's, unless it begins with it. */
function nameOf(values: PackValues) {
  const maker = String(values.maker ?? '').trim()
  const name = String(values.name ?? '').trim()
  const isInName = name.toLowerCase().startsWith(maker.toLowerCase())
  values.name = isInName ? name || maker : [maker, name].filter(Boolean).join(' ')
}
