// The plan document as files and forms hold it: the one place where a plan is checked.
// Unknown fields are refused by name; every number is finite and inside the range of its row among the fields.

import * as z from 'zod/mini'
import { CAPS } from './caps'
import {
  type Choice,
  FIELDS,
  type Field,
  type ItemDocument,
  type Limit,
  type PackDocument,
  type Rows,
  type WrittenPlan,
} from './fields'
import { PLAN_FORMAT, PLAN_VERSION } from './format'

type Schema = z.core.SomeType
type Bounds = Extract<Field, { as: 'list' }>

const rangeText = ({ min, max, unit }: Limit) => `${min} to ${max} ${unit}`

function number(limit: Limit) {
  const error = limit.whole
    ? `write a whole number from ${rangeText(limit)}`
    : `write a number from ${rangeText(limit)}`
  const checks = [z.gte(limit.min, { error }), z.lte(limit.max, { error })]
  const base = z.number({ error: issue => (issue.input === undefined ? `missing: ${error}` : error) })
  return limit.whole ? base.check(...checks, wholeNumber(error)) : base.check(...checks)
}

/** As `multipleOf(1)`, which lets the smallest fractions a double can hold pass. */
const wholeNumber = (message: string) =>
  z.check<number>(({ value: input, issues }) => {
    if (Number.isInteger(input)) return
    issues.push({ code: 'not_multiple_of', divisor: 1, origin: 'number', input, message })
  })

function choice({ choices }: Choice) {
  const options = Object.keys(choices)
  const list = options.map(o => `"${o}"`).join(', ')
  return z.enum(options, { error: `write one of ${list}` })
}

const truth = z.boolean({ error: 'write true or false' })

const words = (maxLength: number) =>
  z
    .string({ error: 'write text in quotes' })
    .check(z.maxLength(maxLength, { error: `shorten it to ${maxLength} characters or fewer` }))

const name = words(CAPS.nameLength).check(z.minLength(1, { error: 'is empty: give it a name' }))
const text = words(CAPS.nameLength)

const date = z
  .string({ error: 'write a day as "2026-05-02"' })
  .check(z.regex(/^\d{4}-\d\d-\d\d$/, { error: 'write a day as "2026-05-02"' }))

/** An object that refuses unknown fields by name. */
function record(shape: Record<string, Schema>) {
  return z.strictObject(shape, { error: objectError })
}

const objectError: z.core.$ZodErrorMap = issue => {
  if (issue.code === 'unrecognized_keys') return 'is not a field of a plan: remove it or check its spelling'
  return issue.input === undefined ? 'is missing: write an object in braces' : 'write an object in braces'
}

function list(entry: Schema, { least, most, what }: Bounds) {
  return z
    .array(entry, { error: `write a list of ${what} in square brackets` })
    .check(
      z.minLength(least, { error: `give ${least} or more ${what}` }),
      z.maxLength(most, { error: `holds too many ${what}: ${most} at most` }),
    )
}

function valueSchema(row: Field): Schema {
  switch (row.as) {
    case 'amount':
      return row.or === undefined ? number(row) : numberOr(row, row.or)
    case 'choice':
      return choice(row)
    case 'truth':
      return truth
    case 'text':
      return row.filled ? name : text
    case 'day':
      return date
    case 'part':
      return record(shapeOf(row.rows))
    case 'list':
      return list(
        row.rows === FIELDS.item ? item : row.rows === FIELDS.pack ? pack : record(shapeOf(row.rows)),
        row,
      )
  }
}

function numberOr(limit: Limit, word: string) {
  const error = `write a number from ${rangeText(limit)}, or "${word}"`
  return z.union([z.literal(word), number(limit)], { error })
}

/** Absent means absent: a key that holds undefined would hide its default. */
function fieldSchema(row: Field): Schema {
  const value = row.nullable ? z.nullable(valueSchema(row)) : valueSchema(row)
  return row.need ? value : z.exactOptional(value)
}

function shapeOf(rows: Rows): Record<string, Schema> {
  return Object.fromEntries(Object.entries(rows).map(([name, row]) => [name, fieldSchema(row)]))
}

/** Whether a value that the other rules may refuse is an object without the fields. */
const isWithout = (value: unknown, ...fields: string[]) =>
  typeof value === 'object' && value !== null && !fields.some(field => Object.hasOwn(value, field))

/** A kind gives its litres as a range; every other item needs them as one number. Said with all else that is wrong. */
const item = record(shapeOf(FIELDS.item)).check(
  z.refine(({ litres, litresFrom }) => litres !== undefined || litresFrom === 'kind', {
    path: ['litres'],
    error: `missing: write a number from ${rangeText(FIELDS.item.litres)}`,
    when: ({ value }) => isWithout(value, 'litres'),
  }),
)

/** A pack gives the litres of its main body, or of all it holds. */
const pack = record(shapeOf(FIELDS.pack)).check(
  z.refine(({ bodyLitres, totalLitres }) => bodyLitres !== undefined || totalLitres !== undefined, {
    path: ['bodyLitres'],
    error: `missing: write a number from ${rangeText(FIELDS.pack.bodyLitres)}, or give the litres in all`,
    when: ({ value }) => isWithout(value, 'bodyLitres', 'totalLitres'),
  }),
)

/** A plan is of one hiker or of several people. */
const plan = record({
  format: z.literal(PLAN_FORMAT, { error: `write "${PLAN_FORMAT}"` }),
  version: z.literal(PLAN_VERSION, { error: `write ${PLAN_VERSION}` }),
  ...shapeOf(FIELDS.plan),
}).check(
  z.refine(({ carrier, people }) => carrier !== undefined || people !== undefined, {
    path: ['carrier'],
    error: 'is missing: write an object in braces, or give people instead',
    when: ({ value }) => isWithout(value, 'carrier', 'people'),
  }),
)

// What they let pass is what the rows say, which is where the types of documents come from.
type SchemaOf<T> = z.ZodMiniType<T> & Pick<typeof plan, 'def' | 'shape'>
export const itemSchema = item as unknown as SchemaOf<ItemDocument>
export const packSchema = pack as unknown as SchemaOf<PackDocument>
export const planSchema = plan as unknown as SchemaOf<WrittenPlan>
