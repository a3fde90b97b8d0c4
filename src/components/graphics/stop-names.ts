// Which stops are named under the load line: the weightiest first, on two rows, never one over another,
// never across the tick that leads to a name on the second row.

import { cut, type Measure } from './fit-text'
import { clamp } from './scale'

export interface StopName {
  stop: number
  text: string
  /** Middle of the text. */
  x: number
  /** Where the stop itself lies. */
  at: number
  row: number
}

export interface NameOptions {
  left: number
  right: number
  /** Names longer than this are cut. */
  widest: number
  gap: number
  measure: Measure
}

interface Span {
  from: number
  to: number
}

const meets = (spans: readonly Span[], from: number, to: number): boolean =>
  spans.some(span => from < span.to && span.from < to)

/** A name may end as far from its stop, and a little for what rounding does. */
const COVERED_PX = 1.02

/**
 * Names for as many stops as fit; `weight` decides who comes first, then the earlier stop. A name stands under its
 * stop, or is moved along by at most half its width; the first and the last lean outwards.
 */
export function nameStops(
  stops: readonly { x: number; name: string; weight: number }[],
  { left, right, widest, gap, measure }: NameOptions,
): StopName[] {
  const rows: Span[][] = [[], []]
  const leaders: Span[] = []
  const order = stops.map((_, i) => i).sort((a, b) => stops[b]!.weight - stops[a]!.weight || a - b)
  const named: StopName[] = []
  for (const stop of order) {
    const { x: at, name } = stops[stop]!
    // No name has room on either row where the stop itself is covered: of hundreds, few have to be measured.
    if (meets(rows[0]!, at - gap + COVERED_PX, at + gap - COVERED_PX)) continue
    const text = cut(name, Math.min(widest, right - left), measure)
    const half = measure(text) / 2
    const lean = stop === 0 ? -half : stop === stops.length - 1 ? half : 0
    const wish = clamp(at + lean, left + half, right - half)
    for (const r of [0, 1]) {
      if (r === 1 && meets(rows[0]!, at - gap, at + gap)) break
      const taken = r === 0 ? [...rows[0]!, ...leaders] : rows[1]!
      const x = [wish, ...taken.flatMap(({ from, to }) => [from - gap - half, to + gap + half])]
        .filter(x => Math.abs(x - at) <= half + 1 && x - half >= left - 0.01 && x + half <= right + 0.01)
        .sort((a, b) => Math.abs(a - wish) - Math.abs(b - wish))
        .find(x => !meets(taken, x - half - gap + 0.01, x + half + gap - 0.01))
      if (x === undefined) continue
      rows[r]!.push({ from: x - half, to: x + half })
      if (r === 1) leaders.push({ from: at - 1, to: at + 1 })
      named.push({ stop, text, x, at, row: r })
      break
    }
  }
  return named.sort((a, b) => a.stop - b.stop)
}
