// Between the trip's gear and the shelf: to pack from it, and to put on it what is not there yet.

import { useState } from 'preact/hooks'
import { toTop } from '../../components/frame'
import { putOnShelf } from '../../plan/shelf'
import { actions, newId, openTrip, shelf } from '../../store'
import { counted } from '../../units'

export function ShelfDoors() {
  const [said, setSaid] = useState('')
  const gear = openTrip.value?.draft.gear ?? []
  const { things } = shelf.value
  const known = new Set(things.map(({ id }) => id))
  const free = gear.filter(item => !item.shelf || !known.has(item.shelf.id))
  const put = () => {
    const before = things.length
    actions.editBoth(`Put ${counted(free.length, 'item')} on the shelf`, both =>
      putOnShelf(
        both,
        free.map(({ id }) => id),
        { newId, now: Date.now() },
      ),
    )
    const made = shelf.value.things.length - before
    const linked = free.length - made
    setSaid(
      `${counted(made, 'item')} put on the shelf${linked ? `; ${linked} were there by name already and are linked` : ''}.`,
    )
  }
  return (
    <section class="doors" aria-labelledby="shelf-doors">
      <h3 id="shelf-doors">From the shelf</h3>
      <div class="actions">
        <button type="button" onClick={() => toTop('shelf', 'choose')}>
          Pack from the shelf
        </button>
        <button type="button" class="quiet" onClick={() => toTop('shelf')}>
          Open the shelf
        </button>
        {free.length > 0 ? (
          <button type="button" class="quiet" onClick={put}>
            {free.length === gear.length ? 'Put all on the shelf' : `Put ${free.length} more on the shelf`}
          </button>
        ) : null}
      </div>
      <p role="status" class={said ? '' : 'unseen'}>
        {said}
      </p>
    </section>
  )
}
