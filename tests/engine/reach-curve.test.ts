// The line of days against water: against plans reckoned with just that much water, and by its own laws.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan, PlanDocument } from '../../src/plan'
import { type ReachPoint, type Reckoning, reachAt, reachCurve, reckon, stretchesOf } from '../../src/reckon'
import { documents, planOf } from './plans'

function reckoned(plan: Plan): Reckoning {
  const result = reckon(plan)
  if (!result.ok) throw new Error(result.problem.message)
  return result.reckoning
}

const random = documents({ ration: 'fixed', litresPerHour: 'number' }).filter(
  ({ packs, gear }) =>
    (packs ?? []).length > 0 && (gear ?? []).some(item => item.use === 'daily' && item.count !== 0),
)

/** The same trip with no use of water but a reserve: so much and no more is carried from the start. */
function carrying(plan: Plan, waterLitres: number): Plan {
  const water = { ...plan.trip.water, litresPerHour: 0, campLitres: 0, reserveLitres: waterLitres }
  return { ...plan, trip: { ...plan.trip, water } }
}

/** Days and their bounds, no limit counted as infinite. */
const daysOf = ({ days }: Pick<ReachPoint, 'days'>) => days ?? Number.POSITIVE_INFINITY

function expectDays(got: number | null, expected: number | null) {
  if (got === null || expected === null) expect(got).toBe(expected)
  else expect(Math.abs(got - expected)).toBeLessThanOrEqual(1e-6 * Math.max(1, expected))
}

/** Each set-up of a plan with its curve. */
function curvesOf(plan: Plan): { curve: ReachPoint[]; setupIndex: number; reachDays: number | null }[] {
  const reckoning = reckoned(plan)
  return reckoning.packs.map(({ reachDays }, setupIndex) => ({
    curve: reachCurve(plan, reckoning, { setupIndex })!,
    setupIndex,
    reachDays,
  }))
}

describe('days of food against litres of water', () => {
  it('are those of the plan reckoned with just that much water, anywhere along the line', {
    timeout: 60_000,
  }, () => {
    let compared = 0
    fc.assert(
      fc.property(random, fc.integer({ min: 1, max: 19 }), (document, twentieths) => {
        const plan = planOf(document)
        for (const { curve, setupIndex } of curvesOf(plan)) {
          const end = curve.at(-1)?.waterLitres ?? 0
          const waters = [
            ...Array.from({ length: 5 }, (_, i) => ((i + twentieths / 20) * end) / 5),
            ...curve.slice(0, -1).map(point => point.waterLitres),
          ]
          for (const water of curve.length ? waters : []) {
            const { need, packs } = reckoned(carrying(plan, water))
            expect(need.waterCarryLitres).toBeCloseTo(water, 9)
            // At the very end the last bit decides whether day 0 still holds.
            if (water > end - 1e-6) continue
            expectDays(reachAt(curve, water), packs[setupIndex]!.reachDays)
            compared++
          }
        }
      }),
      { numRuns: 60 },
    )
    expect(compared).toBeGreaterThan(150)
  })

  it('are the reach in days at the water that the trip carries, and 0 beyond the end of the line', {
    timeout: 60_000,
  }, () => {
    let within = 0
    let beyond = 0
    fc.assert(
      fc.property(random, document => {
        const plan = planOf(document)
        const { waterCarryLitres } = reckoned(plan).need
        for (const { curve, reachDays } of curvesOf(plan)) {
          const end = curve.at(-1)?.waterLitres ?? -1
          if (Math.abs(waterCarryLitres - end) < 1e-6) continue
          expectDays(reachAt(curve, waterCarryLitres), reachDays)
          if (waterCarryLitres > end) beyond++
          else within++
        }
      }),
      { numRuns: 200 },
    )
    expect(within).toBeGreaterThan(30)
    expect(beyond).toBeGreaterThan(30)
  })

  it('never grow with more water, and bend only at the points', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(random, document => {
        const plan = planOf(document)
        for (const { curve } of curvesOf(plan)) {
          const slopes = curve.slice(1).map((point, i) => {
            const before = curve[i]!
            expect(point.waterLitres).toBeGreaterThan(before.waterLitres)
            expect(daysOf(point)).toBeLessThanOrEqual(daysOf(before) + 1e-9)
            return (daysOf(point) - daysOf(before)) / (point.waterLitres - before.waterLitres)
          })
          curve.slice(1, -1).forEach((point, i) => {
            const bends =
              Math.abs(slopes[i]! - slopes[i + 1]!) > 0 || Number.isNaN(slopes[i]! - slopes[i + 1]!)
            const changes = [curve[i]!, curve[i + 2]!].some(
              other => point.binds !== other.binds || point.shareDays !== other.shareDays,
            )
            expect(bends || changes).toBe(true)
          })
        }
      }),
      { numRuns: Number(process.env.PLANS ?? 150) },
    )
  })

  it('end at the last water with which day 0 holds, or at what the containers hold', {
    timeout: 60_000,
  }, () => {
    let ends = 0
    fc.assert(
      fc.property(random, document => {
        const plan = planOf(document)
        const { waterCapacityLitres } = reckoned(plan).need
        for (const { curve, setupIndex } of curvesOf(plan)) {
          const end = curve.at(-1)?.waterLitres ?? 0
          if (curve.length && waterCapacityLitres !== null && end >= waterCapacityLitres - 1e-6) continue
          const over = reckoned(carrying(plan, Math.min(50, end + 1e-5)))
          if (over.need.waterCarryLitres <= end) continue
          expect(over.packs[setupIndex]!.reachDays).toBe(0)
          ends++
        }
      }),
      { numRuns: Number(process.env.PLANS ?? 150) },
    )
    expect(ends).toBeGreaterThan(20)
  })
})

/** 2 L bottles outside and a 4 L bag inside, food of 0.8 kg and 2 L a day; kept things of 5 kg and 20 L. */
const document: PlanDocument = {
  format: 'pack-reckoner/plan',
  version: 1,
  carrier: { massKg: 60, loadShareLimit: 0.2 },
  trip: {
    stops: [
      { name: 'A' },
      { name: 'B', nights: 1, leg: { km: 8, hours: 2 } },
      { name: 'C', nights: 1, resupply: true, water: 'sure', leg: { km: 8, hours: 2 } },
      { name: 'D', leg: { km: 8, hours: 2 } },
    ],
    water: { litresPerHour: 0.5, campLitres: 1, reserveLitres: 0 },
    meals: { spareDays: 0.5 },
    wet: false,
  },
  gear: [
    { id: 'kept', massKg: 5, litres: 20 },
    { id: 'food', massKg: 0.8, litres: 2, use: 'daily' },
    { id: 'bottles', massKg: 0, litres: 1, count: 2, holdsWaterLitres: 1, stow: 'outside-pocket' },
    { id: 'bag', massKg: 0, litres: 0, holdsWaterLitres: 4 },
  ],
  packs: [
    {
      name: 'P',
      bodyLitres: 30,
      setups: [
        { name: 'framed', massKg: 1, frame: 'framed', ratedKg: 20 },
        { name: 'frameless', massKg: 1, frame: 'frameless', ratedKg: 20 },
        { name: 'framed, weak', massKg: 1, frame: 'framed', ratedKg: 12 },
      ],
    },
  ],
  settings: { softPacking: 1, fillEfficiency: 1, framelessCeilingKg: 9 },
}

describe('a pack of 30 L with bottles outside and a water bag inside', () => {
  const plan = planOf(document)
  const reckoning = reckoned(plan)
  const curve = (setupIndex: number, withBodyShare = false) =>
    reachCurve(plan, reckoning, { setupIndex, withBodyShare })!

  it('is bound by room: level while the bottles fill, then a day less for every 2 L in the bag', () => {
    // (30 − 20) / 2 − 0.5 spare = 4.5 days; the bag takes up to 4 L of the 10.
    expect(curve(0).map(({ waterLitres, days, binds }) => [waterLitres, days, binds])).toEqual(
      expect.arrayContaining([
        [0, 4.5, 'room'],
        [2, 4.5, 'room'],
        [6, 2.5, 'room'],
      ]),
    )
  })

  it('is bound by the ceiling without a frame, to the last water that still allows day 0', () => {
    // 9 − 1 − 5 − 0.4 = 2.6 kg for food and water: 3.25 days without water.
    const [first, last] = curve(1)
    expect(first).toMatchObject({ waterLitres: 0, binds: 'frameless-ceiling' })
    expect(first!.days).toBeCloseTo(3.25)
    expect(last!.waterLitres).toBeCloseTo(2.6)
    expect(last!.days).toBeCloseTo(0)
  })

  it('changes from room to rating where the two lines cross', () => {
    // Room 4.5 days to 2 L; rating (12 − 1 − 5 − 0.4 − w) / 0.8 = 7 − 1.25 w, equal at w = 2.
    const points = curve(2).filter(point => point.waterLitres > 0)
    expect(points[0]!.waterLitres).toBeCloseTo(2)
    expect(points[0]!.binds).toBe('rating')
  })

  it('tells the days to the carrier’s own share apart, and lets them bind when asked', () => {
    // 12 kg with the pack of 1 kg: (12 − 1 − 5.4) / 0.8 = 7 days.
    expect(curve(0)[0]!.shareDays).toBeCloseTo(7)
    expect(curve(0).some(point => point.binds === 'body-share')).toBe(false)
    const bound = curve(0, true)
    expect(bound.some(point => point.binds === 'body-share')).toBe(true)
    expect(bound.at(-1)!.waterLitres).toBeCloseTo(5.6)
    expect(bound.at(-1)!.days).toBeCloseTo(0)
  })

  it('has no curve where nothing is eaten daily, and no points where nothing fits at all', () => {
    const bare = { ...plan, gear: plan.gear.filter(item => item.use !== 'daily') }
    expect(reachCurve(bare, reckoned(bare), { setupIndex: 0 })).toBeNull()
    const tiny = planOf({ ...document, packs: [{ ...document.packs![0]!, bodyLitres: 5 }] })
    expect(reachCurve(tiny, reckoned(tiny), { setupIndex: 0 })).toEqual([])
  })

  it('has no number of days where nothing limits them', () => {
    const weightless = planOf({
      ...document,
      gear: document.gear!.map(item => (item.id === 'food' ? { ...item, massKg: 0, litres: 0 } : item)),
    })
    const [first] = reachCurve(weightless, reckoned(weightless), { setupIndex: 0 })!
    expect(first).toMatchObject({ days: null, binds: null, shareDays: null })
  })

  it('is a fault to ask for of a set-up that is not there', () => {
    expect(() => curve(9)).toThrow(RangeError)
  })

  it('is held against the trip’s own stretches: food and water at the start and after each resupply', () => {
    // Day 1 without its breakfast, day 2 to its supper and the breakfast of day 3, eaten before shopping; then trail.
    const [first, second] = stretchesOf(plan, reckoning)
    expect(first).toMatchObject({ stop: 0, name: 'A', to: 2, waterLitres: 3 })
    expect(first!.days).toBeCloseTo(2)
    expect(second).toMatchObject({ stop: 2, name: 'C', to: 3, waterLitres: 1 })
    expect(second!.days).toBeCloseTo(0.4)
  })
})
