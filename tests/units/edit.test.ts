// The text in an input stands for the stored value: leaving a field untouched moves nothing.
import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { bareUnitOf, editText, parseQuantity, type System, type Unit, unitChoices } from '../../src/units'
import { golden } from './golden'
import { kinds } from './kinds'

const LOCALES = ['en', 'de', 'fr', 'sv', 'de-CH', 'pt', 'ru', 'ar-EG', 'hi', 'ja']
const metric = { system: 'metric' } as const
const us = { system: 'us' } as const

const back = (
  kind: (typeof kinds)[number],
  text: string,
  options: { system: System; bareUnit?: Unit },
): number => {
  const parsed = parseQuantity(kind, text, options)
  if (!parsed.ok || parsed.empty) throw new Error(`"${text}" did not read back as ${kind}`)
  return parsed.value
}

test('the text is a short bare number in the unit of the field', () => {
  expect(editText('mass', 1.4, metric)).toBe('1.4')
  expect(editText('mass', 0.009, { ...metric, bareUnit: 'g' })).toBe('9')
  expect(editText('mass', 1.2, { ...metric, bareUnit: 'g' })).toBe('1200')
  expect(editText('mass', 0.45359237, us)).toBe('1')
  expect(editText('mass', 0.9, { ...us, bareUnit: 'oz' })).toBe('31.74656575')
  expect(editText('share', 0.07, metric)).toBe('7')
  expect(editText('temperature', -20, us)).toBe('-4')
  expect(editText('volume', 49.161192, { ...us, bareUnit: 'cu in' })).toBe('3000')
  expect(editText('mass', 0, metric)).toBe('0')
  expect(editText('mass', -0, metric)).toBe('0')
  expect(editText('mass', 1e-7, metric)).toBe('0.0000001')
  expect(editText('mass', Number.NaN, metric)).toBe('')
})

test('a duration is written as hours and minutes where that is shorter', () => {
  expect(editText('duration', 16 / 3, metric)).toBe('5:20')
  expect(editText('duration', 1 / 60, metric)).toBe('0:01')
  expect(editText('duration', 5.5, metric)).toBe('5.5')
  expect(editText('duration', 5, metric)).toBe('5')
})

test('the decimal mark may be that of a language, and is never taken for thousands', () => {
  expect(editText('mass', 1.4, { ...metric, locale: 'de' })).toBe('1,4')
  expect(editText('mass', 1.234, { ...metric, locale: 'de' })).toBe('1,234')
  expect(editText('mass', 1.234, { ...us, bareUnit: 'kg', locale: 'de' })).toBe('1,2340')
  expect(editText('gramsPerKg', 9998.999996875, { ...us, locale: 'pt' })).toBe('159,9840')
})

describe.each(LOCALES)('in %s', locale => {
  const values = fc.tuple(fc.double({ min: 1e-6, max: 9999, noNaN: true }), fc.boolean())
  const anyKind = fc.constantFrom(...kinds.filter(kind => kind !== 'count'))

  it('any value comes back within 1e-9 of itself, and a second time unchanged', () => {
    fc.assert(
      fc.property(anyKind, values, fc.constantFrom<System>('metric', 'us'), (kind, [value, fine], system) => {
        const options = { system, bareUnit: bareUnitOf(kind, system, fine) }
        const text = editText(kind, value, { ...options, locale })
        const once = back(kind, text, options)
        // 10 digits of a Fahrenheit reading near its own zero hold fewer digits of the Celsius value.
        expect(Math.abs(once - value)).toBeLessThanOrEqual(
          1e-9 * Math.max(value, kind === 'temperature' ? 20 : 0),
        )
        expect(editText(kind, once, { ...options, locale })).toBe(text)
        expect(back(kind, text, options)).toBe(once)
      }),
    )
  })

  it('a value that was typed with up to 10 digits comes back exactly', () => {
    const typed = fc.tuple(fc.integer({ min: 0, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }))
    fc.assert(
      fc.property(
        anyKind,
        typed,
        fc.constantFrom<System>('metric', 'us'),
        (kind, [digits, places], system) => {
          const value = back(kind, (digits / 10 ** places).toFixed(places), { system })
          expect(back(kind, editText(kind, value, { system, locale }), { system })).toBe(value)
        },
      ),
    )
  })
})

test('every golden value stays put after the first time the field is left, in every unit of its kind', () => {
  for (const { kind, system, rows } of golden) {
    for (const bareUnit of unitChoices(kind)) {
      for (const [, value] of rows.slice(0, 4)) {
        const options = { system, bareUnit }
        const once = back(kind, editText(kind, value, options), options)
        let last = once
        for (let i = 0; i < 10; i++) last = back(kind, editText(kind, last, options), options)
        expect(last).toBe(once)
      }
    }
  }
})
