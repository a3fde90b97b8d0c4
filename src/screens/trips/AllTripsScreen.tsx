// All my trips: every pack judged for every trip, the fewest packs that do for all, and what one pack would have to be.

import { useMemo } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { AskedCard } from '../../components/judged'
import { usePortions } from '../../components/long-list'
import { tripName } from '../../plan'
import { FIT_LINE } from '../../report'
import type { AllTrips } from '../../report/compare-packs'
import { tripList } from '../../store'
import { Covered } from './Covered'
import { TripTable } from './TripTable'
import './trips.css'
import { toTop } from '../../components/frame'
import { useAllTrips } from './use-all-trips'
import { chosen, comparedAmong, MOST_COMPARED, tripsToCompare } from './which'

export function AllTripsScreen() {
  const formats = useFormats()
  const all = tripList.value
  const trips = useMemo(() => tripsToCompare(all), [all, chosen.value])
  const result = useAllTrips(trips, formats)
  const asked = result?.asked() ?? null
  const compared = comparedAmong(all)
  const { drawn, more } = usePortions(all.length, 'trips')
  return (
    <div class="screen all-trips">
      <div class="heading">
        <h2>All my trips</h2>
        <button type="button" class="quiet" onClick={() => toTop('packs')}>
          Back to packs
        </button>
      </div>
      <fieldset>
        <legend>Trips to compare</legend>
        {all.length > MOST_COMPARED ? (
          <p class="hint">The first {MOST_COMPARED} are ticked to begin with.</p>
        ) : null}
        {all.slice(0, drawn).map(trip => (
          <label key={trip.id} class="toggle">
            <input
              type="checkbox"
              checked={compared.has(trip.id)}
              onChange={event => {
                chosen.value = new Map(chosen.value).set(trip.id, event.currentTarget.checked)
              }}
            />
            <span>
              <bdi>{tripName(trip.draft)}</bdi>
              {trip.demo ? ' (invented demo)' : ''}
            </span>
          </label>
        ))}
        {more}
      </fieldset>
      {!result ? (
        <p class="hint loading" role="status">
          Working it out…
        </p>
      ) : result.names.length === 0 ? (
        <p>Choose a trip to see which packs are suitable.</p>
      ) : (
        <>
          <p class="hint">{FIT_LINE}</p>
          <Covered result={result} trips={namedPlans(result)} formats={formats} />
          {asked ? (
            <section aria-labelledby="one-pack">
              <h3 id="one-pack">One pack for {result.names.length > 1 ? 'all of them' : 'it'}</h3>
              <AskedCard asked={asked} trips={namedPlans(result)} formats={formats} />
            </section>
          ) : null}
          <TripTable result={result} trips={namedPlans(result)} />
        </>
      )}
      {result?.notes.length ? (
        <section class="left-out" aria-label="Left out">
          <h3>Not counted as it stands</h3>
          <ul>
            {result.notes.map(note => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </section>
      ) : null}
    </div>
  )
}

/** The trips as the reasons ask for them: all with the same packs. */
const namedPlans = ({ names, plans }: AllTrips) => plans.map((plan, i) => ({ name: names[i]!, plan }))
