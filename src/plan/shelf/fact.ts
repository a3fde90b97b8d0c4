// One fact of a thing: what typing in a field changes. Apart from the other edits, which the first page does not need.

import { fieldPath, pathParts, setField } from '../field-path'
import { mapId } from '../lists'
import type { Shelf, Thing } from './types'

/** One fact of a thing by its path inside it (`massKg`, `fuel/boilLitres`); undefined takes it away. */
export function setThingFact(
  shelf: Shelf,
  id: string,
  { field, value, now }: { field: string; value: unknown; now: number },
): Shelf {
  const things = mapId(shelf.things, id, thing => setFact(thing, field, value, now))
  return things === shelf.things ? shelf : { ...shelf, things }
}

/** As `setThingFact`, of the thing itself. */
export function setFact(thing: Thing, field: string, value: unknown, now: number): Thing {
  const item = setField(thing.item, field, value)
  if (item === thing.item) return thing
  return { ...thing, item, changed: { ...thing.changed, [pathParts(field)[0]!]: now } }
}

/** The path of a thing's field among the shelf's unread texts. */
export const thingPath = (id: string, field: string): string => `${fieldPath(id)}/${field}`
