// One stretch of a measured track as the leg of a trip, and the hours the trip's pace gives for it.

import { blendedHours, type Pace } from '../../equations'
import type { MeasuredTrack } from './types'

export interface TrackLeg {
  km: number
  /** Null where the file has no elevation for any of the leg. */
  ascentM: number | null
  descentM: number | null
  /** Kilometres of the leg without elevation: its climb is then more than what is counted. */
  unknownKm: number
}

/** Two places on a track, in km from its start. */
export interface Stretch {
  fromKm: number
  toKm: number
}

export function legBetween(track: MeasuredTrack, { fromKm, toKm }: Stretch): TrackLeg {
  const { ascentM, descentM, unknownKm } = track.sums
  const between = (sums: Float64Array) => sumAt(track, sums, toKm) - sumAt(track, sums, fromKm)
  const leg = { km: toKm - fromKm, unknownKm: track.elevation === 'all' ? 0 : between(unknownKm) }
  const blind = track.elevation === 'none' || (leg.km > 0 && leg.unknownKm >= leg.km - 1e-9)
  if (blind) return { ...leg, ascentM: null, descentM: null }
  return { ...leg, ascentM: between(ascentM), descentM: between(descentM) }
}

/** A sum along the track at any km, between two samples by a straight line. */
function sumAt({ stepKm, km: totalKm }: MeasuredTrack, sums: Float64Array, km: number): number {
  const last = sums.length - 1
  const before = Math.min(last - 1, Math.max(0, Math.floor(km / stepKm)))
  const beforeKm = Math.min(before * stepKm, totalKm)
  const runKm = Math.min((before + 1) * stepKm, totalKm) - beforeKm
  const share = runKm > 0 ? Math.min(1, Math.max(0, (km - beforeKm) / runKm)) : 1
  return sums[before]! + share * (sums[before + 1]! - sums[before]!)
}

/** The km by which a share (0 to 1) of the track's walking hours is over. */
export function kmAtShare({ sums: { hours }, stepKm, km }: MeasuredTrack, share: number): number {
  const wanted = share * (hours.at(-1) ?? 0)
  let low = 0
  let high = hours.length - 1
  while (low + 1 < high) {
    const middle = (low + high) >> 1
    if (hours[middle]! <= wanted) low = middle
    else high = middle
  }
  const stepHours = hours[high]! - hours[low]!
  const part = stepHours > 0 ? (wanted - hours[low]!) / stepHours : 0
  const [lowKm, highKm] = [Math.min(low * stepKm, km), Math.min(high * stepKm, km)]
  return lowKm + Math.min(1, Math.max(0, part)) * (highKm - lowKm)
}

const MOST_LEG = { km: 500, heightM: 20_000 }

/**
 * Walking hours of a stretch at a pace, by the same blend as the trip's own legs; unknown climb counts as none.
 * The blend of k times the way is k times the hours, so a way too long for one leg is taken in equal parts.
 */
export function hoursOf({ km, ascentM, descentM }: Omit<TrackLeg, 'unknownKm'>, pace: Pace): number {
  const [up, down] = [ascentM ?? 0, descentM ?? 0]
  const parts = Math.ceil(Math.max(1, km / MOST_LEG.km, up / MOST_LEG.heightM, down / MOST_LEG.heightM))
  const hours = blendedHours({ km: km / parts, ascentM: up / parts, descentM: down / parts, pace })
  if (!hours.ok) throw new RangeError(`no walking time: ${hours.field} is ${hours.got}`)
  return hours.value * parts
}
