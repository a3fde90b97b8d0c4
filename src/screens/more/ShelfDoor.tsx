// The shelf as seen from all trips: what is on it, and the way there.

import { toTop } from '../../components/frame'
import { shelf } from '../../store'
import { counted } from '../../units'

export function ShelfDoor() {
  const { things, bases } = shelf.value
  const open = () => toTop('shelf')
  return (
    <section>
      <h2>Shelf</h2>
      <p>
        {things.length === 0
          ? 'Everything you own, each item kept once for all trips.'
          : `${counted(things.length, 'item')}, ${counted(bases.length, 'kit')}.`}
      </p>
      <div class="actions">
        <button type="button" class="quiet" onClick={open}>
          Open the shelf
        </button>
      </div>
    </section>
  )
}
