// The demo trip: an invented plan, opened as a trip of its own.

import demo from '../../../data/demo-plan.json'
import { fromPlanDocument, parsePlan } from '../../plan'
import { actions, newId } from '../../store'

export function openDemo() {
  const parsed = parsePlan(demo)
  // The demo ships with the app and is checked by its tests: a refusal here is a fault of ours.
  if (!parsed.ok) throw new Error(`demo plan: ${JSON.stringify(parsed.problems)}`)
  actions.createTrip(fromPlanDocument(parsed.document, newId), { demo: true })
  actions.setPlace({ screen: 'need', detail: null, scrollY: 0 })
}
