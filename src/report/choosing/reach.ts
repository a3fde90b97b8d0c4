// How far a set-up reaches, in words: days of food for every amount of water, which limit stops it where, and whether
// this trip's stretches lie within.

import type { Plan } from '../../plan'
import { type Binding, type ReachPoint, type Reckoning, reachAt, reachCurve, stretchesOf } from '../../reckon'
import type { Shown } from '../shown'

export interface StretchInWords {
  name: string
  days: number
  waterLitres: number
  within: boolean
}

export interface ReachInWords {
  points: ReachPoint[]
  stretches: StretchInWords[]
  /** Which limit stops it between which amounts of water, a sentence each. */
  limits: string[]
}

const BINDS: Record<Binding, string> = {
  room: 'its room',
  rating: 'its rating',
  'frameless-ceiling': 'your ceiling without a frame',
  'body-share': 'your own share of body mass',
}

export const daysText = (days: number | null): string => {
  if (days === null) return 'no limit'
  // Rounded down: a reach must not be told longer than it is.
  const tenths = Math.floor(days * 10 + 1e-6) / 10
  return `${tenths.toFixed(1)} ${tenths === 1 ? 'day' : 'days'}`
}

/** The reach of the set-up at `setupIndex`; null when nothing is eaten daily, so that days mean nothing. */
export function reachInWords(
  plan: Plan,
  reckoning: Reckoning,
  { setupIndex, shown }: { setupIndex: number; shown: Shown },
): ReachInWords | null {
  const points = reachCurve(plan, reckoning, { setupIndex })
  if (!points) return null
  const stretches = stretchesOf(plan, reckoning).map(({ name, to, days, waterLitres }): StretchInWords => {
    const reach = reachAt(points, waterLitres)
    return {
      name: `${name} to ${plan.trip.stops[to]!.name}`,
      days,
      waterLitres,
      within:
        points.length > 0 &&
        waterLitres <= points.at(-1)!.waterLitres + 1e-6 &&
        (reach === null || days <= reach + 1e-6),
    }
  })
  return { points, stretches, limits: limitsOf(points, shown) }
}

/** Neighbouring points stopped by the same limit are one sentence. */
function limitsOf(points: ReachPoint[], { water }: Shown): string[] {
  if (points.length === 0)
    return ['Not even without food and water: what is carried besides is too much for it.']
  const runs: ReachPoint[][] = []
  points.slice(0, -1).forEach((point, i) => {
    const run = runs.at(-1)
    const next = points[i + 1]!
    if (run && run[0]!.binds === point.binds) run.push(next)
    else runs.push([point, next])
  })
  if (runs.length === 0) runs.push(points)
  return runs.map(run => {
    const [from, to] = [run[0]!, run.at(-1)!]
    const span =
      from === to
        ? `With ${water(from.waterLitres)} of water`
        : `From ${water(from.waterLitres)} to ${water(to.waterLitres)} of water`
    if (from.binds === null) return `${span} nothing stops it.`
    const days =
      from === to || daysText(from.days) === daysText(to.days)
        ? daysText(from.days)
        : `${daysText(from.days)} down to ${daysText(to.days)}`
    return `${span}: ${days}, stopped by ${BINDS[from.binds]}.`
  })
}
