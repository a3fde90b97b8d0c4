// The personal factor from what the hiker has packed: one observation, several, and what they do to a plan.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument } from '../../src/plan'
import {
  CALIBRATION_LIMITS,
  combineObservations,
  fullnessNotClosing,
  type Observed,
  observedFactor,
} from '../../src/reckon'
import { noWater, reckonSmall } from './small-plans'

const value = (observed: Observed): number => {
  if (!observed.ok) throw new Error(`${observed.field}: ${observed.got}`)
  return observed.value
}
const combined = (...factors: number[]) => combineObservations(factors.map(factor => ({ factor })))

describe('one observation', () => {
  it('is the litres filled over the litres reckoned at factor 1', () => {
    expect(value(observedFactor({ fullness: 0.9, bodyLitres: 50, reckonedLitresAtFactor1: 40 }))).toBe(1.125)
  })

  it('of a pack that would not close counts what was left over as more than full', () => {
    const fullness = value(fullnessNotClosing({ bodyLitres: 40, overLitres: 4 }))
    expect(fullness).toBeCloseTo(1.1, 12)
    expect(value(observedFactor({ fullness, bodyLitres: 40, reckonedLitresAtFactor1: 40 }))).toBeCloseTo(
      1.1,
      12,
    )
  })

  it.each([
    ['fullness', { fullness: 0.05, bodyLitres: 50, reckonedLitresAtFactor1: 40 }],
    ['fullness', { fullness: Number.NaN, bodyLitres: 50, reckonedLitresAtFactor1: 40 }],
    ['bodyLitres', { fullness: 1, bodyLitres: 0, reckonedLitresAtFactor1: 40 }],
    ['reckonedLitresAtFactor1', { fullness: 1, bodyLitres: 50, reckonedLitresAtFactor1: 0 }],
    ['factor', { fullness: 1, bodyLitres: 60, reckonedLitresAtFactor1: 5 }],
  ] as const)('is refused by the name of its %s where that is out of reason', (field, packed) => {
    const refused = observedFactor(packed)
    expect(refused).toMatchObject({ ok: false, reason: 'outside-range', field })
    expect(!refused.ok && refused.limit).toEqual(CALIBRATION_LIMITS[field])
  })

  it('makes the plan it came from take just what was filled', () => {
    const gear: ItemDocument[] = [
      { id: 'soft', massKg: 1, litres: 20, litresFrom: 'filled' },
      { id: 'rigid', massKg: 1, litres: 8, build: 'rigid', litresFrom: 'filled' },
    ]
    const fill = fc.double({ min: 0.5, max: 1.3, noNaN: true })
    fc.assert(
      fc.property(fill, fc.double({ min: 20, max: 80, noNaN: true }), (fullness, bodyLitres) => {
        const before = reckonSmall({ gear, water: noWater }).need.bodyLitres
        const factor = value(observedFactor({ fullness, bodyLitres, reckonedLitresAtFactor1: before }))
        const { need } = reckonSmall({ gear, water: noWater, settings: combined(factor) })
        expect(need.bodyLitres).toBeCloseTo(fullness * bodyLitres, 9)
        const packing = 0.06 * need.bodyLitres
        expect(need.sigmaV).toBeGreaterThanOrEqual(packing)
      }),
      { numRuns: 30 },
    )
  })
})

describe('several observations', () => {
  it('are their mean, with the standard deviation of the mean', () => {
    expect(combined(1, 1.2)).toEqual({ personalFactor: 1.1, personalFactorSpread: expect.closeTo(0.1, 12) })
    // 0.9, 1.1, 1.3: s = 0.2, over √3.
    const three = combined(0.9, 1.1, 1.3)
    expect(three.personalFactor).toBeCloseTo(1.1, 12)
    expect(three.personalFactorSpread).toBeCloseTo(0.2 / Math.sqrt(3), 12)
  })

  it('are never taken to be surer than 0.03, one alone not than 0.06, and none calibrates nothing', () => {
    expect(combined(1.1, 1.1, 1.1)).toEqual({
      personalFactor: expect.closeTo(1.1, 12),
      personalFactorSpread: 0.03,
    })
    expect(combined(1.1)).toEqual({ personalFactor: 1.1, personalFactorSpread: 0.06 })
    expect(combined()).toEqual({ personalFactor: 1, personalFactorSpread: null })
  })

  it('lie between the least and the greatest of them, in whatever order', () => {
    const factors = fc.array(fc.double({ min: 0.5, max: 2, noNaN: true }), { minLength: 1, maxLength: 8 })
    fc.assert(
      fc.property(factors, some => {
        const { personalFactor, personalFactorSpread } = combined(...some)
        expect(personalFactor).toBeGreaterThanOrEqual(Math.min(...some) - 1e-12)
        expect(personalFactor).toBeLessThanOrEqual(Math.max(...some) + 1e-12)
        const turned = combined(...some.toReversed())
        expect(turned.personalFactor).toBeCloseTo(personalFactor, 12)
        expect(turned.personalFactorSpread).toBeCloseTo(personalFactorSpread!, 12)
      }),
    )
  })
})
