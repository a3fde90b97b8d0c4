// A door through which something comes in that we did not make, and what must hold of it whatever comes. The tests try
// each some hundred times; `node tests/tools/fuzz.mjs 100000` tries them as often as that.

import fc from 'fast-check'
import { expect } from 'vitest'
import { completeAny, isParty, type ParsedAny, pathText, type WrittenPlan } from '../../src/plan'
import { planOfOne, type Reckoning, reckon, reckonAsShared } from '../../src/reckon'

export interface Door {
  name: string
  property: fc.IRawProperty<unknown>
  /** How many times as long as others one try takes; the tests then try it less often. */
  cost?: number
}

/** Throws with the counterexample when the door lets something through that it must not. */
export const tryDoor = ({ property }: Door, numRuns: number): unknown => fc.assert(property, { numRuns })

/** Words that a message must not have unless the text it speaks of has them, also within others. */
const WORDS = 'please|sorry|valid|invalid|oops|forbidden|required|undefined|NaN|Infinity'
const SCOLDING = new RegExp(`\\b(?:${WORDS})\\b|\\[object`, 'i')
const ECHOED = new RegExp(WORDS, 'i')

export function expectWellSaid(message: string, about: string) {
  expect(message).toMatch(/\S/)
  expect(message.length).toBeLessThanOrEqual(700)
  if (!ECHOED.test(about.normalize('NFKC'))) expect(message).not.toMatch(SCOLDING)
}

/** The paths of all numbers that are no numbers; Reckonings hold none. */
export function unfinite(value: unknown, path = 'reckoning'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, child]) => unfinite(child, `${path}.${key}`))
}

/** The plan is reckoned in finite numbers, or refused with the place that is wrong. */
export function expectReckons(document: WrittenPlan): Reckoning | null {
  const plan = completeAny(document)
  if (isParty(plan)) {
    const party = reckonAsShared(plan, {})
    if (party.ok) expect(unfinite(party.party)).toEqual([])
  }
  const reckoned = reckon(planOfOne(plan, {}))
  if (!reckoned.ok) {
    expect(reckoned.problem.path.length).toBeGreaterThan(0)
    expectWellSaid(reckoned.problem.message, '')
    return null
  }
  expect(unfinite(reckoned.reckoning)).toEqual([])
  return reckoned.reckoning
}

/** A plan that reckons, or messages that name where. */
export function expectPlanOrProblems(parsed: ParsedAny, text: string) {
  expect('polluted' in {}).toBe(false)
  if (parsed.ok) {
    expectReckons(parsed.document)
    return
  }
  expect(parsed.problems.length).toBeLessThanOrEqual(101)
  for (const { path, message } of parsed.problems) {
    expect(pathText(path)).toMatch(/\S/)
    expectWellSaid(message, text)
  }
}
