// Where everything in the load line goes: one pure function from what is shown and the room there is, to px.
// Top to bottom: the peak in words, the plot with its limits, marks of the stops, their names, a scale bar.

import type { Moment } from '../../reckon'
import { type BandLabel, type Box, bandLabels } from './band-labels'
import { BANDS } from './bands'
import { cut, type Measure, wrap } from './fit-text'
import { labelLimits } from './limit-labels'
import { hoursText } from './load-words'
import { alongOf, edgeYs, type Plot, peakOf, xsOf, yOf } from './route-line'
import { clamp, roundStep } from './scale'
import type { PictureStop, Shown } from './shown'
import { nameStops, type StopName } from './stop-names'
import type { Room } from './use-drawing'
import { isolate, placeWords, stopName } from './words'

export interface LoadPlan {
  widthPx: number
  heightPx: number
  linePx: number
  plot: Plot
  xs: number[]
  ys: number[][]
  /** Moments lie so close that lines have to be thin. */
  dense: boolean
  stopXs: number[]
  rules: { y: number; text: string }[]
  /** y null: far over the load, named at the top edge only. whole: false where the name had to be cut. */
  limits: { text: string; whole: boolean; y: number | null; labelY: number; end: 'left' | 'right' }[]
  peak: { x: number; y: number; textX: number; lines: string[] }
  bands: BandLabel[]
  /** One row for each kind of mark that occurs; `size` of a mark in px. */
  marks: { kind: MarkKind; y: number; stops: number[] }[]
  markPx: number
  names: (StopName & { y: number })[]
  axisY: number
  bar: { from: number; to: number; y: number; text: string } | null
}

export type MarkKind = 'sure' | 'doubtful' | 'night' | 'resupply'

/** A limit this many times over the peak is named at the top edge instead of squeezing the load flat. */
const FAR_OVER = 2

const MARK_ROWS: { kinds: MarkKind[]; has: (stop: PictureStop, kind: MarkKind) => boolean }[] = [
  { kinds: ['sure', 'doubtful'], has: (stop, kind) => stop.water === kind },
  { kinds: ['night'], has: stop => stop.nights > 0 },
  { kinds: ['resupply'], has: stop => stop.resupply },
]

/** Lays the load line out in the room there is. Needs at least one moment. */
export function planLoadLine(shown: Shown, room: Room): LoadPlan {
  const { moments, stops, format } = shown
  const { widthPx, emPx, measure, measureBold } = room
  const linePx = Math.ceil(emPx * 1.3)
  const peakIndex = peakOf(moments)
  const peakMoment = moments[peakIndex]!
  const peakKg = peakMoment.kg.total
  const near = shown.limits.filter(limit => !(peakKg > 0) || limit.kg <= peakKg * FAR_OVER)
  const topKg = Math.max(peakKg, ...near.map(limit => limit.kg)) || 1

  const unitKg = format.unitKg ?? 1
  const ruleKg = roundStep(topKg / unitKg, widthPx > 600 ? 5 : 4) * unitKg
  const ruleKgs = Array.from({ length: Math.floor(topKg / ruleKg + 1e-9) }, (_, i) => (i + 1) * ruleKg)
  const gutter = Math.max(0, ...ruleKgs.map(kg => measure(format.kg(kg)))) + emPx * 0.5
  const ruled = gutter < widthPx * 0.22
  const sides = { left: ruled ? gutter : 2, right: widthPx - emPx * 0.5 }
  const xs = xsOf(moments, sides)

  const lines = peakLines(shown, peakIndex, widthPx, measureBold)
  const callout = lines.length * linePx + emPx * 0.6
  const tall = clamp(widthPx * 0.5, 170, 300)
  const frame = { ...sides, top: callout, bottom: callout + tall, topKg }

  // Labels of limits lie on their lines, at the end that is further from the peak's leader.
  const peakX = xs[peakIndex]!
  const end: 'left' | 'right' = peakX - sides.left > (sides.right - sides.left) / 2 ? 'left' : 'right'
  const labelRoom = (end === 'left' ? peakX - sides.left : sides.right - peakX) - emPx * 2
  const drawn = shown.limits.map(({ kg, label }) => {
    const far = !near.some(limit => limit.kg === kg)
    const value = `, ${format.kg(kg)}`
    const shortened = cut(label, labelRoom - measure(value) - (far ? emPx * 1.5 : 0), measure)
    const text = isolate(shortened) + value
    return { text: far ? `↑ ${text}` : text, whole: shortened === label, y: far ? null : yOf(kg, frame) }
  })
  const labelYs = labelLimits(
    drawn.map(limit => limit.y),
    { linePx, top: frame.top, bottom: frame.bottom - 2 },
  )
  const lift = Math.max(0, ...labelYs.map(y => frame.top - (y - linePx / 2)))
  const plot = { ...frame, top: frame.top + lift, bottom: frame.bottom + lift }
  const limits = drawn.map(({ text, whole, y }, i) => ({
    text,
    whole,
    y: y === null ? null : y + lift,
    labelY: labelYs[i]! + lift,
    end,
  }))

  const ys = edgeYs(moments, plot)
  const taken: Box[] = limits.map(({ text, labelY }) => {
    const width = measure(text) + emPx
    const left = end === 'left' ? sides.left : sides.right - width
    return { left, right: left + width, top: labelY - linePx / 2, bottom: labelY + linePx / 2 }
  })
  for (const { y } of limits)
    if (y !== null) taken.push({ left: 0, right: widthPx, top: y - 1, bottom: y + 1 })

  const stopXs = stops.map((_, stop) => xs[moments.findIndex(m => m.stop === stop)] ?? sides.left)
  const markPx = clamp(((sides.right - sides.left) / Math.max(1, stops.length)) * 0.85, 4, emPx * 0.85)
  const kinds = MARK_ROWS.filter(({ has, kinds }) => kinds.some(kind => stops.some(stop => has(stop, kind))))
  const marksTop = plot.bottom + 6
  const marks = kinds.flatMap(({ kinds, has }, row) =>
    kinds.map(kind => ({
      kind,
      y: marksTop + (row + 0.5) * (markPx + 4),
      stops: stops.flatMap((stop, i) => (has(stop, kind) ? [i] : [])),
    })),
  )
  const namesTop = marksTop + kinds.length * (markPx + 4) + 2
  const names = nameStops(
    stops.map((stop, i) => ({
      x: stopXs[i]!,
      name: stopName(stops, i),
      weight: weigh(stop, i, shown, peakMoment.stop),
    })),
    { left: 0, right: widthPx, widest: Math.max(widthPx * 0.3, emPx * 7), gap: emPx * 0.6, measure },
  ).map(name => ({ ...name, text: isolate(name.text), y: namesTop + (name.row + 0.5) * linePx }))
  const nameRows = Math.max(0, ...names.map(name => name.row + 1))
  const bar = scaleBar(shown, sides, namesTop + nameRows * linePx + emPx * 0.9)

  const half = Math.max(...lines.map(measureBold)) / 2
  return {
    widthPx,
    heightPx: Math.ceil(namesTop + nameRows * linePx + (bar ? emPx * 1.6 : 4)),
    linePx,
    plot,
    xs,
    ys,
    dense: (sides.right - sides.left) / moments.length < 9,
    stopXs,
    rules: ruled ? ruleKgs.map(kg => ({ y: yOf(kg, plot), text: format.kg(kg) })) : [],
    limits,
    peak: { x: peakX, y: yOf(peakKg, plot), textX: clamp(peakX, half, widthPx - half), lines },
    bands: bandLabels(xs, ys, { measure, emPx, taken }),
    marks,
    markPx,
    names,
    axisY: plot.bottom,
    bar,
  }
}

function peakLines(
  { moments, stops, format }: Shown,
  peak: number,
  widthPx: number,
  measure: Measure,
): string[] {
  const moment = moments[peak]!
  const name = isolate(cut(stopName(stops, moment.stop), widthPx * 0.6, measure))
  return wrap(`${format.kg(moment.kg.total)} ${placeWords(moment, stops, name)}`, widthPx, measure)
}

function weigh(stop: PictureStop, index: number, { stops }: Shown, peakStop: number): number {
  if (index === 0 || index === stops.length - 1) return 5
  if (index === peakStop) return 4
  return (stop.resupply ? 2 : 0) + (stop.nights > 0 ? 1 : 0)
}

function scaleBar({ moments, format }: Shown, { left, right }: { left: number; right: number }, y: number) {
  const along = alongOf(moments)
  if (along === 'stops') return null
  const unit = along === 'km' ? (format.unitKm ?? 1) : 1
  const span = moments.at(-1)![along] / unit
  const step = roundStep(span, 10)
  const text = along === 'km' ? format.km(step * unit) : hoursText(step)
  return { from: left, to: left + (step / span) * (right - left), y, text }
}

/** The marks and bands that occur, for the key. */
export const bandsShown = (moments: readonly Moment[]) =>
  BANDS.filter(({ band }) => moments.some(m => m.kg[band] > 0)).map(({ band }) => band)
