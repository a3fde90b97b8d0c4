// Proposes the stops of a trip along a track: its ends, the waypoints it passes, and places for the nights.
// Days are made even in walking hours: by the Swiss polynomial at each sample, since the blend the trip uses is only
// made for whole legs; the sum is scaled to the blend of the whole way. All distances here are judgements of ours.

import type { Pace } from '../../equations'
import { CAPS, isWithin, MOST_DAYS } from '../../plan'
import { hoursOf, kmAtShare, legBetween } from './legs'
import { soundsLikeWater } from './name'
import type { MeasuredTrack, Pass, Refused } from './types'

/** A night moves to a named waypoint up to this far along the way. */
export const SNAP_KM = 2
/** Walking hours a day from which the days are proposed until others are written. */
export const DAY_HOURS = 6
/** A waypoint this near an end of the way is that end. */
const END_KM = 0.2

const SPLIT_LIMITS = {
  days: { min: 1, max: MOST_DAYS, unit: 'days' },
  hours: { min: 0.5, max: 24, unit: 'h a day' },
} as const

export type SplitBy = { by: 'days'; days: number } | { by: 'hours'; hours: number }

export interface ProposedStop {
  /** Unique in its proposal; for a waypoint and an end the same in every proposal for its track. */
  key: string
  kind: 'start' | 'waypoint' | 'night' | 'end'
  name: string
  km: number
  nights: 0 | 1
  /** Never a source: "doubtful" only means that the name sounds like water. */
  water: 'doubtful' | 'none'
}

export interface Proposal {
  ok: true
  days: number
  /** Walking hours of an even day at the trip's pace. */
  hoursADay: number
  stops: ProposedStop[]
  /** Waypoints that found no room among the stops of a trip. */
  leftOut: number
}

/** Stops in the order of the way; refused in words for a number out of range or a way without length. */
export function proposeStops(track: MeasuredTrack, split: SplitBy, pace: Pace): Proposal | Refused {
  const limit = SPLIT_LIMITS[split.by]
  const wanted = split.by === 'days' ? split.days : split.hours
  if (!isWithin(wanted, limit) || (split.by === 'days' && !Number.isInteger(wanted)))
    return refuse(
      split.by === 'days'
        ? `Days: write a whole number from ${limit.min} to ${limit.max}.`
        : `Hours a day: write a number from ${limit.min} to ${limit.max} h.`,
    )
  if (track.km <= 0) return refuse('This track is 0 km long: choose another one.')

  const hours = hoursOf(legBetween(track, { fromKm: 0, toKm: track.km }), pace)
  const days = split.by === 'days' ? split.days : daysWithin(track, { hours, most: split.hours, pace })
  if (days > SPLIT_LIMITS.days.max)
    return refuse(
      `That makes ${days} days; a trip holds up to ${SPLIT_LIMITS.days.max}: write more hours a day.`,
    )
  const { stops, leftOut } = stopsFor(track, days)
  return { ok: true, days, hoursADay: hours / days, stops, leftOut }
}

/** The fewest even days of which none is longer: legs apart take a little longer than the same way as one. */
function daysWithin(
  track: MeasuredTrack,
  { hours, most, pace }: { hours: number; most: number; pace: Pace },
): number {
  const longest = (days: number) => {
    const ends = [0, ...nightTargets(track, days), track.km]
    const lengths = ends
      .slice(1)
      .map((toKm, i) => hoursOf(legBetween(track, { fromKm: ends[i]!, toKm }), pace))
    return Math.max(...lengths)
  }
  let days = Math.ceil(hours / most - 1e-9)
  while (days <= SPLIT_LIMITS.days.max && longest(days) > most * (1 + 1e-6)) days += 1
  return days
}

const refuse = (message: string): Refused => ({ ok: false, message })

function stopsFor(track: MeasuredTrack, days: number) {
  const { start, end, between } = endsOf(track)
  const nightAt = snapped(nightTargets(track, days), between)
  const nightPasses = new Set(nightAt.map(night => night.pass))
  const free = between.filter(pass => !nightPasses.has(pass))
  const kept = free.slice(0, CAPS.stops - (days + 1))
  const keys = new Map(track.passes.map((pass, i) => [pass, `waypoint ${i}`]))
  const ofPass = (pass: Pass, nights: 0 | 1) => stopAt(pass, { key: keys.get(pass) ?? '', nights })
  const nights = nightAt.map(({ km, pass }, i) =>
    pass ? ofPass(pass, 1) : stopAt({ name: `Camp ${i + 1}`, km }, { key: `camp ${i}`, nights: 1 }),
  )
  const middle = [...kept.map(pass => ofPass(pass, 0)), ...nights].sort((a, b) => a.km - b.km)
  const first = stopAt({ name: start?.name || 'Start', km: 0 }, { key: 'start', nights: 0 })
  const last = stopAt({ name: end?.name || 'End', km: track.km }, { key: 'end', nights: 0 })
  const stops: ProposedStop[] = [{ ...first, kind: 'start' }, ...middle, { ...last, kind: 'end' }]
  return { stops, leftOut: free.length - kept.length }
}

function stopAt(
  { name, km }: Pick<Pass, 'name' | 'km'>,
  { key, nights }: Pick<ProposedStop, 'key' | 'nights'>,
): ProposedStop {
  const water = soundsLikeWater(name) ? 'doubtful' : 'none'
  return { key, kind: nights ? 'night' : 'waypoint', name: name || 'Waypoint', km, nights, water }
}

/** The waypoints that are an end of the way, and those in between. */
function endsOf({ km, passes }: MeasuredTrack) {
  const isStart = (pass: Pass) => pass.km <= END_KM
  const isEnd = (pass: Pass) => !isStart(pass) && pass.km >= km - END_KM
  const between = passes.filter(pass => !isStart(pass) && !isEnd(pass))
  return { start: passes.find(isStart), end: passes.findLast(isEnd), between }
}

const nightTargets = (track: MeasuredTrack, days: number): number[] =>
  Array.from({ length: days - 1 }, (_, i) => kmAtShare(track, (i + 1) / days))

/** Each night at its nearest named waypoint, but not halfway to the next night, so that they keep their order. */
function snapped(targets: number[], passes: Pass[]): { km: number; pass: Pass | undefined }[] {
  return targets.map((km, i) => {
    const room = Math.min(
      km - (targets[i - 1] ?? Number.NEGATIVE_INFINITY),
      (targets[i + 1] ?? Number.POSITIVE_INFINITY) - km,
    )
    const away = (pass: Pass) => Math.abs(pass.km - km)
    const near = passes.filter(pass => pass.name && away(pass) <= SNAP_KM && away(pass) < room / 2)
    const pass = near.sort((a, b) => away(a) - away(b))[0]
    return { km: pass?.km ?? km, pass }
  })
}
