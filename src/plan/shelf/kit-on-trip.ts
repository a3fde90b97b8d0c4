// A kit as if it were all the gear of a trip, so that the two can be told apart. Pure.

import type { Draft } from '../draft'
import { packThings } from './pack'
import { byId } from './plain'
import type { Base, Shelf } from './types'

/** What is in the trip too goes by the id it has there. */
export function kitOnTrip(draft: Draft, { things }: Pick<Shelf, 'things'>, { name, lines }: Base): Draft {
  const there = byId(things)
  const packed = [...new Set(lines.map(({ thing }) => thing))].flatMap(id => there.get(id) ?? [])
  const itemOf = new Map(draft.gear.flatMap(({ id, shelf }) => (shelf ? [[shelf.id, id] as const] : [])))
  const ids = packed.map(({ id }) => itemOf.get(id) ?? `only in the kit: ${id}`)
  const newId = () => ids.shift()!
  return packThings({ ...draft, name, gear: [] }, packed, { newId, now: 0, uses: lines })
}
