// Gear as a table, a row for each item, under the labels of fields.ts with their units: what it writes it also reads.

import type { DraftItem } from '../../plan'
import type { Thing, ThingFacts } from '../../plan/shelf'
import { inUnit, type System } from '../../units'
import { choiceWords, yesNo } from './choices'
import { FIELD_NAMES, FIELDS, type FieldName, usualUnit } from './fields'
import { rowWord } from './inside'
import { csvText, type Marks, type WrittenCell } from './write'

/** Always there, so that an empty table shows what it could hold; the others only where something has them. */
const ALWAYS: readonly FieldName[] = [
  'name',
  'group',
  'count',
  'mass',
  'litres',
  'place',
  'use',
  // Without these two a reader takes every figure as stated.
  'massFrom',
  'litresFrom',
]

interface Written {
  system: System
  marks?: Marks
}

/** The gear of a trip as a CSV file. */
export function gearCsv(gear: readonly DraftItem[], { system, marks = 'commas' }: Written): string {
  const wordOf = containerWords(gear)
  return csvText(
    table(gear, system, ({ inside }, field) => (field === 'inside' ? wordOf(inside) : undefined)),
    marks,
  )
}

/** The things of the shelf as a CSV file. */
export function shelfCsv(things: readonly Thing[], { system, marks = 'commas' }: Written): string {
  const facts = things.map(({ item }) => item)
  const thingOf = new Map(things.map(thing => [thing.item, thing]))
  return csvText(
    table(facts, system, (item, field) => {
      const { note, weighedOn, retired } = thingOf.get(item)!
      const words: Partial<Record<FieldName, string | undefined>> = {
        note,
        weighedOn,
        retired: retired ? yesNo(true) : undefined,
      }
      return words[field]
    }),
    marks,
  )
}

/** `beside`: cells of fields that are not facts of the item itself. */
function table<T extends ThingFacts>(
  items: readonly T[],
  system: System,
  beside: (item: T, field: FieldName) => string | undefined,
): WrittenCell[][] {
  const columns = FIELD_NAMES.filter(isWritten).map(field => ({
    field,
    cells: items.map((item, i) => beside(item, field) ?? cellOf(item, field, system) ?? standIn(field, i)),
  }))
  const used = columns.filter(
    ({ field, cells }) => ALWAYS.includes(field) || cells.some(cell => cell !== null),
  )
  const headings = used.map(({ field }) => headingOf(field, system))
  return [headings, ...items.map((_, i) => used.map(({ cells }) => cells[i]!))]
}

/** What is only another way to say a field is read and not written. */
const isWritten = (field: FieldName) =>
  FIELDS[field].path !== undefined || FIELDS[field].shelf === true || field === 'inside'

function headingOf(field: FieldName, system: System): string {
  const unit = usualUnit(field, system)
  return unit && unit !== 'x' ? `${FIELDS[field].label} (${unit})` : FIELDS[field].label
}

function cellOf(item: ThingFacts, field: FieldName, system: System): WrittenCell {
  const { path, reading } = FIELDS[field]
  if (!path) return null
  const [key, sub] = path
  const top = (item as Readonly<Record<string, unknown>>)[key]
  const value = sub === undefined ? top : (top as Readonly<Record<string, unknown>> | undefined)?.[sub]
  if (value === undefined || value === '') return null
  if (reading.as === 'choice') return choiceWords(field, reading)[String(value)]?.[0] ?? null
  if (typeof value === 'boolean') return yesNo(value)
  if (typeof value !== 'number' || reading.as !== 'amount') return String(value)
  return inUnit(reading.kind, value, usualUnit(field, system)!)
}

/** An item without a name is called as the gear list calls it, since a row needs one. */
const standIn = (field: FieldName, i: number): WrittenCell => (field === 'name' ? `Item ${i + 1}` : null)

/** A container by its name; by its row where the name is shared, missing, or reads like a row. */
function containerWords(gear: readonly DraftItem[]): (inside: string | undefined) => string | undefined {
  const indices = new Map(gear.map(({ id }, i) => [id, i]))
  const containers = new Map<string | undefined, number>()
  for (const { name, holdsLitres } of gear)
    if (holdsLitres !== undefined) containers.set(name, (containers.get(name) ?? 0) + 1)
  return inside => {
    const index = inside === undefined ? undefined : indices.get(inside)
    if (index === undefined) return undefined
    const { name } = gear[index]!
    const shared = (containers.get(name) ?? 0) > 1
    return !name || shared || /^row \d+$/i.test(name) ? rowWord(index + 2) : name
  }
}
