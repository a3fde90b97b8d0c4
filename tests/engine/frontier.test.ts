// Which set-ups that do are beaten by no other.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanDocument } from '../../src/plan'
import { frontierOf, notBeaten, reckon } from '../../src/reckon'
import { planOf } from './plans'

interface PackSays {
  massKg: number
  price?: number
  bodyLitres?: number
  ratedKg?: number
}

/** 20 L and 8 kg to carry, on a day's walk. */
function frontier(packs: PackSays[]): boolean[] {
  const document: PlanDocument = {
    format: 'pack-reckoner/plan',
    version: 1,
    carrier: { massKg: 70 },
    trip: {
      stops: [{ name: 'A' }, { name: 'B', leg: { km: 5 } }],
      water: { litresPerHour: 0, reserveLitres: 0 },
    },
    gear: [{ id: 'all', massKg: 8, litres: 20, litresFrom: 'filled' }],
    packs: packs.map(({ massKg, price, bodyLitres = 40, ratedKg = 15 }, i) => ({
      name: `P${i}`,
      bodyLitres,
      ...(price === undefined ? {} : { price }),
      setups: [{ name: 'it', massKg, frame: 'framed', ratedKg, ratingCovers: 'contents' }],
    })),
  }
  const plan = planOf(document)
  const result = reckon(plan)
  if (!result.ok) throw new Error(result.problem.message)
  return frontierOf(result.reckoning, plan)
}

describe('the set-ups worth a look', () => {
  it('leave out one that is heavier and dearer and no better', () => {
    expect(
      frontier([
        { massKg: 1, price: 100 },
        { massKg: 1.2, price: 120 },
      ]),
    ).toEqual([true, false])
  })

  it('keep what is better in one thing: lighter, cheaper, roomier or with more margin', () => {
    const [base, ...others] = frontier([
      { massKg: 1, price: 100 },
      { massKg: 0.9, price: 120 },
      { massKg: 1.2, price: 90 },
      { massKg: 1.1, price: 110, bodyLitres: 41 },
      { massKg: 1.1, price: 110, ratedKg: 16 },
    ])
    expect([base, ...others]).toEqual([true, true, true, true, true])
  })

  it('never hold one that does not do, however light and cheap', () => {
    expect(
      frontier([
        { massKg: 0.3, price: 10, bodyLitres: 10 },
        { massKg: 1, price: 100 },
      ]),
    ).toEqual([false, true])
  })

  it('take an unknown price as the worst', () => {
    expect(frontier([{ massKg: 1 }, { massKg: 1, price: 500 }])).toEqual([false, true])
    expect(frontier([{ massKg: 0.9 }, { massKg: 1, price: 500 }])).toEqual([true, true])
  })

  it('keep both of two that are alike', () => {
    expect(frontier([{ massKg: 1 }, { massKg: 1 }])).toEqual([true, true])
  })
})

describe('points that no other beats', () => {
  const rows = fc.array(fc.tuple(fc.nat(4), fc.nat(4), fc.nat(4)), { minLength: 1, maxLength: 12 })

  it('are some of any, and each of the others is beaten by one of them', () => {
    fc.assert(
      fc.property(rows, points => {
        const on = notBeaten(points)
        const front = points.filter((_, i) => on[i])
        expect(front.length).toBeGreaterThan(0)
        points.forEach((point, i) => {
          const beaten = front.some(
            other => other.every((x, k) => x <= point[k]!) && other.some((x, k) => x < point[k]!),
          )
          expect(beaten).toBe(!on[i])
        })
      }),
    )
  })
})
