// The engine in reading order: route → provisions → water → moments → rounds → spread → need → verdicts → reach. A plan
// goes in, a Reckoning comes out; MODEL.md beside this file says what is computed.

import type { Plan } from '../plan/types'
import { missingFigures, withUnknownsAtMost } from './answers'
import { takenAlong } from './at-home'
import { type Body, energyOf, type WalkingEffort } from './energy'
import type { Rate } from './heat'
import { fullestOf, needOf, type Parts } from './need'
import { loadNotices, noticesOf } from './notices'
import { spareRationsOf } from './provisions'
import { packingOf } from './room'
import { type Pass, settle, type Walker, walkersOf } from './rounds'
import { spreadOf } from './spread'
import type { Moment, Reckoning } from './types'
import { judgePacks } from './verdicts'

export interface Refused {
  ok: false
  /** `said`: as it is told to people, where `message` names fields. */
  problem: { path: string[]; message: string; said: string }
}

/** What a Reckoning was worked out with beyond what it tells: for who asks why. No part of the JSON contract. */
export interface Working {
  /** Null under the age from which there are energy figures. */
  body: Body | null
  /** Each leg: what walking it costs, and the water of an hour. */
  legs: { effort: WalkingEffort | null; rate: Rate }[]
}

export interface Answered {
  reckoning: Reckoning
  working: Working
}

export type Reckoned = ({ ok: true } & Answered) | Refused

/**
 * Reckons what a complete plan (see `completePlan`) takes along. Pure and deterministic. Refuses only a plan whose energy ration
 * does not settle: food so poor in energy that carrying it asks for more of it than it gives.
 */
export function reckon(plan: Plan): Reckoned {
  const along = takenAlong(plan)
  const reckoned = reckonTogether([along], [])
  if (!reckoned.ok) return reckoned
  const answered = reckoned.answers[0]!
  // Paths tell places in the whole list.
  if (along !== plan) answered.reckoning.missing = missingFigures(plan)
  return { ok: true, ...answered }
}

export type ReckonedTogether = { ok: true; answers: Answered[] } | Refused

/**
 * Reckons plans of people who may carry each other's food: each plan holds what one of them carries, `ids` are theirs in
 * the same order, and an item's `owner` says whose rations it follows.
 */
export function reckonTogether(plans: readonly Plan[], ids: readonly string[]): ReckonedTogether {
  // Only set-ups are asked of it.
  const most = once(() => {
    const utmost = plans.map(plan => (plan.packs.length > 0 ? withUnknownsAtMost(plan) : null))
    if (utmost.every(plan => plan === null)) return null
    return reckonAsSaid(
      plans.map((plan, i) => utmost[i] ?? plan),
      ids,
      () => true,
    )
  })
  return reckonAsSaid(plans, ids, (who, setup) => {
    const found = most()
    return found === null || (found.ok && found.answers[who]!.reckoning.packs[setup]!.suffices)
  })
}

/** A figure nobody has said counts as 0; `stillSuffices` tells of each set-up whether it would with the most they may be. */
function reckonAsSaid(
  plans: readonly Plan[],
  ids: readonly string[],
  stillSuffices: (who: number, setup: number) => boolean,
): ReckonedTogether {
  const walkers = walkersOf(plans, ids)
  const settled = settle(walkers, ({ room }) => room)
  const isShort = settled?.passes.some(({ water }) =>
    water.carries.some(({ shortLitres }) => shortLitres > 0),
  )
  // One more container, endless, weightless and strapped on.
  const fullWater = isShort
    ? settle(walkers, ({ room }) => room && { ...room, outside: Number.POSITIVE_INFINITY })
    : settled
  if (!settled || !fullWater) {
    const message =
      'does not settle: the food gives too little energy for its weight; raise kcalPerKg, or write "fixed"'
    const said =
      'The food has too little energy for its mass. Change it under Food, or eat the same each day.'
    return { ok: false, problem: { path: ['trip', 'meals', 'ration'], message, said } }
  }
  return {
    ok: true,
    answers: walkers.map((walker, who) =>
      answerOf(walker, {
        pass: settled.passes[who]!,
        full: fullWater.passes[who]!,
        rounds: settled.rounds,
        stillSuffices: setup => stillSuffices(who, setup),
      }),
    ),
  }
}

interface Settled {
  pass: Pass
  /** With all the water wanted. */
  full: Pass
  rounds: number
  stillSuffices: (setup: number) => boolean
}

function answerOf(walker: Walker, { pass, full, rounds, stillSuffices }: Settled): Answered {
  const { plan, route, gear, stowOf, ledger, body } = walker
  const { rates, legLitres, water } = pass
  const energy = energyOf(plan, route, pass.moments, body)
  const fullest = fullestOf(pass.moments)
  const spread = spreadOf({ plan, gear, stowOf, ledger }, pass.moments[fullest]!, pass.stocks[fullest]!)
  const { factor } = spread
  const moments = withWantedWater(pass, full).map((moment, m) => ({
    ...moment,
    fullWaterKg: full.moments[m]!.kg.total,
    bodyLitres: factor * moment.bodyLitres,
  }))
  const spareRations = spareRationsOf(plan, pass.rations)
  const packing = packingOf(plan.settings, factor)
  const parts: Parts = { plan, gear, stowOf, ledger, packing, stocks: pass.stocks, spareRations, water }
  const need = needOf({ moments, withAllWater: full.moments }, spread, parts)
  // Of a thousand packs nobody asks while they type in the gear.
  const judged = once(() => judgePacks(need, moments[fullest]!, parts, stillSuffices))
  const working: Working = {
    body,
    legs: rates.map((rate, i) => ({ effort: energy?.legs[i] ?? null, rate })),
  }
  const reckoning: Reckoning = {
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
    // Where no ration is iterated none is counted, whatever the water needs.
    rationRounds: walker.food ? rounds : 0,
    carries: water.carries,
    get packs() {
      return judged()
    },
    missing: missingFigures(plan),
    notices: [
      ...noticesOf(plan, route, { body, energy, rates, legLitres, water }),
      ...loadNotices(plan, need),
    ],
  }
  return { reckoning, working }
}

/** Works out once what is asked for, and not before. */
function once<T>(work: () => T): () => T {
  let made: { value: T } | null = null
  return () => {
    made ??= { value: work() }
    return made.value
  }
}

/** The moments as the containers have them, each with the water wanted beyond that. */
function withWantedWater({ moments, water }: Pass, full: Pass): Moment[] {
  if (full.water === water) return moments
  return moments.map((moment, m) => ({
    ...moment,
    wantedLitres: Math.max(0, full.water.aboard[m]!.litres - water.aboard[m]!.litres),
  }))
}
