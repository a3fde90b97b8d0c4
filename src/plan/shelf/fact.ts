// One fact of a thing: what typing in a field changes. Apart from the other edits, which the first page does not need.

import { fieldPath, setField } from '../field-path'
import { mapId } from '../lists'
import { setItemField } from '../set-field'
import type { Shelf, Thing, ThingFacts } from './types'

/** One fact of a thing by its path inside it (`massKg`, `fuel/boilLitres`); undefined takes it away. */
export function setThingFact(
  shelf: Shelf,
  id: string,
  { field, value, now }: { field: string; value: unknown; now: number },
): Shelf {
  const things = mapId(shelf.things, id, thing =>
    withFacts(thing, setItemField(thing.item, field, value), now),
  )
  return things === shelf.things ? shelf : { ...shelf, things }
}

/** The thing with one fact set as it is given, and nothing that follows from it. */
export const setFact = (thing: Thing, field: string, value: unknown, now: number): Thing =>
  withFacts(thing, setField(thing.item, field, value), now)

/** The thing with these facts; for each that is another it is noted when that was. */
function withFacts(thing: Thing, item: ThingFacts, now: number): Thing {
  if (item === thing.item) return thing
  const fields = Object.keys({ ...thing.item, ...item }) as (keyof ThingFacts)[]
  const stamped = fields.filter(field => item[field] !== thing.item[field]).map(field => [field, now])
  return { ...thing, item, changed: { ...thing.changed, ...Object.fromEntries(stamped) } }
}

/** The path of a thing's field among the shelf's unread texts. */
export const thingPath = (id: string, field: string): string => `${fieldPath(id)}/${field}`
