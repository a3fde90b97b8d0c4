// A profile small enough to draw and to keep with a trip: the highest and lowest of each stretch stay in it.

import type { ProfilePoint } from './types'

export const MOST_PROFILE_POINTS = 400

/** At most 400 samples of an even profile, in order: both ends, and each stretch's lowest and highest. */
export function simpleProfile(
  eleM: Float64Array,
  { stepKm, km }: { stepKm: number; km: number },
): ProfilePoint[] {
  const last = eleM.length - 1
  const point = (i: number): ProfilePoint => ({
    km: Math.min(i * stepKm, km),
    eleM: Number.isNaN(eleM[i]!) ? null : eleM[i]!,
  })
  if (eleM.length <= MOST_PROFILE_POINTS) return Array.from(eleM, (_, i) => point(i))
  const kept = new Set([0, last])
  const stretches = MOST_PROFILE_POINTS / 2 - 1
  for (let s = 0; s < stretches; s++) {
    const from = 1 + Math.floor((s * (last - 1)) / stretches)
    const to = 1 + Math.floor(((s + 1) * (last - 1)) / stretches)
    for (const i of extremes(eleM, from, to)) kept.add(i)
  }
  return [...kept].sort((a, b) => a - b).map(point)
}

/** The lowest and highest of a stretch; where it is unknown throughout, one unknown sample. */
function extremes(eleM: Float64Array, from: number, to: number): number[] {
  let low = -1
  let high = -1
  for (let i = from; i < to; i++) {
    if (Number.isNaN(eleM[i]!)) continue
    if (low < 0 || eleM[i]! < eleM[low]!) low = i
    if (high < 0 || eleM[i]! > eleM[high]!) high = i
  }
  return low < 0 ? [from] : [low, high]
}
