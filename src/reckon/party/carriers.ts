// Who carries each thing where it was shared out before: nothing is searched for.

import type { Item, PartyPlan } from '../../plan/types'
import type { PartyReckoning } from './types'

/** Who carries a thing, by the ids of item and person. */
export type SharedOut = Readonly<Record<string, string>>

/** What is worn or holds water stays with its owner, and so does what only they may carry. */
export const staysWithOwner = ({ stow, holdsWaterLitres, owner, shareable }: Item): boolean =>
  stow === 'worn' || holdsWaterLitres > 0 || (owner !== null && !shareable)

/**
 * The id of who carries each item, in the plan's order: as it is said of it, else as it was shared out, else its owner,
 * else the first. What is inside a container goes with it, unless that stays at home.
 */
export function carriersOf({ people, gear }: PartyPlan, shared: SharedOut): string[] {
  const ids = new Set(people.map(({ id }) => id))
  const containers = new Map(
    gear.flatMap(item => (item.holdsLitres === null || item.atHome ? [] : [[item.id, item]])),
  )
  return gear.map(item => {
    const piece = containers.get(item.inside ?? '') ?? item
    const given = Object.hasOwn(shared, piece.id) ? shared[piece.id] : undefined
    if (piece.carriedBy !== null) return piece.carriedBy
    if (piece.owner !== null && staysWithOwner(piece)) return piece.owner
    return given !== undefined && ids.has(given) ? given : (piece.owner ?? people[0]!.id)
  })
}

/** Who carries what could have gone to anybody, as it came out of sharing out. */
export function sharedFrom({ gear }: PartyPlan, { people }: PartyReckoning): Record<string, string> {
  const things = new Map(gear.map(item => [item.id, item]))
  const isFree = (id: string) => {
    const item = things.get(id)!
    return item.inside === null && item.carriedBy === null && !staysWithOwner(item)
  }
  return Object.fromEntries(
    people.flatMap(person => person.carries.filter(isFree).map(id => [id, person.id] as const)),
  )
}
