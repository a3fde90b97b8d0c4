// The fields and edits of an item, for a thing on the shelf in place of an item of the trip.

import type { Edited } from '../../components/fields'
import { fieldAt, fieldPath, pathParts } from '../../plan'
import { changeThing, thingPath } from '../../plan/shelf'
import { actions, shelf } from '../../store'
import type { ItemHome } from '../gear'
import { thingsById } from './uses'

/** Paths are `<thing>/massKg`, as among the shelf's unread texts. */
function partsOf(path: string) {
  const cut = path.indexOf('/')
  const thing = thingsById.value.get(pathParts(path.slice(0, cut))[0] ?? '')
  return { thing, field: path.slice(cut + 1) }
}

export const editedThings: Edited = {
  inTrip: path => `gear/${path}`,
  valueAt: path => {
    const { thing, field } = partsOf(path)
    return thing && fieldAt(thing.item, field)
  },
  unreadAt: path => shelf.value.typed[path],
  set: (path, value, unread) => {
    const { thing, field } = partsOf(path)
    if (thing) actions.setThingField(thing.id, field, value, unread)
  },
}

export const homeOfThings: ItemHome = {
  pathOf: (id, ...parts) => thingPath(id, fieldPath(...parts)),
  edit: (id, label, change) =>
    actions.editShelf(`${label} (on the shelf)`, shelf =>
      changeThing(shelf, id, { change, now: Date.now() }),
    ),
  inTrip: false,
}
