// What the tests of the explanations share: a plan with its Reckoning, and the first explanation of a figure.

import fc from 'fast-check'
import { expect } from 'vitest'
import type { Plan } from '../../src/plan'
import { type Reckoning, reckon } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { type About, type Explanation, explain, type WhyContext } from '../../src/report/why'
import type { System } from '../../src/units'
import { documents, planOf } from './plans'
import { answered } from './small-plans'

export function contextOf(plan: Plan, reckoning?: Reckoning, system: System = 'metric'): WhyContext {
  const own = answered(plan)
  return {
    plan,
    reckoning: reckoning ?? own.reckoning,
    working: own.working,
    formats: formatsIn(system),
    stopIds: plan.trip.stops.map((_, i) => `s${i}`),
  }
}

export const first = (about: About, context: WhyContext): Explanation => {
  const [explanation] = explain(about, context)
  if (!explanation) throw new Error(`${about.kind} is not explained`)
  return explanation
}
export const near = (got: number, wanted: number, share = 1e-9) =>
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(share * Math.max(1, Math.abs(wanted)))

/** Holds a rule against random plans, by asking `holds` of each that reckons; most of them have to. */
export function onAnyPlan(options: Parameters<typeof documents>[0], holds: (context: WhyContext) => void) {
  let seen = 0
  fc.assert(
    fc.property(documents(options), document => {
      const plan = planOf(document)
      const result = reckon(plan)
      if (!result.ok) return
      seen += 1
      holds(contextOf(plan, result.reckoning))
    }),
    { numRuns: 12 },
  )
  expect(seen).toBeGreaterThan(6)
}
