// Between sources: each stretch with the water it asks for, and what a camp at water would save on it. The dozen
// reckonings behind it run when the section is opened, and again only when the typing has stopped.

import { useEffect, useState } from 'preact/hooks'
import { type DryStretches as Reckoned, dryStretches, reckoned } from '../../store'
import type { Shown } from '../../report'
import { Stretch } from './DryStretch'

/** After the last change of the trip, ms. */
const QUIET_MS = 400

export function DryStretches({ shown }: { shown: Shown }) {
  const [open, setOpen] = useState(false)
  return (
    <details class="section stretches" open={open} onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>Between sources</h3>
      </summary>
      {open ? <Opened shown={shown} /> : null}
    </details>
  )
}

function Opened({ shown }: { shown: Shown }) {
  const trip = reckoned.value
  // What is shown belongs to the plan it was reckoned for until the next one is ready.
  const [ready, setReady] = useState<Reckoned | null>(() => dryStretches.peek())
  useEffect(() => {
    if (trip && ready?.plan === trip.plan) return
    const timer = setTimeout(() => setReady(dryStretches.peek()), QUIET_MS)
    return () => clearTimeout(timer)
  }, [trip, ready])
  if (!ready) return null
  const { plan, stretches } = ready
  const capacity = trip?.reckoned.ok ? trip.reckoned.reckoning.need.waterCapacityLitres : null
  return (
    <>
      <p class="hint">
        {capacity === null
          ? 'No item in the gear list holds water, so there is no limit to hold these against.'
          : `Your containers hold ${shown.water(capacity)}.`}
      </p>
      <ol class="stretch-list">
        {stretches.map(stretch => (
          <Stretch key={stretch.carry.stop} {...{ stretch, plan, shown, capacity }} />
        ))}
      </ol>
    </>
  )
}
