// Gear as a plan may hold it, for what must survive being written and read: every field, odd names, figures as typed.

import fc from 'fast-check'
import { cleanText, type DraftItem, LIMITS, type Limit } from '../../../src/plan'

type Opt<T> = fc.Arbitrary<T | undefined>
const opt = <T>(value: fc.Arbitrary<T>): Opt<T> => fc.option(value, { nil: undefined, freq: 2 })

/** A figure within its limit as somebody types it: up to five decimals. */
const figure = ({ min, max }: Limit) =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.nat(5))
    .map(([value, digits]) => Math.min(max, Math.max(min, Number(value.toFixed(digits)))))

const tricky = fc.constantFrom(
  ...[
    '=',
    '+',
    '-',
    '@',
    "'",
    '"',
    ',',
    ';',
    '|',
    ' ',
    '＝',
    'SUM(A1)',
    'row 3',
    'Total',
    '1,5',
    'é',
    '√',
    '<b>',
    '🏕',
  ],
)
/** Words as they are kept: clean, in one line, not empty. */
export const words = fc
  .oneof(
    fc.string({ maxLength: 20 }),
    fc.string({ unit: 'grapheme', maxLength: 12 }),
    fc.array(tricky, { maxLength: 6 }).map(t => t.join('')),
  )
  .map(text => cleanText(text.replace(/\s+/g, ' ')).trim())
const names = words.filter(text => text !== '')

const truth = fc.boolean()
const range = fc
  .tuple(figure(LIMITS.item.litres), figure(LIMITS.item.litres), figure(LIMITS.item.litres))
  .map(three => {
    const [low = 0, typical = 0, high = 0] = [...three].sort((a, b) => a - b)
    return { low, typical, high }
  })

const fuel = fc.record(
  {
    kind: fc.constantFrom('gas' as const, 'white-gas', 'ethanol', 'methanol', 'tablet'),
    boilLitres: figure(LIMITS.fuel.boilLitres),
    startC: figure(LIMITS.fuel.startC),
    meltLitres: figure(LIMITS.fuel.meltLitres),
    altitudeM: figure({ ...LIMITS.fuel.altitudeM, min: 0 }),
    efficiency: figure(LIMITS.fuel.efficiency),
  },
  { requiredKeys: ['kind'] },
)

const loose = fc.record({
  name: names,
  group: opt(names),
  count: opt(fc.integer({ min: 0, max: 1000 }).filter(count => count !== 1)),
  massKg: opt(figure(LIMITS.item.massKg)),
  litres: opt(figure(LIMITS.item.litres)),
  stow: opt(fc.constantFrom('main-body' as const, 'outside-pocket', 'strapped-on', 'worn')),
  build: opt(fc.constantFrom('soft' as const, 'rigid')),
  use: opt(fc.constantFrom('kept' as const, 'daily', 'nightly', 'spread')),
  leaves: opt(figure(LIMITS.item.leaves)),
  resupplied: opt(truth),
  kcalPerKg: opt(figure(LIMITS.item.kcalPerKg)),
  fuel: opt(fuel),
  holdsLitres: opt(figure(LIMITS.item.holdsLitres)),
  holdsWaterLitres: opt(figure(LIMITS.item.holdsWaterLitres)),
  lengthCm: opt(figure(LIMITS.item.lengthCm)),
  diameterCm: opt(figure(LIMITS.item.diameterCm)),
  widthCm: opt(figure(LIMITS.item.widthCm)),
  depthCm: opt(figure(LIMITS.item.depthCm)),
  optional: opt(truth),
  atHome: opt(truth),
  mayRideOutside: opt(truth),
  massFrom: opt(fc.constantFrom('scale' as const, 'stated', 'guess')),
  litresFrom: opt(fc.constantFrom('filled' as const, 'dimensions', 'stated', 'guess')),
  litresRange: opt(range),
})

/** One item as the rules of a plan allow it, without an id. */
const item = loose.map(made => {
  const { litresRange, use = 'kept' } = made
  const kept: Record<string, unknown> = { ...made }
  if (litresRange) {
    kept.litresFrom = 'kind'
    delete kept.litres
  }
  if (use !== 'daily' && use !== 'nightly') delete kept.resupplied
  if (use !== 'nightly') delete kept.fuel
  return Object.fromEntries(Object.entries(kept).filter(([, value]) => value !== undefined))
})

/** A gear list whose items have ids and ride in each other's containers. */
export const gearLists: fc.Arbitrary<DraftItem[]> = fc
  .array(fc.tuple(item, fc.nat(30)), { maxLength: 12 })
  .map(list => {
    const gear = list.map(([made], i) => ({ ...made, id: `i${i}` }) as DraftItem)
    const containers = gear.filter(({ holdsLitres }) => holdsLitres !== undefined)
    return gear.map((each, i) => {
      const container = containers[list[i]![1]]
      return container && each.holdsLitres === undefined ? { ...each, inside: container.id } : each
    })
  })
