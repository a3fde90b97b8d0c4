// What is carried at a moment, by kind: it adds up to the load and to the main body.

import { describe, expect, it } from 'vitest'
import demo from '../../data/demo-plan.json'
import { parsePlan } from '../../src/plan'
import { carriedAt } from '../../src/report'
import { contextOf, near, onAnyPlan } from './why-context'

const total = (amounts: number[]) => amounts.reduce((sum, amount) => sum + amount, 0)

describe('what is carried then', () => {
  it('adds up to the load of every moment, and to the litres of the main body, on any plan', () => {
    onAnyPlan({ ration: 'fixed', litresPerHour: 'number' }, ({ plan, reckoning }) => {
      reckoning.moments.forEach((moment, index) => {
        const parts = carriedAt(plan, reckoning, index)
        const aboard = parts.filter(({ share }) => share !== 'wanted')
        near(total(aboard.map(({ kg }) => kg)), moment.kg.total, 1e-6)
        near(total(parts.map(({ kg }) => kg)), moment.kg.total + moment.wantedLitres, 1e-6)
        near(total(aboard.map(({ litres }) => litres)), moment.bodyLitres, 1e-6)
      })
    })
  })

  it('tells the gear by the hiker’s own groups, the largest by name, in one order at every moment', () => {
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    const { plan, reckoning } = contextOf(parsed.plan)
    const words = reckoning.moments.map((_, index) =>
      carriedAt(plan, reckoning, index)
        .filter(({ share }) => share === 'kept')
        .map(({ word }) => word),
    )
    expect(words[0]).toEqual(['Other gear', 'Sleep', 'Clothing', 'Kitchen'])
    expect(new Set(words.map(each => each.join())).size).toBe(1)
  })

  it('says of what is not in the main body whether a box holds it', () => {
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    const { plan, reckoning } = contextOf(parsed.plan)
    const food = carriedAt(plan, reckoning, 0).find(({ share }) => share === 'daily')
    expect(food).toMatchObject({ word: 'Food', litres: 0, elsewhere: 'in a box' })
  })
})
