// Things on their way into the open trip: each with how many and where, for this trip; what is there already is said.

import { useState } from 'preact/hooks'
import { useFormats } from '../../components/fields'

import { CAPS, defaults, type Stow } from '../../plan'
import { type BaseLine, packThings, type Thing } from '../../plan/shelf'

import { actions, newId, openTrip } from '../../store'
import { counted } from '../../units'
import { StepHead } from './heads'
import { nameOf } from './thing-words'
import { CountField, PlaceField } from './UseFields'
import { inOpenTrip, thingsById } from './uses'

/** More lines than this are shown when asked for. */
const SHOWN = 40

interface PackManyProps {
  title: string
  lines: readonly BaseLine[]
  onDone: (said: string) => void
  onBack: () => void
}

type Choice = Partial<{ take: boolean; count: number; isUnread: boolean; stow: Stow }>

export function PackMany({ title, lines, onDone, onBack }: PackManyProps) {
  const [choices, setChoices] = useState<Readonly<Record<string, Choice>>>({})
  const [isAll, setIsAll] = useState(false)
  const byId = thingsById.value
  const there = inOpenTrip.value
  const rows = lines.flatMap(line => {
    const thing = byId.get(line.thing)
    if (!thing) return []
    const { take, isUnread, ...choice } = choices[thing.id] ?? {}
    const count = choice.count ?? line.count ?? thing.item.count ?? defaults.ITEM.count
    const stow = choice.stow ?? line.stow ?? thing.item.stow ?? 'main-body'
    // A thing of which there is one is not packed twice by itself.
    const isTaken = take ?? !(there.has(thing.id) || thing.retired)
    return [{ thing, use: { ...line, count, stow }, isTaken, isUnread: isUnread === true }]
  })
  const taken = rows.filter(({ isTaken }) => isTaken)
  const isUnread = taken.some(row => row.isUnread)
  const room = CAPS.items - (openTrip.value?.draft.gear.length ?? 0)
  const pack = () => {
    const trip = openTrip.peek()?.draft.name || 'this trip'
    const things = taken.map(({ thing }) => thing)
    actions.edit(`Pack ${counted(taken.length, 'item')}`, draft =>
      packThings(draft, things, { newId, now: Date.now(), uses: taken.map(({ use }) => use) }),
    )
    onDone(`${counted(taken.length, 'item')} packed into ${trip}.`)
  }
  return (
    <section class="many" aria-label={title}>
      <StepHead title={title} />
      {taken.length > 0 ? (
        <Sum rows={taken} />
      ) : (
        <p role="status">All of them are in this trip already: tick those to pack once more.</p>
      )}
      <ul class="rows">
        {rows.slice(0, isAll ? undefined : SHOWN).map(row => (
          <PackLine
            key={row.thing.id}
            {...row}
            isThere={there.has(row.thing.id)}
            onChoose={change =>
              setChoices({ ...choices, [row.thing.id]: { ...choices[row.thing.id], ...change } })
            }
          />
        ))}
      </ul>
      {!isAll && rows.length > SHOWN ? (
        <button type="button" class="quiet" onClick={() => setIsAll(true)}>
          Show all {rows.length}
        </button>
      ) : null}
      {taken.length > room ? (
        <p class="problem">The gear has room for {room} more items: leave some out.</p>
      ) : null}
      <div class="actions">
        <button
          type="button"
          class="primary"
          disabled={taken.length === 0 || isUnread || taken.length > room}
          onClick={pack}
        >
          {taken.length > 0 ? `Pack ${counted(taken.length, 'item')}` : 'Pack'}
        </button>
        <button type="button" class="quiet" onClick={onBack}>
          Back
        </button>
      </div>
    </section>
  )
}

interface Line {
  thing: Thing
  use: { count: number; stow: Stow; atHome?: boolean }
}

function Sum({ rows }: { rows: readonly Line[] }) {
  const formats = useFormats()
  const kg = rows.reduce((sum, { thing, use }) => sum + (thing.item.massKg ?? 0) * use.count, 0)
  return (
    <p role="status" data-figures="typed">
      {counted(rows.length, 'item')}, {formats.kg(kg)} together. How many and where are for this trip only.
    </p>
  )
}

interface PackLineProps extends Line {
  isTaken: boolean
  isThere: boolean
  onChoose: (change: Choice) => void
}

function PackLine({ thing, use, isTaken, isThere, onChoose }: PackLineProps) {
  const name = nameOf(thing)
  const state = [
    isThere ? 'in this trip already' : '',
    use.atHome ? 'left at home' : '',
    thing.retired ? 'retired' : '',
  ].filter(Boolean)
  return (
    <li class="row pack-line">
      <label class="toggle">
        <input
          type="checkbox"
          checked={isTaken}
          onChange={event => onChoose({ take: event.currentTarget.checked })}
        />
        <span>
          <bdi class="name">{name}</bdi>
          {state.length > 0 ? <span class="facts-line">{state.join(', ')}</span> : null}
        </span>
      </label>
      {isTaken ? (
        <div class="pack-uses">
          <CountField
            name={name}
            count={use.count}
            onCount={count => onChoose({ count, isUnread: false })}
            onUnread={isUnread => onChoose({ isUnread })}
          />
          <PlaceField name={name} stow={use.stow} onPlace={stow => onChoose({ stow })} />
        </div>
      ) : null}
    </li>
  )
}
