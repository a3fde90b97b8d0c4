// Libraries for the tests of backups: trips as they are while one types (gaps, numbers out of range, unread text), a
// shelf, settings. Names hold whatever people and pranksters type.

import fc from 'fast-check'
import type { Backup, BackupTrip, Contents } from '../../src/files/backup'
import { readBackup } from '../../src/files/backup'
import type { Draft, DraftPack } from '../../src/plan'
import type { ShelfContents, Thing } from '../../src/plan/shelf'
import { readRecord, TRIP } from '../../src/store/record-kinds'

export const readTrip = (record: unknown) => readRecord(TRIP, record)

export const read = (text: string) => readBackup(text, readTrip)

export function opened(text: string): Backup {
  const found = read(text)
  if (!found.ok) throw new Error(found.message)
  return found.backup
}

export const empty = (): Contents => ({
  trips: [],
  shelf: { things: [], bases: [], packings: [], packs: [], typed: {} },
  settings: { system: 'metric', theme: 'auto' },
})

const name = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.constantFrom(
    'Ridge',
    '<b>bold</b>',
    '\u202eegdiR',
    'עברית',
    'constructor',
    '__proto__',
    'a\u0000b',
    '🎒',
  ),
)
const number = fc.oneof(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.integer({ min: -5, max: 100_000 }))
const id = fc.uuid()
const time = fc.integer({ min: 0, max: 2e12 })
const some = <T>(shape: { [K in keyof T]: fc.Arbitrary<T[K]> }) => fc.record(shape, { requiredKeys: [] })
const withId = <T>(rest: fc.Arbitrary<T>) => fc.tuple(id, rest).map(([key, entry]) => ({ ...entry, id: key }))
const listOf = <T extends { id: string }>(entry: fc.Arbitrary<T>) =>
  fc.uniqueArray(entry, { selector: each => each.id, maxLength: 4 })

const facts = some({
  name,
  group: name,
  count: number,
  massKg: number,
  litres: number,
  stow: fc.constantFrom('main-body', 'worn'),
  use: fc.constantFrom('kept', 'daily'),
  optional: fc.boolean(),
  fuel: some({ kind: fc.constantFrom('gas', 'ethanol'), boilLitres: number }),
  litresRange: some({ low: number, typical: number, high: number }),
})
const link = fc.record({ id, at: time })
const item = withId(fc.tuple(facts, some({ shelf: link, inside: id })).map(([a, b]) => ({ ...a, ...b })))
const stop = withId(
  some({
    name,
    nights: number,
    leg: some({ km: number, ascentM: number, sun: fc.boolean() }),
    resupply: fc.boolean(),
    shop: fc.boolean(),
  }),
)
const setup = withId(some({ name, massKg: number, frame: fc.constantFrom('framed', 'frameless') }))
const pack = withId(
  fc.tuple(some({ name, bodyLitres: number }), listOf(setup)).map(([rest, setups]) => ({ ...rest, setups })),
)

const ownPack = fc
  .tuple(
    pack,
    some({
      has: fc.constantFrom('owned', 'wanted'),
      starred: fc.constant(true),
      aside: name,
      notes: name,
      tags: fc.array(name, { maxLength: 3 }),
    }),
  )
  .map(([made, facts]) => ({ ...made, ...facts })) as unknown as fc.Arbitrary<DraftPack>

const marks = fc.dictionary(id, fc.constant(true as const), { maxKeys: 3 })
const times = fc.dictionary(id, fc.nat(1439), { maxKeys: 3 })
const log = some({
  packed: marks,
  unused: marks,
  weighedKg: fc.nat(40),
  weighedWaterLitres: fc.nat(5),
  weighedBare: fc.constant(true as const),
  left: fc.dictionary(id, some({ foodKg: fc.nat(9), fuelKg: fc.nat(2), waterLitres: fc.nat(5) }), {
    maxKeys: 2,
  }),
  reached: times,
  setOff: times,
  spread: fc.dictionary(id, fc.record({ fromKg: fc.nat(3), toKg: fc.nat(3) }), { maxKeys: 2 }),
  packing: id,
  foodOverKg: fc.nat(3),
  rationKg: fc.nat(2),
  foodPlanned: fc.record({ packedKg: fc.nat(9), rations: fc.nat(9) }),
})

const draft = fc
  .tuple(
    some({ log, name, settings: some({ linerKg: number, personalFactorSpread: fc.constant(null) }) }),
    some({ massKg: number, sex: fc.constantFrom('female', 'male') }),
    fc.tuple(
      listOf(stop),
      some({
        wet: fc.boolean(),
        water: some({ campLitres: number }),
        weather: some({ airC: number, humidity: number, sun: fc.boolean() }),
      }),
    ),
    listOf(item),
    listOf(pack),
  )
  .map(([rest, carrier, [stops, trip], gear, packs]) => ({
    ...rest,
    carrier,
    trip: { ...trip, stops },
    gear,
    packs,
  })) as unknown as fc.Arbitrary<Draft>

const profile = fc.array(fc.record({ km: fc.nat(500), eleM: fc.option(fc.nat(4000)) }), { maxLength: 5 })

const trip: fc.Arbitrary<BackupTrip> = fc
  .tuple(id, fc.boolean(), time, draft, name, fc.option(profile))
  .map(([key, demo, changedAt, made, text, terrain]) => ({
    format: 'pack-reckoner/trip',
    version: 5,
    id: key,
    demo,
    changedAt,
    // Only the demo keeps packs of its own.
    draft: demo ? made : { ...made, packs: [] },
    typed: made.gear[0] ? { [`gear/${made.gear[0].id}/litres`]: text, 'carrier/massKg': text } : {},
    ...(terrain && { profile: terrain }),
  }))

const thing = fc
  .tuple(id, facts, some({ note: name, weighedOn: fc.constant('2025-03-01'), retired: fc.boolean() }), time)
  .map(([key, made, rest, at]) => ({
    ...rest,
    id: key,
    item: made,
    changed: { massKg: at },
  })) as unknown as fc.Arbitrary<Thing>
const base = fc.record({
  id,
  name,
  lines: fc.array(fc.record({ thing: id, count: fc.nat(9) }, { requiredKeys: ['thing'] }), { maxLength: 3 }),
})
const list = fc.record({
  packFrom: fc.constantFrom('stated' as const, 'measured' as const),
  d: fc.double({ min: 0, max: 1, noNaN: true }),
  things: fc.uniqueArray(
    fc.record({
      id,
      litres: fc.nat(20),
      litresFrom: fc.constantFrom('guess' as const, 'kind' as const),
      u: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    { selector: thing => thing.id, maxLength: 3 },
  ),
})
/** Those kept by earlier versions say nothing of what was along. */
const packing = fc.tuple(fc.boolean(), list).chain(([isOlder, along]) =>
  fc.record({
    id,
    at: time,
    gear: name,
    pack: name,
    bodyLitres: fc.nat(90),
    said: fc.oneof(
      fc.record({ how: fc.constant('full' as const), fullness: fc.double({ min: 0, max: 1, noNaN: true }) }),
      fc.record({ how: fc.constant('over' as const), overLitres: fc.nat(20) }),
    ),
    reckonedLitresAtFactor1: fc.nat(90),
    factor: fc.double({ min: 0.5, max: 2, noNaN: true }),
    ...(isOlder ? {} : { list: fc.constant(along) }),
  }),
)

const figures = fc.option(
  fc.record(
    {
      under: fc.record({ gramsPerLitre: fc.nat(90) }),
      measure: fc.record({ name, powers: fc.record({ massG: fc.integer({ min: -2, max: 2 }) }) }),
    },
    { requiredKeys: [] },
  ),
)

/** Any library that the app itself can have come to. */
export const anyContents: fc.Arbitrary<Contents> = fc.record({
  trips: listOf(trip),
  shelf: fc.tuple(listOf(thing), listOf(base), listOf(packing), listOf(ownPack), name, figures).map(
    ([things, bases, packings, packs, text, own]): ShelfContents => ({
      things,
      bases,
      packings,
      packs,
      ...(own && { figures: own }),
      typed: {
        ...(things[0] && { [`${things[0].id}/massKg`]: text }),
        ...(packs[0] && { [`packs/${packs[0].id}/bodyLitres`]: text }),
      },
    }),
  ),
  settings: fc.record(
    {
      system: fc.constantFrom('metric' as const, 'us' as const),
      theme: fc.constantFrom('auto' as const, 'light' as const, 'dark' as const),
      brightSun: fc.constant(true),
      largeTargets: fc.constant(true),
      packColumns: fc.subarray(['body', 'mass', 'price']),
    },
    { requiredKeys: ['system', 'theme'] },
  ),
})
