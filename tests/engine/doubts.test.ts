// Where the doubt about the litres comes from: shares that make the whole, and what measuring one thing would do.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, Plan } from '../../src/plan'
import { type Doubt, doubtsOf, type ItemDoubt, reckon, worthMeasuring } from '../../src/reckon'
import { documents, planOf } from './plans'
import { noWater, reckoned, smallPlan } from './small-plans'

const items = (doubts: Doubt[]) => doubts.filter((doubt): doubt is ItemDoubt => doubt.of === 'item')
const doubtsIn = (plan: Plan) => doubtsOf(plan, reckoned(plan))

const guess = (id: string, litres: number, more: Partial<ItemDocument> = {}): ItemDocument => ({
  id,
  massKg: 1,
  litres,
  ...more,
})

/** A heap of soft things that takes just its litres, the packing model beyond doubt. */
const heap = (gear: ItemDocument[], settings: object = {}) =>
  smallPlan({ gear, water: noWater, settings: { softPacking: 1, personalFactorSpread: 0, ...settings } })

describe('doubts about the litres', () => {
  it('are shared as the squares of what things judged apart may err by', () => {
    const doubts = doubtsIn(heap([guess('a', 3), guess('b', 4)], { habitCorrelation: 0 }))
    expect(doubts.map(({ share }) => share)).toEqual([
      expect.closeTo(16 / 25, 12),
      expect.closeTo(9 / 25, 12),
    ])
    expect(items(doubts).map(({ id }) => id)).toEqual(['b', 'a'])
  })

  it('are shared as the errors themselves where things err fully together', () => {
    const doubts = doubtsIn(heap([guess('a', 3), guess('b', 4)], { habitCorrelation: 1 }))
    expect(doubts.map(({ share }) => share)).toEqual([expect.closeTo(4 / 7, 12), expect.closeTo(3 / 7, 12)])
  })

  it('hold the packing model as one more, by its own variance', () => {
    const plan = smallPlan({ gear: [guess('a', 10), guess('box', 6, { build: 'rigid' })], water: noWater })
    const doubts = doubtsIn(plan)
    const model = doubts.find(doubt => doubt.of === 'packing')!
    const { sigmaV } = reckoned(plan).need
    // No filling less perfect filling: 6/0.75 + 10/0.95 against 10/0.95 + 6.
    expect(model.sigmaLitres).toBeCloseTo(2 / Math.sqrt(12), 9)
    expect(model.share).toBeCloseTo(4 / 12 / sigmaV ** 2, 9)
  })

  it('leave out what has no part in the main body, and are none where nothing rides there', () => {
    const outside = guess('outside', 5, { stow: 'strapped-on' })
    const boxed = guess('boxed', 5, { inside: 'box' })
    const box = guess('box', 8, { holdsLitres: 6, litresFrom: 'filled' })
    expect(items(doubtsIn(heap([outside, boxed, box]))).map(({ id }) => id)).toEqual(['box'])
    expect(doubtsIn(heap([outside]))).toEqual([])
  })

  const kinds = [
    { ration: 'fixed', litresPerHour: 'number' },
    { ration: 'energy', litresPerHour: 'from-heat' },
  ] as const

  it.each(kinds)('add up to the whole, the greatest first: ration $ration, water $litresPerHour', kind => {
    fc.assert(
      fc.property(documents(kind), document => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        const doubts = doubtsOf(plan, result.reckoning)
        const { sigmaV } = result.reckoning.need
        if (sigmaV === 0) {
          expect(doubts).toEqual([])
          return
        }
        const shares = doubts.map(({ share }) => share)
        expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9)
        expect(shares).toEqual(shares.toSorted((a, b) => b - a))
        for (const share of shares) expect(share).toBeGreaterThanOrEqual(0)
      }),
      { numRuns: 60 },
    )
  })

  it('say what the engine itself would find, had the thing been measured by filling', () => {
    fc.assert(
      fc.property(documents(kinds[0]), document => {
        const plan = planOf(document)
        const before = reckoned(plan)
        for (const { id, sigmaVIfFilled } of items(doubtsOf(plan, before)).slice(0, 4)) {
          const measured = plan.gear.map(item =>
            item.id === id ? { ...item, litresFrom: 'filled' as const, litresRange: null } : item,
          )
          const { sigmaV } = reckoned({ ...plan, gear: measured }).need
          expect(Math.abs(sigmaVIfFilled - sigmaV)).toBeLessThanOrEqual(1e-6 * before.need.sigmaV)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('what is worth measuring', () => {
  it('is what narrows the litres most, three things at most, and never what was filled already', () => {
    const gear = [
      guess('large', 12),
      guess('middle', 8),
      guess('small', 2),
      guess('least', 1),
      guess('filled', 30, { litresFrom: 'filled' }),
    ]
    const plan = heap(gear)
    const { sigmaV } = reckoned(plan).need
    const worth = worthMeasuring(doubtsIn(plan), sigmaV)
    expect(worth.map(({ id }) => id)).toEqual(['large', 'middle', 'small'])
    expect(worth[0]!.sigmaVIfFilled).toBeLessThan(0.7 * sigmaV)
    const known = heap([guess('filled', 30, { litresFrom: 'filled' })])
    expect(worthMeasuring(doubtsIn(known), reckoned(known).need.sigmaV)).toEqual([])
  })
})
