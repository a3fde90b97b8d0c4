// The load decides the energy, the energy the food and the water, and these the load: rounds until nothing moves. Of
// people who carry each other's food all are settled at once.

import type { Plan } from '../plan/types'
import { type Body, bodyOf, type Energy, energyOf, rationsFrom, withFuelMass } from './energy'
import { ratesOf } from './heat'
import { type Ledger, ledgerOf, stowsOf } from './ledger'
import { momentsOf } from './moments'
import type { Parts } from './need'
import { stockAtMoments } from './provisions'
import { packingOf } from './room'
import { type Route, routeOf } from './route'
import type { Moment } from './types'
import { type WaterRoom, waterPlanOf, waterRoomOf } from './water'

/** A ration, or a water rate, that has not settled after this many rounds never will. */
const MOST_ROUNDS = 50
/** A leg at the edge of two effort classes can swing between them for ever: from here on the harder one stands. */
const SWING_ROUNDS = 10
/** Settled: no moment's load moves by this much. */
const SETTLED_KG = 0.001

/** One round; its moments are those for a packing factor of 1. */
export interface Pass {
  rations: number[]
  rates: ReturnType<typeof ratesOf>
  legLitres: number[]
  stocks: Parts['stocks']
  water: Parts['water']
  moments: Moment[]
}

/** Who walks, with what does not change from round to round. */
export interface Walker {
  plan: Plan
  route: Route
  gear: Plan['gear']
  stowOf: ReturnType<typeof stowsOf>
  ledger: Ledger
  room: WaterRoom | null
  body: Body | null
  /** The food whose rations follow this one's energy, whoever carries it; null: the rations are given. */
  food: Plan['gear'] | null
  /** Of those settled with this one, whose food is in the gear: place among them, by the id of the owner. */
  eaters: ReadonlyMap<string, number>
}

/**
 * The walkers of plans that are settled at once. `ids`: the owners that the plans are of; without them each plan is a
 * hiker's own, and so is all that is in it.
 */
export function walkersOf(plans: readonly Plan[], ids: readonly string[]): Walker[] {
  return plans.map((plan, own) => {
    const gear = withFuelMass(plan.gear)
    const stowOf = stowsOf(gear)
    const body = bodyOf(plan.carrier)
    const isDaily = ({ use }: Plan['gear'][number]) => use === 'daily'
    const id = ids[own]
    const food =
      id === undefined ? gear : plans.flatMap(each => each.gear).filter(({ owner }) => owner === id)
    // Who has no food of their own eats nothing that could settle; a hiker's own plan without any cannot be answered.
    const isFed =
      id === undefined ||
      food.some(item => isDaily(item) && item.massKg * item.count * (item.kcalPerKg ?? 0) > 0)
    const others = gear.flatMap(item => (isDaily(item) && item.owner !== id ? [item.owner] : []))
    const eaters = new Map(ids.flatMap((each, at) => (others.includes(each) ? [[each, at] as const] : [])))
    return {
      plan,
      route: routeOf(plan),
      gear,
      stowOf,
      ledger: ledgerOf(gear, stowOf, [...eaters.keys()]),
      room: waterRoomOf(gear, stowOf),
      body,
      food: plan.trip.meals.ration === 'energy' && body && isFed ? food : null,
      eaters,
    }
  })
}

/** `rations` of all that are settled at once, by their places. */
function passOf(
  walker: Walker,
  own: number,
  rations: number[][],
  energy: Energy | null,
  room: WaterRoom | null,
) {
  const { plan, route, ledger } = walker
  const rates = ratesOf(plan, route, energy)
  const legLitres = route.legs.map((leg, i) => leg.hours * rates[i]!.litresPerHour)
  const others = [...walker.eaters].map(
    ([id, at]) => [id, stockAtMoments(plan, route, rations[at]!)] as const,
  )
  const stocks = stockAtMoments(plan, route, rations[own]!).map((stock, m) =>
    others.length === 0 ? stock : { ...stock, of: new Map(others.map(([id, their]) => [id, their[m]!])) },
  )
  const water = waterPlanOf(plan, route, legLitres, room)
  const moments = momentsOf(route, ledger, {
    stocks,
    water: water.aboard,
    packing: packingOf(plan.settings, 1),
  })
  return { rations: rations[own]!, rates, legLitres, stocks, water, moments }
}

/** Null: the rations, or the water, of somebody never settle. */
export function settle(
  walkers: readonly Walker[],
  roomOf: (walker: Walker) => WaterRoom | null,
): { passes: Pass[]; rounds: number } | null {
  const whole = walkers.map(({ route }) => route.days.map(() => 1))
  let passes = walkers.map((walker, i): Pass => passOf(walker, i, whole, null, roomOf(walker)))
  const isFixed = ({ food, plan }: Walker) => food === null && plan.trip.water.litresPerHour !== 'from-heat'
  if (walkers.every(isFixed)) return { passes, rounds: 0 }
  let before: (Energy | null)[] = walkers.map(() => null)
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    const efforts = walkers.map(({ plan, route, body }, i) => {
      const spent = energyOf(plan, route, passes[i]!.moments, body)
      return rounds > SWING_ROUNDS ? harder(spent, before[i]!) : spent
    })
    if (walkers.some(({ food }, i) => food && efforts[i]?.legs.some(leg => leg.beyondReason))) return null
    before = efforts
    const rations = walkers.map(({ food, plan: { trip } }, i) =>
      food && efforts[i] ? rationsFrom({ gear: food, trip }, efforts[i]) : passes[i]!.rations,
    )
    const next = walkers.map((walker, i) => passOf(walker, i, rations, efforts[i]!, roomOf(walker)))
    const moved = Math.max(...next.map((pass, i) => movedBetween(pass.moments, passes[i]!.moments)))
    passes = next
    if (moved < SETTLED_KG) return { passes, rounds }
    if (!Number.isFinite(moved)) return null
  }
  return null
}

const movedBetween = (now: Moment[], then: Moment[]) =>
  Math.max(...now.map((moment, i) => Math.abs(moment.kg.total - then[i]!.kg.total)))

/** The harder of two efforts on each leg. */
function harder(now: Energy | null, before: Energy | null): Energy | null {
  if (!now || !before) return now
  const legs = now.legs.map((leg, i) => ({ ...leg, watts: Math.max(leg.watts, before.legs[i]!.watts) }))
  return { ...now, legs }
}
