// Elevation at even spacing along a track, so that neither resting nor dense recording weighs more than the way.

import type { GpxLine } from './types'
import type { Walked } from './walked'

/** Distance between samples: finer than recorded height can tell apart. Judgement of ours. */
const SAMPLE_KM = 0.02
/** More samples than this do not help; longer tracks are sampled more coarsely (from 1000 km). */
const MOST_SAMPLES = 50_000
/** A missing stretch up to this long is bridged by a straight line; longer ones stay unknown. Judgement of ours. */
const BRIDGE_KM = 0.2

export interface Even {
  stepKm: number
  /** Elevation at `i × stepKm`, the last at the end of the track; NaN where it is unknown. */
  eleM: Float64Array
  /** Samples before which the track jumps. */
  breakBefore: Set<number>
}

export function evenElevation({ eleM }: GpxLine, { km, gapBefore }: Walked): Even {
  const totalKm = km.at(-1) ?? 0
  const stepKm = Math.max(SAMPLE_KM, totalKm / MOST_SAMPLES)
  const count = Math.ceil(totalKm / stepKm - 1e-9) + 1
  const even = new Float64Array(Math.max(2, count)).fill(Number.NaN)
  let before = -1
  let sample = 0
  for (let i = 0; i < km.length; i++) {
    if (Number.isNaN(eleM[i]!)) continue
    if (before >= 0 && bridged(before, i)) fill(before, i)
    before = i
  }
  return { stepKm, eleM: even, breakBefore: new Set([...gapBefore].map(i => Math.ceil(km[i]! / stepKm))) }

  function bridged(from: number, to: number): boolean {
    for (let i = from + 1; i <= to; i++) if (gapBefore.has(i)) return false
    return to === from + 1 || km[to]! - km[from]! <= BRIDGE_KM
  }

  /** Writes the samples from one known point up to and with the next, on the straight line between them. */
  function fill(from: number, to: number) {
    const runKm = km[to]! - km[from]!
    sample = Math.max(0, Math.ceil(km[from]! / stepKm - 1e-9))
    for (; sample < even.length && kmOf(sample) <= km[to]! + 1e-12; sample++) {
      const share = runKm > 0 ? Math.min(1, Math.max(0, (kmOf(sample) - km[from]!) / runKm)) : 1
      even[sample] = eleM[from]! + share * (eleM[to]! - eleM[from]!)
    }
  }

  function kmOf(index: number): number {
    return Math.min(index * stepKm, totalKm)
  }
}
