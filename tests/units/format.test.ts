// How stored values are shown: default units and decimals, carrying, rounding to a side, no-break spaces,
// and that what is shown can be typed back in ten languages.
import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import {
  type FormatOptions,
  formatQuantity,
  parseQuantity,
  type Quantity,
  rangeText,
  type ShownUnit,
} from '../../src/units'
import { kinds } from './kinds'

const LOCALES = ['en', 'de', 'fr', 'sv', 'de-CH', 'pt', 'ru', 'ar-EG', 'hi', 'ja']
const POUND = 0.45359237
const metric = { system: 'metric' } as const
const us = { system: 'us' } as const

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ')

const shown: [Quantity, number, FormatOptions, string][] = [
  ['mass', 0, metric, '0 g'],
  ['mass', 0.0052, metric, '5.2 g'],
  ['mass', 0.00996, metric, '10 g'],
  ['mass', 0.0123, metric, '12 g'],
  ['mass', 0.9994, metric, '999 g'],
  ['mass', 0.9996, metric, '1.00 kg'],
  ['mass', 0.9994, { ...metric, round: 'up' }, '1.00 kg'],
  ['mass', 1.2345, metric, '1.23 kg'],
  ['mass', 1.2345, { ...metric, digits: 1 }, '1.2 kg'],
  ['mass', 0.65, { ...metric, digits: 1 }, '650 g'],
  ['mass', 0.65, { ...metric, unit: 'kg' }, '0.65 kg'],
  ['mass', 1.2, { ...metric, unit: 'g' }, '1200 g'],
  ['mass', 0.0125, { ...metric, unit: 'g', digits: 2 }, '12.50 g'],
  ['mass', -0.3, metric, '−300 g'],
  ['mass', 0, us, '0.0 oz'],
  ['mass', 0.3, us, '10.6 oz'],
  ['mass', 2 * POUND + (3.1 * POUND) / 16, us, '2 lb 3.1 oz'],
  ['mass', (15.96 / 16) * POUND, us, '1 lb 0 oz'],
  ['mass', (15.96 / 16) * POUND, { ...us, digits: 0 }, '1 lb 0 oz'],
  ['mass', (31.99 / 16) * POUND, us, '2 lb 0 oz'],
  ['mass', -1.5 * POUND, us, '−1 lb 8 oz'],
  ['mass', 20 * POUND, { ...us, unit: 'lb' }, '20.0 lb'],
  ['volume', 45.21, metric, '45.2 L'],
  ['volume', 45.21, us, '45.2 L'],
  ['volume', 45.21, { ...metric, digits: 0, round: 'up' }, '46 L'],
  ['volume', 45.99, { ...metric, digits: 0, round: 'down' }, '45 L'],
  ['volume', 49.161192, { ...us, unit: 'cu in' }, '3000 cu in'],
  ['volume', 2, { ...us, unit: 'qt' }, '2.1 qt'],
  ['volume', 0.5, { ...us, unit: 'fl oz' }, '16.9 fl oz'],
  ['volume', 0.5, { ...metric, unit: 'mL' }, '500 mL'],
  ['volume', -0.04, metric, '0.0 L'],
  ['volume', -3.24, metric, '−3.2 L'],
  ['distance', 12.34, metric, '12.3 km'],
  ['distance', 12.34, us, '7.7 mi'],
  ['climb', 1234.4, metric, '1234 m'],
  ['climb', 12_345, metric, '12 345 m'],
  ['climb', 1_234_567, metric, '1 234 567 m'],
  ['climb', 600, us, '1969 ft'],
  ['length', 60, metric, '60 cm'],
  ['length', 9.54, metric, '9.5 cm'],
  ['length', 60.96, us, '24 in'],
  ['length', 177.8, { ...us, unit: 'ft in' }, '5 ft 10 in'],
  ['length', 182.7, { ...us, unit: 'ft in' }, '6 ft 0 in'],
  ['temperature', 23.6, metric, '24 °C'],
  ['temperature', -3.7, metric, '−4 °C'],
  ['temperature', -0.2, metric, '0 °C'],
  ['temperature', -20, us, '−4 °F'],
  ['duration', 16 / 3, metric, '5 h 20 min'],
  ['duration', 5.9999, metric, '6 h'],
  ['duration', 0.999, metric, '1 h'],
  ['duration', 0.75, metric, '45 min'],
  ['duration', 5.25, { ...metric, unit: 'h' }, '5.2 h'],
  ['speed', 4, metric, '4.0 km/h'],
  ['speed', 4, us, '2.5 mph'],
  ['verticalSpeed', 300, metric, '300 m/h'],
  ['verticalSpeed', 300, us, '984 ft/h'],
  ['flow', 0.5, metric, '0.5 L/h'],
  ['flow', 0.946352946, us, '1 qt/h'],
  ['count', 3, metric, '3'],
  ['share', 0.2, metric, '20 %'],
  ['share', 0.145, { ...metric, digits: 1 }, '14.5 %'],
  ['number', 1.35, metric, '1.35'],
  ['number', 2, metric, '2'],
  ['money', 180, metric, '180'],
  ['money', 179.5, metric, '179.50'],
  ['density', 0.2768, metric, '0.28 kg/L'],
  ['density', 0.2768, us, '17.3 lb/cu ft'],
  ['energyDensity', 4400, metric, '4400 kcal/kg'],
  ['energyDensity', 4400, us, '125 kcal/oz'],
  ['gramsPerLitre', 20, metric, '20.0 g/L'],
  ['gramsPerLitre', 20, us, '0.71 oz/L'],
  ['gramsPerKg', 80, metric, '80 g/kg'],
  ['gramsPerKg', 80, us, '1.28 oz/lb'],
]

test.each(shown)('%s of %d with %o', (kind, value, options, text) => {
  expect(spaced(formatQuantity(kind, value, options))).toBe(text)
})

test('every kind is in the table above', () => {
  expect(new Set(shown.map(([kind]) => kind))).toEqual(new Set(kinds))
})

test('exact halves go to the even neighbour, and float noise is not a reason to round up', () => {
  expect(formatQuantity('volume', 1.25, metric)).toBe('1.2\u00a0L')
  expect(formatQuantity('volume', 1.35, metric)).toBe('1.4\u00a0L')
  expect(formatQuantity('mass', 1.005, metric)).toBe('1.00\u00a0kg')
  expect(formatQuantity('mass', 2.675, metric)).toBe('2.68\u00a0kg')
  expect(formatQuantity('volume', 0.1 + 0.2, { ...metric, round: 'up' })).toBe('0.3\u00a0L')
  expect(formatQuantity('volume', 0.301, { ...metric, round: 'up' })).toBe('0.4\u00a0L')
})

test('a value that is not finite is shown as a dash, and a unit of another kind is a fault of the caller', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(formatQuantity('mass', value, metric)).toBe('–')
    expect(rangeText('mass', 1, value, metric)).toBe('–')
  }
  expect(() => formatQuantity('mass', 1, { ...metric, unit: 'km' })).toThrow(RangeError)
})

const stored = fc.double({ min: 0, max: 2000, noNaN: true })
const system = fc.constantFrom<'metric' | 'us'>('metric', 'us')

test('no shown quantity can be broken between its number and its symbol', () => {
  fc.assert(
    fc.property(fc.constantFrom(...kinds), stored, system, (kind, value, s) => {
      expect(formatQuantity(kind, value, { system: s })).not.toContain(' ')
      expect(rangeText(kind, value, value * 1.2, { system: s })).not.toContain(' ')
    }),
  )
})

describe('carrying', () => {
  const carries: [Quantity, ShownUnit, string, string, number][] = [
    ['mass', 'lb oz', 'lb', 'oz', 16],
    ['length', 'ft in', 'ft', 'in', 12],
    ['duration', 'h min', 'h', 'min', 60],
  ]
  it.each(carries)(
    '%s as %s never shows a small part as large as its big one, nor 0 of the big one',
    (...args) => {
      const [kind, unit, big, small, per] = args
      fc.assert(
        fc.property(
          stored,
          fc.integer({ min: 0, max: 3 }),
          fc.constantFrom('nearest', 'up', 'down'),
          (value, digits, round) => {
            const text = spaced(formatQuantity(kind, value, { ...us, unit, digits, round: round as 'up' }))
            const smallPart = text.match(new RegExp(`([\\d. ]+) ${small}$`))
            const bigPart = text.match(new RegExp(`^([\\d ]+) ${big}`))
            expect(smallPart ?? bigPart).not.toBeNull()
            if (bigPart) expect(Number(bigPart[1]!.replaceAll(' ', ''))).toBeGreaterThan(0)
            if (smallPart && !bigPart) expect(Number(smallPart[1])).toBeLessThan(per)
            if (smallPart && bigPart) expect(Number(smallPart[1]!.trim())).toBeLessThan(per)
          },
        ),
      )
    },
  )
})

test('up never shows less than the value, down never more', () => {
  fc.assert(
    fc.property(stored, fc.integer({ min: 0, max: 3 }), (litres, digits) => {
      const read = (round: 'up' | 'down'): number => {
        const text = formatQuantity('volume', litres, { ...metric, digits, round })
        return Number(text.replace(/[^\d.]/g, ''))
      }
      expect(read('up')).toBeGreaterThanOrEqual(litres * (1 - 1e-11))
      expect(read('down')).toBeLessThanOrEqual(litres * (1 + 1e-11))
      expect(read('up') - read('down')).toBeLessThanOrEqual(10 ** -digits * (1 + 1e-9))
    }),
  )
})

// Half of the last shown decimal of the unit that is shown by default, in the stored unit; lb oz by its 0.1 oz.
const HALF_STEP: Record<Quantity, [metric: number, us: number]> = {
  mass: [0.005, 0.05 * 0.0283495232],
  volume: [0.05, 0.05],
  distance: [0.05, 0.05 * 1.609344],
  climb: [0.5, 0.5 * 0.3048],
  length: [0.05, 0.05 * 2.54],
  temperature: [0.5, (0.5 * 5) / 9],
  duration: [0.5 / 60, 0.5 / 60],
  speed: [0.05, 0.05 * 1.609344],
  verticalSpeed: [0.5, 0.5 * 0.3048],
  flow: [0.005, 0.005 * 0.946352946],
  count: [0.5, 0.5],
  share: [0.005, 0.005],
  number: [0.005, 0.005],
  money: [0.005, 0.005],
  density: [0.005, 0.05 * 0.0160184634],
  energyDensity: [0.5, 0.5 * 35.27396195],
  gramsPerLitre: [0.05, 0.005 * 28.349523125],
  gramsPerKg: [0.5, 0.005 * 62.5],
}

describe.each(LOCALES)('what is shown in %s', locale => {
  it.each(kinds)('can be typed back: %s', kind => {
    const magnitude = fc.tuple(stored, fc.constantFrom(1e-3, 1, 1e3)).map(([x, scale]) => x * scale)
    fc.assert(
      fc.property(magnitude, system, (value, s) => {
        const parsed = parseQuantity(kind, formatQuantity(kind, value, { system: s, locale }), { system: s })
        expect(parsed).toMatchObject({ ok: true, empty: false })
        const off = Math.abs((parsed as { value: number }).value - value)
        expect(off).toBeLessThanOrEqual(HALF_STEP[kind][s === 'us' ? 1 : 0] * (1 + 1e-6) + value * 1e-11)
      }),
    )
  })

  it('can be typed back below zero', () => {
    for (const celsius of [-1, -12, -40]) {
      const text = formatQuantity('temperature', celsius, { ...metric, locale })
      expect(parseQuantity('temperature', text, metric)).toMatchObject({ value: celsius })
    }
  })
})

test('the decimal mark and the digits follow the language, the grouping does not', () => {
  expect(formatQuantity('volume', 45.2, { ...metric, locale: 'de' })).toBe('45,2\u00a0L')
  expect(formatQuantity('volume', 45.2, { ...metric, locale: 'ar-EG' })).toBe('٤٥٫٢\u00a0L')
  for (const locale of ['en', 'de', 'hi']) {
    expect(formatQuantity('climb', 1_234_567, { ...metric, locale })).toBe('1\u202f234\u202f567\u00a0m')
  }
})

describe('a range', () => {
  const ranges: [Quantity, number, number, FormatOptions, string][] = [
    ['volume', 42, 48, metric, '42–48 L'],
    ['volume', 42.6, 47.2, { ...metric, digits: 0 }, '42–48 L'],
    ['volume', 42.6, 47.2, { ...metric, digits: 0, round: 'nearest' }, '43–47 L'],
    ['volume', 42.13, 47.91, metric, '42.1–48.0 L'],
    ['volume', 45, 45, metric, '45 L'],
    ['mass', 0.9, 1.2, metric, '0.90–1.20 kg'],
    ['mass', 0.5, 0.7, metric, '500–700 g'],
    ['mass', 0.9, 1.2, us, '1.9–2.7 lb'],
    ['mass', 0.1, 0.2, us, '3.5–7.1 oz'],
    ['duration', 5, 6.2, metric, '5.0–6.2 h'],
    ['duration', 0.5, 0.75, metric, '30–45 min'],
    ['temperature', -5, 5, metric, '−5 to 5 °C'],
    ['share', 0.85, 0.95, metric, '85–95 %'],
  ]
  it.each(ranges)('of %s from %d to %d with %o', (kind, low, high, options, text) => {
    expect(spaced(rangeText(kind, low, high, options))).toBe(text)
  })
})
