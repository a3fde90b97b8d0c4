// Shelves for tests: things by name, and random ones.

import fc from 'fast-check'
import { emptyShelf, type Shelf, type Thing } from '../../../src/plan/shelf'

export const thing = (id: string, rest: Partial<Thing> = {}): Thing => ({
  id,
  item: { name: id, massKg: 1 },
  changed: {},
  ...rest,
})

export const shelfOf = (...things: Thing[]): Shelf => ({ ...emptyShelf(), things })

/** One edit of a shelf: what it does, to which thing, and with what. */
export interface Doing {
  what: 'add' | 'remove' | 'move' | 'weigh' | 'rename' | 'note'
  which: number
  n: number
}

export const doings = fc.array(
  fc.record<Doing>({
    what: fc.constantFrom('add', 'remove', 'move', 'weigh', 'rename', 'note'),
    which: fc.nat(9),
    n: fc.nat(5),
  }),
  { maxLength: 8 },
)
