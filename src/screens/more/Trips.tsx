// The trips kept on this device, in the reader's order, and those that were deleted last.

import { useState } from 'preact/hooks'
import { useOwnPackings } from '../../components/confidence'
import { usePortions } from '../../components/long-list'
import { emptyDraft, tripName } from '../../plan'
import { reckonWith } from '../../report/confidence'
import { actions, library, openTrip, trips } from '../../store'
import { counted } from '../../units'
import { loadDemo } from '../welcome'
import { RemovedTrips } from './RemovedTrips'

export function Trips({ onClose }: { onClose: () => void }) {
  const open = openTrip.value?.id
  const ids = library.value.order
  const [failed, setFailed] = useState(false)
  const own = useOwnPackings()
  const { drawn, more } = usePortions(ids.length, 'trips')
  return (
    <section>
      <h2>Trips</h2>
      <ul class="rows trips">
        {ids.map((id, index) => {
          const trip = trips.value.get(id)
          // The open one is drawn wherever it stands.
          if (!trip || (index >= drawn && id !== open)) return null
          const name = tripName(trip.draft)
          return (
            <li key={id} class="row">
              <button
                type="button"
                class="summary"
                aria-current={id === open ? 'true' : undefined}
                onClick={() => {
                  actions.openTripById(id)
                  onClose()
                }}
              >
                <bdi class="name">{name}</bdi>
                <span class="facts-line">
                  {[
                    trip.demo ? 'invented demo' : '',
                    counted(trip.draft.gear.length, 'item'),
                    id === open ? 'open' : '',
                  ]
                    .filter(Boolean)
                    .join(', ')}
                </span>
              </button>
              <div class="actions">
                {index > 0 ? (
                  <button
                    type="button"
                    class="quiet"
                    aria-label={`Move up trip ${name}`}
                    onClick={() => actions.moveTrip(id, index - 1)}
                  >
                    Move up
                  </button>
                ) : null}
                {index < ids.length - 1 ? (
                  <button
                    type="button"
                    class="quiet"
                    aria-label={`Move down trip ${name}`}
                    onClick={() => actions.moveTrip(id, index + 1)}
                  >
                    Move down
                  </button>
                ) : null}
                <button
                  type="button"
                  class="quiet"
                  aria-label={`Duplicate trip ${name}`}
                  onClick={() => actions.duplicateTrip(id)}
                >
                  Duplicate
                </button>
                <button
                  type="button"
                  class="quiet"
                  aria-label={`Delete trip ${name}`}
                  onClick={() => actions.removeTrip(id)}
                >
                  Delete
                </button>
              </div>
            </li>
          )
        })}
      </ul>
      {more}
      {failed ? <p class="problem">The demo could not be loaded: go online once and try again.</p> : null}
      <div class="actions">
        <button
          type="button"
          class="primary"
          onClick={() => {
            actions.createTrip(reckonWith(emptyDraft(), own))
            onClose()
          }}
        >
          New trip
        </button>
        <button type="button" class="quiet" onClick={() => void loadDemo().catch(() => setFailed(true))}>
          Open the demo trip
        </button>
      </div>
      {own.packings.length > 0 ? <p class="hint">A new trip uses your own packing.</p> : null}
      <RemovedTrips />
    </section>
  )
}
