// What the hiker really has left at a stop, and how far it lasts.

import { QuantityField } from '../../components/fields'
import { Cautions } from '../../components/pieces'
import { Why } from '../../components/why'
import { fieldPath, type LeftAt, type Plan, TRIP_LOG_LIMITS } from '../../plan'
import type { OnTheWay, Reckoning } from '../../reckon'
import type { Formats } from '../../report'
import { lasting, shortOf } from '../../report/really-left'

interface ReallyLeftProps {
  /** The draft's id of the stop, and what is noted there. */
  id: string
  at: LeftAt
  left: OnTheWay
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

export function ReallyLeft({ id, at, left, plan, reckoning, formats }: ReallyLeftProps) {
  const path = (field: keyof LeftAt) => fieldPath('log', 'left', id, field)
  const told = lasting(at, left, { plan, reckoning, formats })
  return (
    <section aria-labelledby="really">
      <h3 id="really">What will you really have as you leave?</h3>
      {plan.trip.stops[left.stop]!.nights > 0 ? <p class="hint">Without what you still use here.</p> : null}
      <div class="fields">
        {left.foodKg > 0 ? (
          <QuantityField path={path('foodKg')} label="Food" kind="mass" limit={TRIP_LOG_LIMITS.foodKg} />
        ) : null}
        {left.nightly.length > 0 ? (
          <QuantityField
            path={path('fuelKg')}
            label="Fuel"
            kind="mass"
            limit={TRIP_LOG_LIMITS.fuelKg}
            fine
            hint="Without its can."
          />
        ) : null}
        <QuantityField
          path={path('waterLitres')}
          label="Water"
          kind="volume"
          limit={TRIP_LOG_LIMITS.waterLitres}
        />
      </div>
      {told.length > 0 ? (
        <div data-figures="why" class="stack">
          <div role="status">
            {told.map(({ what, says }) => (
              <p key={what}>
                <strong>{what}:</strong> {says}
              </p>
            ))}
          </div>
          <Cautions cautions={shortOf(told, plan)} />
          <Why
            about={{
              kind: 'noted',
              title: 'How far it lasts',
              says: 'What you say you have as you leave, held against what the plan uses from here: meals and nights until food is bought or the trip ends, water until the next water source, with the reserve. Spare food is not counted as needed.',
              lines: told.map(({ what, says }) => ({ label: what, value: says })),
            }}
            figure="Why it lasts so far"
          />
        </div>
      ) : null}
    </section>
  )
}
