// The shelf as seen from all trips: what is on it, and the way there.

import { toTop } from '../../parts/frame'
import { shelf } from '../../store'

export function ShelfDoor() {
  const { things, bases } = shelf.value
  const many = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`
  const open = () => toTop('shelf')
  return (
    <section>
      <h2>Shelf</h2>
      <p>
        {things.length === 0
          ? 'Everything you own, each thing kept once for all trips.'
          : `${many(things.length, 'thing')}, ${many(bases.length, 'base')}.`}
      </p>
      <div class="actions">
        <button type="button" class="quiet" onClick={open}>
          Open the shelf
        </button>
      </div>
    </section>
  )
}
