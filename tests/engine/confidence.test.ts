// How sure an answer is, in words: what it stands on, and what would narrow it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, Plan } from '../../src/plan'
import { provenanceOf, reckon, sigmaVIfFilled, uncertaintySharesOf } from '../../src/reckon'
import { formatsIn, momentAt } from '../../src/report'
import { basisFor, basisOf, likelyText, measureNext, shareWords } from '../../src/report/confidence'
import { documents, planOf } from './plans'
import { dryAfterSpring, hungryAndDry, noWater, reckoned, smallPlan } from './small-plans'

const formats = formatsIn('metric')
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
const thing = (id: string, litres: number, more: Partial<ItemDocument> = {}): ItemDocument => ({
  id,
  name: id,
  massKg: 1,
  litres,
  ...more,
})
const planFor = (gear: ItemDocument[], settings: object = {}, water = noWater) =>
  smallPlan({ gear, water, settings })
const sum = (parts: Record<string, number>) => Object.values(parts).reduce((a, b) => a + b, 0)

describe('what the need stands on', () => {
  it.each([
    { ration: 'fixed', litresPerHour: 'number' },
    { ration: 'energy', litresPerHour: 'from-heat' },
  ] as const)('adds up to the litres and to the load: ration $ration', kind => {
    fc.assert(
      fc.property(documents(kind), document => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        const { need } = result.reckoning
        const { litres, kg } = provenanceOf(plan, result.reckoning)
        expect(sum(litres)).toBeCloseTo(need.bodyLitres, 6)
        expect(sum(kg)).toBeCloseTo(need.peakLoadFullWaterKg, 6)
        const dry = reckoned({ ...plan, trip: { ...plan.trip, water: { ...plan.trip.water, ...noWater } } })
        const left = provenanceOf(
          { ...plan, trip: { ...plan.trip, water: { ...plan.trip.water, ...noWater } } },
          dry,
        )
        // Without water the things account for all.
        expect(left.litres.water).toBeLessThan(1e-6)
        expect(left.kg.water).toBeLessThan(1e-6)
      }),
      { numRuns: 80 },
    )
  })

  it('tells each way of knowing apart, and water as water', () => {
    const plan = planFor(
      [
        thing('box', 6, { litresFrom: 'filled', massFrom: 'scale' }),
        thing('tape', 4, { litresFrom: 'dimensions' }),
        thing('said', 3, { litresFrom: 'stated' }),
        thing('guess', 2),
        thing('bag', 0, { holdsWaterLitres: 4, massFrom: 'guess' }),
      ],
      { softPacking: 1 },
      { litresPerHour: 1, campLitres: 0, reserveLitres: 0 },
    )
    const reckoning = reckoned(plan)
    const { litres, kg } = provenanceOf(plan, reckoning)
    expect(litres).toMatchObject({ filled: 6, dimensions: 4, stated: 3, guess: 2, kind: 0 })
    expect(litres.water).toBeCloseTo(reckoning.carries[0]!.carriedLitres, 9)
    expect(kg).toMatchObject({ scale: 1, guess: 1, stated: 3 })
  })

  it('goes by the heaviest moment with all the water wanted, where the containers make another the heaviest', () => {
    const plan = smallPlan({
      stops: dryAfterSpring,
      water: { litresPerHour: 1, campLitres: 0, reserveLitres: 0 },
      gear: hungryAndDry,
    })
    const reckoning = reckoned(plan)
    const { peakAt, peakFullWaterAt, peakLoadFullWaterKg } = reckoning.need
    expect(peakAt.stop).toBe(0)
    expect(peakFullWaterAt.stop).toBe(1)
    const { kg } = provenanceOf(plan, reckoning)
    const { daily, rubbish } = momentAt(reckoning, peakFullWaterAt).kg
    expect(kg).toMatchObject({ scale: 1.1, guess: 0 })
    expect(kg.stated).toBeCloseTo(daily + rubbish, 9)
    expect(sum(kg)).toBeCloseTo(peakLoadFullWaterKg, 9)
    const { load } = basisOf({ plan, reckoning, formats })
    expect(plain(load)).toMatch(/^Based on masses: 1\.1 of 9\.0 kg weighed, .* water, (0\.9|1\.0) stated/)
  })

  it('does not count what is worn as carried', () => {
    const plan = planFor([thing('boots', 0, { stow: 'worn', massFrom: 'scale' }), thing('kit', 5)])
    expect(provenanceOf(plan, reckoned(plan)).kg).toMatchObject({ scale: 0, stated: 1 })
  })
})

describe('several things measured at once', () => {
  it('leave the doubt that the engine itself would then find', () => {
    fc.assert(
      fc.property(documents({ ration: 'fixed', litresPerHour: 'number' }), document => {
        const plan = planOf(document)
        const before = reckoned(plan)
        const ids = uncertaintySharesOf(plan, before)
          .flatMap(share => (share.of === 'item' ? [share.id] : []))
          .slice(0, 3)
        const gear = plan.gear.map(item =>
          ids.includes(item.id) ? { ...item, litresFrom: 'filled' as const, litresRange: null } : item,
        )
        const { sigmaV } = reckoned({ ...plan, gear }).need
        expect(Math.abs(sigmaVIfFilled(plan, before, ids) - sigmaV)).toBeLessThanOrEqual(
          1e-6 * before.need.sigmaV,
        )
      }),
      { numRuns: 60 },
    )
  })
})

describe('the likely range', () => {
  it('is never told narrower than it is, and has one number where both ends read the same', () => {
    expect(plain(likelyText({ bodyLitres: 40, sigmaV: 2 }, formats))).toBe('37 to 43 L')
    expect(plain(likelyText({ bodyLitres: 40, sigmaV: 0 }, formats))).toBe('40 L')
    expect(plain(likelyText({ bodyLitres: 1, sigmaV: 2 }, formats))).toBe('0 to 4 L')
  })
})

describe('a share in words', () => {
  it.each([
    [0.39, 'two fifths'],
    [0.35, 'a third'],
    [0.52, 'half'],
    [0.02, 'less than a twentieth'],
    [0.97, 'nearly all'],
    [1, 'all'],
  ])('%f is %s', (share, words) => expect(shareWords(share)).toBe(words))
})

describe('what to measure next', () => {
  const next = (plan: Plan) => measureNext(plan, reckoned(plan), formats)!

  it('is what narrows the range most, with its share, and leads to its measuring', () => {
    const plan = planFor([thing('tent', 9), thing('bag', 6), thing('hat', 0.01)], { personalFactorSpread: 0 })
    const { things, now, together } = next(plan)
    expect(things.map(({ name, path }) => [name, path])).toEqual([
      ['tent', 'gear/tent/measure'],
      ['bag', 'gear/bag/measure'],
    ])
    expect(things[0]!.share).toBe('three fifths of the uncertainty')
    expect(together).not.toBe(now)
  })

  it('is nothing where all was measured, and where what is left would take less than half a litre', () => {
    expect(next(planFor([thing('tent', 9, { litresFrom: 'filled' })])).things).toEqual([])
    expect(next(planFor([thing('tent', 9, { litresFrom: 'filled' }), thing('cup', 0.4)])).things).toEqual([])
  })

  it('is one’s own packing first where that is the greatest doubt', () => {
    const gear = [
      thing('soft', 20, { litresFrom: 'filled' }),
      thing('pots', 14, { build: 'rigid', litresFrom: 'filled' }),
    ]
    expect(next(planFor(gear)).packing).toMatchObject({ isLargest: true, share: 'nearly all' })
    expect(next(planFor([thing('guess', 30), thing('pot', 1, { build: 'rigid' })])).packing!.isLargest).toBe(
      false,
    )
  })

  it('promises of packings only what they would bring', () => {
    const plan = planFor([thing('soft', 15, { litresFrom: 'filled' }), thing('hard', 20, { build: 'rigid' })])
    expect(plain(next(plan).packing!.gain)).toMatch(
      /^Pack this list once and say how full the pack is: that takes about \d+\.\d L off the range/,
    )
    // So few litres leave nothing to narrow.
    const few = planFor([thing('soft', 2, { litresFrom: 'filled' })])
    expect(next(few).packing!.gain).toMatch(/^Your own packing hardly narrows the range. It moves its middle/)
  })

  it('is asked of nobody with nothing in the main body', () => {
    const plan = planFor([thing('boots', 3, { stow: 'worn' })])
    expect(measureNext(plan, reckoned(plan), formats)).toBeNull()
  })
})

describe('what a verdict rests on', () => {
  const gear = [thing('tent', 10, { litresFrom: 'filled', massFrom: 'scale' }), thing('bag', 8)]
  const restsOf = (settings: object, packings = 0) => {
    const packed = { date: '2026-05-02', p: 1, pack: null, packLitres: 20, W: 18, d: 0, things: [] }
    const plan: Plan = {
      ...planFor(gear, { softPacking: 1, ...settings }),
      packings: Array.from({ length: packings }, () => ({ ...packed, packFrom: 'stated' })),
    }
    return basisOf({ plan, reckoning: reckoned(plan), formats })
  }

  it('is the general model until one’s own packings are reckoned with, and says how many', () => {
    expect(plain(restsOf({}).litres)).toBe(
      'Based on average packing, not yet on yours; 10 of 18 L measured, 8 guessed.',
    )
    expect(restsOf({}, 3).litres).toMatch(/^Based on your own three packings; /)
    expect(restsOf({}, 1).litres).toMatch(/^Based on one packing of your own; /)
    const own = { personalFactor: 1.1, personalFactorSpread: 0.03 }
    expect(plain(restsOf(own).litres)).toMatch(/this trip’s own packing factor, 1\.10, plus or minus 3 %/)
    expect(restsOf({ personalFactor: 1.1 }).litres).toMatch(/average packing times 1\.10, set by hand/)
  })

  it('is masses for a verdict about the load, sizes for one about length', () => {
    const basis = restsOf({})
    expect(plain(basisFor('overloaded', basis))).toBe('Based on masses: 1.0 of 2.0 kg weighed, 1.0 stated.')
    expect(basisFor('too-long', basis)).toBe(basis.sizes)
    expect(basisFor('outside-short', basis)).toBe(basis.pockets)
    for (const code of ['undersized', 'tight', 'roomy', 'fits'] as const)
      expect(basisFor(code, basis)).toBe(basis.litres)
  })

  it('says so where all is measured, and where nothing is', () => {
    const all = planFor([thing('tent', 10, { litresFrom: 'filled' })], { softPacking: 1 })
    expect(plain(basisOf({ plan: all, reckoning: reckoned(all), formats }).litres)).toMatch(
      /; all 10 L measured\.$/,
    )
    const none = planFor([thing('tent', 10)], { softPacking: 1 })
    expect(plain(basisOf({ plan: none, reckoning: reckoned(none), formats }).litres)).toMatch(
      /; none of 10 L measured, 10 guessed\.$/,
    )
  })
})
