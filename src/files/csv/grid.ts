// A text as rows of cells, by papaparse: RFC 4180, and what programs write beside it (semicolons, tabs, strokes; LF or
// CR alone; blanks around quotes). What cannot be a table is refused in words, and nothing of it is read.

import Papa from 'papaparse'
import { countText } from '../../units'
import { TABLE_CAPS } from './limits'
import { hasSlowQuotes } from './slow-quotes'

export type Separator = '\t' | ';' | '|' | ','

/** In the order of preference where several part a text equally well. */
export const SEPARATORS: readonly { value: Separator; label: string; many: string }[] = [
  { value: ',', label: 'Comma ,', many: 'commas' },
  { value: ';', label: 'Semicolon ;', many: 'semicolons' },
  { value: '\t', label: 'Tab', many: 'tabs' },
  { value: '|', label: 'Vertical bar |', many: 'vertical bars' },
]
const PREFERRED: readonly Separator[] = ['\t', ';', '|', ',']

export interface Grid {
  ok: true
  rows: string[][]
  separator: Separator
  /** What is wrong with the quotes of a row, by its index. */
  slips: ReadonlyMap<number, string>
}

export type Refusal = { ok: false; message: string }

/** The text as rows of cells. Never throws. Refuses what is over the caps, empty, or no text at all. */
export function readGrid(text: string, chosen?: Separator): Grid | Refusal {
  const whole = text.replace(/^\uFEFF/, '')
  const bytes = new TextEncoder().encode(whole).length
  if (bytes > TABLE_CAPS.bytes) return tooLarge(bytes)
  const binary = notText(whole)
  if (binary) return refuse(binary)
  if (!/[\p{L}\p{N}]/u.test(whole))
    return refuse('There is nothing in it: choose a table with one item a row.')

  // Spreadsheets read and write a first line that names the separator (common practice, no source).
  const named = /^"?sep=([,;|\t])"?(?:\r\n|\r|\n)/i.exec(whole)
  const body = evened(named ? whole.slice(named[0].length) : whole)
  const separator = chosen ?? (named?.[1] as Separator | undefined) ?? guessSeparator(body)
  if (hasSlowQuotes(body, separator))
    return refuse(
      'It holds so many quotes that close nothing that reading it would take too long. Open it in a spreadsheet and save it anew, or take the quotes out.',
    )
  const { data, errors } = parse(body, separator, TABLE_CAPS.rows + 2)
  // A line end at the end of the text begins no row.
  if (data.at(-1)?.length === 1 && data.at(-1)![0] === '') data.pop()
  return checked({ ok: true, rows: data, separator, slips: slipsOf(errors) })
}

function checked(grid: Grid): Grid | Refusal {
  const { rows } = grid
  if (rows.length > TABLE_CAPS.rows + 1)
    return refuse(
      `It has more than ${countText(TABLE_CAPS.rows)} rows, the most that are read at a time. Split it.`,
    )
  const wide = rows.findIndex(row => row.length > TABLE_CAPS.columns)
  if (wide >= 0)
    return refuse(
      `Row ${wide + 1} has ${countText(rows[wide]!.length)} cells; up to ${TABLE_CAPS.columns} columns are read. Choose another separator, or leave columns out and save it anew.`,
    )
  return grid
}

export const tooLarge = (bytes: number): Refusal =>
  refuse(
    `It holds ${(bytes / 1e6).toFixed(1)} MB; up to ${TABLE_CAPS.bytes / 1e6} MB are read at a time. Split it, or leave out what is not needed.`,
  )

const refuse = (message: string): Refusal => ({ ok: false, message })

function parse(text: string, separator: Separator, preview: number) {
  return Papa.parse<string[]>(text, { delimiter: separator, newline: newlineOf(text), preview })
}

const newlineOf = (text: string) => (text.includes('\r\n') ? '\r\n' : text.includes('\n') ? '\n' : '\r')

/** Where line ends of several sorts are mixed, as with line breaks inside cells, all become LF: papaparse knows one. */
function evened(text: string): string {
  const pairs = text.split('\r\n').length - 1
  const sorts = [pairs, text.split('\r').length - 1 - pairs, text.split('\n').length - 1 - pairs]
  return sorts.filter(Boolean).length > 1 ? text.replace(/\r\n?/g, '\n') : text
}

/** First bytes of ZIP, gzip, older office files and PDF, as Windows-1252 or Latin-1 show them (from memory). */
const OTHER_SORTS = ['PK\x03\x04', '\x1f\u2039', '\x1f\x8b', '\xd0\xcf\x11\xe0', '%PDF'] as const

function notText(text: string): string | null {
  if (OTHER_SORTS.some(start => text.startsWith(start)))
    return 'This is not a table in plain text but another sort of file. Open it in the program that wrote it and save it as CSV.'
  if (text.slice(0, 100_000).includes('\0'))
    return 'This is no plain text, or text in UTF-16 without its mark. Choose the encoding, or save it as CSV in UTF-8.'
  if (/^\s*<(?:!doctype|html|\?xml|svg)\b/i.test(text))
    return 'This is a web page or XML, not a table in plain text. Open it in a spreadsheet and save it as CSV.'
  if (/^\s*(?:\[\s*)?\{\s*"[^"\n]*"\s*:/.test(text))
    return 'This is JSON, not a table. Plan files are opened under More; other programs can save a table as CSV.'
  return null
}

/** The separator that gives most rows the same number of cells, two or more; lines of one cell are titles or blank. */
function guessSeparator(text: string): Separator {
  const scores = PREFERRED.map(separator => ({ separator, score: evenness(text, separator) }))
  const best = Math.max(...scores.map(({ score }) => score))
  if (best === 0) return ','
  // What parts all rows alike, their headings too, parts them.
  const enough = best === 1 ? 1 : best - CLOSE
  return scores.find(({ score }) => score >= enough)!.separator
}

const LOOKED_AT = 30
/** Judgement of ours: one odd row in seven is no reason to prefer a comma to a semicolon. */
const CLOSE = 0.15

function evenness(text: string, separator: Separator): number {
  if (!text.includes(separator) || hasSlowQuotes(text, separator)) return 0
  const filled = parse(text, separator, LOOKED_AT).data.filter(row => row.some(cell => cell.trim() !== ''))
  const widths = new Map<number, number>()
  for (const { length } of filled) if (length > 1) widths.set(length, (widths.get(length) ?? 0) + 1)
  return Math.max(0, ...widths.values()) / Math.max(1, filled.length)
}

function slipsOf(errors: readonly { code: string; row?: number | undefined }[]): Map<number, string> {
  const slips = new Map<number, string>()
  for (const { code, row } of errors) {
    if (row === undefined || slips.has(row)) continue
    if (code === 'MissingQuotes')
      slips.set(
        row,
        'a quote opened here is never closed, so the rest stands in one cell: close it or take it out',
      )
    if (code === 'InvalidQuotes')
      slips.set(row, 'a quote inside a quoted cell stands alone: write it twice ("") or take it out')
  }
  return slips
}
