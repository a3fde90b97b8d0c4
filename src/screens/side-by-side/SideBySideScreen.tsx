// Two trips side by side: what only one list holds, what is otherwise in both, and what each comes to.

import { useMemo, useState } from 'preact/hooks'
import { SelectOne, useSystem } from '../../components/fields'
import { toTop } from '../../components/frame'
import { tripName } from '../../plan'
import { ANSWERS, type PlanComparison, signedText, tripsCompared } from '../../report'
import { openTrip, type TripDocument, tripList } from '../../store'
import { counted } from '../../units'
import './side-by-side.css'

export function SideBySideScreen() {
  const trips = tripList.value
  const [chosen, setChosen] = useState<[string | null, string | null]>([null, null])
  const before = trips.find(({ id }) => id === (chosen[0] ?? openTrip.value?.id)) ?? trips[0]
  const after = trips.find(({ id }) => id === chosen[1]) ?? trips.find(trip => trip !== before)
  const options = trips.map(({ id, draft }) => ({ value: id, label: tripName(draft) }))
  return (
    <div class="screen side-by-side">
      <div class="heading">
        <h2>Side by side</h2>
        <button type="button" class="quiet" onClick={() => toTop('packs')}>
          Back to packs
        </button>
      </div>
      {!before || !after ? (
        <p>Two trips are needed: duplicate this one under More, and change the copy.</p>
      ) : (
        <>
          <div class="fields">
            <SelectOne
              label="This trip"
              options={options}
              chosen={before.id}
              onChoose={id => setChosen([id, id === after.id ? before.id : after.id])}
            />
            <SelectOne
              label="and that one"
              options={options}
              chosen={after.id}
              onChoose={id => setChosen([id === before.id ? after.id : before.id, id])}
            />
          </div>
          <Compared before={before} after={after} />
        </>
      )}
    </div>
  )
}

function Compared({ before, after }: { before: TripDocument; after: TripDocument }) {
  const system = useSystem()
  const found = useMemo(() => tripsCompared(before, after, system), [before, after, system])
  if ('problem' in found) return <p class="problem">{found.problem}</p>
  const [here, there] = [tripName(before.draft), tripName(after.draft)]
  const isSame = found.onlyBefore.length + found.onlyAfter.length + found.changed.length === 0
  return (
    <>
      <Figures found={found} here={here} there={there} />
      <Unknown of={here} words={found.unknown.before} />
      <Unknown of={there} words={found.unknown.after} />
      {isSame ? <p>Both lists hold the same.</p> : null}
      <Names title={`Only in ${here}`} names={found.onlyBefore} />
      <Names title={`Only in ${there}`} names={found.onlyAfter} />
      {found.changed.length > 0 ? (
        <section>
          <h3>Changed</h3>
          <ul>
            {found.changed.map(({ name, fields }) => (
              <li key={name}>
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
          {others.map(({ name, before, after }) => (
            <tr key={name}>
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
