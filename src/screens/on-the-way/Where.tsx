// "You are at": one tap on a stop; afterwards a field to change it.

import { useId } from 'preact/hooks'
import { toTop } from '../../components/frame'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'

interface WhereProps {
  plan: Plan
  reckoning: Reckoning
  /** The index of the stop; null: not said. */
  at: number | null
  onStop: (stop: number) => void
}

const END = 'end'

/** At the end nothing is asked but what the trip has shown. */
const toAfter = () => toTop('after-trip')

export function Where({ plan: { trip }, reckoning: { moments }, at, onStop }: WhereProps) {
  const id = useId()
  const between = trip.stops.slice(1, -1).map(({ name }, i) => {
    const stop = i + 1
    const { day } = moments.find(moment => moment.stop === stop && moment.phase === 'depart')!
    return { stop, name, day }
  })
  const choose = (value: string) => (value === END ? toAfter() : onStop(Number(value)))
  if (between.length === 0) return <p>Add a stop between start and end first.</p>
  if (at !== null)
    return (
      <div class="field wide">
        <label for={id}>You are at</label>
        <select id={id} value={at} onChange={event => choose(event.currentTarget.value)}>
          {between.map(({ stop, name, day }) => (
            <option key={stop} value={stop}>
              {name}, day {day}
            </option>
          ))}
          <option value={END}>{trip.stops.at(-1)!.name}, the end</option>
        </select>
      </div>
    )
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>You are at…</h3>
      <ul class="where">
        {between.map(({ stop, name, day }) => (
          <li key={stop}>
            <button type="button" class="quiet" onClick={() => onStop(stop)}>
              <bdi class="name">{name}</bdi> <span class="facts-line">you leave on day {day}</span>
            </button>
          </li>
        ))}
        <li>
          <button type="button" class="quiet" onClick={toAfter}>
            <bdi class="name">{trip.stops.at(-1)!.name}</bdi> <span class="facts-line">the end</span>
          </button>
        </li>
      </ul>
    </section>
  )
}
