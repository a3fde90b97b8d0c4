// Food that was left over, the ration really eaten, and one tap to take it on.

import { QuantityField } from '../../components/fields'
import { Why } from '../../components/why'
import { type Draft, type Plan, TRIP_LOG_LIMITS } from '../../plan'
import { foodThings, withOwnRation } from '../../plan/shelf'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { type OwnRation, ownRation, ownRationLines, ownRationText } from '../../report/after-trip'
import { actions, shelf } from '../../store'

interface FoodOverProps {
  draft: Draft
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function FoodOver({ draft, plan, reckoning, formats }: FoodOverProps) {
  if (!plan.gear.some(({ use, count }) => use === 'daily' && count > 0)) return null
  const { foodOverKg: overKg, rationKg, foodPlanned: before } = draft.log ?? {}
  const own = overKg === undefined ? null : ownRation(plan, reckoning, { overKg, before })
  // What was left over may have been corrected since: then that ration is no longer one's own.
  const isTaken = rationKg !== undefined && (!own || formats.gear(own.ownKg) === formats.gear(rationKg))
  return (
    <section aria-labelledby="food-over">
      <h3 id="food-over">Food</h3>
      <div class="fields">
        <QuantityField
          path="log/foodOverKg"
          label="Food left over"
          kind="mass"
          limit={TRIP_LOG_LIMITS.foodKg}
        />
      </div>
      {overKg !== undefined && !own ? (
        <p class="problem">That is all the food of the plan: no ration follows from it.</p>
      ) : isTaken ? (
        <p data-figures="typed" role="status">
          Taken on: {formats.gear(rationKg)} a day, in this list and its copies
          {foodThings(draft, shelf.value).length > 0 ? ', and on the shelf' : ''}.
        </p>
      ) : null}
      {own && !isTaken ? (
        <div data-figures="why" class="stack">
          <p>{ownRationText(own, formats)}</p>
          <p class="hint">If you packed and bought what the plan says.</p>
          {formats.gear(own.ownKg) === formats.gear(own.listedKg) ? null : (
            <button type="button" onClick={() => takeOn(own)}>
              Use {formats.gear(own.ownKg)} a day from now on
            </button>
          )}
          <Why
            about={{
              kind: 'noted',
              title: 'What you ate a day',
              says: 'All the food that the plan packs and buys, spare food too, without what was left, by the full days of food that the plan eats. Taken on, each food of the list has that much more or less, in mass and in litres.',
              lines: ownRationLines(own, formats),
            }}
            figure="How this is calculated"
          />
        </div>
      ) : null}
    </section>
  )
}

const takeOn = (own: OwnRation) =>
  actions.editBoth('Use your own ration', both => withOwnRation(both, { ...own, now: Date.now() }))
