// What the command line tells of each set-up beyond the Reckoning: what would make it do, how far it reaches with
// how much water, and whether another beats it in everything.

import type { Plan } from '../plan'
import {
  frontierOf,
  type ReachPoint,
  type Reckoning,
  type Remedy,
  reachCurve,
  remediesFor,
  type SetupReckoning,
  type Shortfall,
  shortfallOf,
} from '../reckon'

export interface PackInFull extends SetupReckoning {
  /** Null: not looked for, the plan is too large for that. Empty where the set-up fits nine times in ten, or where nothing helps. */
  remedies: Remedy[] | null
  /** Null: the set-up fits nine times in ten. */
  shortfall: Shortfall | null
  /** Null: nothing is eaten daily, or not looked for. */
  reach: ReachPoint[] | null
  onFrontier: boolean
}

/** Each set-up looked into costs some dozens of reckonings of the whole plan. */
const MOST_SETUPS = 30
const MOST_ENTRIES = 20_000

export function lookedInto(plan: Plan, reckoning: Reckoning): PackInFull[] {
  const onFrontier = frontierOf(reckoning, plan)
  const entries = plan.gear.length * plan.trip.stops.length
  const large = reckoning.packs.length > MOST_SETUPS || entries > MOST_ENTRIES
  return reckoning.packs.map((setup, setupIndex) => ({
    ...setup,
    remedies: large ? null : remediesFor(plan, reckoning, setupIndex),
    shortfall: shortfallOf(plan, reckoning, setupIndex),
    reach: large ? null : reachCurve(plan, reckoning, { setupIndex }),
    onFrontier: onFrontier[setupIndex]!,
  }))
}

export function inFull(plan: Plan, reckoning: Reckoning): Reckoning & { packs: PackInFull[] } {
  return { ...reckoning, packs: lookedInto(plan, reckoning) }
}
