// Whose things are, said of many at once.

import { useState } from 'preact/hooks'
import { usePortions } from '../../components/long-list'
import { Tick, WhenOpen } from '../../components/pieces'
import { type Draft, oneForEach, personName, setOwner } from '../../plan'
import { actions, newId } from '../../store'
import { counted } from '../../units'

export function Owners({ draft }: { draft: Draft }) {
  const owned = draft.gear.filter(({ owner }) => owner !== undefined).length
  return (
    <WhenOpen
      class="more section"
      summary={`Whose is what: ${owned} of ${counted(draft.gear.length, 'item')} are somebody’s`}
    >
      {() => <Choosing draft={draft} />}
    </WhenOpen>
  )
}

function Choosing({ draft }: { draft: Draft }) {
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set())
  // What is inside something goes where that goes.
  const items = draft.gear.filter(({ inside }) => inside === undefined)
  const { drawn, more } = usePortions(items.length, 'items')
  const tick = (id: string, isOn: boolean) => {
    const next = new Set(chosen)
    if (isOn) next.add(id)
    else next.delete(id)
    setChosen(next)
  }
  const give = (owner: string | null, name: string) => {
    actions.edit(`${counted(chosen.size, 'item')} ${name}`, made => setOwner(made, chosen, owner))
    setChosen(new Set())
  }
  const ownerOf = (owner: string | undefined) =>
    owner === undefined ? 'everybody’s' : `${personName(draft, owner)}’s`
  const giveEach = () => {
    actions.edit(`One for each: ${counted(chosen.size, 'item')}`, made => oneForEach(made, chosen, newId))
    setChosen(new Set())
  }
  return (
    <div class="stack">
      <p class="hint">
        Tick items, then say whose they are. What is worn or holds water is always somebody’s.
      </p>
      <ul class="plain">
        {items.slice(0, drawn).map(item => (
          <Tick key={item.id} isOn={chosen.has(item.id)} onTick={isOn => tick(item.id, isOn)}>
            <bdi>{item.name || 'Unnamed item'}</bdi>, {ownerOf(item.owner)}
          </Tick>
        ))}
      </ul>
      {more}
      <div class="actions">
        {(draft.people ?? []).map(({ id }) => {
          const name = `${personName(draft, id)}’s`
          return (
            <button key={id} type="button" disabled={chosen.size === 0} onClick={() => give(id, name)}>
              {name}
            </button>
          )
        })}
        <button type="button" disabled={chosen.size === 0} onClick={() => give(null, 'everybody’s')}>
          Everybody’s
        </button>
        <button type="button" disabled={chosen.size === 0} onClick={giveEach}>
          One for each
        </button>
      </div>
    </div>
  )
}
