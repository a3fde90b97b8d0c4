// The invented trip that the help draws, and changes of it: reckoned by the engine when it is asked for, like any plan.

import tarnRound from '../../../data/help-plan.json'
import { type PlanDocument, parsePlan } from '../../plan'
import { reckon } from '../../reckon'
import type { WhyContext } from '../why'

/** A plan with all that was reckoned of it: enough for every reason but the units. */
export type Example = Pick<WhyContext, 'plan' | 'reckoning' | 'working' | 'stopIds'>

/** What a variant of the trip says otherwise. */
export type Change = (document: PlanDocument) => PlanDocument

/** The invented trip with a change, reckoned. Throws where it is refused: that would be a fault of ours. */
export function exampleOf(change: Change = document => document): Example {
  const parsed = parsePlan(change(documentOf(tarnRound)))
  if (!parsed.ok) throw new Error(`the help's plan: ${JSON.stringify(parsed.problems)}`)
  const result = reckon(parsed.plan)
  if (!result.ok) throw new Error(`the help's plan: ${result.problem.said}`)
  return { plan: parsed.plan, reckoning: result.reckoning, working: result.working, stopIds: [] }
}

function documentOf(value: unknown): PlanDocument {
  const parsed = parsePlan(value)
  if (!parsed.ok) throw new Error(`the help's plan: ${JSON.stringify(parsed.problems)}`)
  return parsed.document
}
