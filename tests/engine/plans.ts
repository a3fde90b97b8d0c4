// Random plan documents over everything a plan can say: what the differential and property tests feed the engine.
// Numbers are free doubles, with zeros and round numbers among them.

import fc from 'fast-check'
import {
  type ItemDocument,
  type PackDocument,
  type PackingDocument,
  type Plan,
  type PlanDocument,
  parsePlan,
  pathText,
  type StopDocument,
} from '../../src/plan'

/** Numbers smaller than this are dust that no plan holds: their squares vanish. */
const DUST = 1e-9

const between = (min: number, max: number) =>
  fc
    .oneof(
      { weight: 5, arbitrary: fc.double({ min, max, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom(min, (min + max) / 2, max) },
    )
    .map(n => (Math.abs(n) < DUST ? 0 : n))

/** Positive amounts without denormal dust, 0 among them. */
const amount = (max: number) =>
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 6, arbitrary: fc.double({ min: max / 1000, max, noNaN: true }) },
  )

const of = <const T extends readonly unknown[]>(...options: T): fc.Arbitrary<T[number]> =>
  fc.constantFrom(...options)

/** Any of the fields, each there or not. */
const some = <T extends Record<string, fc.Arbitrary<unknown>>>(fields: T) =>
  fc.record(fields, { requiredKeys: [] })

const leg = fc
  .tuple(
    fc.record({ km: amount(30) }),
    some({
      ascentM: amount(1800),
      descentM: amount(1800),
      hours: amount(9),
      airC: between(-15, 45),
      humidity: between(0, 1),
      sun: fc.boolean(),
      ground: of('paved', 'trail', 'rough', 'brush', 'sand'),
    }),
  )
  .map(([needed, more]) => ({ ...needed, ...more }))

const stay = some({
  water: of('sure', 'doubtful', 'none'),
  nights: of(0, 0, 1, 1, 2, 4),
  meals: of('carried', 'carried', 'provided'),
  resupply: fc.boolean(),
  shop: fc.boolean(),
})

const stops = fc
  .tuple(
    some({ resupply: fc.boolean(), meals: of('carried', 'provided') }),
    fc.array(fc.tuple(stay, leg), { maxLength: 10 }),
    leg,
  )
  .map(([start, middle, last]): StopDocument[] =>
    [{ ...start }, ...middle.map(([stop, way]) => ({ ...stop, leg: way })), { leg: last }].map((stop, i) => ({
      name: `Stop ${i}`,
      ...stop,
    })),
  )

const meals = fc
  .tuple(
    between(0, 0.5),
    between(0, 0.5),
    some({ supperAfterEnd: fc.boolean(), spareDays: amount(3), deficit: amount(0.3) }),
  )
  .map(([breakfast, trail, more]) => ({
    breakfast,
    trail,
    supper: Math.max(0, 1 - breakfast - trail),
    ...more,
  }))

export interface Kind {
  ration: 'fixed' | 'energy'
  litresPerHour: 'number' | 'from-heat'
  /** With packings of one's own. */
  packed?: boolean
}

/** One item in five is of a kind: its litres are a range, and what else it says of them is set aside. */
const kindRange = fc.oneof(
  { weight: 4, arbitrary: fc.constant({}) },
  {
    weight: 1,
    arbitrary: fc.tuple(amount(6), amount(6), amount(6)).map(three => {
      const [low, typical, high] = three.sort((a, b) => a - b) as [number, number, number]
      return { litresFrom: 'kind' as const, litresRange: { low, typical, high } }
    }),
  },
)

/** One figure in twenty is one that nobody has said. */
const orUnknown = (known: fc.Arbitrary<number>) =>
  fc.oneof({ weight: 19, arbitrary: known }, { weight: 1, arbitrary: fc.constant(null) })

const anyItem = fc
  .tuple(
    fc.record({ massKg: orUnknown(amount(2)), litres: orUnknown(amount(6)) }),
    some({
      group: of('A', 'B'),
      count: of(1, 1, 1, 2, 3, 0),
      stow: of('main-body', 'main-body', 'main-body', 'outside-pocket', 'strapped-on', 'worn'),
      build: of('soft', 'rigid'),
      leaves: amount(0.3),
      kcalPerKg: between(1000, 9000),
      holdsWaterLitres: amount(3),
      lengthCm: between(1, 90),
      diameterCm: between(1, 40),
      massFrom: of('scale', 'stated', 'guess'),
      litresFrom: of('filled', 'dimensions', 'stated', 'guess'),
    }),
    of('kept', 'kept', 'daily', 'nightly', 'spread'),
    fc.boolean(),
    fc.boolean(),
    kindRange,
  )
  .map(([needed, more, use, resupplied, says, ofKind]) => ({
    ...needed,
    ...more,
    ...ofKind,
    ...(use === 'kept' ? {} : { use }),
    ...(says && (use === 'daily' || use === 'nightly') ? { resupplied } : {}),
  }))

const gear = fc
  .tuple(
    fc.array(fc.tuple(anyItem, amount(15)), { maxLength: 3 }),
    fc.array(fc.tuple(anyItem, fc.nat(7)), { maxLength: 14 }),
  )
  .map(([containers, things]): ItemDocument[] => [
    ...containers.map(([item, holds], i) => ({ ...item, id: `box ${i}`, holdsLitres: holds + 0.01 })),
    ...things.map(([item, at], i) => ({
      ...item,
      id: `thing ${i}`,
      ...(at < containers.length ? { inside: `box ${at}` } : {}),
    })),
  ])

const setup = fc
  .tuple(
    fc.record({ massKg: fc.double({ min: 0.2, max: 3, noNaN: true }), frame: of('framed', 'frameless') }),
    some({
      ratedKg: fc.double({ min: 2, max: 40, noNaN: true }),
      ratingCovers: of('contents-and-pack', 'contents'),
    }),
  )
  .map(([needed, more]) => ({ name: 'set-up', ...needed, ...more }))

const pack = fc
  .tuple(
    fc.double({ min: 5, max: 120, noNaN: true }),
    some({
      collarLitres: amount(20),
      outsideLitres: amount(15),
      bodyFrom: of('test-method', 'measured', 'stated', 'guess'),
      sealed: fc.boolean(),
      price: amount(500),
      innerHeightCm: between(20, 80),
      innerWidthCm: between(10, 40),
      innerDepthCm: between(10, 40),
    }),
    fc.array(setup, { minLength: 1, maxLength: 3 }),
  )
  .map(([bodyLitres, more, setups]): PackDocument => ({ name: 'pack', bodyLitres, ...more, setups }))

const settings = some({
  rigidPacking: between(0.5, 1),
  softPacking: between(0.7, 1),
  fillEfficiency: between(0, 1),
  habitCorrelation: between(0, 1),
  personalFactor: between(0.7, 1.6),
  personalFactorSpread: fc.oneof(fc.constant(null), between(0, 0.3)),
  handSpread: between(0, 0.3),
  readingSpread: between(0.005, 0.2),
  linerKg: amount(0.2),
  framelessCeilingKg: between(3, 15),
  roomyRatio: between(1, 2),
  packKgForEnergy: amount(3),
})

/** What was packed before: things that may be those of the list, as they are there or another way, and others. */
const packing = fc
  .record({
    p: fc.double({ min: 0.7, max: 1.2, noNaN: true }),
    pack: of('grey', 'blue', undefined),
    packLitres: fc.double({ min: 40, max: 60, noNaN: true }),
    packFrom: of('test-method', 'measured', 'stated', 'guess'),
    W: fc.double({ min: 35, max: 70, noNaN: true }),
    d: between(0, 0.1),
    things: fc.uniqueArray(
      fc.record({ at: fc.nat(16), isSame: of(true, true, true, false), u: between(0, 0.2) }),
      { selector: ({ at }) => at, maxLength: 8 },
    ),
  })
  .map(({ pack, ...rest }) => ({ ...rest, ...(pack && { pack }) }))

/** The packings as they hold the things of a list. */
function packingsOf(drawn: DrawnPacking[], gear: ItemDocument[]): PackingDocument[] {
  return drawn.map(({ things, ...rest }) => ({
    date: '2026-05-02',
    ...rest,
    things: things.map(({ at, isSame, u }) => {
      const { id = `other ${at}`, litres, litresFrom = 'guess', litresRange: range } = gear[at] ?? {}
      const each = litresFrom === 'kind' ? (range!.low + range!.typical + range!.high) / 3 : (litres ?? 1)
      return { id, litres: isSame ? each : each / 2, litresFrom, u }
    }),
  }))
}

type DrawnPacking = typeof packing extends fc.Arbitrary<infer T> ? T : never

const carrier = fc
  .tuple(
    fc.double({ min: 35, max: 120, noNaN: true }),
    some({
      heightCm: between(60, 210),
      ageYears: between(8, 90),
      sex: of('female', 'male'),
      loadShareLimit: between(0.05, 0.5),
    }),
  )
  .map(([massKg, more]) => ({ massKg, ...more }))

/** Documents of the asked kind. With an energy ration one hearty food is always there. */
export function documents({ ration, litresPerHour, packed = false }: Kind): fc.Arbitrary<PlanDocument> {
  return fc
    .record({
      carrier,
      stops,
      meals,
      water: some({
        litresPerHour: amount(1.2),
        campLitres: amount(5),
        reserveLitres: amount(2),
        trustDoubtful: fc.boolean(),
      }),
      pace: some({
        flatKmh: fc.double({ min: 2, max: 7, noNaN: true }),
        climbMPerH: fc.double({ min: 150, max: 800, noNaN: true }),
        descendMPerH: fc.double({ min: 200, max: 1200, noNaN: true }),
      }),
      weather: some({ airC: between(-15, 45), humidity: between(0, 1), sun: fc.boolean() }),
      wet: fc.boolean(),
      gear,
      packs: fc.array(pack, { maxLength: 3 }),
      packings: fc.array(packing, { maxLength: packed ? 4 : 0 }),
      settings,
    })
    .map(it => {
      const food: ItemDocument = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 }
      return {
        format: 'pack-reckoner/plan',
        version: 1,
        carrier: it.carrier,
        trip: {
          stops: it.stops,
          pace: it.pace,
          water: { ...it.water, ...(litresPerHour === 'from-heat' ? { litresPerHour } : {}) },
          meals: { ...it.meals, ration },
          weather: it.weather,
          wet: it.wet,
        },
        gear: ration === 'energy' ? [...it.gear, food] : it.gear,
        packs: it.packs,
        packings: packingsOf(it.packings, it.gear),
        settings: it.settings,
      }
    })
}

/** The plan that a document means; a refusal is a fault of the test. */
export function planOf(document: PlanDocument): Plan {
  const parsed = parsePlan(document)
  if (!parsed.ok) throw new Error(parsed.problems.map(p => `${pathText(p.path)}: ${p.message}`).join('\n'))
  return parsed.plan
}
