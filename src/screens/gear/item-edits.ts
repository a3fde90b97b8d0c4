// What is done to the list of gear as one undoable step each.

import { addItem, type DraftItem, duplicateItem, removeItem } from '../../plan'
import { actions, newId } from '../../store'
import { firstId } from '../rows'

export const EDITS = { what: 'item', duplicate: duplicateItem, remove: removeItem }

/** Adds an item below another, or at the end, in its group; returns its id. */
export function addBelow(gear: readonly DraftItem[], above?: DraftItem): string {
  const id = newId()
  const group = (above ?? gear.at(-1))?.group
  actions.edit('Add an item', draft =>
    addItem(draft, firstId(id), {
      ...(group === undefined ? {} : { with: { group } }),
      ...(above ? { at: draft.gear.findIndex(item => item.id === above.id) + 1 } : {}),
    }),
  )
  return id
}
