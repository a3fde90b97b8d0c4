// A trip beside another, a kit or itself as it was: what only one list holds, what is otherwise in both, and what each comes to.

import { useMemo, useState } from 'preact/hooks'
import { SelectOne, useSystem } from '../../components/fields'
import { toTop } from '../../components/frame'
import { tripName } from '../../plan'
import { ANSWERS, type PlanComparison, signedText, tripsCompared } from '../../report'
import { openTrip, type TripDocument, tripList } from '../../store'
import { counted } from '../../units'
import { type Side, useSides } from './sides'
import { useSnapshots } from './use-snapshots'
import './side-by-side.css'

export function SideBySideScreen() {
  const trips = tripList.value
  const [chosen, setChosen] = useState<[string | null, string | null]>([null, null])
  const trip = trips.find(({ id }) => id === (chosen[0] ?? openTrip.value?.id)) ?? trips[0]
  const snapshots = useSnapshots(trip?.id)
  const sides = useSides(trip, snapshots.found)
  const side = sides.find(({ value }) => value === chosen[1]) ?? sides[0]
  // The trip and what it is held against trade places where both are trips.
  const choose = (id: string) => {
    const isOther = side?.value === `trip/${id}`
    setChosen([id, isOther && trip ? `trip/${trip.id}` : chosen[1]])
  }
  return (
    <div class="screen side-by-side">
      <div class="heading">
        <h2>Side by side</h2>
        <button type="button" class="quiet" onClick={() => toTop('packs')}>
          Back to packs
        </button>
      </div>
      {trip ? <Snapshots {...snapshots} /> : null}
      {!trip || !side ? (
        <p>Nothing to compare it with yet: change this trip, make a kit, or add a second trip.</p>
      ) : (
        <>
          <div class="fields">
            <SelectOne
              label="This trip"
              options={trips.map(({ id, draft }) => ({ value: id, label: tripName(draft) }))}
              chosen={trip.id}
              onChoose={choose}
            />
            <SelectOne
              label="and that one"
              options={sides}
              chosen={side.value}
              onChoose={value => setChosen([trip.id, value])}
            />
          </div>
          {side.group === 'Kits' ? (
            <p class="hint">The kit is calculated as if it were all you take on this trip.</p>
          ) : null}
          <Compared trip={trip} side={side} />
        </>
      )}
    </div>
  )
}

/** Each is a whole backup to be read: not before somebody asks. */
function Snapshots({ found, isReading, problem, read }: ReturnType<typeof useSnapshots>) {
  return (
    <div role="status">
      {problem ? <p class="problem">{problem}</p> : null}
      {found?.length === 0 && !problem ? <p class="hint">No snapshot on this device has this trip.</p> : null}
      {isReading ? <p class="hint">Reading the snapshots…</p> : null}
      {found || isReading ? null : (
        <button type="button" class="link" onClick={read}>
          Look in the snapshots too
        </button>
      )}
    </div>
  )
}

function Compared({ trip, side }: { trip: TripDocument; side: Side }) {
  const system = useSystem()
  const found = useMemo(() => {
    const other = side.content()
    return side.isPast ? tripsCompared(other, trip, system) : tripsCompared(trip, other, system)
  }, [trip, side, system])
  if ('problem' in found) return <p class="problem">{found.problem}</p>
  const names = [side.isPast ? 'Now' : tripName(trip.draft), side.name] as const
  const [here, there] = side.isPast ? [names[1], names[0]] : names
  const isSame = found.onlyBefore.length + found.onlyAfter.length + found.changed.length === 0
  return (
    <>
      <Figures found={found} here={here} there={there} />
      <Unknown of={here} words={found.unknown.before} />
      <Unknown of={there} words={found.unknown.after} />
      {isSame ? <p>Both lists hold the same.</p> : null}
      <Names title={side.isPast ? 'Taken away since' : `Only in ${here}`} names={found.onlyBefore} />
      <Names title={side.isPast ? 'Added since' : `Only in ${there}`} names={found.onlyAfter} />
      {found.changed.length > 0 ? (
        <section>
          <h3>Changed</h3>
          <ul>
            {found.changed.map(({ name, fields }, i) => (
              // Two items may have one name.
              <li key={`${i} ${name}`}>
                <bdi>{name}</bdi>:{' '}
                {fields
                  .map(({ what, before, after }) =>
                    before === null || after === null ? what : `${what} ${before} → ${after}`,
                  )
                  .join('; ')}
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  )
}

interface FiguresProps {
  found: PlanComparison
  here: string
  there: string
}

function Figures({ found: { figures, answers }, here, there }: FiguresProps) {
  if (figures.length === 0) return null
  const answer = (of: (typeof answers)[number]['before']) =>
    of === null ? '–' : `${ANSWERS[of].mark} ${ANSWERS[of].words}`
  const others = answers.filter(({ before, after }) => before !== after)
  const alike = answers.length - others.length
  return (
    <div class="scroll" data-figures="cited">
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">
              <bdi>{here}</bdi>
            </th>
            <th scope="col">
              <bdi>{there}</bdi>
            </th>
            <th scope="col">Change</th>
          </tr>
        </thead>
        <tbody>
          {figures.map(({ what, before, after, change, show }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{show(before)}</td>
              <td>{show(after)}</td>
              <td>{signedText(change, show) ?? 'same'}</td>
            </tr>
          ))}
          {others.map(({ name, before, after }, i) => (
            <tr key={`${i} ${name}`}>
              <th scope="row">
                <bdi>{name}</bdi>
              </th>
              <td>{answer(before)}</td>
              <td>{answer(after)}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      {alike > 0 ? <p>{counted(alike, 'set-up')} with the same answer for both.</p> : null}
      <p class="hint">Open a trip to see how its figures are calculated.</p>
    </div>
  )
}

function Unknown({ of, words }: { of: string; words: readonly string[] }) {
  if (words.length === 0) return null
  return (
    <p>
      <bdi>{of}</bdi>: {words.join('; ')}.
    </p>
  )
}

function Names({ title, names }: { title: string; names: readonly string[] }) {
  if (names.length === 0) return null
  return (
    <section>
      <h3>
        <bdi>{title}</bdi>
      </h3>
      <ul>
        {names.map((name, i) => (
          // Two items may have one name.
          <li key={`${i} ${name}`}>
            <bdi>{name}</bdi>
          </li>
        ))}
      </ul>
    </section>
  )
}
