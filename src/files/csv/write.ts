// Rows of cells as the text of a CSV file: RFC 4180 (CRLF, quotes doubled; semicolons where a comma is the decimal
// mark: common practice, no source) in UTF-8 with a byte order mark, without
// which some spreadsheets take it for another encoding. No cell is taken for a formula (formula.ts).

import Papa from 'papaparse'
import { guarded } from './formula'
import { cleanLine, cleanLines } from './texts'

/** A text is cleaned as it is when it comes in. */
export type WrittenCell = string | number | null

/** What parts the cells, and the decimal mark; our reader takes both. A spreadsheet takes those of its own language. */
export type Marks = 'commas' | 'semicolons'

/** The rows as a CSV file's text: with commas and decimal points, or with semicolons and decimal commas. */
export function csvText(rows: readonly (readonly WrittenCell[])[], marks: Marks): string {
  const cells = rows.map(row => row.map(cell => cellText(cell, marks)))
  const text = Papa.unparse(cells, {
    newline: '\r\n',
    delimiter: marks === 'semicolons' ? ';' : ',',
    quotes: value => /^'/.test(String(value)),
  })
  return `\uFEFF${text}\r\n`
}

function cellText(cell: WrittenCell, marks: Marks): string {
  if (cell === null) return ''
  if (typeof cell === 'number')
    return marks === 'semicolons' ? numberText(cell).replace('.', ',') : numberText(cell)
  return guarded(cell.includes('\n') ? cleanLines(cell) : cleanLine(cell))
}

// Fifteen digits are as many as a double holds of any decimal; no exponent, which no reader of quantities knows.
/** Far below what any scale shows; its digits would make a text longer than is read. */
const TINY = 1e-12
const format = new Intl.NumberFormat('en', { useGrouping: false, maximumSignificantDigits: 15 })
const numberText = (value: number): string => format.format(Math.abs(value) < TINY ? 0 : value)
