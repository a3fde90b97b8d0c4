// In the editor of an item: the things on the shelf that it may be instead, and more to choose from.

import { useId, useMemo, useState } from 'preact/hooks'
import { useSystem } from '../../../components/fields'
import { itemFacts } from '../../../components/item-words'
import { type DraftItem, itemName } from '../../../plan'
import { addSwaps, candidatesFor, type Thing, thingsFound } from '../../../plan/shelf'
import { actions, openTrip, shelf } from '../../../store'
import { Choices } from './Choices'

export function Alternatives({ item }: { item: DraftItem }) {
  const [open, setOpen] = useState(Boolean(item.swaps))
  return (
    <details class="more" open={open} onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>Alternatives</summary>
      {open ? (
        <div class="alternatives">
          <Choices item={item} editable />
          <More item={item} />
        </div>
      ) : null}
    </details>
  )
}

/** As many are offered before something is sought. */
const MOST_LIKELY = 4
const MOST_FOUND = 20

function More({ item }: { item: DraftItem }) {
  const system = useSystem()
  const [sought, setSought] = useState('')
  const id = useId()
  const gear = openTrip.value?.draft.gear
  const { likely, others } = useMemo(
    () => candidatesFor(item, gear ?? [], shelf.value),
    [item, gear, shelf.value],
  )
  const all = [...likely, ...others]
  if (all.length === 0)
    return item.swaps ? null : (
      <p class="hint">Put another one on the shelf, and choose here which of the two comes along.</p>
    )
  const found = sought.trim() ? thingsFound(all, sought) : likely.slice(0, MOST_LIKELY)
  const add = (thing: Thing) =>
    actions.edit(`Add ${itemName(thing.item)} as an alternative`, draft =>
      addSwaps(draft, item.id, [thing.id]),
    )
  return (
    <>
      <div class="field">
        <label for={id}>Add from the shelf</label>
        <input
          id={id}
          type="search"
          value={sought}
          placeholder="Search"
          onInput={event => setSought(event.currentTarget.value)}
        />
      </div>
      {found.length > 0 ? (
        <ul class="candidates" data-figures="typed">
          {found.slice(0, MOST_FOUND).map((thing, i) => (
            // By its place: the focus stays where one was added.
            <li key={i}>
              <button
                type="button"
                aria-label={`Add ${itemName(thing.item)} as an alternative`}
                onClick={() => add(thing)}
              >
                <bdi>{itemName(thing.item)}</bdi>
                <span class="facts-line">{itemFacts(thing.item, system).join(', ')}</span>
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      <p class="hint" role="status">
        {found.length > MOST_FOUND ? `And ${found.length - MOST_FOUND} more.` : ''}
        {sought.trim() && found.length === 0 ? 'None like it on the shelf.' : ''}
      </p>
    </>
  )
}
