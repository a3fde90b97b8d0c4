// The engine's inner tables of a plan that was already reckoned, rebuilt from its Reckoning, for those who ask more
// about it than the Reckoning says. Nothing is iterated: rations and water are taken as they came out. Kept with the
// Reckoning, so that many questions share one rebuilding: nothing may be changed in them.

import type { Plan } from '../plan/types'
import { takenAlong } from './at-home'
import { insideLitres } from './containers'
import { withFuelMass } from './energy'
import { ledgerOf, stowsOf } from './ledger'
import type { Parts } from './need'
import { spareRationsOf, stockAtMoments, unitsOf } from './provisions'
import { packingOf } from './room'
import { routeOf } from './route'
import type { Reckoning } from './types'
import { waterPlanOf, waterRoomOf } from './water'

const KEPT = new WeakMap<Reckoning, Parts>()

/** Of what is taken along. `reckoning` must be what `reckon(plan)` gave. */
export function partsOf(listed: Plan, reckoning: Reckoning): Parts {
  const plan = takenAlong(listed)
  const kept = KEPT.get(reckoning)
  if (kept?.plan === plan) return kept
  const parts = rebuilt(plan, reckoning)
  KEPT.set(reckoning, parts)
  return parts
}

function rebuilt(plan: Plan, reckoning: Reckoning): Parts {
  const route = routeOf(plan)
  const gear = withFuelMass(plan.gear)
  const stowOf = stowsOf(gear)
  const rations = reckoning.days.map(day => day.ration)
  const legLitres = reckoning.legs.map(leg => leg.waterLitres)
  return {
    plan,
    gear,
    stowOf,
    ledger: ledgerOf(gear, stowOf),
    packing: packingOf(plan.settings, reckoning.need.factor),
    stocks: stockAtMoments(plan, route, rations),
    spareRations: spareRationsOf(plan, rations),
    water: waterPlanOf(plan, route, legLitres, waterRoomOf(gear, stowOf)),
  }
}

/** Litres by which what is in a container at moment `m` is more than it holds; less than 0 where there is room. */
export function overflowingBy({ ledger, stocks }: Parts, m: number, id: string): number {
  const container = ledger.containers.get(id)!
  return insideLitres(container, unitsOf(stocks[m]!)) - container.roomLitres
}
