// What may be typed, what is refused and in which words, and that no text breaks the reader.
import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { examplesOf, type Parsed, parseQuantity, type Quantity } from '../../src/units'
import { golden } from './golden'
import { kinds } from './kinds'

const cases = golden.flatMap(({ rows, ...block }) =>
  rows.map(([text, value, echo]) => ({ ...block, text, value, echo: echo === 'echo' })),
)

const messageOf = (kind: Quantity, text: string): string => {
  const parsed = parseQuantity(kind, text, { system: 'metric' })
  if (parsed.ok) throw new Error(`"${text}" was read as ${parsed.value}`)
  return parsed.message
}

test('the golden table has at least 200 cases and every kind in it', () => {
  expect(cases.length).toBeGreaterThanOrEqual(200)
  expect(new Set(cases.map(c => c.kind))).toEqual(new Set(kinds))
})

describe.each(golden)('$kind typed in $system ($bareUnit)', ({ rows, kind, ...options }) => {
  it.each(rows.map(([text, value, echo = '']) => [text, value, echo] as const))(
    'reads %j as %f %s',
    (text, value, echo) => {
      const parsed = parseQuantity(kind, text, options)
      expect(parsed).toMatchObject({ ok: true, empty: false, echo: echo === 'echo' })
      expect(Math.abs((parsed as { value: number }).value - value)).toBeLessThanOrEqual(
        1e-14 * Math.abs(value),
      )
    },
  )
})

test('a decimal of one term is converted with one rounding', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e9 }), grams => {
      expect(parseQuantity('mass', `${grams} g`, { system: 'metric' })).toMatchObject({ value: grams / 1000 })
      expect(parseQuantity('mass', `${grams / 10} g`, { system: 'metric' })).toMatchObject({
        value: grams / 10_000,
      })
    }),
  )
})

test('nothing typed is told apart from zero', () => {
  const nothing = { ok: true, empty: true, value: null, echo: false }
  for (const text of ['', ' ', '\t\n', '\u00a0', '\u200e', '.']) {
    expect(parseQuantity('mass', text, { system: 'metric' })).toEqual(nothing)
  }
  expect(parseQuantity('mass', '0', { system: 'metric' })).toEqual({
    ok: true,
    empty: false,
    value: 0,
    echo: false,
  })
})

const refused: [Quantity, string, string][] = [
  ['mass', '2 lbz', '"2 lbz": the unit "lbz" is not known here. Write for instance 900 g, 2 lb or 32 oz.'],
  ['mass', '3 km', '"3 km" is a length; this field takes a mass.'],
  ['mass', '32 fl oz', 'is a volume; this field takes a mass.'],
  [
    'volume',
    '5 oz',
    'is a mass; this field takes a volume. Write for instance 45 L, 500 mL, 3000 cu in or 32 fl oz.',
  ],
  ['distance', '5 kg', 'is a mass; this field takes a length.'],
  ['length', '24 °C', 'is a temperature; this field takes a length.'],
  ['mass', '5 h', 'is a time; this field takes a mass.'],
  ['speed', '5 km', 'is a length; this field takes a speed.'],
  ['speed', '5 L/h', 'is a volume per time; this field takes a speed.'],
  ['energyDensity', '5 kcal', 'is an energy; this field takes an energy per mass.'],
  ['number', '3 kg', 'is a mass; this field takes a number without a unit.'],
  ['share', '20 g', 'is a mass; this field takes a share.'],
  ['mass', '2 lb 3 km', 'is a length; this field takes a mass.'],
  ['mass', '-5', '"-5" is below zero; this field starts at 0.'],
  ['count', '−1', 'is below zero'],
  ['duration', '-5:30', 'is below zero'],
  ['count', '1.5', '"1.5" is not a whole number. Write for instance 3.'],
  ['mass', 'abc', 'cannot read "abc"'],
  ['mass', 'kg', 'cannot read "kg"'],
  ['mass', '12-14', 'cannot read "-14"'],
  ['mass', '1,2,3', 'cannot read "1,2,3"'],
  ['mass', '1,23,4', 'cannot read'],
  ['mass', '1,234,56', 'cannot read'],
  ['mass', '1.2.3', 'cannot read'],
  ['mass', '1.234,567.8', 'cannot read'],
  ['mass', '1,234.567,8', 'cannot read'],
  ['mass', '1. 234', 'cannot read'],
  ['mass', '1/0', 'cannot read "1/0"'],
  ['mass', '--5', 'is below zero'],
  ['mass', '+-5', 'cannot read "-5"'],
  ['temperature', '-', 'holds no number'],
  ['mass', '5 6', 'the last number has no unit'],
  ['mass', '5 kg 6', 'the last number has no unit'],
  ['mass', '3 oz 2 lb', 'one quantity is read here, its larger unit first'],
  ['mass', '3 lb 2 lb', 'one quantity is read here'],
  ['temperature', '20 C 5 F', 'one quantity is read here'],
  ['share', '20 % 5 %', 'one quantity is read here'],
  ['mass', '1e3', 'the unit "e" is not known here'],
  ['mass', 'Infinity', 'cannot read'],
  ['mass', 'NaN', 'cannot read'],
  ['mass', '0x10', 'is a count; this field takes a mass'],
  ['money', '€180', 'cannot read "€180". Write for instance 180 or 179.95.'],
  ['money', '180 EUR', 'the number stands alone here'],
  ['duration', '5:3', 'cannot read ":3"'],
  ['duration', '5:75', 'cannot read ":75"'],
  ['duration', ':30', 'cannot read ":30"'],
  ['mass', '5:30', 'cannot read ":30"'],
  ['flow', '5 L/', 'the unit "l/" is not known here'],
  ['flow', '5 L/wk', 'the unit "l/wk" is not known here'],
  ['mass', '5°', 'cannot read "°"'],
]

test.each(refused)('in %s, %j is refused', (kind, text, words) => {
  expect(messageOf(kind, text)).toContain(words)
  expect(messageOf(kind, text)).toMatch(/Write for instance .+\.$/)
})

test('no message uses a word that blames the person', () => {
  const banned = /please|sorry|\bvalid|invalid|forbidden|illegal|required|forgot|prohibited|oops|error/i
  for (const [kind, text] of refused) expect(messageOf(kind, text)).not.toMatch(banned)
  expect(messageOf('mass', 'x'.repeat(300))).not.toMatch(banned)
})

test('every example in a message can be typed in its field', () => {
  for (const kind of kinds) {
    for (const example of examplesOf(kind).split(/, | or /)) {
      expect(parseQuantity(kind, example, { system: 'metric' }), example).toMatchObject({
        ok: true,
        empty: false,
      })
    }
  }
})

test('a text over 200 characters is refused with its length, however long, and 200 are read', () => {
  expect(messageOf('mass', '9'.repeat(100_000))).toMatch(/^100000 characters; the field reads up to 200\./)
  expect(parseQuantity('mass', '9'.repeat(200), { system: 'metric' }).ok).toBe(true)
  expect(parseQuantity('mass', `${' '.repeat(196)}1 kg`, { system: 'metric' })).toMatchObject({ value: 1 })
})

test('a quoted text is cut at 40 characters', () => {
  expect(messageOf('mass', 'z'.repeat(150))).toContain(`"${'z'.repeat(40)}…"`)
})

const hostile = [
  ...[
    '1,',
    '1 1/',
    "1'",
    '1 ',
    ',',
    '.',
    '-',
    '½',
    '1 lb ',
    '°',
    'kg/',
    '٫',
    '\u202f',
    '\ufdfa',
    '\ud800',
    '<b>',
    '\0',
    'İ',
  ].map(bit => bit.repeat(Math.floor(200 / bit.length))),
  '__proto__',
  'constructor',
  '5 __proto__',
  '5 constructor',
  '5 toString',
  '<script>alert(1)</script>',
  '1\n2',
  '=1+1',
]

const isSound = (parsed: Parsed): boolean =>
  parsed.ok
    ? parsed.empty || (Number.isFinite(parsed.value) && !Object.is(parsed.value, -0))
    : parsed.message.length < 200

test.each(hostile)('the hostile text %j gives a finite value, nothing, or a short message', text => {
  for (const kind of kinds) expect(isSound(parseQuantity(kind, text, { system: 'us' }))).toBe(true)
})

test('any text gives a finite value, nothing, or a short message', () => {
  const near = fc
    .array(fc.constantFrom(...' 0123456789.,\'"/½-:°FCkglbozinfth%x٫٬٣'.split('')), { maxLength: 30 })
    .map(a => a.join(''))
  // Any UTF-16, lone surrogates too; fast-check's own 'binary' strings take seconds to set up.
  const units = fc.array(fc.nat(0xffff), { maxLength: 220 }).map(codes => String.fromCharCode(...codes))
  fc.assert(
    fc.property(fc.constantFrom(...kinds), fc.oneof(near, units), (kind, text) =>
      isSound(parseQuantity(kind, text, { system: 'metric' })),
    ),
    { numRuns: 1000 },
  )
})

test('a bare unit of another kind is a fault of the caller', () => {
  expect(() => parseQuantity('mass', '5', { system: 'metric', bareUnit: 'km' })).toThrow(RangeError)
  expect(() => parseQuantity('mass', '', { system: 'metric', bareUnit: 'stick' as 'm' })).toThrow(RangeError)
})
