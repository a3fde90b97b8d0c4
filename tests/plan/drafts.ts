// Drafts for tests: one whole plan, and arbitrary ones for the property tests.

import fc from 'fast-check'
import { type Draft, emptyDraft, quickTrip } from '../../src/plan'

/** Ids in order: "n1", "n2", … */
export function counter(prefix = 'n'): () => string {
  let count = 0
  return () => `${prefix}${++count}`
}

export function wholeDraft(): Draft {
  return {
    ...quickTrip(emptyDraft(), { days: 4 }, counter('s')),
    name: 'Ridge',
    carrier: { massKg: 64 },
    gear: [
      { id: 'food', name: 'Food', massKg: 0.7, litres: 1.8, use: 'daily', kcalPerKg: 4200 },
      { id: 'box', name: 'Box', massKg: 0.9, litres: 11, holdsLitres: 10 },
      { id: 'pot', name: 'Pot', massKg: 0.2, litres: 1, inside: 'box' },
    ],
    packs: [
      {
        id: 'big',
        name: 'Big',
        bodyLitres: 60,
        setups: [{ id: 'sold', name: 'as sold', massKg: 1.6, frame: 'framed' }],
      },
    ],
  }
}

const number = fc.oneof(
  fc.double(),
  fc.integer({ min: -5, max: 400 }),
  fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY, 1e308),
)
const junk = fc.oneof(number, fc.string(), fc.boolean(), fc.constant(null), fc.constant([]), fc.constant({}))
const maybe = <T>(value: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 4, arbitrary: value }, { weight: 1, arbitrary: junk })
const id = fc.oneof(fc.constantFrom('a', 'b', 'c', 'd/e', '~', '__proto__', ''), fc.uuid(), fc.string())

function fields(names: string, value: fc.Arbitrary<unknown> = number) {
  return Object.fromEntries(names.split(' ').map(name => [name, maybe(value)]))
}
const part = (shape: Record<string, fc.Arbitrary<unknown>>) => fc.record(shape, { requiredKeys: [] })
const choice = (...words: string[]) => maybe(fc.constantFrom(...words, 'other'))

const leg = part({
  ...fields('km ascentM descentM hours airC humidity'),
  sun: maybe(fc.boolean()),
  ground: choice('trail', 'sand'),
})
const stop = part({
  id,
  name: maybe(fc.string()),
  water: choice('sure', 'none'),
  ...fields('nights'),
  resupply: maybe(fc.boolean()),
  shop: maybe(fc.boolean()),
  leg: maybe(leg),
})
const item = part({
  id,
  name: maybe(fc.string()),
  ...fields('count massKg litres leaves kcalPerKg holdsLitres holdsWaterLitres lengthCm'),
  use: choice('kept', 'daily', 'nightly', 'spread'),
  stow: choice('main-body', 'worn'),
  inside: maybe(id),
  resupplied: maybe(fc.boolean()),
  fuel: maybe(part({ kind: choice('gas'), ...fields('boilLitres efficiency') })),
  strange: junk,
})
const setup = part({
  id,
  name: maybe(fc.string()),
  ...fields('massKg ratedKg'),
  frame: choice('framed', 'frameless'),
})
const pack = part({
  id,
  name: maybe(fc.string()),
  ...fields('bodyLitres collarLitres'),
  setups: maybe(fc.array(setup, { maxLength: 4 })),
})
const meals = part({
  ...fields('breakfast trail supper spareDays', fc.double({ min: 0, max: 1 })),
  ration: choice('energy', 'fixed'),
})

const packing = part({
  date: choice('2026-05-02'),
  pack: maybe(fc.string()),
  ...fields('p overLitres packLitres W d'),
  things: maybe(
    fc.array(maybe(part({ id, ...fields('litres u'), litresFrom: choice('guess') })), { maxLength: 3 }),
  ),
})
const draft = part({
  name: maybe(fc.string()),
  carrier: maybe(part(fields('massKg heightCm ageYears loadShareLimit'))),
  trip: maybe(
    part({
      stops: maybe(fc.array(maybe(stop), { maxLength: 4 })),
      meals: maybe(meals),
      water: maybe(part(fields('campLitres'))),
      pace: maybe(part(fields('flatKmh'))),
      weather: maybe(part({ ...fields('airC humidity'), sun: maybe(fc.boolean()) })),
    }),
  ),
  gear: maybe(fc.array(maybe(item), { maxLength: 4 })),
  packs: maybe(fc.array(maybe(pack), { maxLength: 4 })),
  packings: maybe(fc.array(maybe(packing), { maxLength: 4 })),
  settings: maybe(part(fields('linerKg roomyRatio personalFactorSpread'))),
  ['__proto__' as string]: junk,
})

/** Anything that looks more or less like a draft, and now and then something that does not at all. */
export const anyDraft = fc.oneof(
  { weight: 9, arbitrary: draft },
  { weight: 1, arbitrary: fc.anything() },
) as fc.Arbitrary<Draft>
export const anyTyped = fc.dictionary(
  fc.oneof(
    fc.constantFrom(
      'carrier/massKg',
      'gear/a/litres',
      'trip/stops/a/leg/km',
      'trip/water/campLitres',
      'trip/weather/airC',
      'packs/a/setups/b/massKg',
    ),
    fc.string(),
  ),
  fc.string(),
)
