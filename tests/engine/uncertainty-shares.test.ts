// Where the doubt about the litres comes from: shares that make the whole, and what measuring one thing would do.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, Plan } from '../../src/plan'
import {
  type ItemUncertainty,
  packedListAt,
  reckon,
  sigmaVIfFilled,
  sigmaVIfPacked,
  type UncertaintyShare,
  uncertaintySharesOf,
  worthMeasuring,
} from '../../src/reckon'
import { documents, type Kind, planOf } from './plans'
import { noWater, reckoned, smallPlan } from './small-plans'

const items = (shares: UncertaintyShare[]) =>
  shares.filter((share): share is ItemUncertainty => share.of === 'item')
const doubtsIn = (plan: Plan) => uncertaintySharesOf(plan, reckoned(plan))

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
    const shares = doubtsIn(heap([guess('a', 3), guess('b', 4)], { habitCorrelation: 0 }))
    expect(shares.map(({ share }) => share)).toEqual([
      expect.closeTo(16 / 25, 12),
      expect.closeTo(9 / 25, 12),
    ])
    expect(items(shares).map(({ id }) => id)).toEqual(['b', 'a'])
  })

  it('are shared as the errors themselves where things err fully together', () => {
    const shares = doubtsIn(heap([guess('a', 3), guess('b', 4)], { habitCorrelation: 1 }))
    expect(shares.map(({ share }) => share)).toEqual([expect.closeTo(4 / 7, 12), expect.closeTo(3 / 7, 12)])
  })

  it('hold the packing model as one more, by its own variance', () => {
    const plan = smallPlan({ gear: [guess('a', 10), guess('box', 6, { build: 'rigid' })], water: noWater })
    const shares = doubtsIn(plan)
    const model = shares.find(share => share.of === 'packing')!
    const { sigmaV } = reckoned(plan).need
    // No filling less perfect filling: 6/0.75 + 10/0.95 against 10/0.95 + 6.
    expect(model.sigmaLitres).toBeCloseTo(2 / Math.sqrt(12), 9)
    expect(model.share).toBeCloseTo(4 / 12 / sigmaV ** 2, 9)
  })

  it('leave out what has no part in the main body, and are none where nothing rides there', () => {
    const outside = guess('outside', 5, { stow: 'strapped-on' })
    // So much room is left that the box holds it nine times in ten.
    const boxed = guess('boxed', 4.8, { inside: 'box' })
    const box = guess('box', 8, { holdsLitres: 6, litresFrom: 'filled' })
    expect(items(doubtsIn(heap([outside, boxed, box]))).map(({ id }) => id)).toEqual(['box'])
    expect(doubtsIn(heap([outside]))).toEqual([])
  })

  const kinds = [
    { ration: 'fixed', litresPerHour: 'number' },
    { ration: 'energy', litresPerHour: 'from-heat' },
    { ration: 'fixed', litresPerHour: 'number', packed: true },
  ] as const satisfies readonly Kind[]

  it.each<Kind>(kinds)(
    'add up to the whole, the greatest first: $ration, $litresPerHour, packed $packed',
    kind => {
      fc.assert(
        fc.property(documents(kind), document => {
          const plan = planOf(document)
          const result = reckon(plan)
          if (!result.ok) return
          const uncertain = uncertaintySharesOf(plan, result.reckoning)
          const { sigmaV } = result.reckoning.need
          if (sigmaV === 0) {
            expect(uncertain).toEqual([])
            return
          }
          const shares = uncertain.map(({ share }) => share)
          expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9)
          expect(shares).toEqual(shares.toSorted((a, b) => b - a))
          if (!kind.packed) for (const share of shares) expect(share).toBeGreaterThanOrEqual(0)
        }),
        { numRuns: 60 },
      )
    },
  )

  it.each<Kind>([kinds[0], kinds[2]])(
    'say what the engine itself would find, had the thing been measured: packed $packed',
    kind => {
      fc.assert(
        fc.property(documents(kind), document => {
          const plan = planOf(document)
          const before = reckoned(plan)
          for (const { id } of items(uncertaintySharesOf(plan, before)).slice(0, 4)) {
            const measured = plan.gear.map(item =>
              item.id === id ? { ...item, litresFrom: 'filled' as const, litresRange: null } : item,
            )
            const { sigmaV } = reckoned({ ...plan, gear: measured }).need
            expect(Math.abs(sigmaVIfFilled(plan, before, [id]) - sigmaV)).toBeLessThanOrEqual(
              1e-6 * before.need.sigmaV,
            )
          }
        }),
        { numRuns: 60 },
      )
    },
  )

  it('hold the hand as one more, by what the settings say of it', () => {
    const plan = smallPlan({ gear: [guess('a', 10)], water: noWater, settings: { handSpread: 0.1 } })
    const { sigmaShare, bodyLitres } = reckoned(plan).need
    const hand = doubtsIn(plan).find(({ of }) => of === 'hand')!
    expect(hand.share).toBeCloseTo(0.01 / sigmaShare ** 2, 12)
    expect(hand.sigmaLitres).toBeCloseTo(0.1 * bodyLitres, 12)
  })

  it('shrink for what was packed before, and stay for what is new', () => {
    const before = smallPlan({ gear: [guess('old', 20, { litresFrom: 'stated' })], water: noWater })
    const list = packedListAt(before, reckoned(before), 0)
    const plan = smallPlan({
      gear: [guess('old', 20, { litresFrom: 'stated' }), guess('new', 8)],
      water: noWater,
    })
    const packings = [{ ...list, date: '2026-05-02', p: 1, pack: null, packLitres: 22, packFrom: 'measured' }]
    const sharesOf = (it: Plan) =>
      new Map(doubtsIn(it).map(share => [share.of === 'item' ? share.id : share.of, share]))
    const packed = { ...plan, packings } as Plan
    const [general, own] = [sharesOf(plan), sharesOf(packed)]
    const variance = (it: Plan, share: number) => share * reckoned(it).need.sigmaShare ** 2
    for (const of of ['old', 'hand'])
      expect(variance(packed, own.get(of)!.share)).toBeLessThan(0.6 * variance(plan, general.get(of)!.share))
    expect(variance(packed, own.get('new')!.share)).toBeCloseTo(variance(plan, general.get('new')!.share), 9)
  })

  it('say what packing the list once more would leave, as the engine itself then finds', () => {
    const plan = smallPlan({ gear: [guess('a', 10), guess('box', 6, { build: 'rigid' })], water: noWater })
    const before = reckoned(plan)
    const list = packedListAt(plan, before, 0)
    const once = { ...list, date: '2026-05-02', p: 1, pack: null, packLitres: list.W, packFrom: 'stated' }
    const { sigmaV } = reckoned({ ...plan, packings: [once] } as Plan).need
    expect(sigmaVIfPacked(plan, before)).toBeCloseTo(sigmaV, 12)
    expect(sigmaV).toBeLessThan(before.need.sigmaV)
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
    const worth = worthMeasuring(plan, reckoned(plan), doubtsIn(plan))
    const { sigmaV } = reckoned(plan).need
    expect(worth.map(({ id }) => id)).toEqual(['large', 'middle', 'small'])
    expect(worth[0]!.sigmaVIfFilled).toBeLessThan(0.7 * sigmaV)
    const known = heap([guess('filled', 30, { litresFrom: 'filled' })])
    expect(worthMeasuring(known, reckoned(known), doubtsIn(known))).toEqual([])
  })
})
