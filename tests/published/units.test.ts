// Conversion factors against the world. Each row names its source and its standing.
import { expect, test } from 'vitest'
import {
  cubicInchL,
  fluidOunceL,
  footM,
  gallonL,
  inchM,
  inUnit,
  kcalKj,
  mileM,
  ounceKg,
  parseQuantity,
  poundKg,
  type Quantity,
  quartL,
  type Ratio,
} from '../../src/units'

type Standing =
  | 'published'
  | 'published, figure from memory'
  | 'from memory'
  | 'computed from the published equation'

const exact: [name: string, ratio: Ratio, num: bigint, den: bigint, source: string, standing: Standing][] = [
  ['1 in = 0.0254 m', inchM, 254n, 10_000n, '16 CFR 500.19: 1 inch = 2.54 cm exactly', 'published'],
  [
    '1 lb = 0.453 592 37 kg',
    poundKg,
    45_359_237n,
    10n ** 8n,
    'NIST SP 811 App. B',
    'published, figure from memory',
  ],
  ['1 kcal = 4.184 kJ', kcalKj, 4184n, 1000n, 'NIST SP 811 App. B, thermochemical calorie', 'from memory'],
  ['1 ft = 0.3048 m', footM, 3048n, 10_000n, '12 in', 'computed from the published equation'],
  ['1 mi = 1609.344 m', mileM, 1_609_344n, 1000n, '5280 ft', 'computed from the published equation'],
  [
    '1 oz = 28.349 523 125 g',
    ounceKg,
    28_349_523_125n,
    10n ** 12n,
    '1/16 lb',
    'computed from the published equation',
  ],
  [
    '1 in³ = 16.387 064 mL',
    cubicInchL,
    16_387_064n,
    10n ** 9n,
    'the inch cubed',
    'computed from the published equation',
  ],
  [
    '1 US gal = 3.785 411 784 L',
    gallonL,
    3_785_411_784n,
    10n ** 9n,
    '231 in³',
    'computed from the published equation',
  ],
  [
    '1 US qt = 0.946 352 946 L',
    quartL,
    946_352_946n,
    10n ** 9n,
    '1/4 gal',
    'computed from the published equation',
  ],
  [
    '1 US fl oz = 29.573 529 562 5 mL',
    fluidOunceL,
    295_735_295_625n,
    10n ** 13n,
    '1/128 gal',
    'computed from the published equation',
  ],
]

test.each(exact)('%s, to the last digit', (_name, { num, den }, expectedNum, expectedDen) => {
  expect(Number.isSafeInteger(num) && Number.isSafeInteger(den)).toBe(true)
  expect(BigInt(num) * expectedDen).toBe(expectedNum * BigInt(den))
})

const typed: [
  kind: Quantity,
  text: string,
  stored: number,
  tolerance: number,
  source: string,
  standing: Standing,
][] = [
  ['volume', '3000 cu in', 49.161192, 1e-9, 'exact factor', 'computed from the published equation'],
  ['volume', '560 cu in', 9.177, 0.002, 'exact factor', 'computed from the published equation'],
  ['volume', '1 gal', 3.785411784, 1e-12, '231 in³', 'computed from the published equation'],
  ['volume', '1 cu ft', 28.316846592, 1e-12, '1728 in³', 'computed from the published equation'],
  [
    'volume',
    '1 cup',
    0.236588,
    5e-7,
    '1/16 gal, rounded to the millilitre’s thousandth',
    'computed from the published equation',
  ],
  ['climb', '36 ft', 11, 0.05, 'NIST SP 811 B.7.2: 36 ft is written as 11.0 m', 'published'],
  ['length', '36 in', 91.44, 1e-12, 'NIST LC 1137: 36 in is 91.44 cm, written as 91 cm', 'published'],
  [
    'density',
    '17.28 lb/cu ft',
    0.276799,
    1e-6,
    '10 lb per 1000 in³, ASTM Standardization News, July 2002',
    'published',
  ],
]

test.each(typed)('in %s, %s is %d', (kind, text, stored, tolerance) => {
  const parsed = parseQuantity(kind, text, { system: 'us' })
  expect(parsed).toMatchObject({ ok: true, empty: false })
  expect(Math.abs((parsed as { value: number }).value - stored)).toBeLessThanOrEqual(tolerance)
})

// Exact factor; computed from the published equation.
test('60 L is 3661.424 645 683 9 cubic inches', () => {
  expect(inUnit('volume', 60, 'cu in')).toBeCloseTo(3661.4246456839, 9)
})

// The two fixed points by which the Fahrenheit scale is stated, and where the scales meet; from memory.
test.each([
  ['32 °F', 0],
  ['212 °F', 100],
  ['-40 °F', -40],
])('%s is %d °C', (text, celsius) => {
  expect(parseQuantity('temperature', text, { system: 'metric' })).toMatchObject({ value: celsius })
})
