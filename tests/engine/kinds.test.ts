// Litres known only as those of a kind: a range in the plan, its mean in the need, its spread in the doubt.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ItemDocument, type Parsed, parsePlan, pathText } from '../../src/plan'
import { documentOf, noWater, reckonSmall, smallPlan } from './small-plans'

const ofKind = (
  low: number,
  typical: number,
  high: number,
  more: Partial<ItemDocument> = {},
): ItemDocument => ({
  id: 'bag',
  massKg: 1,
  litresFrom: 'kind',
  litresRange: { low, typical, high },
  ...more,
})
const needOf = (gear: ItemDocument[], settings: object = {}) =>
  reckonSmall({ gear, water: noWater, settings: { softPacking: 1, personalFactorSpread: 0, ...settings } })
    .need
const problems = (item: object): string[] => {
  const parsed: Parsed = parsePlan({ ...documentOf({}), gear: [{ id: 'bag', massKg: 1, ...item }] })
  return parsed.ok ? [] : parsed.problems.map(({ path, message }) => `${pathText(path)}: ${message}`)
}

describe('a thing of a kind', () => {
  it('takes the mean of its range, not its typical litres, with the triangular uncertainty', () => {
    const need = needOf([ofKind(6, 8, 11)])
    expect(need.bodyLitres).toBeCloseTo(25 / 3, 12)
    expect(need.sigmaV).toBeCloseTo(1.0274023, 6)
  })

  it('has an uncertainty of half-width / √6 where its range is even (GUM 4.3.9), and none where it is a point', () => {
    expect(needOf([ofKind(4, 7, 10)]).sigmaV).toBeCloseTo(3 / Math.sqrt(6), 12)
    expect(needOf([ofKind(5, 5, 5)]).sigmaV).toBe(0)
    expect(needOf([ofKind(0, 0, 0)])).toMatchObject({ bodyLitres: 0, sigmaV: 0 })
  })

  it('errs together with others of a kind by the habit’s correlation, and apart from guesses', () => {
    const two = [ofKind(4, 7, 10), ofKind(4, 7, 10, { id: 'other' })]
    const u = 3 / Math.sqrt(6)
    expect(needOf(two, { habitCorrelation: 1 }).sigmaV).toBeCloseTo(2 * u, 9)
    expect(needOf(two, { habitCorrelation: 0 }).sigmaV).toBeCloseTo(Math.SQRT2 * u, 9)
    expect(needOf(two, { habitCorrelation: 0.5 }).sigmaV).toBeCloseTo(Math.sqrt(3) * u, 9)
    const guess: ItemDocument = { id: 'guess', massKg: 1, litres: 10, litresFrom: 'guess' }
    const apart = needOf([ofKind(4, 7, 10), guess], { habitCorrelation: 1 }).sigmaV
    expect(apart).toBeCloseTo(Math.hypot(u, 3 / Math.sqrt(3)), 9)
  })

  it('counts its range for each piece, and for each unit that is used up', () => {
    const three = needOf([ofKind(6, 8, 11, { count: 3 })])
    expect(three.bodyLitres).toBeCloseTo(25, 12)
    expect(three.sigmaV).toBeCloseTo(3 * 1.0274023, 6)
  })

  it('is the same to the need as a thing of the mean’s litres, whatever `litres` says besides', () => {
    const range = fc.tuple(fc.nat(20), fc.nat(20), fc.nat(20)).map(three => three.sort((a, b) => a - b))
    fc.assert(
      fc.property(range, fc.nat(100), ([low, typical, high], litres) => {
        const item = ofKind(low!, typical!, high!)
        const said = smallPlan({ gear: [{ ...item, litres }] }).gear[0]!
        expect(said).toEqual(smallPlan({ gear: [item] }).gear[0])
        const plain: ItemDocument = { id: 'bag', massKg: 1, litres: said.litres, litresFrom: 'filled' }
        expect(needOf([item]).bodyLitres).toBe(needOf([plain]).bodyLitres)
      }),
    )
  })
})

describe('a range of litres', () => {
  it('belongs to litresFrom "kind", and a kind needs one', () => {
    expect(problems({ litresFrom: 'kind' })).toEqual([
      expect.stringMatching(/^gear\[0\]\.litresFrom: .*litresRange/),
    ])
    const range = { litresRange: { low: 1, typical: 2, high: 3 } }
    expect(problems({ litres: 2, ...range })).toEqual([
      expect.stringMatching(/^gear\[0\]\.litresRange: .*"kind"/),
    ])
    expect(problems({ litres: 2, litresFrom: 'guess', ...range })).toHaveLength(1)
    expect(problems({ litresFrom: 'kind', ...range })).toEqual([])
  })

  it('runs from the least to the most, each within what an item may take', () => {
    const at = (low: unknown, typical: unknown, high: unknown) =>
      problems({ litresFrom: 'kind', litresRange: { low, typical, high } })
    expect(at(3, 2, 4)).toEqual([expect.stringMatching(/^gear\[0\]\.litresRange: .*3, 2 and 4 L/)])
    expect(at(1, 5, 4)).toHaveLength(1)
    expect(at(-1, 2, 4)).toEqual([expect.stringMatching(/^gear\[0\]\.litresRange\.low: .*0 to 500 L/)])
    expect(at(1, 2, 501)).toEqual([expect.stringMatching(/^gear\[0\]\.litresRange\.high: .*0 to 500 L/)])
    expect(at(1, undefined, 4)).toEqual([expect.stringMatching(/^gear\[0\]\.litresRange\.typical: missing/)])
    expect(at(2, 2, 2)).toEqual([])
  })

  it('with an unknown field in it is refused by that name', () => {
    const litresRange = { low: 1, typical: 2, high: 3, mean: 2 }
    expect(problems({ litresFrom: 'kind', litresRange })).toEqual([
      expect.stringMatching(/^gear\[0\]\.litresRange\.mean: is not a field/),
    ])
  })

  it('spares `litres`, which every other item must give, said along with what else is wrong', () => {
    expect(problems({})).toEqual([expect.stringMatching(/^gear\[0\]\.litres: missing: .*0 to 500 L/)])
    expect(problems({ massKg: -1 }).map(line => line.split(':')[0])).toEqual([
      'gear[0].massKg',
      'gear[0].litres',
    ])
  })
})
