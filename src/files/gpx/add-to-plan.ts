// The stops a person kept of a proposal, as the stops of a trip: legs between those that were kept.

import type { Pace } from '../../equations'
import { type DraftLeg, type DraftStop, LIMITS } from '../../plan'
import { hoursOf, legBetween, type TrackLeg } from './legs'
import type { ProposedStop } from './split'
import type { MeasuredTrack } from './types'

export interface ChosenStop extends Omit<ProposedStop, 'nights' | 'water'> {
  kept: boolean
  nights: number
  water: 'sure' | 'doubtful' | 'none'
  resupply: boolean
}

/**
 * The stops of a proposal, all kept. What was said before of the same waypoint or end (name, water, resupply, whether
 * it is kept) still holds in a new proposal; a camp is another place there.
 */
export function asChosen(stops: readonly ProposedStop[], before: readonly ChosenStop[] = []): ChosenStop[] {
  const said = new Map(before.map(stop => [stop.key, stop]))
  return stops.map(stop => {
    const old = said.get(stop.key)
    if (!old || old.km !== stop.km) return { ...stop, kept: true, resupply: false }
    const { name, water, resupply, kept } = old
    return { ...stop, name, water, resupply, kept: kept || stop.nights > 0 }
  })
}

export interface KeptStop extends ChosenStop {
  /** The leg that leads here from the kept stop before; null at the start. */
  leg: TrackLeg | null
}

/** What is kept, with its legs: the way of a dropped stop goes into the next leg. */
export function keptStops(track: MeasuredTrack, chosen: readonly ChosenStop[]): KeptStop[] {
  const kept = chosen.filter(stop => stop.kept)
  return kept.map((stop, i) => {
    const before = kept[i - 1]
    return { ...stop, leg: before ? legBetween(track, { fromKm: before.km, toKm: stop.km }) : null }
  })
}

/** Walking hours of each day between nights, at a pace. */
export function dayHours(stops: readonly KeptStop[], pace: Pace): number[] {
  const days = [0]
  for (const { leg, nights } of stops) {
    if (leg) days.push(days.pop()! + hoursOf(leg, pace))
    if (nights > 0) days.push(0)
  }
  return days
}

/** The first leg that no trip can hold, with the limit it is over; null when all fit. */
export function overLong(
  stops: readonly KeptStop[],
): { name: string; field: 'km' | 'ascentM' | 'descentM' } | null {
  for (const { name, leg } of stops) {
    for (const field of ['km', 'ascentM', 'descentM'] as const) {
      if (leg && (leg[field] ?? 0) > LIMITS.leg[field].max) return { name, field }
    }
  }
  return null
}

/** Stops for a trip's draft. Distance to 10 m and climb to 1 m; climb the file does not tell stays empty. */
export function toDraftStops(stops: readonly KeptStop[], newId: () => string): DraftStop[] {
  return stops.map(({ name, water, nights, resupply, leg }) => ({
    id: newId(),
    ...(name.trim() && { name: name.trim() }),
    water,
    ...(nights > 0 && { nights }),
    ...(resupply && { resupply }),
    ...(leg && { leg: draftLeg(leg) }),
  }))
}

function draftLeg({ km, ascentM, descentM }: TrackLeg): DraftLeg {
  const leg: DraftLeg = { km: Math.round(km * 100) / 100 }
  if (ascentM !== null) leg.ascentM = Math.round(ascentM)
  if (descentM !== null) leg.descentM = Math.round(descentM)
  return leg
}
