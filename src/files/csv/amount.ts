// A cell as an amount: the units module reads it; here only its decimal mark, the unit of its column and its limits are
// brought to bear.

import { isWithin, type Limit } from '../../plan'
import { bareUnitOf, formatQuantity, parseQuantity, type Quantity, type Unit, unitChoices } from '../../units'
import { type Decimal, withPoints } from './decimal'

/** The value in the kind's stored unit, null for none, or why not: without a capital and without a full stop. */
export type AmountRead = { value: number | null } | { why: string }

/** What people write where they do not know. */
const NOTHING = /^(?:[-–—?]+|n\/?a|none|unknown|tbd)$/i
const SPREADSHEET_ERROR = /^#(?:[A-Z]+[/!?]*[A-Z0]*[!?]?)$/

/** Reads a cell as an amount; a bare number has the column's unit. */
export function readAmount(
  text: string,
  { kind, limit, unit }: { kind: Quantity; limit: Limit; unit: Unit },
  decimal: Decimal,
): AmountRead {
  const cell = text.replace(/^[~≈]\s*/, '')
  if (NOTHING.test(cell)) return { value: null }
  if (SPREADSHEET_ERROR.test(cell))
    return { why: 'a spreadsheet puts that where a formula fails: write the number' }
  const plain = withPoints(cell, decimal)
  const parsed = parseQuantity(kind, plain, { system: 'metric', bareUnit: unit })
  if (!parsed.ok) return { why: withoutQuote(parsed.message, plain) }
  if (parsed.value === null) return { value: null }
  const value = atLimit(parsed.value, limit)
  if (!isWithin(value, limit)) {
    const isUs = unit === bareUnitOf(kind, 'us', true) && unit !== bareUnitOf(kind, 'metric', true)
    const show = (amount: number) => formatQuantity(kind, amount, { system: isUs ? 'us' : 'metric' })
    return { why: `it must lie between ${show(limit.min)} and ${show(limit.max)}` }
  }
  return { value }
}

/** The limit itself where only the last bits of a converted unit lie beyond it: 78.740157480315 in are 200 cm. */
function atLimit(value: number, { min, max }: Limit): number {
  const end = [min, max].find(limit => Math.abs(value - limit) <= Math.abs(limit) * 1e-12)
  return end ?? value
}

/** The message without the cell's text at its beginning, which stands beside it anyway, and without its full stop. */
function withoutQuote(message: string, text: string): string {
  const quoted = `"${text.length > 40 ? `${text.slice(0, 40)}…` : text}"`
  const rest = message.startsWith(quoted) ? message.slice(quoted.length) : message
  return rest
    .replace(/^: /, '')
    .replace(/^ (?=is |holds )/, 'it ')
    .replace(/\.$/, '')
}

/** Whether a text is an amount of this kind with its unit beside it. */
export function hasUnitOf(kind: Quantity, text: string): boolean {
  if (!/\d/.test(text) || isBare(text)) return false
  return (['.', ','] as const).some(decimal => sizeOf(kind, withPoints(text, decimal)) !== null)
}

/** Digits with their marks and nothing else. */
export const isBare = (text: string): boolean => /\d/.test(text) && /^[~≈]?[\d.,'’\s½¼¾]+$/u.test(text)

/** The unit of this kind that a word names, by its symbol; null for none: "grams" is g. */
export function unitNamed(kind: Quantity, word: string): Unit | null {
  if (!/\p{L}|%/u.test(word)) return null
  const size = sizeOf(kind, `1 ${word}`)
  if (size === null) return null
  return sizesOf(kind).find(([, known]) => known === size)?.[0] ?? null
}

const sizes = new Map<Quantity, (readonly [Unit, number | null])[]>()

/** The units of a kind with their sizes, worked out once. */
function sizesOf(kind: Quantity) {
  const known = sizes.get(kind) ?? unitChoices(kind).map(unit => [unit, sizeOf(kind, `1 ${unit}`)] as const)
  sizes.set(kind, known)
  return known
}

function sizeOf(kind: Quantity, text: string): number | null {
  const parsed = parseQuantity(kind, text, { system: 'metric' })
  return parsed.ok ? parsed.value : null
}
