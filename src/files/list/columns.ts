// The first line of a list that names its columns, as spreadsheets have it. English names; units may stand in brackets.

import { cellsOf, type Separator, separatorOf } from './cells'

export type Column = 'name' | 'mass' | 'litres' | 'count' | 'group' | 'unit' | null

export interface Columns {
  separator: Separator
  columns: Column[]
  /** The unit of bare numbers under it, where the heading names one. */
  units: (string | null)[]
  /** The headings of columns that are not used. */
  unused: string[]
}

const NAMES: readonly (readonly [Column, RegExp])[] = [
  ['name', /^(?:items?|names?|things?|gear|article|what)\b/i],
  ['unit', /^units?\b/i],
  ['mass', /^(?:mass|weight|wt|grams?|g|kg|oz|ounces?|lbs?|pounds?)\b/i],
  ['litres', /^(?:packed volume|volume|vol|litres?|liters?|l|ml)\b/i],
  ['count', /^(?:count|qty|quantity|number|pieces|pcs|how many|no)\b/i],
  ['group', /^(?:group|category|section|type)\b/i],
]
const UNIT = /(?:^|[\s([])(kg|grams?|g|oz|ounces?|lbs?|pounds?|litres?|liters?|ml|l|cu in)[)\]]?$/i

/** The columns a line names; null where it is no such line: it has digits, or does not name at least a name and a mass. */
export function columnsOf(line: string): Columns | null {
  if (/\d/.test(line)) return null
  const separator = separatorOf(line)
  const cells = cellsOf(line, separator, { decimalCommas: false })
  if (cells.length < 2) return null
  const taken = new Set<Column>()
  const columns = cells.map(cell => {
    const column = NAMES.find(([, pattern]) => pattern.test(cell))?.[0] ?? null
    if (taken.has(column)) return null
    if (column) taken.add(column)
    return column
  })
  if (!taken.has('name') || taken.size < 2) return null
  const units = cells.map(cell => UNIT.exec(cell)?.[1] ?? null)
  const unused = cells.filter((cell, i) => cell && columns[i] === null)
  return { separator, columns, units, unused }
}
