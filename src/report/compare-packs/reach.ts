// How far a set-up reaches, in words: days of food for every amount of water, which limit stops it where, and whether
// this trip's stretches lie within.

import type { Plan } from '../../plan'
import { type Binding, type ReachPoint, type Reckoning, reachAt, reachCurve, stretchesOf } from '../../reckon'
import type { Formats } from '../formats'
import { type Missing, missingOf } from '../missing'

export interface StretchInWords {
  name: string
  days: number
  waterLitres: number
  within: boolean
}

export interface ReachInWords {
  points: ReachPoint[]
  /** Parts of the edge by the limit that makes them, each with a word and a sentence. */
  runs: { label: string; text: string; points: ReachPoint[] }[]
  stretches: StretchInWords[]
  /** Said where there is no edge at all. */
  nothing: string | null
}

const BINDS: Record<Binding, { short: string; long: string }> = {
  room: { short: 'room', long: 'its room' },
  rating: { short: 'rating', long: 'its rating' },
  'frameless-ceiling': { short: 'its limit', long: 'the limit without a frame' },
  'body-share': { short: 'body mass', long: 'your own share of body mass' },
}

const NOTHING = 'Not even without food and water: what is carried besides is already too much for it.'

const NO_DAY = 'no day'

export const daysText = (days: number | null): string => {
  if (days === null) return 'no limit'
  // Rounded down: a reach must not be told longer than it is.
  const tenths = Math.floor(days * 10 + 1e-6) / 10
  if (tenths === 0) return NO_DAY
  return `${tenths.toFixed(1)} days`
}

/** "5.0 days", or "at most 5.0 days" where what is missing can only make it fewer. */
export function reachText(days: number | null, missing: Missing): string {
  const isMost = days !== null && missing.litres.length + missing.mass.length > 0
  const text = daysText(days)
  return isMost && text !== NO_DAY ? `at most ${text}` : text
}

/** The reach of the set-up at `setupIndex`; null when nothing is eaten daily, so that days mean nothing. */
export function reachInWords(
  plan: Plan,
  reckoning: Reckoning,
  { setupIndex, formats }: { setupIndex: number; formats: Formats },
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
  const runs = runsOf(points).map(run => ({
    label: run[0]!.binds ? BINDS[run[0]!.binds].short : 'no limit',
    text: limitText(run, missingOf(plan), formats),
    points: run,
  }))
  return { points, runs, stretches, nothing: points.length ? null : NOTHING }
}

/** Neighbouring points stopped by the same limit are one run. */
function runsOf(points: ReachPoint[]): ReachPoint[][] {
  const runs: ReachPoint[][] = []
  points.slice(0, -1).forEach((point, i) => {
    const run = runs.at(-1)
    const next = points[i + 1]!
    if (run && run[0]!.binds === point.binds) run.push(next)
    else runs.push([point, next])
  })
  return runs.length || points.length === 0 ? runs : [points]
}

function limitText(run: ReachPoint[], missing: Missing, { water }: Formats): string {
  const [from, to] = [run[0]!, run.at(-1)!]
  const span =
    from === to
      ? `With ${water(from.waterLitres)} of water`
      : from.waterLitres > 0
        ? `From ${water(from.waterLitres)} to ${water(to.waterLitres)} of water`
        : `Up to ${water(to.waterLitres)} of water`
  if (from.binds === null) return `${span} nothing stops it.`
  const [most, least] = [daysText(from.days), daysText(to.days)]
  const days =
    most === least ? reachText(from.days, missing) : `${reachText(from.days, missing)} down to ${least}`
  return `${span}: ${days}, stopped by ${BINDS[from.binds].long}.`
}
