// What a table of packs means, before anybody has said so. All of it may be changed.

import { bareUnitOf, type System, type Unit } from '../../units'
import { isBare } from './amount'
import { amountIn, unitIn } from './catalogue'
import { type Decimal, guessDecimal, withPoints } from './decimal'
import type { Grid } from './grid'
import { readHeading } from './headings'
import { type Column, guessHeaderRow, type Layout, namedColumns, sampleOf, widthOf } from './layout'
import { PACK_FIELDS, PACKS, type PackFieldName, saysTotal } from './packs-fields'

export type PackLayout = Layout<PackFieldName>

interface GuessOptions {
  system: System
  /** Where the reader has said which row names the columns. */
  headerRow?: number | null
}

/** A layout for a table of packs. Pure; takes every table that could be read. */
export function guessPacksLayout(
  { rows, separator }: Grid,
  { system, headerRow: said }: GuessOptions,
): PackLayout {
  const headerRow = said === undefined ? guessHeaderRow(rows, PACKS) : said
  const headings = headerRow === null ? [] : rows[headerRow]!
  const body = sampleOf(rows, headerRow)
  const columns = namedColumns(headings, widthOf(rows), PACKS)
  bodyBesideTotal(columns, headings)
  const cellsOf = (i: number) => body.map(row => row[i]?.trim() ?? '')
  const numbers = columns.flatMap(({ field }, i) => (field && amountIn(PACK_FIELDS[field]) ? cellsOf(i) : []))
  const decimal = guessDecimal(numbers, separator)
  return {
    headerRow,
    columns: columns.map(({ field, unit }, i) => ({
      field,
      unit: field && (unit ?? unitOfCells(field, cellsOf(i), { system, decimal })),
    })),
    decimal,
  }
}

/** Of two columns of litres the one that says no more than that is the main body, where the other says total. */
function bodyBesideTotal(columns: Column<PackFieldName>[], headings: readonly string[]) {
  if (columns.some(({ field }) => field === 'body')) return
  const litres = headings.flatMap((heading, i) => {
    const { field, unit } = readHeading(heading, PACKS)
    return field === 'total' ? [{ i, unit, total: saysTotal(heading) }] : []
  })
  const total = litres.find(({ total }) => total)
  const plain = litres.find(({ total }) => !total)
  if (!total || !plain) return
  columns[total.i] = { field: 'total', unit: total.unit }
  columns[plain.i] = { field: 'body', unit: plain.unit }
}

/** A pack of this many grams would float; one of this many kilograms no one would carry empty: judgement. */
const LARGE_UNIT_BELOW = 20

/** The unit of bare numbers: of masses by how large they are, since no pack weighs 900 kg and none 0.9 g. */
function unitOfCells(
  field: PackFieldName,
  cells: readonly string[],
  { system, decimal }: { system: System; decimal: Decimal },
): Unit | null {
  const amount = amountIn(PACK_FIELDS[field])
  if (amount?.kind !== 'mass' || !amount.fine) return unitIn(PACK_FIELDS[field], system)
  const numbers = cells
    .filter(isBare)
    .map(cell => Number(withPoints(cell, decimal)))
    .filter(Number.isFinite)
  const isLarge = numbers.length > 0 && Math.max(...numbers) < LARGE_UNIT_BELOW
  return bareUnitOf('mass', system, !isLarge)
}

/** Headings of what the table itself has reckoned from its other columns: "Weight per litre". */
export const reckonedHeadings = ({ rows }: Grid, { headerRow }: PackLayout): string[] =>
  (headerRow === null ? [] : rows[headerRow]!)
    .map(heading => heading.trim())
    .filter(heading => PACKS.reckoned!.test(heading.toLowerCase()))

/** Headings of masses that name no unit while their cells name none either, and the unit that these are read in. */
export function unitlessMasses(
  { rows }: Grid,
  { headerRow, columns }: PackLayout,
): { heading: string; unit: Unit }[] {
  if (headerRow === null) return []
  const headings = rows[headerRow]!
  const body = sampleOf(rows, headerRow)
  return columns.flatMap(({ field, unit }, i) => {
    const heading = headings[i]?.trim() ?? ''
    const isMass = field && amountIn(PACK_FIELDS[field])?.kind === 'mass'
    const isOpen = isMass && unit && readHeading(heading, PACKS).unit === null
    return isOpen && body.some(row => isBare(row[i]?.trim() ?? '')) ? [{ heading, unit }] : []
  })
}

/** The heading of litres taken for the total, where it does not say whether pockets are in it; null where it does. */
export function plainLitresHeading({ rows }: Grid, { headerRow, columns }: PackLayout): string | null {
  const at = columns.findIndex(({ field }) => field === 'total')
  const heading = headerRow === null || at < 0 ? '' : (rows[headerRow]?.[at]?.trim() ?? '')
  return heading === '' || saysTotal(heading) ? null : heading
}

/** Whether a table is one of packs and not of gear: it has a frame, a load rating, or litres of a body or a whole. */
export function isTableOfPacks({ rows }: Grid): boolean {
  const headerRow = guessHeaderRow(rows, PACKS)
  if (headerRow === null) return false
  const fields = new Set(namedColumns(rows[headerRow]!, widthOf(rows), PACKS).map(({ field }) => field))
  const telling: PackFieldName[] = ['frame', 'rated', 'body', 'ratedFrameOut', 'massFrameOut', 'collar']
  const has = (field: PackFieldName) => fields.has(field)
  return (
    has('name') && has('mass') && (telling.some(has) || (has('total') && (has('outside') || has('denier'))))
  )
}
