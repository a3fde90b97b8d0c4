// How sure the litres are, and what packings make of it: values computed by an independent script from sections 5, 6
// and 9 of the model page, each with what it shows in its `source`.

import { describe, expect, it } from 'vitest'
import { type Plan, parsePlan } from '../../src/plan'
import { packedListAt, reckon } from '../../src/reckon'
import { alikeByThing, calibrate, observedFactor } from '../../src/reckon/calibration'
import cases from './spread.values.json'

interface Expected {
  e: number
  W: number
  d: number
  u: Record<string, number>
  m2: number
  s: number
  F: number
  V: number
  sigmaV: number
  safe: number
  F_k?: number[]
  alike_0k?: number[]
  gain?: number
  b?: number[]
}

const planOf = (given: unknown): Plan => {
  const parsed = parsePlan(given)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.plan
}

interface Case {
  id: string
  source: string
  inputs: { plan: unknown }
  expected: Expected
  tolerance: number
}

const all = cases as unknown as Case[]
const packed = all.filter(({ expected }) => expected.b)

describe.each(all)('$id: $source', ({ inputs, expected, tolerance }) => {
  const plan = planOf(inputs.plan)
  const reckoned = reckon(plan)
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  const { need } = reckoned.reckoning
  const { W, d, things } = packedListAt(plan, reckoned.reckoning, 0)
  const within = (got: number, value: number) =>
    expect(Math.abs(got - value)).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(value)))

  it('has the litres and how sure they are', () => {
    within(need.factor, expected.F)
    within(need.sigmaShare, expected.s)
    within(need.bodyLitres, expected.V)
    within(need.sigmaV, expected.sigmaV)
    within(need.bodyLitresSafe, expected.safe)
  })

  it('has what they are made of', () => {
    within(W, expected.W)
    within(d, expected.d)
    const u = new Map(things.map(thing => [thing.id, thing.u]))
    for (const [id, value] of Object.entries(expected.u)) within(u.get(id) ?? 0, value)
    within(
      alikeByThing(things, things, plan.settings.habitCorrelation).reduce((a, b) => a + b, 0),
      expected.m2,
    )
  })
})

describe.each(packed)('the packings of $id', ({ inputs, expected, tolerance }) => {
  const plan = planOf(inputs.plan)
  const reckoned = reckon(plan)
  if (!reckoned.ok) throw new Error(reckoned.problem.message)
  const { d, things } = packedListAt(plan, reckoned.reckoning, 0)
  const { weights, gain } = calibrate(plan.settings, { d, things }, plan.packings)
  const within = (got: number, value: number) => expect(Math.abs(got - value)).toBeLessThanOrEqual(tolerance)

  it('count by their weights', () => {
    within(gain, expected.gain!)
    plan.packings.forEach((packing, k) => {
      within(weights[k]!, expected.b![k]!)
      within(observedFactor(packing), expected.F_k![k]!)
    })
  })

  it('err alike with the list by so much', () => {
    plan.packings.forEach((packing, k) => {
      const alike = alikeByThing(things, packing.things, plan.settings.habitCorrelation)
      within(
        alike.reduce((a, b) => a + b, 0),
        expected.alike_0k![k]!,
      )
    })
  })
})
