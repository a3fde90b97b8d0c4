// Names written into the bands of the load line, wherever a band is thick enough for as long as its name is wide.

import { type Band, LOAD_BANDS } from './bands'
import { type Box, overlaps } from './boxes'
import type { Measure } from './fit-text'

export interface BandLabel {
  band: Band
  word: string
  x: number
  /** Middle of the text. */
  y: number
}

/** At most one label a band, in its roomiest place; a band without room, or only behind `taken`, has none. */
export function bandLabels(
  xs: readonly number[],
  ys: readonly number[][],
  { measure, emPx, taken }: { measure: Measure; emPx: number; taken: readonly Box[] },
): BandLabel[] {
  const height = emPx * 1.3
  return LOAD_BANDS.flatMap(({ band, word }, b) => {
    const width = measure(word) + emPx
    let best: BandLabel | undefined
    let most = height
    for (let from = 0; from < xs.length; from++) {
      let low = Number.POSITIVE_INFINITY
      let high = 0
      for (let to = from; to < xs.length; to++) {
        low = Math.min(low, ys[to]![b]!)
        high = Math.max(high, ys[to]![b + 1]!)
        if (low - high < most) break
        if (xs[to]! - xs[from]! < width) continue
        const x = (xs[from]! + xs[to]!) / 2
        const y = (low + high) / 2
        const box = { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 }
        if (taken.some(other => overlaps(box, other))) continue
        best = { band, word, x, y }
        most = low - high + 0.01
      }
    }
    return best ? [best] : []
  })
}
