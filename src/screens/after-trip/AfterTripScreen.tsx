// After the trip: what came home unused, what food was left, and the pace of the last leg; each may change the next trip.

import { useMemo } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { toTop } from '../../components/frame'

import { openTrip, reckoned } from '../../store'
import { Times } from '../on-the-way'
import { FoodOver } from './FoodOver'
import { Unused } from './Unused'

export function AfterTripScreen() {
  const formats = useFormats()
  const open = reckoned.value
  const draft = openTrip.value?.draft
  const stopIds = useMemo(() => draft?.trip.stops.map(({ id }) => id) ?? [], [draft?.trip.stops])
  if (!open || !draft) return <p class="hint loading">Working it out…</p>
  const { plan, reckoned: result } = open
  const log = draft.log ?? {}
  return (
    <div class="screen after-trip">
      <div class="heading">
        <h2>After the trip</h2>
        <button type="button" class="quiet" aria-label="Back to trip" onClick={() => toTop('trip')}>
          Back
        </button>
      </div>
      <Unused draft={draft} plan={plan} />
      {result.ok ? (
        <>
          <FoodOver {...{ draft, plan, formats }} reckoning={result.reckoning} />
          <Times
            {...{ plan, log, stopIds, formats }}
            reckoning={result.reckoning}
            stop={plan.trip.stops.length - 1}
            left={null}
          />
        </>
      ) : null}
    </div>
  )
}
