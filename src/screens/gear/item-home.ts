// Where an edited item lives: in the open trip, unless something around its editor says otherwise. Its fields' paths,
// and edits of the whole item as one undoable step, go through here.

import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import { useEdited } from '../../components/fields'
import { type DraftItem, fieldPath } from '../../plan'
import { changeItem } from '../../plan/litres'
import { actions } from '../../store'

type Change = (item: DraftItem) => DraftItem

export interface ItemHome {
  pathOf: (id: string, ...parts: string[]) => string
  /** One undoable edit, named by its label. */
  edit: (id: string, label: string, change: Change) => void
  /** Whether it is carried on the open trip, and so may ride inside another and is reckoned. */
  inTrip: boolean
}

const theOpenTrip: ItemHome = {
  pathOf: (id, ...parts) => fieldPath('gear', id, ...parts),
  edit: (id, label, change) => actions.edit(label, draft => changeItem(draft, id, change)),
  inTrip: true,
}

const HomeContext = createContext(theOpenTrip)

/** Around the editor of an item that is not in the open trip. */
export const HomeOfItems = HomeContext.Provider

export const useItemHome = () => useContext(HomeContext)

/**
 * An edit that gives an item its litres as a range. Text that could not be read as litres goes with it: the field that
 * showed it is gone then, and nothing else could mend it.
 */
export function useRangeEdit() {
  const home = useItemHome()
  const edited = useEdited()
  return (item: DraftItem, label: string, change: Change) => {
    const path = home.pathOf(item.id, 'litres')
    if (edited.unreadAt(path) !== undefined) edited.set(path, undefined, null)
    home.edit(item.id, label, change)
  }
}
