// The trips and the shelf of a backup against what is here, entry by entry.

import { Choice } from '../../components/fields'
import type { Choice as Chosen, Compared, Comparison, Wishes } from '../../files/backup'
import { capital, counted } from '../../units'

interface ListsProps {
  comparison: Comparison
  wishes: Wishes
  onWish: (wishes: Wishes) => void
}

/** More of a kind are counted, not listed. */
const MOST_LISTED = 60

const CHOICES = [
  { value: 'both', label: 'Keep both' },
  { value: 'file', label: 'Take the file’s' },
  { value: 'mine', label: 'Keep mine' },
] as const

export function RestoreTrips({ comparison: { trips }, wishes, onWish }: ListsProps) {
  const isMerge = wishes.how === 'merge'
  const choose = (ids: string[], choice: Chosen) =>
    onWish({ ...wishes, trips: { ...wishes.trips, ...Object.fromEntries(ids.map(id => [id, choice])) } })
  const all = trips.differ.map(({ id }) => id)
  return (
    <section>
      <h2>Trips</h2>
      <Fresh list={trips.fresh} />
      {trips.differ.length > 0 ? <h3>Different here and in the file</h3> : null}
      {isMerge && all.length > 1 ? (
        <Choice
          label={`All ${all.length} of them`}
          options={CHOICES}
          chosen={commonChoice(all, wishes)}
          onChoose={choice => choose(all, choice)}
        />
      ) : null}
      <ul class="rows">
        {trips.differ.slice(0, MOST_LISTED).map(({ id, name, newer, words }) => (
          <li key={id} class="row">
            <p>
              <bdi class="name">{name}</bdi> <span class="facts-line">{newerText(newer)}</span>
            </p>
            <p class="facts-line">{words.join('; ')}</p>
            {isMerge ? (
              <Choice
                label={`What becomes of ${name}`}
                options={CHOICES}
                chosen={wishes.trips[id] ?? 'both'}
                onChoose={choice => choose([id], choice)}
              />
            ) : (
              <p>The file’s takes its place.</p>
            )}
          </li>
        ))}
      </ul>
      <More list={trips.differ} />
      <Rest compared={trips} thing="trip" isMerge={isMerge} />
    </section>
  )
}

/** The one choice that all of them have, else none is marked. */
function commonChoice(ids: string[], { trips }: Wishes): Chosen {
  const choices = new Set(ids.map(id => trips[id] ?? 'both'))
  return choices.size === 1 ? [...choices][0]! : ('mixed' as Chosen)
}

const newerText = (newer: 'file' | 'here' | null) =>
  newer === null ? '' : newer === 'file' ? 'The file’s is the newer one.' : 'Yours is the newer one.'

function Fresh({ list }: { list: Compared['fresh'] }) {
  if (list.length === 0) return null
  return (
    <>
      <h3>New from the file</h3>
      <ul class="plain">
        {list.slice(0, MOST_LISTED).map(({ id, name, words }) => (
          <li key={id}>
            <bdi class="name">{name}</bdi> <span class="facts-line">{words.join(', ')}</span>
          </li>
        ))}
      </ul>
      <More list={list} />
    </>
  )
}

const More = ({ list }: { list: unknown[] }) =>
  list.length > MOST_LISTED ? <p class="hint">And {list.length - MOST_LISTED} more.</p> : null

interface RestProps {
  compared: Compared
  thing: string
  isMerge: boolean
}

function Rest({ compared: { same, here, fresh, differ }, thing, isMerge }: RestProps) {
  const names = here.slice(0, 5).map(({ name }) => `“${name}”`)
  const more = here.length > 5 ? ` and ${here.length - 5} more` : ''
  const isNone = same.length + here.length + fresh.length + differ.length === 0
  return (
    <>
      {isNone ? <p class="hint">None, here or in the file.</p> : null}
      {same.length > 0 ? <p>{counted(same.length, thing)} the same here and in the file.</p> : null}
      {here.length > 0 ? (
        <p class={isMerge ? '' : 'problem'}>
          Only here, and {isMerge ? 'staying' : 'going'}: {names.join(', ')}
          {more}.
        </p>
      ) : null}
    </>
  )
}

const PARTS = { things: 'item', bases: 'kit', packings: 'packing', packs: 'pack' } as const

export function RestoreShelf({ comparison: { shelf }, wishes, onWish }: ListsProps) {
  if (!shelf) return null
  const isMerge = wishes.how === 'merge'
  const parts = (Object.keys(PARTS) as (keyof typeof PARTS)[]).filter(part => {
    const { fresh, same, differ, here } = shelf[part]
    return fresh.length + same.length + differ.length + here.length > 0
  })
  if (parts.length === 0) return null
  const differ = parts.flatMap(part => shelf[part].differ)
  return (
    <section>
      <h2>Shelf</h2>
      {isMerge && differ.length > 0 ? (
        <Choice
          label={`${counted(differ.length, 'entry', 'entries')} of the shelf differ`}
          options={CHOICES}
          chosen={wishes.shelf}
          onChoose={choice => onWish({ ...wishes, shelf: choice })}
        />
      ) : null}
      {parts.map(part => (
        <ShelfPart key={part} compared={shelf[part]} thing={PARTS[part]} isMerge={isMerge} />
      ))}
    </section>
  )
}

function ShelfPart({ compared, thing, isMerge }: RestProps) {
  const { fresh, differ } = compared
  return (
    <>
      <h3>{`${capital(thing)}s`}</h3>
      {fresh.length > 0 ? (
        <details>
          <summary>{counted(fresh.length, thing)} new from the file</summary>
          <Fresh list={fresh} />
        </details>
      ) : null}
      {differ.length > 0 ? (
        <details>
          <summary>{counted(differ.length, thing)} different</summary>
          <ul class="plain">
            {differ.slice(0, MOST_LISTED).map(({ id, name, newer, words }) => (
              <li key={id}>
                <bdi class="name">{name}</bdi>{' '}
                <span class="facts-line">
                  {words.join(', ')}. {newerText(newer)}
                </span>
              </li>
            ))}
          </ul>
          <More list={differ} />
        </details>
      ) : null}
      <Rest compared={compared} thing={thing} isMerge={isMerge} />
    </>
  )
}
