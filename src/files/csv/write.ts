// Rows of cells as the text of a CSV file: RFC 4180 (CRLF, quotes doubled) in UTF-8 with a byte order mark, without
// which some spreadsheets take it for another encoding. No cell is taken for a formula (formula.ts).

import Papa from 'papaparse'
import { guarded } from './formula'
import { cleanLine, cleanLines } from './texts'

/** A number is written with a point, whatever the language; a text is cleaned as it is when it comes in. */
export type WrittenCell = string | number | null

/** The rows as a CSV file's text. */
export function csvText(rows: readonly (readonly WrittenCell[])[]): string {
  const cells = rows.map(row => row.map(cellText))
  return `\uFEFF${Papa.unparse(cells, { newline: '\r\n', quotes: value => /^'/.test(String(value)) })}\r\n`
}

function cellText(cell: WrittenCell): string {
  if (cell === null) return ''
  if (typeof cell === 'number') return numberText(cell)
  return guarded(cell.includes('\n') ? cleanLines(cell) : cleanLine(cell))
}

// Fifteen digits are as many as a double holds of any decimal; no exponent, which no reader of quantities knows.
/** Far below what any scale shows; its digits would make a text longer than is read. */
const TINY = 1e-12
const format = new Intl.NumberFormat('en', { useGrouping: false, maximumSignificantDigits: 15 })
const numberText = (value: number): string => format.format(Math.abs(value) < TINY ? 0 : value)
