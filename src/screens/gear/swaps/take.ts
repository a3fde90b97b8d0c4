// Another thing in an item's place, as one step to undo.

import { swapItem, textsBesides } from '../../../plan/shelf'
import { actions, newId } from '../../../store'

/** Takes each thing in the place of its item. */
export function takeThings(label: string, swaps: readonly { item: string; thing: string }[]) {
  const now = Date.now()
  actions.editBoth(label, both =>
    swaps.reduce(({ typed, ...made }, { item, thing }) => {
      const next = swapItem(made, { itemId: item, thingId: thing, newId, now })
      return { ...next, typed: next.draft === made.draft ? typed : textsBesides(typed, item) }
    }, both),
  )
}
