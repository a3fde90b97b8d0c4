// A pasted gear list into rows: every line comes out as understood or as kept with the reason why it is not.

import { CAPS, isWithin, LIMITS, type Limit } from '../../plan'
import { bareUnitOf, capital, formatQuantity, parseQuantity, type System, type Unit } from '../../units'
import { cellsOf } from './cells'
import { type Columns, columnsOf } from './columns'
import { headingsIn, seenOf } from './headings'
import { LINE_END, LIST_CAPS } from './limits'
import { isOwnPack, isSumName } from './names'
import { type Parts, type Split, splitRow, withoutBullet } from './row'
import { capacityOf, saidIn } from './said'
import { tidy } from './tidy'
import type { Fix, ListRead, ListRow, Understood } from './types'

/** Reads a list; bare masses are grams or ounces by the system. Never throws; refuses only what is over the caps. */
export function readList(text: string, { system }: { system: System }): ListRead {
  // A character takes a byte at least: of so many that is enough to know.
  if (text.length > 5 * LIST_CAPS.bytes)
    return refusal(`over ${Math.floor(text.length / 1000)} kB of text`, `${LIST_CAPS.bytes / 1000} kB`)
  const bytes = new TextEncoder().encode(text).length
  if (bytes > LIST_CAPS.bytes)
    return refusal(`${Math.ceil(bytes / 1000)} kB of text`, `${LIST_CAPS.bytes / 1000} kB`)
  const lines = text.replace(/^\uFEFF/, '').split(LINE_END)
  if (lines.length > LIST_CAPS.lines) return refusal(`${lines.length} lines`, `${LIST_CAPS.lines} lines`)

  const rows: ListRow[] = []
  let columns: Columns | null = null
  let group: string | undefined
  const headings = headingsIn(lines)
  lines.forEach((given, i) => {
    const text = given.trim()
    if (text.length > LIST_CAPS.lineLength) {
      const why = `The line has ${text.length} characters; up to ${LIST_CAPS.lineLength} are read. Break it into one item a line.`
      rows.push({ ok: false, line: i + 1, text, why })
      return
    }
    const raw = seenOf(given)
    const line = raw.trim()
    if (!/[\p{L}\p{N}]/u.test(line)) return
    if (rows.length === 0 && !columns && !group) {
      columns = columnsOf(line)
      if (columns) return
    }
    const heading = headings.get(i)
    if (heading) {
      group = heading.group
      if (heading.isSure) return
      const row = rowOf({ line: i + 1, text }, { name: line, notes: [] }, system)
      rows.push(row.ok ? { ...row, isHeading: true } : row)
      return
    }
    // Tabs at the line's start are empty cells where columns are named.
    const parts = columns ? splitByColumns(raw, columns) : splitRow(withoutBullet(line), system)
    rows.push(rowOf({ line: i + 1, text }, { ...parts, ...grouped(parts, group) }, system))
  })
  return { ok: true, rows, unusedColumns: (columns as Columns | null)?.unused ?? [] }
}

function refusal(has: string, cap: string): ListRead {
  return { ok: false, message: `This list has ${has}; up to ${cap} are read at a time. Paste it in parts.` }
}

const grouped = (parts: Split, group: string | undefined) =>
  group === undefined || ('group' in parts && parts.group) ? {} : { group }

function splitByColumns(line: string, { separator, columns, units }: Columns): Split {
  const cells = cellsOf(line, separator, { decimalCommas: false })
  if (cells.length > columns.length && cells.slice(columns.length).some(Boolean))
    return {
      why: `${cells.length} columns, where the first line names ${columns.length}: put a text with a ${separator === '\t' ? 'tab' : `"${separator}"`} in quotes`,
    }
  const parts: Parts = { name: '', notes: [], isNamed: true }
  const unit = cells[columns.indexOf('unit')]
  cells.forEach((cell, i) => {
    const column = columns[i]
    if (!cell || !column) return
    const withUnit = (fallback: string | null | undefined) =>
      fallback && !/\p{L}/u.test(cell) ? `${cell} ${fallback}` : cell
    if (column === 'name') parts.name = tidy(cell)
    else if (column === 'group') parts.group = cell.slice(0, CAPS.nameLength)
    else if (column === 'count') parts.count = cell.replace(/^\s*[x×]\s*|\s*[x×]\s*$/giu, '')
    else if (column === 'mass') parts.mass = withUnit(unit ?? units[i])
    else if (column === 'litres') parts.litres = withUnit(units[i])
  })
  return parts
}

type Place = Pick<ListRow, 'line' | 'text'>

function rowOf(place: Place, parts: Split & { group?: string }, system: System): ListRow {
  const no = (why: string, fixes?: Fix[]): ListRow => ({
    ok: false,
    ...place,
    why: `${capital(why)}.`,
    ...(fixes && { fixes }),
  })
  if ('why' in parts) return no(parts.why, parts.fixes)
  const { notes, ofAll, group } = parts
  const counted = countOf(parts.count, system)
  if (typeof counted === 'object') return no(counted.why)
  const said = saidIn(parts.name, { group, count: counted })
  const { name, worn, use } = said
  if (!/\p{L}/u.test(name)) return no('no name: write what it is before its mass')
  if (name.length > CAPS.nameLength)
    return no(`the name has ${name.length} characters: shorten it to ${CAPS.nameLength} or fewer`)

  // A volume beside a bottle that names no other is what it holds.
  const inName = capacityOf(name)
  const holds = Object.keys(inName).length > 0 || parts.isNamed ? inName : capacityOf(name, parts.litres)
  const litres = holds === inName || Object.keys(holds).length === 0 ? parts.litres : undefined
  const row: Understood = {
    ok: true,
    ...place,
    name,
    ...holds,
    notes: [...notes, ...said.doubts],
    isSum: isSumName(name),
    isPack: isOwnPack(name),
    ...(group && { group }),
    ...(worn && { worn }),
    ...(use && { use }),
    ...(said.count === undefined ? {} : { count: said.count }),
    ...(parts.isBare && { isBare: true }),
  }
  if (parts.inName !== undefined && litres === undefined && Object.keys(holds).length === 0)
    row.notes.push(
      `${parts.inName} is kept in the name: write it after the mass to make it the packed volume.`,
    )
  const asked = [
    ['massKg', parts.mass, 'mass', LIMITS.item.massKg],
    ['litres', litres, 'volume', LIMITS.item.litres],
  ] as const
  for (const [field, text, kind, limit] of asked) {
    if (text === undefined) continue
    const read = amount(text.replace(/^[~≈]\s?/, ''), { kind, limit, system })
    if ('why' in read) return no(read.why)
    if (read.value !== null) row[field] = read.value
    if (read.note) row.notes.push(read.note)
  }
  if (ofAll && row.massKg !== undefined && row.count) row.massKg /= row.count
  return row
}

function countOf(text: number | string | undefined, system: System): number | undefined | { why: string } {
  if (text === undefined) return undefined
  const read = amount(String(text), { kind: 'count', limit: LIMITS.item.count, system })
  return 'why' in read ? read : (read.value ?? undefined)
}

interface Asked {
  kind: 'mass' | 'volume' | 'count'
  limit: Limit
  system: System
}

function amount(
  text: string,
  { kind, limit, system }: Asked,
): { value: number | null; note?: string } | { why: string } {
  const bareUnit: Unit = bareUnitOf(kind, system, kind === 'mass')
  const parsed = parseQuantity(kind, text, { system, bareUnit })
  if (!parsed.ok) return { why: parsed.message.replace(/\.$/, '') }
  const { value } = parsed
  if (value === null) return { value }
  const show = (amount: number) => formatQuantity(kind, amount, { system })
  if (!isWithin(value, limit))
    return { why: `"${text}" is outside what an item may have: ${show(limit.min)} to ${show(limit.max)}` }
  return parsed.echo ? { value, note: `"${text}" is read as ${show(value)}.` } : { value }
}
