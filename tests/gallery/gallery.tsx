// All components in all their states, one below the other: for photographs, and no part of what is built.
// What stands on a screen with the demo already in each of its states, as the tables, is photographed there.

import { render } from 'preact'
import demo from '../../data/demo-plan.json'
import { fromPlanDocument, parsePlan, removeItem } from '../../src/plan'
import { actions, loadEngine, newId } from '../../src/store'
import '../../src/style.css'
import '../../src/components/components.css'
import '../../src/components/rows.css'
import '../../src/screens/screens.css'
import { Buttons, Fields } from './fields'
import { Pictures } from './pictures'
import { Answers, Lists, Said } from './pieces'
import { SheetSpecimen } from './sheet'

const parsed = parsePlan(demo)
if (!parsed.ok) throw new Error('the demo plan is refused')
actions.createTrip(fromPlanDocument(parsed.document, newId))
await loadEngine()
actions.setField('carrier/heightCm', undefined, 'tall')
actions.edit('Delete item Camp shoes', draft => removeItem(draft, draft.gear.at(-1)!.id))

const isSheet = new URLSearchParams(location.search).has('sheet')
render(
  <div class="screen">
    <h1>Components</h1>
    {isSheet ? (
      <SheetSpecimen />
    ) : (
      <>
        <Buttons />
        <Fields />
        <Lists />
        <Said />
        <Answers />
        <Pictures />
      </>
    )}
  </div>,
  document.getElementById('app')!,
)
