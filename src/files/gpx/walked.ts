// How far along each point of a track lies. A jump from one segment to the next is not walked.

import { geodesicKm } from './distance'
import type { GpxLine } from './types'

/** Segments whose ends lie this near are one walk with a pause of the recorder; judgement of ours. */
const JOIN_KM = 0.1

export interface Walked {
  /** Kilometres from the start to each point. */
  km: Float64Array
  /** Indices of points that a gap leads to: the step before them is neither distance nor climb. */
  gapBefore: Set<number>
  gapKm: number
  longestStepKm: number
}

export function walkedAlong({ latDeg, lonDeg, segmentStarts }: GpxLine): Walked {
  const km = new Float64Array(latDeg.length)
  const starts = new Set(segmentStarts)
  const gapBefore = new Set<number>()
  let gapKm = 0
  let longestStepKm = 0
  const at = (i: number) => ({ latDeg: latDeg[i]!, lonDeg: lonDeg[i]! })
  for (let i = 1; i < km.length; i++) {
    const stepKm = geodesicKm(at(i - 1), at(i))
    const isGap = stepKm > JOIN_KM && starts.has(i)
    km[i] = km[i - 1]! + (isGap ? 0 : stepKm)
    if (isGap) {
      gapBefore.add(i)
      gapKm += stepKm
    } else longestStepKm = Math.max(longestStepKm, stepKm)
  }
  return { km, gapBefore, gapKm, longestStepKm }
}
