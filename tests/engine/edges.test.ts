// Plans at the edges of the engine: exact fits, sums that round, nothing at all, and the ends of every range.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ItemDocument, LIMITS, type Limit, type PackDocument, parsePlan } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { noWater, reckonSmall } from './small-plans'

const bottle = (holdsWaterLitres: number): ItemDocument => ({
  id: 'bottle',
  massKg: 0.1,
  litres: 1,
  stow: 'outside-pocket',
  holdsWaterLitres,
})
const packOf = (bodyLitres: number, ratedKg?: number): PackDocument => ({
  name: 'Pack',
  bodyLitres,
  setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ...(ratedKg ? { ratedKg } : {}) }],
})
const food: ItemDocument = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily' }

describe('the reach of a pack', () => {
  const reach = (small: Parameters<typeof reckonSmall>[0]) => reckonSmall(small).packs[0]!.reachDays

  it('is 0, not unknown, when not even the gear without food fits', () => {
    expect(reach({ gear: [food, { id: 'tent', massKg: 1, litres: 60 }], packs: [packOf(20)] })).toBe(0)
  })

  it('is 0, not unknown, when not even the gear without food may be carried', () => {
    expect(reach({ gear: [food, { id: 'anvil', massKg: 40, litres: 1 }], packs: [packOf(60, 20)] })).toBe(0)
  })

  it('is unknown when nothing is eaten', () => {
    expect(reach({ gear: [{ ...food, use: 'kept' }], packs: [packOf(60, 20)] })).toBeNull()
  })

  it('is the days that fill a canister when the canister exactly fills the pack', () => {
    // In floating point the litres inside a brim-full canister come out a hair over its room.
    for (const litres of [1.1, 1.3, 1.7, 1.9])
      for (const holdsLitres of [3.3, 5.7, 8.1])
        for (const spareDays of [0, 0.1, 0.2, 0.3, 0.7]) {
          const canister: ItemDocument = {
            id: 'canister',
            massKg: 1,
            litres: 10,
            build: 'rigid',
            holdsLitres,
          }
          const days = reach({
            gear: [canister, { ...food, litres, inside: 'canister' }, bottle(20)],
            packs: [packOf(10)],
            settings: { rigidPacking: 1, softPacking: 1 },
            meals: { spareDays },
          })
          expect(days).toBeCloseTo(holdsLitres / litres - spareDays, 9)
        }
  })

  it('is the same with one canister and with two of half its size', () => {
    const canister = (id: string, count: number, litres: number): ItemDocument => ({
      id,
      massKg: 1,
      litres,
      count,
      build: 'rigid',
      holdsLitres: litres - 1,
    })
    const half = { ...food, litres: 0.85, massKg: 0.35 }
    const packs = [packOf(25)]
    const two = [
      canister('a', 1, 6),
      canister('b', 1, 6),
      { ...half, id: 'f', inside: 'a' },
      { ...half, inside: 'b' },
    ]
    const one = [canister('a', 2, 6), { ...food, inside: 'a' }]
    expect(reach({ gear: two, packs, water: noWater })).toBeCloseTo(
      reach({ gear: one, packs, water: noWater })!,
      9,
    )
  })
})

describe('a shortfall of water', () => {
  const stops = [{ name: 'Start' }, { name: 'End', leg: { km: 1, hours: 7 } }]
  const water = { litresPerHour: 0.1, reserveLitres: 0.5 }

  it('is none when the bottles hold exactly what is needed, however the sum rounds', () => {
    const { notices, need } = reckonSmall({ stops, water, gear: [bottle(1.2)] })
    expect(notices.filter(notice => notice.code === 'water-short')).toEqual([])
    expect(need.waterShortLitres).toBe(0)
  })

  it('is told with its litres and its source when the bottles hold less', () => {
    const { notices, need } = reckonSmall({ stops, water, gear: [bottle(1)] })
    expect(notices).toContainEqual({ code: 'water-short', stop: 0, litres: expect.closeTo(0.2, 9) })
    expect(need.waterShortLitres).toBeCloseTo(0.2, 9)
  })
})

describe('a plan with nothing in it', () => {
  it('needs nothing, has no density, and suits any pack with room to spare', () => {
    const { need, packs } = reckonSmall({ water: noWater, packs: [packOf(30, 10)], wet: false })
    expect(need).toMatchObject({ bodyLitres: 0, sigmaV: 0, peakLoadKg: 0, packedDensity: null })
    expect(packs[0]).toMatchObject({ verdicts: ['roomy'], suffices: true, carriedKg: 1, reachDays: null })
  })
})

/** The ends of a range, and just inside. */
const ends = ({ min, max, whole }: Limit) =>
  fc.constantFrom(min, max, Math.min(max, min + 1), whole ? max : (min + max) / 2)
const fields = (limits: Record<string, Limit>) =>
  Object.fromEntries(Object.entries(limits).map(([name, limit]) => [name, ends(limit)]))
const some = (arbitraries: Record<string, fc.Arbitrary<unknown>>, requiredKeys: string[]) =>
  fc.record(arbitraries, { requiredKeys })

const extremeStop = some({ nights: fc.constantFrom(0, 1, 60), leg: some(fields(LIMITS.leg), ['km']) }, [
  'leg',
])
const extremeItem = some({ ...fields(LIMITS.item), use: fc.constantFrom('kept', 'daily', 'spread') }, [
  'massKg',
  'litres',
])
const extremeFuel = some({ kind: fc.constantFrom('gas', 'tablet'), ...fields(LIMITS.fuel) }, ['kind'])
/** The total stands in for the main body, which these packs have. */
const { totalLitres: _total, ...packLimits } = LIMITS.pack
const extremePack = some(
  {
    name: fc.constant('Pack'),
    ...fields(packLimits),
    setups: fc.tuple(
      some(
        { name: fc.constant('a'), frame: fc.constantFrom('framed', 'frameless'), ...fields(LIMITS.setup) },
        [...['name', 'frame', 'massKg']],
      ),
    ),
  },
  ['name', 'bodyLitres', 'setups'],
)
const extremePlan = fc
  .record({
    carrier: some(fields(LIMITS.carrier), ['massKg']),
    stops: fc.array(extremeStop, { minLength: 1, maxLength: 3 }),
    water: fc.constantFrom({}, { litresPerHour: 'from-heat' }, { litresPerHour: 5, campLitres: 50 }),
    gear: fc.array(extremeItem, { maxLength: 4 }),
    fuel: extremeFuel,
    packs: fc.tuple(extremePack),
    settings: some(fields(LIMITS.settings), []),
  })
  .map(({ carrier, stops, water, gear, fuel, packs, settings }) => ({
    format: 'pack-reckoner/plan',
    version: 1,
    carrier,
    trip: {
      stops: [
        { name: 'Start' },
        ...stops.map((stop, i) => ({
          ...stop,
          name: 'Stop',
          nights: i === stops.length - 1 ? 0 : stop.nights,
        })),
      ],
      water,
    },
    gear: [
      ...gear.map((item, i) => ({ ...item, id: `item ${i}` })),
      { id: 'fuel', massKg: 0, litres: 0, use: 'nightly', fuel },
    ],
    packs,
    settings,
  }))

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

describe('a plan at the ends of its ranges', () => {
  it('is reckoned to finite numbers with a fixed ration, and never throws', () => {
    const property = fc.property(extremePlan, document => {
      const parsed = parsePlan(document)
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
      const reckoned = reckon(parsed.plan)
      if (!reckoned.ok) throw new Error(reckoned.problem.message)
      const numbers = numbersIn(reckoned.reckoning)
      expect(numbers.length).toBeGreaterThan(50)
      expect(numbers.every(Number.isFinite)).toBe(true)
    })
    fc.assert(property, { numRuns: 120 })
  })
})

describe('a gear list of ten thousand things', () => {
  it('is reckoned, a thousand containers of food among them', () => {
    const gear = Array.from({ length: 10_000 }, (_, i): ItemDocument => {
      const thing = { id: `${i}`, massKg: 0.001, litres: 0.002 }
      if (i < 1000) return { ...thing, build: 'rigid', holdsLitres: 0.01 + i / 1e6 }
      return i < 2000 ? { ...thing, use: 'daily', inside: `${i - 1000}` } : thing
    })
    const { need, packs } = reckonSmall({ gear, packs: [packOf(60, 20), packOf(40, 15)] })
    expect(need.baseKg).toBeCloseTo(9, 9)
    expect(packs).toHaveLength(2)
  })
})
