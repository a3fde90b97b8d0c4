// Where everything in the load line goes: one pure function from what is shown and the room there is, to px.
// Top to bottom: the peak in words, the plot with its limits, the terrain, marks of the stops, their names, a scale bar.

import { type BandLabel, bandLabels } from './band-labels'
import type { Box } from './boxes'
import { cut, type Measure, wrap } from './fit-text'
import { type DrawnLimit, drawLimits, topOf } from './limits'
import type { LoadPicture } from './load-picture'
import { hoursText } from './load-words'
import { alongOf, edgeYs, type Plot, peakOf, xsOf, yOf } from './route-line'
import { clamp, roundStep } from './scale'
import { layStrip, type Strip } from './stop-strip'
import { layTerrain, type Terrain, terrainFigures } from './terrain'
import type { Room } from './use-drawing'
import { isolate, placeWords, stopName } from './words'

export interface LoadPlan {
  widthPx: number
  heightPx: number
  linePx: number
  plot: Plot
  /** Where the part begins that answers to touch. */
  handTop: number
  xs: number[]
  /** y of every band edge at every moment. */
  ys: number[][]
  /** Moments lie so close that lines have to be thin. */
  dense: boolean
  rules: { y: number; text: string }[]
  limits: DrawnLimit[]
  peak: { x: number; y: number; textX: number; lines: string[] }
  /** Middles of the marks of warnings, and their size. */
  warnings: { x: number; y: number }[]
  markPx: number
  bands: BandLabel[]
  terrain: Terrain | null
  strip: Strip
  bar: { from: number; to: number; y: number; text: string } | null
}

/** Narrower pictures do without a scale bar, and with fewer limits. */
const LEAST_WIDE_EM = 36
const MOST_NARROW_LIMITS = 2

/** Lays the load line out in the room there is. Needs at least one moment. */
export function planLoadLine(picture: LoadPicture, room: Room): LoadPlan {
  const isNarrow = room.widthPx < room.emPx * LEAST_WIDE_EM
  const shown = isNarrow ? { ...picture, limits: picture.limits.slice(0, MOST_NARROW_LIMITS) } : picture
  const { moments } = shown
  const { widthPx, emPx, measure, measureBold } = room
  const linePx = Math.ceil(emPx * 1.3)
  const peakIndex = peakOf(moments)
  const peak = moments[peakIndex]!
  const peakKg = peak.kg.total
  const topKg = topOf(peakKg, shown)

  const rules = rulesUpTo(topKg, shown, widthPx)
  const figures = [...rules.map(({ text }) => text), ...terrainFigures(shown)]
  const gutter = Math.max(0, ...figures.map(measure)) + emPx * 0.5
  // Type so large that figures at the side would take the room of the picture: it does without them.
  const ruled = gutter < widthPx * 0.22
  const sides = { left: ruled ? gutter : 2, right: widthPx - emPx * 0.5 }
  const xs = xsOf(moments, sides)

  const lines = peakLines(shown, peakIndex, widthPx, measureBold)
  const top = lines.length * linePx + emPx * 0.6
  const heightPx = clamp(widthPx * 0.45, 150, 360)
  const peakX = xs[peakIndex]!
  const layOut = (from: number) => {
    const plot = { ...sides, top: from, bottom: from + heightPx, topKg }
    const ys = edgeYs(moments, plot)
    const crest = xs.map((x, i) => [x, ys[i]!.at(-1)!] as const)
    const warnings = warningSpots(shown, crest, emPx)
    return { plot, ys, warnings, limits: drawLimits(shown, { plot, peakKg, linePx, crest }, room) }
  }
  const wished = layOut(top)
  const highest = Math.min(top, ...wished.limits.map(({ label }) => label.top))
  const { plot, ys, warnings, limits } = highest < top ? layOut(top + (top - highest)) : wished
  // Drops stand on the highest ground: they keep clear of the load's own axis.
  const terrain = layTerrain(shown, { ...sides, top: plot.bottom + emPx * 1.1, linePx, ruled })
  const strip = layStrip(shown, { xs, top: (terrain ?? plot).bottom + 4, linePx, peakStop: peak.stop }, room)
  const half = Math.max(0, ...lines.map(measureBold)) / 2
  const bar = isNarrow ? null : scaleBar(shown, sides, strip.bottom + emPx * 0.9)
  return {
    widthPx,
    heightPx: Math.ceil(strip.bottom + (bar ? emPx * 1.6 : 4)),
    linePx,
    plot,
    handTop: Math.floor(top - emPx * 0.4),
    xs,
    ys,
    dense: (sides.right - sides.left) / moments.length < 9,
    rules: ruled ? rules.map(({ kg, text }) => ({ y: yOf(kg, plot), text })) : [],
    limits,
    peak: { x: peakX, y: yOf(peakKg, plot), textX: clamp(peakX, half, widthPx - half), lines },
    bands: bandLabels(xs, ys, {
      measure,
      emPx,
      taken: [
        ...warnings.map(({ x, y }) => boxAround(x, y, emPx)),
        ...limits.flatMap(({ y, label }): Box[] =>
          y === null ? [label] : [label, { ...sides, top: y - 1, bottom: y + 1 }],
        ),
      ],
    }),
    warnings,
    markPx: emPx,
    terrain,
    strip,
    bar,
  }
}

function rulesUpTo(topKg: number, { format }: LoadPicture, widthPx: number) {
  const unitKg = format.unitKg ?? 1
  const step = roundStep(topKg / unitKg, widthPx > 600 ? 5 : 4) * unitKg
  const rules: { kg: number; text: string }[] = []
  for (let kg = step; kg <= topKg * (1 + 1e-9); kg += step)
    rules.push({ kg, text: format.kg(kg).replace(/[.,]0+(?=\D|$)/, '') })
  return rules
}

/** In the load where it begins, clear of the knob of the cursor and of what is written above. */
const warningSpots = (
  { warnings = [] }: LoadPicture,
  crest: readonly (readonly [x: number, y: number])[],
  emPx: number,
) =>
  warnings.map(moment => {
    const [x, y] = crest[moment]!
    return { x: Math.min(x, crest.at(-1)![0] - emPx * 2) + emPx, y: y + emPx * 1.4 }
  })

const boxAround = (x: number, y: number, sizePx: number): Box => ({
  left: x - sizePx,
  right: x + sizePx,
  top: y - sizePx,
  bottom: y + sizePx,
})

function peakLines(
  { moments, stops, format, isPeakTold = true }: LoadPicture,
  peak: number,
  widthPx: number,
  measure: Measure,
): string[] {
  const moment = moments[peak]!
  if (!(moment.kg.total > 0)) return wrap('Nothing is carried yet', widthPx, measure)
  if (!isPeakTold) return []
  const say = (name: string) => `${format.kg(moment.kg.total)} ${placeWords(moment, stops, isolate(name))}`
  // A long name gives way until the sentence fits one line, but keeps a third of the width.
  const nameRoom = Math.max(widthPx - measure(say('')), widthPx / 3)
  return wrap(say(cut(stopName(stops, moment.stop), nameRoom, measure)), widthPx, measure)
}

function scaleBar(
  { moments, format }: LoadPicture,
  { left, right }: { left: number; right: number },
  y: number,
) {
  const along = alongOf(moments)
  if (along === 'stops') return null
  const unit = along === 'km' ? (format.unitKm ?? 1) : 1
  const span = moments.at(-1)![along] / unit
  const step = roundStep(span, 10)
  const text = along === 'km' ? format.km(step * unit) : hoursText(step)
  return { from: left, to: left + (step / span) * (right - left), y, text }
}
