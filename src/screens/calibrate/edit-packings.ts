// Adding and withdrawing a packing: the shelf and the open trip's packings change in one step, no other trip does.

import { setField } from '../../plan'
import { addPacking, type Packing, withdrawPacking } from '../../plan/shelf'
import { ownPackings, reckonsWith, reckonWith, withNewPacking } from '../../report/confidence'
import { actions, newId } from '../../store'

/** The open trip then reckons with all packings, and knows this one as its own. */
export function keepPacking(packing: Omit<Packing, 'id'>) {
  actions.editBoth(`Add a packing of ${packing.gear}`, ({ draft, shelf }) => {
    const next = addPacking(shelf, newId, packing)
    const [before, own] = [shelf, next].map(({ packings }) => ownPackings(packings))
    const packed = setField(draft, 'log/packing', next.packings.at(-1)!.id)
    return { draft: withNewPacking(packed, before!, own!), shelf: next }
  })
}

/** The open trip follows if it reckons with the packings at all; one on the general model stays there. */
export function withdraw({ id, gear }: Packing) {
  actions.editBoth(`Remove the packing of ${gear}`, ({ draft, shelf }) => {
    const next = withdrawPacking(shelf, id)
    const follows = reckonsWith(draft, ownPackings(shelf.packings))
    return { draft: follows ? reckonWith(draft, ownPackings(next.packings)) : draft, shelf: next }
  })
}
