// What the shelf knows better by now than a trip that packed from it: offered, never forced. Pure.

import type { Draft } from '../draft'
import { setField } from '../field-path'
import { mapId } from '../lists'
import { followingMass } from '../litres'
import { same } from './same'
import type { Shelf, Thing, ThingFacts } from './types'

export interface OfferedField {
  field: keyof ThingFacts
  /** The value in the trip; undefined: none. */
  from: unknown
  /** The value on the shelf; undefined: none. */
  to: unknown
}

export interface Offer {
  itemId: string
  thing: Thing
  fields: OfferedField[]
}

/** For each linked item the facts that were changed on the shelf after it had taken them, and that differ. */
export function offersFor(draft: Draft, shelf: Shelf): Offer[] {
  const things = new Map(shelf.things.map(thing => [thing.id, thing]))
  return draft.gear.flatMap(item => {
    const thing = item.shelf && things.get(item.shelf.id)
    if (!item.shelf || !thing) return []
    const { at } = item.shelf
    const fields = Object.entries(thing.changed).flatMap(([key, changed]): OfferedField[] => {
      const field = key as keyof ThingFacts
      const [from, to] = [item[field], thing.item[field]]
      return changed > at && !same(from, to) ? [{ field, from, to }] : []
    })
    return fields.length ? [{ itemId: item.id, thing, fields }] : []
  })
}

/** The draft with the offered facts, which are not offered again. */
export function takeOffer(draft: Draft, { itemId, thing, fields }: Offer, now: number): Draft {
  const gear = mapId(draft.gear, itemId, item => {
    const taken = fields.reduce((made, { field, to }) => setField(made, field, to), item)
    const given = new Set(fields.map(({ field }) => field))
    const follows = given.has('massKg') && !given.has('litresRange') && !given.has('litres')
    return { ...(follows ? followingMass(taken, 'massKg') : taken), shelf: { id: thing.id, at: now } }
  })
  return gear === draft.gear ? draft : { ...draft, gear }
}

/** The draft as it is, with the offer turned down: the same facts are not offered again. */
export const keepAsIs = (
  draft: Draft,
  { itemId, thing }: Pick<Offer, 'itemId' | 'thing'>,
  now: number,
): Draft => takeOffer(draft, { itemId, thing, fields: [] }, now)
