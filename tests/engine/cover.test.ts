// The fewest packs for several trips: against trying every set, and on trips judged by the engine.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PackDocument, PlanDocument } from '../../src/plan'
import {
  type CoverSet,
  coverOf,
  type JudgedTrip,
  leastCover,
  reckon,
  requirementOfAll,
} from '../../src/reckon'
import { planOf } from './plans'

const sets = fc.array(
  fc.record({
    covers: fc.uniqueArray(fc.nat(6), { maxLength: 4 }),
    cost: fc.tuple(fc.constant(1), fc.nat(9), fc.nat(9)),
  }),
  { maxLength: 9 },
)

/** The least total cost that covers all that any covers, by trying every set. */
function byTryingAll(all: CoverSet[]): number[] {
  const things = new Set(all.flatMap(set => set.covers))
  let best: number[] | null = null
  for (let bits = 0; bits < 1 << all.length; bits++) {
    const taken = all.filter((_, i) => bits & (1 << i))
    if (new Set(taken.flatMap(set => set.covers)).size < things.size) continue
    const cost = costOf(taken)
    if (!best || compare(cost, best) < 0) best = cost
  }
  return best!
}

const costOf = (taken: CoverSet[]) => [0, 1, 2].map(p => taken.reduce((sum, set) => sum + set.cost[p]!, 0))
const compare = (a: number[], b: number[]) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!

describe('the least cover', () => {
  it('covers all that any set covers and costs the least, by trying every set', () => {
    fc.assert(
      fc.property(sets, all => {
        const chosen = leastCover(all)!.map(i => all[i]!)
        const things = new Set(all.flatMap(set => set.covers))
        expect(new Set(chosen.flatMap(set => set.covers))).toEqual(things)
        expect(costOf(chosen)).toEqual(byTryingAll(all))
      }),
      { numRuns: 400 },
    )
  })

  it('is answered for twenty sets, and left unanswered for more that differ', () => {
    const each = (count: number) =>
      Array.from({ length: count }, (_, i) => ({ covers: [i % 7, i], cost: [1, i] }))
    expect(leastCover(each(20))).not.toBeNull()
    expect(leastCover(each(21))).toBeNull()
    const alike = Array.from({ length: 50 }, () => ({ covers: [0], cost: [1] }))
    expect(leastCover(alike)).toEqual([0])
  })
})

const packs: PackDocument[] = [
  {
    name: 'Small',
    bodyLitres: 26,
    price: 80,
    setups: [{ name: 'it', massKg: 0.5, frame: 'frameless', ratedKg: 8 }],
  },
  {
    name: 'Middle',
    bodyLitres: 45,
    price: 150,
    setups: [
      { name: 'frame in', massKg: 1.3, frame: 'framed', ratedKg: 14 },
      { name: 'frame out', massKg: 0.9, frame: 'frameless', ratedKg: 8.5 },
    ],
  },
  { name: 'Large', bodyLitres: 70, setups: [{ name: 'it', massKg: 2, frame: 'framed', ratedKg: 25 }] },
]

function trip(name: string, massKg: number, litres: number, more: { lengthCm?: number } = {}): JudgedTrip {
  const document: PlanDocument = {
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 75 },
    trip: {
      stops: [{ name: 'A' }, { name: 'B', leg: { km: 5 } }],
      water: { litresPerHour: 0, reserveLitres: 0 },
      wet: false,
    },
    gear: [{ id: 'all', massKg, litres, build: 'rigid', litresFrom: 'filled', ...more }],
    packs,
    settings: { rigidPacking: 1 },
  }
  const plan = planOf(document)
  const result = reckon(plan)
  if (!result.ok) throw new Error(result.problem.message)
  return { name, plan, reckoning: result.reckoning }
}

describe('packs for several trips', () => {
  const day = trip('Day', 4, 20)
  const week = trip('Week', 11, 40, { lengthCm: 44 })
  const winter = trip('Winter', 18, 65)

  it('are as few as do for all: one in its right set-up for each', () => {
    const cover = coverOf([day, week])
    expect(cover).toMatchObject({ ok: true, uncovered: [] })
    if (!cover.ok) return
    expect(cover.packs.map(pack => pack.name)).toEqual(['Middle'])
    expect(cover.packs[0]!.trips).toEqual([
      { trip: 0, setup: 'frame out' },
      { trip: 1, setup: 'frame in' },
    ])
  })

  it('take the known price before the unknown where the number is the same', () => {
    const cover = coverOf([day])
    expect(cover.ok && cover.packs.map(pack => pack.name)).toEqual(['Small'])
  })

  it('may be sought by price instead of number', () => {
    const fewest = coverOf([day, winter])
    expect(fewest.ok && fewest.packs.map(pack => pack.name)).toEqual(['Large'])
    const priced = { ...packs[2]!, price: 900 }
    const withPrice = [day, week].map(it => ({
      ...it,
      plan: {
        ...it.plan,
        packs: planOf({
          format: 'pack-reckoner/plan',
          version: 1,
          carrier: { massKg: 75 },
          trip: { stops: [{ name: 'A' }, { name: 'B', leg: { km: 5 } }] },
          packs: [packs[0]!, packs[1]!, priced],
        }).packs,
      },
    }))
    const cheapest = coverOf(withPrice, { least: 'price' })
    expect(cheapest.ok && cheapest.packs.map(pack => pack.name)).toEqual(['Middle'])
  })

  it('say which trips no pack does for', () => {
    const cover = coverOf([day, trip('Too much', 40, 120)])
    expect(cover).toMatchObject({ ok: true, uncovered: [1] })
  })

  it('tell what one pack for all would have to offer', () => {
    expect(requirementOfAll([day, week, winter], 1)).toMatchObject({
      bodyLitresSafe: winter.reckoning.need.bodyLitresSafe,
      contentsKg: 18,
      ratedKg: 19,
      frame: true,
      innerHeightCm: 44,
    })
  })

  it('are none for no trips', () => {
    expect(coverOf([])).toEqual({ ok: true, packs: [], uncovered: [] })
    expect(requirementOfAll([], 1)).toBeNull()
  })
})
