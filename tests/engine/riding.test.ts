// What rides in the main body, heap by heap: together it weighs what the moment says, for plans of every kind.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { reckon, ridingAt } from '../../src/reckon'
import { documents, planOf } from './plans'
import { noWater, reckoned, smallPlan } from './small-plans'

describe('the heaps of a main body', () => {
  it('weigh together what it holds, at every moment of any plan', () => {
    fc.assert(
      fc.property(documents({ ration: 'fixed', litresPerHour: 'number' }), document => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        const { moments } = result.reckoning
        moments.forEach((moment, m) => {
          const kg = ridingAt(plan, result.reckoning, m).reduce((sum, heap) => sum + heap.kg, 0)
          expect(Math.abs(kg - moment.bodyKg)).toBeLessThanOrEqual(1e-9 * (1 + moment.bodyKg))
          expect(moment.loose.kg).toBeLessThanOrEqual(moment.bodyKg * (1 + 1e-9) + 1e-9)
          expect(moment.loose.litres).toBeLessThanOrEqual(moment.softLitres * (1 + 1e-9) + 1e-9)
        })
      }),
      { numRuns: 60 },
    )
  })

  it('are one for a container with what is in it, and one for the water', () => {
    const plan = smallPlan({
      gear: [
        { id: 'box', massKg: 1, litres: 11, holdsLitres: 10 },
        { id: 'oats', massKg: 2, litres: 4, inside: 'box' },
        { id: 'bag', massKg: 0.1, litres: 0.1, holdsWaterLitres: 3 },
        { id: 'hat', massKg: 0.1, litres: 1, stow: 'worn' },
      ],
      water: { ...noWater, reserveLitres: 2 },
    })
    const heaps = ridingAt(plan, reckoned(plan), 0).map(({ item, kg, litres }) => [
      item?.id ?? null,
      kg,
      litres,
    ])
    expect(heaps).toEqual([
      ['box', 3, 11],
      ['bag', 0.1, 0.1],
      [null, 2, 2],
    ])
  })
})
