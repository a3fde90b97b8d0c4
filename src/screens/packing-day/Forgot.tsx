// "Forgot something?": what past trips had and this list has not; nothing where there are no such trips.

import { forgotten, withForgotten } from '../../report/packing-day'
import { actions, newId, openTrip, shelf, trips } from '../../store'
import { counted } from '../../units'

/** So many trips, the latest, are looked through at each tick. */
const MOST_TRIPS = 50

export function Forgot() {
  const open = openTrip.value
  if (!open) return null
  const past = [...trips.value.values()]
    .filter(({ id }) => id !== open.id)
    .sort((a, b) => b.changedAt - a.changedAt)
    .slice(0, MOST_TRIPS)
  const { things, of } = forgotten(open.draft, past)
  if (things.length === 0) return null
  return (
    <section aria-labelledby="forgot" data-figures="typed">
      <h3 id="forgot">Forgot something?</h3>
      <p class="hint">On your other trips, and not on this list. One tap adds it.</p>
      <ul class="rows forgot">
        {things.map(it => (
          <li key={`${it.name} ${it.item.id}`}>
            <button
              type="button"
              class="quiet"
              onClick={() =>
                actions.edit(`Add ${it.name}`, draft =>
                  withForgotten(draft, it, { newId, now: Date.now(), shelf: shelf.value }),
                )
              }
            >
              <span>
                <span aria-hidden="true">+ </span>
                <span class="unseen">Add </span>
                <bdi class="name">{it.name}</bdi>
              </span>
              <span class="facts-line">
                {of > 1 ? `on ${it.trips} of ${counted(of, 'trip')}` : 'on your other trip'}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
