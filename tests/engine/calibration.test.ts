// What packings of one's own make of a plan: how they count, what they never do, and which are refused.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type ItemDocument,
  type PackingDocument,
  type PlanDocument,
  parsePlan,
  pathText,
} from '../../src/plan'
import { packedListAt } from '../../src/reckon'
import { planOf } from './plans'
import { documentOf, noWater, reckoned } from './small-plans'

const gear: ItemDocument[] = [
  { id: 'clothes', massKg: 2, litres: 19 },
  { id: 'tent', massKg: 1, litres: 9.5, litresFrom: 'stated' },
  { id: 'pots', massKg: 1, litres: 4, build: 'rigid', litresFrom: 'filled' },
]
const withPackings = (packings: PackingDocument[], more: Partial<PlanDocument> = {}): PlanDocument => ({
  ...documentOf({ gear, water: noWater }),
  packings,
  ...more,
})
const needOf = (document: PlanDocument) => reckoned(planOf(document)).need

/** This list packed once, in a pack that it filled to `factor` times what is reckoned. */
function packedAs(factor: number, more: Partial<PackingDocument> = {}): PackingDocument {
  const plan = planOf(withPackings([]))
  const list = packedListAt(plan, reckoned(plan), 0)
  return { date: '2026-05-02', p: 0.9, packLitres: (factor * list.W) / 0.9, ...list, ...more }
}

/** Another list, of which nothing is along now. */
const others = (factor: number, more: Partial<PackingDocument> = {}): PackingDocument =>
  packedAs(factor, { things: [{ id: 'boat', litres: 20, litresFrom: 'filled', u: 0.01 }], ...more })

const factors = fc.double({ min: 0.6, max: 1.8, noNaN: true })
const some = fc.array(
  fc.oneof(
    factors.map(factor => packedAs(factor)),
    factors.map(factor => others(factor)),
  ),
  { minLength: 1, maxLength: 5 },
)

describe('a packing', () => {
  it('moves the litres towards what it took, and narrows them', () => {
    const before = needOf(withPackings([]))
    const { factor, sigmaShare, bodyLitres } = needOf(withPackings([packedAs(1.2)]))
    expect(factor).toBeGreaterThan(1.1)
    expect(factor).toBeLessThan(1.2)
    expect(bodyLitres).toBeCloseTo(factor * before.bodyLitres, 9)
    expect(sigmaShare).toBeLessThan(0.6 * before.sigmaShare)
  })

  it('tells more of the same things than of others, and more in a measured pack than in a stated one', () => {
    const same = needOf(withPackings([packedAs(1.2)]))
    const other = needOf(withPackings([others(1.2)]))
    const measured = needOf(withPackings([packedAs(1.2, { packFrom: 'measured' })]))
    expect(other.factor).toBeLessThan(same.factor)
    expect(other.sigmaShare).toBeGreaterThan(same.sigmaShare)
    expect(measured.factor).toBeGreaterThan(same.factor)
    expect(measured.sigmaShare).toBeLessThan(same.sigmaShare)
  })

  it('is of other things once these are known another way or take other litres', () => {
    const { things } = packedAs(1.2)
    const changed = (change: Partial<(typeof things)[number]>) =>
      needOf(withPackings([packedAs(1.2, { things: things.map(thing => ({ ...thing, ...change })) })])).factor
    const same = changed({})
    expect(changed({ litres: 3 })).toBeLessThan(same)
    expect(changed({ litresFrom: 'dimensions' })).toBeLessThan(same)
    const less = things.map(({ litres, ...thing }) => ({ ...thing, litres: litres + 1e-12 }))
    expect(needOf(withPackings([packedAs(1.2, { things: less })])).factor).toBeCloseTo(same, 12)
  })

  it('once more in the same pack tells less than in another', () => {
    const twice = (pack: string) =>
      needOf(withPackings([packedAs(1.2, { pack: 'grey' }), packedAs(1.2, { pack })])).sigmaShare
    expect(twice('grey')).toBeGreaterThan(twice('blue'))
  })

  it('that would not close counts by the litres left over', () => {
    const { p: _p, ...packing } = packedAs(1.1)
    const over = needOf(withPackings([{ ...packing, packLitres: 40, overLitres: 4 }]))
    expect(over.factor).toBeCloseTo(needOf(withPackings([{ ...packing, packLitres: 40, p: 1.1 }])).factor, 12)
  })
})

describe('several packings', () => {
  it('count the same in any order, never widen the range, and are followed no further than they reach', () => {
    const before = needOf(withPackings([]))
    fc.assert(
      fc.property(some, packings => {
        const { factor, sigmaShare } = needOf(withPackings(packings))
        const turned = needOf(withPackings(packings.toReversed()))
        expect(turned.factor).toBeCloseTo(factor, 12)
        expect(turned.sigmaShare).toBeCloseTo(sigmaShare, 12)
        expect(sigmaShare).toBeLessThanOrEqual(before.sigmaShare + 1e-12)
        const found = packings.map(({ p = 1, packLitres, W }) => (p * packLitres) / W)
        expect(factor).toBeGreaterThanOrEqual(Math.min(1, ...found) - 1e-12)
        expect(factor).toBeLessThanOrEqual(Math.max(1, ...found) + 1e-12)
      }),
      { numRuns: 60 },
    )
  })

  it('are never taken to tell the litres better than one can be read', () => {
    const many = Array.from({ length: 50 }, (_, i) =>
      packedAs(1, { packFrom: 'measured', pack: `pack ${i}` }),
    )
    expect(needOf(withPackings(many)).sigmaShare).toBeGreaterThanOrEqual(0.03)
  })

  it('change nothing where nothing rides in the main body, or where they have nothing in common with it', () => {
    const empty = needOf({ ...withPackings([packedAs(1.3)]), gear: [] })
    expect(empty).toMatchObject({ bodyLitres: 0, sigmaV: 0, factor: 1, sigmaShare: 0.08 })
    const noHand = { settings: { handSpread: 0 } }
    const apart = needOf(withPackings([others(1.3, { d: 0 })], noHand))
    expect(apart).toEqual(needOf(withPackings([], noHand)))
  })

  it('hold a factor between a half and two', () => {
    const extreme = { settings: { personalFactor: 1.9, handSpread: 0.5 } }
    expect(needOf(withPackings([packedAs(2.5, { packFrom: 'measured' })], extreme)).factor).toBe(2)
  })
})

describe('a packing that cannot be', () => {
  const problems = (packing: object): string[] => {
    const parsed = parsePlan({ ...withPackings([]), packings: [packing] })
    return parsed.ok ? [] : parsed.problems.map(({ path, message }) => `${pathText(path)}: ${message}`)
  }
  const good = packedAs(1)
  const { p: _p, ...unread } = good

  it.each([
    ['packings[0].W: nothing was packed', { ...good, W: 0 }],
    ['packings[0].W: write a number from 0 to 1000 L', { ...good, W: -1 }],
    ['packings[0].p: write a number from 0.3 to 1.5', { ...good, p: 0.2 }],
    ['packings[0].overLitres: makes the pack 1.6 times full', { ...unread, packLitres: 50, overLitres: 30 }],
    ['packings[0].W: the items took 2.6 times', { ...good, p: 1, packLitres: 52, W: 20 }],
    ['packings[0].W: the items took 0.375 times', { ...good, p: 0.5, packLitres: 30, W: 40 }],
    ['packings[0].overLitres: says once more', { ...good, overLitres: 1 }],
    ['packings[0].p: missing', unread],
    ['packings[0].d: write a number from 0 to 1', { ...good, d: 1.5 }],
    [
      'packings[0].things[0].u: write a number from 0 to 1',
      { ...good, things: [{ ...good.things[0], u: 2 }] },
    ],
    [
      'packings[0].things[1].id: "clothes" is in this packing twice',
      { ...good, things: [good.things[0], good.things[0]] },
    ],
    ['packings[0].date: write a day', { ...good, date: 'in May' }],
    ['packings[0].weather: is not a field', { ...good, weather: 'fair' }],
  ])('is refused by its field: %s', (said, packing) => {
    expect(problems(packing).join('\n')).toContain(said)
  })

  it('is refused for the list being too long', () => {
    const parsed = parsePlan(withPackings(Array.from({ length: 51 }, () => good)))
    expect(!parsed.ok && parsed.problems[0]!.message).toMatch(/too many packings: 50 at most/)
  })
})
