// What people type into what is stored: "2 lb 3 oz", "1,4 kg", "3000 in³", "5:30", "75F".
// A hand-written reader, linear in a text of at most 200 characters; every refusal says how to mend it.
import { over } from './exact'
import { bareUnitOf, dimensionOf, examplesOf, type Quantity, type System, scaleOf } from './kinds'
import { plainText, type Scanned, scanNumber } from './numbers'
import { type Measure, measureOf, type Unit } from './table'
import { readUnit } from './words'

const LONGEST = 200
// "1lb3", "5'10", "5h30": the unit of a last number that has none.
const IMPLIED: Partial<Record<string, Unit>> = { lb: 'oz', st: 'lb', ft: 'in', h: 'min' }
const COMPOUND = ['mass', 'volume', 'length', 'time']

/** How a bare number is read; bareUnit is a unit of the kind (see bareUnitOf). */
export type ParseOptions = { system: System; bareUnit?: Unit }

/**
 * A value in the kind's stored unit, nothing typed, or a message. `echo` asks the field to show what was
 * understood, because the text could be read in another way.
 */
export type Parsed =
  | { ok: true; empty: false; value: number; echo: boolean }
  | { ok: true; empty: true; value: null; echo: false }
  | { ok: false; message: string }

/** n / d of a unit; whole where the number that was read last has no fraction. */
type Sum = { n: number; d: number; measure: Measure; whole: boolean; doubt: boolean }

const named = (dimension: string): string => {
  if (!dimension) return 'a number without a unit'
  if (dimension === 'length/time') return 'a speed'
  return `${dimension[0] === 'e' ? 'an' : 'a'} ${dimension.replace('/', ' per ')}`
}

/**
 * Reads typed text as a quantity of this kind. Below zero only for temperatures; counts are whole. The value is
 * finite and rounded once. Throws RangeError only for a bareUnit that is no unit of the kind.
 */
export const parseQuantity = (kind: Quantity, text: string, options: ParseOptions): Parsed => {
  const fail = (what: string): Parsed => ({
    ok: false,
    message: `${what}. Write for instance ${examplesOf(kind)}.`,
  })
  const bare = measureOf(options.bareUnit ?? bareUnitOf(kind, options.system))
  scaleOf(kind, bare)
  if (text.length > LONGEST) return fail(`${text.length} characters; the field reads up to ${LONGEST}`)

  const s = settle(kind, plainText(text))
  if (!s) return { ok: true, empty: true, value: null, echo: false }
  const shown = text.trim()
  const quote = `"${shown.length > 40 ? `${shown.slice(0, 40)}…` : shown}"`
  const below = s[0] === '-'
  if (below && kind !== 'temperature') return fail(`${quote} is below zero; this field starts at 0`)

  const sum = readSum(kind, below || s[0] === '+' ? s.slice(1) : s, {
    bare,
    commaGroups: options.system === 'us',
  })
  if (typeof sum === 'string') return fail(quote + sum)
  const { num, den } = scaleOf(kind, sum.measure)
  // The sign belongs to the reading, not to the result: -4 °F is 36 °F below freezing. + 0 mends -0.
  const value = (((below ? -sum.n : sum.n) - sum.measure.zeroAt * sum.d) * num) / (sum.d * den) + 0
  if (!Number.isFinite(value)) return fail(`${quote} is too large a number`)
  if (kind === 'count' && !Number.isInteger(value)) return fail(`${quote} is not a whole number`)
  return { ok: true, empty: false, value, echo: sum.doubt }
}

/** A lone ° stands for the field's own degree; 5:30 is 5 h 30, whose second number then is minutes. */
const settle = (kind: Quantity, s: string): string => {
  if (kind === 'temperature') return s.replace(/°$/, '').trim()
  return kind === 'duration' ? s.replace(/^(\d+):([0-5]\d)(?!\d)/, '$1h$2') : s
}

const unreadable = (s: string, at: number): string => `: cannot read "${s.slice(at, at + 20).trim()}"`

type Reading = { bare: Measure; commaGroups: boolean }

/** All terms of the text in the unit of the last, or what is wrong with it. */
const readSum = (kind: Quantity, s: string, { bare, commaGroups }: Reading): Sum | string => {
  const dimension = dimensionOf(kind)
  let sum: Sum | undefined
  for (let at = s[0] === ' ' ? 1 : 0; at < s.length; at += s[at] === ' ' ? 1 : 0) {
    const number = scanNumber(s, at, commaGroups)
    if (!number) return unreadable(s, at)
    const word = readUnit(s, number.end, dimension)
    if ('unknown' in word) {
      if (!word.unknown) return unreadable(s, number.end)
      return dimension ? `: the unit "${word.unknown}" is not known here` : ': the number stands alone here'
    }
    const implied = sum ? IMPLIED[sum.measure.unit] : bare.unit
    const measure = word.measure ?? (implied === undefined ? implied : measureOf(implied as Unit))
    if (!measure) return ': the last number has no unit'
    if (measure.dimension !== dimension)
      return ` is ${named(measure.dimension)}; this field takes ${named(dimension)}`
    const doubt =
      number.ambiguous ||
      word.word.startsWith('cal') ||
      (kind === 'distance' && measure.unit === 'm') ||
      (kind === 'speed' && measure.unit === 'm/h')
    const next = { ...number, measure, doubt }
    if (!sum) sum = next
    else {
      const added = add(sum, next, !word.word)
      if (!added) return ': one quantity is read here, its larger unit first'
      sum = added
    }
    at = word.end
  }
  return sum ?? ' holds no number'
}

/** The sum in the smaller unit, exact while it is made of integers; none where the units do not descend. */
const add = (a: Sum, b: Sum & Scanned, implied: boolean): Sum | undefined => {
  const { num, den } = over(a.measure.size, b.measure.size)
  if (!COMPOUND.includes(b.measure.dimension) || num <= den) return undefined
  // "1.5 lb 3 oz" and "2 lb 20 oz" have one reading but may be slips.
  const slip = !a.whole || b.n * den >= b.d * num
  return {
    ...b,
    n: a.n * num * b.d + b.n * a.d * den,
    d: a.d * den * b.d,
    doubt: a.doubt || b.doubt || implied || slip,
  }
}
