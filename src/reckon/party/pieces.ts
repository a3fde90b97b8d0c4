// What of the gear stays with whom, and what may be handed to anybody: a container with all that is in it is one piece.

import type { PartyPlan } from '../../plan/types'
import { staysWithOwner } from './carriers'

export interface Piece {
  /** Places in the gear of the thing itself and of all that is inside it, in the plan's order. */
  items: number[]
  /** Whose it is, a place among the people; null: everybody's. */
  owner: number | null
}

export interface Handing {
  /** What may move, in the plan's order. */
  pieces: Piece[]
  /** Places in the gear of what each person carries in any case. */
  fixed: number[][]
  /** Pieces that somebody else than their owner is said to carry. */
  movedByWord: number
}

export function handingOf({ people, gear }: PartyPlan): Handing {
  const places = new Map(people.map(({ id }, i) => [id, i]))
  const placeOf = (id: string | null) => (id === null ? null : places.get(id)!)
  const contents = new Map<string, number[]>()
  gear.forEach(({ inside }, i) => {
    if (inside === null) return
    const within = contents.get(inside)
    if (within) within.push(i)
    else contents.set(inside, [i])
  })
  const pieces: Piece[] = []
  const fixed: number[][] = people.map(() => [])
  let movedByWord = 0
  gear.forEach((item, i) => {
    if (item.inside !== null) return
    const items = inOrder([i, ...(contents.get(item.id) ?? [])])
    const owner = placeOf(item.owner)
    // The rules hold that what stays with its owner has one.
    const stays = placeOf(item.carriedBy) ?? (staysWithOwner(item) ? owner : null)
    if (stays === null) pieces.push({ items, owner })
    else {
      fixed[stays]!.push(...items)
      if (owner !== null && owner !== stays) movedByWord++
    }
  })
  return { pieces, fixed, movedByWord }
}

/** Places in the gear of what one person carries with these pieces. */
export const carriedWith = ({ pieces, fixed }: Handing, who: number, handed: readonly number[]): number[] =>
  inOrder([...fixed[who]!, ...handed.flatMap(i => pieces[i]!.items)])

/** The same of each, when piece i goes to person `carriers[i]`. */
export const carriedBy = (handing: Handing, carriers: Int32Array): number[][] =>
  handing.fixed.map((_, who) =>
    carriedWith(
      handing,
      who,
      [...carriers.keys()].filter(i => carriers[i] === who),
    ),
  )

const inOrder = (places: number[]) => places.sort((a, b) => a - b)
