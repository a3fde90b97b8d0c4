// The worked plan and its reckoning, computed by an independent program from the same page: every number to 1e-9.
// Standing: invented trip; its reckoning is computed from the page's equations, not measured.

import { describe, expect, it } from 'vitest'
import { completePlan, type PlanDocument, parsePlan } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { differences } from './agree'
import workedPlan from './fixtures/worked-plan.json'
import workedReckoning from './fixtures/worked-reckoning.json'
import { naive } from './naive'

const parsed = parsePlan(workedPlan)
if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))

describe('the worked plan', () => {
  const reckoned = reckon(parsed.plan)
  if (!reckoned.ok) throw new Error(reckoned.problem.message)

  it('is reckoned as the independent program has it, in every number', () => {
    expect(differences(reckoned.reckoning, workedReckoning)).toEqual([])
  })

  it('has that program and the naive reckoning agree too', () => {
    const { need, moments, legs } = workedReckoning
    expect(differences(naive(parsed.plan), { need, moments, legs })).toEqual([])
  })

  it('is the same plan and the same reckoning when read again', () => {
    expect(completePlan(workedPlan as PlanDocument)).toEqual(parsed.plan)
    expect(reckon(structuredClone(parsed.plan))).toEqual(reckoned)
  })

  it('is not changed by being reckoned', () => {
    const before = structuredClone(parsed.plan)
    reckon(parsed.plan)
    expect(parsed.plan).toEqual(before)
  })
})

describe('a comparison of reckonings', () => {
  it('sees a number that is off by one part in a hundred million', () => {
    const off = { ...workedReckoning.need, bodyLitres: workedReckoning.need.bodyLitres * (1 + 1e-8) }
    expect(differences({ need: off }, { need: workedReckoning.need })).toHaveLength(1)
  })

  it('sees a missing field, a missing entry and another word', () => {
    expect(differences({ a: [1] }, { a: [1, 2], b: 'x' }).length).toBeGreaterThanOrEqual(3)
  })
})
