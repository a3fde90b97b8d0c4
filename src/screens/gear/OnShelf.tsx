// How an item of the trip stands to the shelf: put on it, or linked to a thing there and where it differs from it.

import { useMemo } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import type { DraftItem } from '../../plan'
import {
  asInTrip,
  asOnShelf,
  differences,
  linkItems,
  linksByName,
  shelveItems,
  type Thing,
} from '../../plan/shelf'
import { actions, newId, openTrip, shelf } from '../../store'
import { factText, factWord, saidFields } from './fact-words'
import './gear.css'
import { toTop } from '../../components/frame'

export function OnShelf({ item }: { item: DraftItem }) {
  const thing = shelf.value.things.find(({ id }) => id === item.shelf?.id)
  return <div class="on-shelf">{thing ? <Linked item={item} thing={thing} /> : <NotThere item={item} />}</div>
}

function NotThere({ item }: { item: DraftItem }) {
  const name = item.name || 'the item'
  const draft = openTrip.value?.draft
  const alike = useMemo(() => {
    const links = draft ? linksByName(draft, shelf.value, { items: [item], now: 0 }) : null
    return shelf.value.things.find(({ id }) => id === links?.get(item.id)?.id)
  }, [item.name, shelf.value.things])
  const put = () =>
    actions.editBoth(`Put ${name} on the shelf`, ({ draft, shelf }) => {
      const made = shelveItems(shelf, [item], { newId, now: Date.now() })
      return { draft: linkItems(draft, made.links), shelf: made.shelf }
    })
  const link = (thing: Thing) =>
    actions.edit(`Link ${name} to the shelf`, draft =>
      linkItems(draft, new Map([[item.id, { id: thing.id, at: Date.now() }]])),
    )
  return (
    <div class="actions">
      {alike ? (
        <button type="button" class="quiet" onClick={() => link(alike)}>
          It is {alike.item.name} of the shelf
        </button>
      ) : null}
      <button type="button" class="quiet" onClick={put}>
        {alike ? 'Put on the shelf as another' : 'Put on the shelf'}
      </button>
    </div>
  )
}

function Linked({ item, thing }: { item: DraftItem; thing: Thing }) {
  const system = useSystem()
  const name = item.name || 'the item'
  const other = saidFields(differences(item, thing), system)
  const open = () => toTop('shelf', `thing/${thing.id}`)
  return (
    <>
      <p class="hint">
        From the shelf
        {other.length === 0 ? ', the same here as there.' : '. Only in this trip:'}
      </p>
      {other.length > 0 ? (
        <ul class="changes" data-figures="typed">
          {other.map(({ field, from, to }) => (
            <li key={field}>
              {factWord(field)}: <strong>{factText(field, from, system)}</strong> (on the shelf:{' '}
              {factText(field, to, system)})
            </li>
          ))}
        </ul>
      ) : null}
      <div class="actions">
        {other.length > 0 ? (
          <>
            <button
              type="button"
              class="quiet"
              onClick={() =>
                actions.edit(`Take over ${name} from the shelf`, draft =>
                  asOnShelf(draft, item, thing, Date.now()),
                )
              }
            >
              Update from the shelf
            </button>
            <button
              type="button"
              class="quiet"
              onClick={() =>
                actions.editBoth(`Change ${name} on the shelf too`, both =>
                  asInTrip(both, { item, thing, now: Date.now() }),
                )
              }
            >
              Change the shelf too
            </button>
          </>
        ) : null}
        <button type="button" class="quiet" onClick={open}>
          See it on the shelf
        </button>
      </div>
    </>
  )
}
