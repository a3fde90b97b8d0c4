// The demo trip: an invented plan, opened as a trip of its own.

import demo from '../../data/demo-plan.json'
import { type Draft, fromPlanDocument, parsePlan } from '../plan'

export function demoDraft(newId: () => string): Draft {
  const parsed = parsePlan(demo)
  // The demo ships with the app and is checked by its tests: a refusal here is a fault of ours.
  if (!parsed.ok) throw new Error(`demo plan: ${JSON.stringify(parsed.problems)}`)
  return fromPlanDocument(parsed.document, newId)
}
