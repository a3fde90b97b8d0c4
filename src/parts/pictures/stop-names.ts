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

/** Names for as many stops as fit; `weight` decides who comes first, then the earlier stop. */
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
    const text = cut(name, Math.min(widest, right - left), measure)
    const half = measure(text) / 2
    const x = clamp(at, left + half, right - half)
    const from = x - half - gap
    const to = x + half + gap
    const row = rows.findIndex((spans, r) => {
      if (meets(spans, from, to)) return false
      return r === 0 ? !meets(leaders, from, to) : !meets(rows[0]!, at - gap, at + gap)
    })
    if (row < 0) continue
    rows[row]!.push({ from: x - half, to: x + half })
    if (row > 0) leaders.push({ from: at - 1, to: at + 1 })
    named.push({ stop, text, x, at, row })
  }
  return named.sort((a, b) => a.stop - b.stop)
}
