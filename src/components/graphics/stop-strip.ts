// What lies under the load line: a row of marks for each kind that occurs, then the names of stops.

import type { Moment } from '../../reckon'
import type { LoadPicture, PictureStop } from './load-picture'
import { clamp } from './scale'
import { nameStops, type StopName } from './stop-names'
import type { Room } from './use-drawing'
import { stopName } from './words'

export type MarkKind = 'sure' | 'doubtful' | 'night' | 'resupply'

export interface Strip {
  stopXs: number[]
  /** `y` is the middle of the row. */
  marks: { kind: MarkKind; y: number; stops: number[] }[]
  markPx: number
  names: (StopName & { y: number })[]
  bottom: number
}

const ROW: Record<MarkKind, (stop: PictureStop) => boolean> = {
  sure: stop => stop.water === 'sure',
  doubtful: stop => stop.water === 'doubtful',
  night: stop => stop.nights > 0,
  resupply: stop => stop.resupply,
}

export function layStrip(
  shown: LoadPicture,
  { xs, top, linePx, peak }: { xs: readonly number[]; top: number; linePx: number; peak: Moment },
  { widthPx, emPx, measure }: Room,
): Strip {
  const { stops, moments } = shown
  const stopXs = stops.map((_, stop) => xs[moments.findIndex(m => m.stop === stop)] ?? xs[0]!)
  const markPx = clamp(((xs.at(-1)! - xs[0]!) / stops.length) * 0.85, 4, emPx * 0.85)
  let bottom = top
  const marks: Strip['marks'] = []
  for (const kind of Object.keys(ROW) as MarkKind[]) {
    const having = stops.flatMap((stop, i) => (ROW[kind](stop) ? [i] : []))
    if (having.length === 0) continue
    // Sure and doubtful water share a row: no stop has both.
    if (kind !== 'doubtful' || marks.length === 0) bottom += markPx + 4
    marks.push({ kind, y: bottom - markPx / 2, stops: having })
  }
  const weigh = (stop: number): number => {
    if (stop === 0 || stop === stops.length - 1) return 5
    if (stop === peak.stop) return 4
    return (ROW.resupply(stops[stop]!) ? 2 : 0) + (ROW.night(stops[stop]!) ? 1 : 0)
  }
  const weighed = stopXs.map((x, i) => ({
    x,
    name: stopName(stops, i),
    weight: weigh(i),
  }))
  const widest = Math.max(widthPx * 0.3, emPx * 7)
  const named = nameStops(weighed, { left: 0, right: widthPx, widest, gap: emPx * 0.6, measure })
  const names = named.map(name => ({ ...name, y: bottom + (name.row + 0.7) * linePx }))
  return { stopXs, marks, markPx, names, bottom: Math.max(bottom, ...names.map(name => name.y + linePx / 2)) }
}
