// Which set-ups that do are worth a look: those that no other beats in everything at once.

import type { Plan } from '../plan/types'
import type { Reckoning, SetupReckoning } from './types'

/**
 * For each of `reckoning.packs`, whether it does and no other that does is as good or better in every point and
 * better in one. Points: mass of pack and liner, price, chance that it fits, margin to what it may carry. What is not
 * known counts as worst.
 */
export function frontierOf(reckoning: Reckoning, plan: Plan): boolean[] {
  const sufficing = reckoning.packs.filter(setup => setup.suffices)
  const on = notBeaten(sufficing.map(setup => pointsOf(setup, plan)))
  const set = new Set(sufficing.filter((_, i) => on[i]))
  return reckoning.packs.map(setup => set.has(setup))
}

/** All points are such that less is better. */
function pointsOf(setup: SetupReckoning, plan: Plan): number[] {
  const pack = plan.packs[setup.pack]!
  const { loadLimitKg, ratedAgainstKg, verdicts, fitChance, fitChanceWithCollar, linerKg } = setup
  return [
    pack.setups[setup.index]!.massKg + linerKg,
    pack.price ?? Number.POSITIVE_INFINITY,
    -(verdicts.includes('fits-with-collar') ? fitChanceWithCollar : fitChance),
    loadLimitKg === null ? Number.POSITIVE_INFINITY : ratedAgainstKg - loadLimitKg,
  ]
}

/** For each row of points (less is better), whether no other is nowhere worse and somewhere better. */
export function notBeaten(rows: number[][]): boolean[] {
  return rows.map(row => !rows.some(other => beats(other, row)))
}

const beats = (a: number[], b: number[]) => a.every((x, i) => x <= b[i]!) && a.some((x, i) => x < b[i]!)
