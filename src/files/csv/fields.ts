// What a column of a table of gear may hold. Most of it
// stands in the rows of an item's fields; here is what only tables have, and the shelf. The words by which headings are
// known are ours. A field is written under its label, so that our own tables read back exactly.

import { FIELDS as ALL, type FieldRow } from '../../plan'
import type { System, Unit } from '../../units'
import { amountIn, type Catalogue, type Field, unitIn } from './catalogue'
import { isUnitOfMass, isUnitOfVolume } from './headings'

const { item } = ALL
type Rows = typeof item
type NameIn<P> = {
  [K in keyof P]: P[K] extends { column: { name: infer N extends string } }
    ? N
    : P[K] extends { as: 'part'; rows: infer R }
      ? NameIn<R>
      : never
}[keyof P]

export type FieldName = NameIn<Rows> | keyof typeof BESIDES | keyof typeof OF_THE_SHELF

/** Another way to say what an item has. */
const BESIDES = {
  massOfAll: {
    label: 'Mass of all pieces',
    reading: item.massKg,
    heading:
      /\b(?:total|sum|all|altogether|extended)\b.*\b(?:mass|weight|wt)\b|\b(?:mass|weight|wt)\b.*\b(?:total|sum|all|altogether)\b/,
  },
  massUnit: { label: 'Unit of the mass', reading: { as: 'unit' }, heading: /^(?:unit|uom|units)$/ },
  worn: { label: 'Worn', reading: { as: 'truth' }, heading: /^(?:worn|wearing|on me)\b/ },
  kcalEach: {
    label: 'Energy of one piece, kcal',
    reading: { as: 'amount', kind: 'number', min: 0, max: 1_000_000, unit: 'kcal' },
    heading: /\b(?:kcal|calories|cals?|energy)\b/,
  },
  inside: { label: item.inside.label, reading: item.inside, heading: /^(?:rides )?in(?:side)?$/ },
} as const satisfies Record<string, Field>

const OF_THE_SHELF = {
  note: { label: 'Note', reading: { as: 'text' }, heading: /^(?:notes?|comments?|remarks?)\b/, shelf: true },
  weighedOn: { label: 'Weighed on', reading: { as: 'day' }, shelf: true },
  retired: { label: 'No longer in use', reading: { as: 'truth' }, heading: /^retired\b/, shelf: true },
} as const satisfies Record<string, Field>

function columnsOf(rows: Readonly<Record<string, FieldRow>>, within?: string): [string, Field][] {
  return Object.entries(rows).flatMap(([key, row]): [string, Field][] => {
    if (row.as === 'part') return columnsOf(row.rows, key)
    const { name, label = row.label ?? key, ...column } = row.column ?? {}
    return name ? [[name, { ...column, label, reading: row, path: within ? [within, key] : [key] }]] : []
  })
}

/** The order of a table of ours; what is not among these comes after them. */
const ORDER =
  'name group count mass massOfAll massUnit litres place worn build use leaves resupplied kcal kcalEach massFrom litresFrom least typical most holdsLitres inside holdsWater length across width depth atHome optional mayRideOutside fuel boiled melted startC altitude efficiency'.split(
    ' ',
  )
const rank = ([name]: [string, Field]) => (ORDER.includes(name) ? ORDER.indexOf(name) : ORDER.length)

/** In the order in which a table of ours has them. */
export const FIELDS = Object.fromEntries([
  ...[...columnsOf(item), ...Object.entries(BESIDES)].sort((a, b) => rank(a) - rank(b)),
  ...Object.entries(OF_THE_SHELF),
]) as Readonly<Record<FieldName, Field>>

export const FIELD_NAMES = Object.keys(FIELDS) as FieldName[]

// "Total weight" is no mass of one piece, and energy by mass is no mass.
const FIRST: readonly FieldName[] = [
  'massUnit',
  'massOfAll',
  'kcal',
  'kcalEach',
  'worn',
  'count',
  'mass',
  'litres',
]

export const GEAR: Catalogue<FieldName> = {
  fields: FIELDS,
  narrowFirst: [...FIRST, ...FIELD_NAMES.filter(name => !FIRST.includes(name))],
  ofUnit(word) {
    if (isUnitOfMass(word)) return 'mass'
    return isUnitOfVolume(word) ? 'litres' : null
  },
}

/** Whether a column of amounts may have a unit, and then of which kind. */
export const amountOf = (field: FieldName) => amountIn(FIELDS[field])

/** The unit of bare numbers in a field, where nothing names one. */
export const usualUnit = (field: FieldName | null, system: System): Unit | null =>
  field && unitIn(FIELDS[field], system)
