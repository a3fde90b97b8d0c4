// The catalogue of fields: a row for each, with its kind of quantity, limits, default and where that comes from, label,
// choices, and how a table has it. The schema, the defaults, forms, tables, previews and reasons follow from the rows, in
// the order of the rows; that each field of types.ts has one of its kind is checked by `satisfies`. The words of fields
// in sentences stand in field-words.ts, for the first page needs those alone.

import { CAPS } from '../caps'
import type { PLAN_FORMAT, PLAN_VERSION } from '../format'
import type * as types from '../types'
import { fuel, item } from './item'
import { pack, setup } from './pack'
import { type Amount, type DocumentOf, type Field, type Limit, list, part, type RowsFor, text } from './rows'
import { packing, settings } from './settings'

import { carrier, leg, meals, pace, packChoice, person, split, stop, trip, water, weather } from './trip'

const plan = {
  name: text({ label: 'Name of the trip' }),
  carrier: part(carrier),
  people: list(person, { least: 1, most: CAPS.people, what: 'people' }),
  split: part(split),
  trip: part(trip, { need: true }),
  gear: list(item, { most: CAPS.items, what: 'items' }),
  packs: list(pack, { most: CAPS.packs, what: 'packs' }),
  packings: list(packing, { most: CAPS.packings, what: 'packings' }),
  settings: part(settings),
} satisfies RowsFor<types.Plan & types.PartyPlan>

export const FIELDS = {
  plan,
  carrier,
  person,
  packChoice,
  split,
  trip,
  stop,
  leg,
  pace,
  water,
  meals,
  weather,
  item,
  fuel,
  pack,
  setup,
  packing,
  settings,
}
type Fields = typeof FIELDS

export { PRACTICE } from './origins'
export {
  type Amount,
  type Choice,
  choiceLabel,
  choicesOf,
  choiceWord,
  defaultsOf,
  type Field,
  isWithin,
  type Limit,
  part,
  type Rows,
  tableWord,
} from './rows'
export { PACKING_FACTOR } from './settings'

type NamesIn<P> = P extends unknown ? keyof P : never
/** The name of any field, whatever part it is in. */
export type FieldName = NamesIn<Fields[keyof Fields]>

type Limits = {
  [P in keyof Fields]: { [K in keyof Fields[P] as Fields[P][K] extends Amount ? K : never]: Limit }
}

/** The limits of every number in a plan, by part and field. */
export const LIMITS = Object.fromEntries(
  Object.entries(FIELDS).map(([name, rows]) => [
    name,
    Object.fromEntries(Object.entries<Field>(rows).filter(([, row]) => row.as === 'amount')),
  ]),
) as unknown as Limits

/** A plan as written, with what is left to the defaults still absent: of one hiker or of a party. */
export type WrittenPlan = {
  format: typeof PLAN_FORMAT
  version: typeof PLAN_VERSION
} & DocumentOf<Fields['plan']>
/** One of one hiker. */
export type PlanDocument = Omit<WrittenPlan, 'carrier' | 'people' | 'split'> & {
  carrier: NonNullable<WrittenPlan['carrier']>
}
/** One of a party. */
export type PartyDocument = Omit<WrittenPlan, 'carrier' | 'people'> & {
  people: NonNullable<WrittenPlan['people']>
}
export type PersonDocument = DocumentOf<Fields['person']>
export type StopDocument = DocumentOf<Fields['stop']>
export type ItemDocument = DocumentOf<Fields['item']>
export type PackDocument = DocumentOf<Fields['pack']>
export type PackingDocument = DocumentOf<Fields['packing']>
export type SetupDocument = DocumentOf<Fields['setup']>
