// An edit that gives an item its litres as a range. Text that could not be read as litres goes with it: the field that
// showed it is gone then, and nothing else could mend it.

import { type DraftItem, fieldPath } from '../../plan'
import { changeItem } from '../../plan/litres'
import { actions, openTrip } from '../../store'

export function editRange(item: DraftItem, label: string, change: (item: DraftItem) => DraftItem) {
  const path = fieldPath('gear', item.id, 'litres')
  if (openTrip.value?.typed[path] !== undefined) actions.setField(path, undefined, null)
  actions.edit(label, draft => changeItem(draft, item.id, change))
}
