// What lies under the load line: a row of marks for each kind that occurs, then the names of stops.

import type { PictureStop, WayPicture } from './load-picture'
import { clamp } from './scale'
import { nameStops, type StopName } from './stop-names'
import type { Room } from './use-drawing'
import { stopName } from './words'

export type MarkKind = 'sure' | 'doubtful' | 'night' | 'resupply'

export interface Strip {
  stopXs: number[]
  /** `y` is the middle of the row. */
  marks: { kind: MarkKind; y: number; stops: { stop: number; x: number }[] }[]
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
  shown: WayPicture,
  { xs, top, linePx, peakStop }: { xs: readonly number[]; top: number; linePx: number; peakStop?: number },
  { widthPx, emPx, measure }: Room,
): Strip {
  const { stops, moments } = shown
  const stopXs = stops.map((_, stop) => xs[moments.findIndex(m => m.stop === stop)] ?? xs[0]!)
  const markPx = clamp(((xs.at(-1)! - xs[0]!) / stops.length) * 0.85, 4, emPx * 0.85)
  const { marks, rows } = layMarks(stops, { stopXs, markPx, top, right: widthPx })
  const bottom = top + rows * (markPx + 4)
  const weigh = (stop: number): number => {
    if (stop === 0 || stop === stops.length - 1) return 5
    if (stop === peakStop) return 4
    return (ROW.resupply(stops[stop]!) ? 2 : 0) + (ROW.night(stops[stop]!) ? 1 : 0)
  }
  const weighed = stopXs.map((x, i) => ({
    x,
    name: stopName(stops, i),
    weight: weigh(i),
  }))
  const nameWithin = (widest: number) =>
    nameStops(weighed, { left: 0, right: widthPx, widest, gap: emPx * 0.6, measure })
  const tries = [Math.max(widthPx * 0.3, emPx * 9), emPx * 7, emPx * 5].map(nameWithin)
  // Rather shorter names than none where the load is heaviest.
  const named = tries.find(names => names.some(({ stop }) => stop === peakStop)) ?? tries[0]!
  const names = named.map(name => ({ ...name, y: bottom + (name.row + 0.7) * linePx }))
  return { stopXs, marks, markPx, names, bottom: Math.max(bottom, ...names.map(name => name.y + linePx / 2)) }
}

/** All marks of a stop side by side in one row where there is room for that, else a row for each kind. */
function layMarks(
  stops: readonly PictureStop[],
  { stopXs, markPx, top, right }: { stopXs: readonly number[]; markPx: number; top: number; right: number },
): { marks: Strip['marks']; rows: number } {
  const kinds = Object.keys(ROW) as MarkKind[]
  const kindsAt = stops.map(stop => kinds.filter(kind => ROW[kind](stop)))
  const step = markPx + 2
  const from = kindsAt.map((of, i) =>
    clamp(stopXs[i]! - (of.length * step) / 2, 0, Math.max(0, right - of.length * step)),
  )
  const isClear = from.every((x, i) => {
    const before = kindsAt.slice(0, i).findLastIndex(of => of.length > 0)
    return kindsAt[i]!.length === 0 || before < 0 || x >= from[before]! + kindsAt[before]!.length * step
  })
  let rows = isClear && kindsAt.some(of => of.length > 0) ? 1 : 0
  const marks: Strip['marks'] = []
  for (const kind of kinds) {
    const having = stops.flatMap((stop, i) => (ROW[kind](stop) ? [i] : []))
    if (having.length === 0) continue
    // Sure and doubtful water share a row: no stop has both.
    if (!isClear && (kind !== 'doubtful' || marks.length === 0)) rows += 1
    const y = top + rows * (markPx + 4) - markPx / 2
    const xOf = (stop: number) =>
      isClear ? from[stop]! + (kindsAt[stop]!.indexOf(kind) + 0.5) * step : stopXs[stop]!
    marks.push({ kind, y, stops: having.map(stop => ({ stop, x: xOf(stop) })) })
  }
  return { marks, rows }
}
