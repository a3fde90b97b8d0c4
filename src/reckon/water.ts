// Water: what each source must be left with, what the containers can take of it, and where it rides.

import type { Item, Plan } from '../plan/types'
import type { Route } from './route'
import type { WaterCarry } from './types'

/** Litres that fit outside the main body, in soft and in rigid containers inside it. */
export interface WaterRoom {
  outside: number
  softBody: number
  rigidBody: number
}

export interface Water {
  litres: number
  /** Litres of it that take soft room in the main body. */
  softBodyLitres: number
  /** Litres of it riding in the main body, in containers of either build. */
  bodyLitres: number
}

export interface WaterPlan {
  carries: WaterCarry[]
  /** At each of the route's moments. */
  aboard: Water[]
  /** Null: no item holds water, so the carry is unlimited. */
  capacityLitres: number | null
}

/** Room for water; null when no item holds any. A container inside another rides where that one does. */
export function waterRoomOf(gear: Item[], stowOf: (item: Item) => Item['stow']): WaterRoom | null {
  const room: WaterRoom = { outside: 0, softBody: 0, rigidBody: 0 }
  for (const item of gear) {
    const litres = item.holdsWaterLitres * item.count
    if (stowOf(item) !== 'main-body') room.outside += litres
    else if (item.build === 'soft') room.softBody += litres
    else room.rigidBody += litres
  }
  return room.outside + room.softBody + room.rigidBody > 0 ? room : null
}

const UNLIMITED: WaterRoom = { outside: 0, softBody: Number.POSITIVE_INFINITY, rigidBody: 0 }

/** Water at every moment, when leg i uses `legLitres[i]`. */
export function waterPlanOf(
  plan: Plan,
  route: Route,
  legLitres: number[],
  room: WaterRoom | null,
): WaterPlan {
  const { stops, water } = plan.trip
  const capacityLitres = room && room.outside + room.softBody + room.rigidBody
  const carries: WaterCarry[] = []
  let filled = 0
  let litres = 0
  const aboard = route.moments.map(({ stop, phase }) => {
    if (phase === 'arrive') litres = Math.max(0, litres - legLitres[stop - 1]!)
    else if (isSource(plan, stop)) {
      const { to, needLitres } = needFrom(stop)
      filled = capacityLitres === null ? needLitres : Math.min(needLitres, capacityLitres)
      litres = filled
      // Less than rounding is no shortfall.
      const shortLitres = needLitres - filled > 1e-9 ? needLitres - filled : 0
      carries.push({ stop, to, needLitres, carriedLitres: filled, shortLitres })
    } else litres = Math.max(0, litres - stops[stop]!.nights * water.campLitres)
    return waterAboard(litres, filled, room)
  })
  return { carries, aboard, capacityLitres }

  function needFrom(source: number): { to: number; needLitres: number } {
    let needLitres = water.reserveLitres
    for (let stop = source + 1; ; stop++) {
      needLitres += legLitres[stop - 1]!
      if (stop === stops.length - 1 || isSource(plan, stop)) return { to: stop, needLitres }
      needLitres += stops[stop]!.nights * water.campLitres
    }
  }
}

/** The start, a sure source, or a doubtful one that the hiker trusts. */
export function isSource({ trip: { stops, water } }: Plan, stop: number): boolean {
  const source = stops[stop]!.water
  return stop === 0 || source === 'sure' || (source === 'doubtful' && water.trustDoubtful)
}

/**
 * Where `litres` ride when the last source was left with `filledLitres`. Filled outside first, then soft, then
 * rigid containers inside; drunk from the main body first, soft before rigid.
 */
export function waterAboard(litres: number, filledLitres: number, room: WaterRoom | null): Water {
  const { outside, softBody } = room ?? UNLIMITED
  const filledInBody = Math.max(0, filledLitres - outside)
  const bodyLitres = Math.max(0, litres - Math.min(outside, filledLitres))
  const filledSoft = Math.min(softBody, filledInBody)
  const softBodyLitres = Math.max(0, filledSoft - (filledInBody - bodyLitres))
  return { litres, softBodyLitres, bodyLitres }
}
