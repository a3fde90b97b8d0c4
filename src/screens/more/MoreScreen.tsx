// More: the trips kept on this device, units and theme, plan files, and what this app is and is not.

import { useState } from 'preact/hooks'
import { Choice, UnitsChoice } from '../../parts/fields'
import { later } from '../../parts/frame'
import { emptyDraft } from '../../plan'
import { GENERAL_LINE } from '../../report'
import { actions, library, offlineReady, openTrip, removedTrip, trips } from '../../store'
import { loadDemo } from '../welcome'
import { PlanFiles } from './PlanFiles'
import { Safety } from './Safety'

const SharePlan = later(async () => (await import('../share')).SharePlan)

export function MoreScreen({ onClose, onSheet }: { onClose: () => void; onSheet: () => void }) {
  return (
    <div class="screen more-screen">
      <div class="heading">
        <h1>Trips and settings</h1>
        <button type="button" class="quiet" onClick={onClose}>
          Back
        </button>
      </div>
      <Trips onClose={onClose} />
      <PlanFiles />
      <Safety />
      {openTrip.value ? (
        <>
          <SharePlan />
          <section>
            <h2>On paper</h2>
            <p>The answer, the days, the packs and a packing list with boxes to tick, in black and white.</p>
            <div class="actions">
              <button type="button" class="quiet" onClick={onSheet}>
                Print a sheet
              </button>
            </div>
          </section>
        </>
      ) : null}
      <Settings />
      <section>
        <h2>About</h2>
        <p>
          Pack Reckoner works out the main-body litres and the load that your gear and trip ask for, and
          judges packs by them.{' '}
          {offlineReady.value
            ? 'It is ready to work without a network.'
            : 'It works without a network once loaded.'}
        </p>
        <p class="hint">{GENERAL_LINE}</p>
      </section>
    </div>
  )
}

function Trips({ onClose }: { onClose: () => void }) {
  const open = openTrip.value?.id
  const ids = library.value.order
  const [failed, setFailed] = useState(false)
  const removed = removedTrip.value
  return (
    <section>
      <h2>Trips</h2>
      <ul class="rows trips">
        {ids.map(id => {
          const trip = trips.value.get(id)
          if (!trip) return null
          const name = trip.draft.name || 'Trip without a name'
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
                    `${trip.draft.gear.length} items`,
                    id === open ? 'open' : '',
                  ]
                    .filter(Boolean)
                    .join(', ')}
                </span>
              </button>
              <div class="actions">
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
      {removed ? (
        <p role="status">
          Deleted <bdi>{removed.trip.draft.name || 'a trip'}</bdi>.{' '}
          <button type="button" class="quiet" onClick={() => actions.restoreTrip()}>
            Undo
          </button>
        </p>
      ) : null}
      {failed ? <p class="problem">The demo could not be loaded: go online once and try again.</p> : null}
      <div class="actions">
        <button
          type="button"
          class="primary"
          onClick={() => {
            actions.createTrip(emptyDraft())
            onClose()
          }}
        >
          New trip
        </button>
        <button type="button" class="quiet" onClick={() => void loadDemo().catch(() => setFailed(true))}>
          Open the demo trip
        </button>
      </div>
    </section>
  )
}

const THEMES = [
  { value: 'auto', label: 'As the device' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
] as const

function Settings() {
  return (
    <section>
      <h2>Units and light</h2>
      <UnitsChoice />
      <Choice label="Light" options={THEMES} chosen={library.value.theme} onChoose={actions.setTheme} />
    </section>
  )
}
