// Food that was left over, the ration really eaten, and one tap to take it on.

import { QuantityField } from '../../components/fields'
import { Why } from '../../components/why'
import { type Plan, TRIP_LOG_LIMITS, type TripLog } from '../../plan'
import { withOwnRation } from '../../plan/shelf'
import type { Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { ownRation, ownRationLines, ownRationText } from '../../report/after-trip'
import { actions } from '../../store'

interface FoodOverProps {
  log: TripLog
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function FoodOver({ log, plan, reckoning, formats }: FoodOverProps) {
  if (!plan.gear.some(({ use, count }) => use === 'daily' && count > 0)) return null
  const { foodOverKg, rationKg } = log
  const own = foodOverKg === undefined ? null : ownRation(plan, reckoning, foodOverKg)
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
      {rationKg !== undefined ? (
        <p data-figures="typed" role="status">
          Taken on: {formats.gear(rationKg)} a day, in this list and its copies, and on the shelf.
        </p>
      ) : foodOverKg !== undefined && !own ? (
        <p class="problem">That is all the food of the plan: no ration follows from it.</p>
      ) : null}
      {own && rationKg === undefined ? (
        <div data-figures="why" class="stack">
          <p>{ownRationText(own, formats)}</p>
          <p class="hint">If you packed and bought what the plan says.</p>
          {formats.gear(own.ownKg) === formats.gear(own.listedKg) ? null : (
            <button type="button" onClick={() => takeOn(own.ownKg / own.listedKg, own.ownKg)}>
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

const takeOn = (factor: number, rationKg: number) =>
  actions.editBoth('Use your own ration', both => withOwnRation(both, { factor, rationKg, now: Date.now() }))
