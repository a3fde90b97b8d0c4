// Which things may be moved outside or left at home to make a set-up do. What the hiker has said of a thing counts
// first. What holds water is never left: that would mend the pack by leaving the hiker dry. A soft water bag is not
// moved either: full, it takes more pocket room than its own litres say.

import type { Item } from '../plan/types'
import { unitsInPlay } from './ledger'
import type { Parts } from './need'
import type { Candidate } from './remedies-candidate'
import { isNeeded, ridesOutsideUnasked } from './remedies-purpose'
import type { ItemChoice } from './remedies-types'

export interface Ways {
  move: boolean
  /** Left at home: nothing, what the hiker has marked as optional, or whatever is not needed on the way. */
  leave: 'none' | 'optional' | 'any'
}

export interface MovableItem {
  /** Index in the gear list. */
  at: number
  item: Item
  way: 'move' | 'leave'
  /** The most of it that is ever aboard. */
  mostKg: number
  mostLitres: number
}

export interface Movable {
  things: MovableItem[]
  /** Rigid containers with water in them: moving one moves its water too. */
  bottles: MovableItem[]
  /** Nothing was passed over to keep the search short. */
  whole: boolean
}

/** Bottles are tried in every way, 2 to the number of them. */
const MOST_BOTTLES = 3
const MOST_THINGS = 60
/** Containers that choices empty are tried as full and as overflowing, 2 to the number of them. */
const MOST_CONTAINERS = 4

export function movableOf({ plan }: Candidate, parts: Parts, ways: Ways): Movable {
  const { gear, stowOf, stocks } = parts
  const contents = new Map<string, Item[]>()
  for (const item of gear)
    if (item.inside !== null) contents.set(item.inside, [...(contents.get(item.inside) ?? []), item])
  const within = (item: Item) => [item, ...(contents.get(item.id) ?? [])]
  const holdsWater = (item: Item) => item.count > 0 && item.holdsWaterLitres > 0
  const found = gear.flatMap((item, at): MovableItem[] => {
    if (item.count === 0) return []
    const units = Math.max(...stocks.map(stock => unitsInPlay(item, stock)))
    const amounts = { mostKg: item.massKg * item.count * units, mostLitres: item.litres * item.count * units }
    const it = { at, item, ...amounts }
    return [
      ...(ways.move && mayMove(item) ? [{ ...it, way: 'move' } as const] : []),
      ...(mayLeave(item) ? [{ ...it, way: 'leave' } as const] : []),
    ]
  })
  const isBottle = (it: MovableItem) => it.way === 'move' && within(it.item).some(holdsWater)
  const bottles = mostFirst(found.filter(isBottle))
  const all = mostFirst(found.filter(it => !isBottle(it)))
  const things = all.slice(0, MOST_THINGS)
  const whole = things.length === all.length && bottles.length <= MOST_BOTTLES && emptiedBy(things).whole
  return { things, bottles: bottles.slice(0, MOST_BOTTLES), whole }

  function mayMove(item: Item): boolean {
    if (stowOf(item) !== 'main-body' || !(item.mayRideOutside ?? ridesOutsideUnasked(item))) return false
    if (plan.packs[0]!.outsideLitres === null) return false
    return !within(item).some(it => holdsWater(it) && it.build === 'soft')
  }

  function mayLeave(item: Item): boolean {
    if (ways.leave === 'none' || !(item.optional || (ways.leave === 'any' && !isNeeded(item)))) return false
    if (stowOf(item) === 'worn' || contents.has(item.id) || holdsWater(item)) return false
    // Without it the other food would have to give the same energy.
    return !(plan.trip.meals.ration === 'energy' && item.use === 'daily')
  }
}

/** The containers out of which these things would be taken; those beyond a few are left out, as if always full. */
export function emptiedBy(things: MovableItem[]): { emptied: string[]; whole: boolean } {
  const ids = [...new Set(things.flatMap(({ item }) => (item.inside === null ? [] : [item.inside])))]
  return { emptied: ids.slice(0, MOST_CONTAINERS), whole: ids.length <= MOST_CONTAINERS }
}

/** The ids of what is chosen, in the order of the gear list. */
export function choiceOf(chosen: MovableItem[]): ItemChoice {
  const ids = (way: MovableItem['way']) =>
    [...chosen]
      .sort((a, b) => a.at - b.at)
      .filter(it => it.way === way)
      .map(it => it.item.id)
  return { move: ids('move'), leave: ids('leave') }
}

function mostFirst(movable: MovableItem[]): MovableItem[] {
  return [...movable].sort((a, b) => b.mostLitres + b.mostKg - (a.mostLitres + a.mostKg) || a.at - b.at)
}
