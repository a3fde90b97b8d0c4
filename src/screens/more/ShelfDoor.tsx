// The shelf and the list of packs as seen from all trips: what is on them, and the way there.

import { toTop } from '../../components/frame'
import { shelf } from '../../store'
import { counted } from '../../units'

export function ShelfDoor() {
  const { things, bases, packs } = shelf.value
  return (
    <section>
      <h2>Shelf and packs</h2>
      <p>
        {things.length === 0
          ? 'Everything you own, each item kept once for all trips.'
          : `${counted(things.length, 'item')}, ${counted(bases.length, 'kit')}.`}{' '}
        {packs.length === 0 ? null : `${counted(packs.length, 'pack')}.`}
      </p>
      <div class="actions">
        <button type="button" class="quiet" onClick={() => toTop('shelf')}>
          Open the shelf
        </button>
        <button type="button" class="quiet" onClick={() => toTop('own-packs')}>
          My packs
        </button>
      </div>
    </section>
  )
}
