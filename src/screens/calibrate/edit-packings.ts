// Adding and withdrawing a packing: the shelf and the open trip's settings change in one step, no other trip does.

import { addPacking, type Packing, type Shelf, withdrawPacking } from '../../plan/shelf'
import { ownPacking, reckonWith } from '../../report/trust'
import { actions, newId } from '../../store'

/** The open trip then reckons with all packings. */
export function keepPacking(packing: Omit<Packing, 'id'>) {
  actions.editBoth(`Add a packing of ${packing.gear}`, ({ draft, shelf }) => {
    const next = addPacking(shelf, newId, packing)
    return { draft: reckonWith(draft, ownOf(next)), shelf: next }
  })
}

/** The open trip follows if it reckons with packings at all; one on the general model stays there. */
export function withdraw({ id, gear }: Packing) {
  actions.editBoth(`Withdraw the packing of ${gear}`, ({ draft, shelf }) => {
    const next = withdrawPacking(shelf, id)
    const isOwn = typeof draft.settings?.personalFactorSpread === 'number'
    return { draft: isOwn ? reckonWith(draft, ownOf(next)) : draft, shelf: next }
  })
}

const ownOf = (shelf: Shelf) => ownPacking(shelf.packings)
