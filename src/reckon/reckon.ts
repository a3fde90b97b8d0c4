// The engine in reading order: route → provisions → water → moments → spread → need → verdicts → reach. A plan goes in, a
// Reckoning comes out; MODEL.md beside this file says what is computed.

import type { Plan } from '../plan/types'
import { missingFigures, withUnknownsAtMost } from './answers'
import { type Body, bodyOf, type Energy, energyOf, rationsFrom, withFuelMass } from './energy'
import { ratesOf } from './heat'
import { ledgerOf, stowsOf } from './ledger'
import { momentsOf } from './moments'
import { fullestOf, needOf, type Parts } from './need'
import { loadNotices, noticesOf } from './notices'
import { spareRationsOf, stockAtMoments } from './provisions'
import { packingOf } from './room'
import { type Route, routeOf } from './route'
import { spreadOf } from './spread'
import type { Moment, Reckoning } from './types'
import { judgePacks } from './verdicts'
import { type WaterRoom, waterPlanOf, waterRoomOf } from './water'

interface Refused {
  ok: false
  /** `said`: as it is told to people, where `message` names fields. */
  problem: { path: string[]; message: string; said: string }
}
export type Reckoned = { ok: true; reckoning: Reckoning } | Refused

/** A ration, or a water rate, that has not settled after this many rounds never will. */
const MOST_ROUNDS = 50
/** A leg at the edge of two effort classes can swing between them for ever: from here on the harder one stands. */
const SWING_ROUNDS = 10
/** Settled: no moment's load moves by this much. */
const SETTLED_KG = 0.001

/**
 * Reckons a complete plan (see `completePlan`). Pure and deterministic. Refuses only a plan whose energy ration
 * does not settle: food so poor in energy that carrying it asks for more of it than it gives.
 */
export function reckon(plan: Plan): Reckoned {
  // Only set-ups are asked of it.
  const utmost = plan.packs.length > 0 ? withUnknownsAtMost(plan) : null
  const most = utmost && reckonAsSaid(utmost, () => true)
  return reckonAsSaid(plan, i => most === null || (most.ok && most.reckoning.packs[i]!.suffices))
}

/** A figure nobody has said counts as 0; `stillSuffices` tells of each set-up whether it would with the most they may be. */
function reckonAsSaid(plan: Plan, stillSuffices: (setup: number) => boolean): Reckoned {
  const route = routeOf(plan)
  const gear = withFuelMass(plan.gear)
  const stowOf = stowsOf(gear)
  const ledger = ledgerOf(gear, stowOf)
  const room = waterRoomOf(gear, stowOf)
  const body = bodyOf(plan.carrier)

  const runWith =
    (room: WaterRoom | null): Run =>
    (rations, energy) => {
      const rates = ratesOf(plan, route, energy)
      const legLitres = route.legs.map((leg, i) => leg.hours * rates[i]!.litresPerHour)
      const stocks = stockAtMoments(plan, route, rations)
      const water = waterPlanOf(plan, route, legLitres, room)
      const moments = momentsOf(route, ledger, {
        stocks,
        water: water.aboard,
        packing: packingOf(plan.settings, 1),
      })
      return { rations, rates, legLitres, stocks, water, moments }
    }

  const settled = settle(plan, route, body, runWith(room))
  const isShort = settled?.pass.water.carries.some(({ shortLitres }) => shortLitres > 0)
  // One more container, endless, weightless and strapped on.
  const fullWater =
    room && isShort
      ? settle(plan, route, body, runWith({ ...room, outside: Number.POSITIVE_INFINITY }))
      : settled
  if (!settled || !fullWater) {
    const message =
      'does not settle: the food gives too little energy for its weight; raise kcalPerKg, or write "fixed"'
    const said =
      'The food has too little energy for its mass. Change it under Food, or eat the same each day.'
    return { ok: false, problem: { path: ['trip', 'meals', 'ration'], message, said } }
  }

  const { pass, rounds } = settled
  const { rates, legLitres, water } = pass
  const energy = energyOf(plan, route, pass.moments, body)
  const fullest = fullestOf(pass.moments)
  const spread = spreadOf({ plan, gear, stowOf, ledger }, pass.moments[fullest]!, pass.stocks[fullest]!)
  const { factor } = spread
  const moments = withWantedWater(pass, fullWater.pass).map(moment => ({
    ...moment,
    bodyLitres: factor * moment.bodyLitres,
  }))
  const spareRations = spareRationsOf(plan, pass.rations)
  const packing = packingOf(plan.settings, factor)
  const parts: Parts = { plan, gear, stowOf, ledger, packing, stocks: pass.stocks, spareRations, water }
  const need = needOf({ moments, withAllWater: fullWater.pass.moments }, spread, parts)
  const packs = judgePacks(need, moments[fullest]!, parts, stillSuffices)
  return {
    ok: true,
    reckoning: {
      need,
      moments,
      legs: route.legs.map(({ hours }, i) => ({
        hours,
        waterLitres: legLitres[i]!,
        litresPerHour: rates[i]!.litresPerHour,
        kcal: energy ? energy.legs[i]!.kcal : null,
      })),
      days: route.days.map(({ hours }, i) => ({
        day: i + 1,
        hours,
        kcalWalking: energy ? energy.days[i]!.kcalWalking : null,
        kcalTotal: energy ? energy.days[i]!.kcalTotal : null,
        ration: pass.rations[i]!,
      })),
      // Without energy figures, as of a child, no ration is iterated, whatever the water needs.
      rationRounds: plan.trip.meals.ration === 'energy' && body ? rounds : 0,
      carries: water.carries,
      packs,
      missing: missingFigures(plan),
      notices: [
        ...noticesOf(plan, route, { body, energy, rates, legLitres, water }),
        ...loadNotices(plan, need, packs),
      ],
    },
  }
}

/** One round; its moments are those for a packing factor of 1. */
interface Pass {
  rations: number[]
  rates: ReturnType<typeof ratesOf>
  legLitres: number[]
  stocks: Parts['stocks']
  water: Parts['water']
  moments: Moment[]
}

/** The moments as the containers have them, each with the water wanted beyond that. */
function withWantedWater({ moments, water }: Pass, full: Pass): Moment[] {
  if (full.water === water) return moments
  return moments.map((moment, m) => ({
    ...moment,
    wantedLitres: Math.max(0, full.water.aboard[m]!.litres - water.aboard[m]!.litres),
  }))
}

type Run = (rations: number[], energy: Energy | null) => Pass

/** The load decides the energy, the energy the food and the water, and these the load: rounds until nothing moves. */
function settle(
  plan: Plan,
  route: Route,
  body: Body | null,
  run: Run,
): { pass: Pass; rounds: number } | null {
  let pass = run(
    route.days.map(() => 1),
    null,
  )
  const byEnergy = plan.trip.meals.ration === 'energy' && body !== null
  if (!byEnergy && plan.trip.water.litresPerHour !== 'from-heat') return { pass, rounds: 0 }
  let before: Energy | null = null
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    const spent = energyOf(plan, route, pass.moments, body)
    const energy: Energy | null = rounds > SWING_ROUNDS ? harder(spent, before) : spent
    if (byEnergy && energy?.legs.some(leg => leg.beyondReason)) return null
    before = energy
    const next = run(byEnergy && energy ? rationsFrom(plan, energy) : pass.rations, energy)
    const moved = Math.max(...next.moments.map((m, i) => Math.abs(m.kg.total - pass.moments[i]!.kg.total)))
    pass = next
    if (moved < SETTLED_KG) return { pass, rounds }
    if (!Number.isFinite(moved)) return null
  }
  return null
}

/** The harder of two efforts on each leg. */
function harder(now: Energy | null, before: Energy | null): Energy | null {
  if (!now || !before) return now
  const legs = now.legs.map((leg, i) => ({ ...leg, watts: Math.max(leg.watts, before.legs[i]!.watts) }))
  return { ...now, legs }
}
