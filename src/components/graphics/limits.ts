// The limits of the load line: where their level lines lie, and what is written on them.

import { cutLabel, type LimitLabel, labelLimits } from './limit-labels'
import type { LoadPicture } from './load-picture'
import { type Plot, yOf } from './route-line'
import type { Room } from './use-drawing'
import { isolate } from './words'

export interface DrawnLimit {
  text: string
  /** Null: so far over the load that only its name is drawn. */
  y: number | null
  label: LimitLabel
}

/** A limit this many times over the peak is only named, instead of squeezing the load flat. */
const FAR_OVER = 2

const isFar = (kg: number, peakKg: number): boolean => peakKg > 0 && kg > peakKg * FAR_OVER

/** The load at the top edge of the plot: room for the peak and for every limit that is not far over it. */
export const topOf = (peakKg: number, { limits }: Pick<LoadPicture, 'limits'>): number =>
  Math.max(peakKg, ...limits.filter(({ kg }) => !isFar(kg, peakKg)).map(({ kg }) => kg)) || 1

interface Around {
  plot: Plot
  peakKg: number
  linePx: number
  crest: readonly (readonly [x: number, y: number])[]
}

/** Labels may rise above the plot's top. */
export function drawLimits(
  { limits, format }: LoadPicture,
  { plot, peakKg, linePx, crest }: Around,
  { emPx, measure }: Room,
): DrawnLimit[] {
  const roomPx = Math.min(plot.right - plot.left - emPx, emPx * 22)
  const drawn = limits.map(({ kg, label, ending }) => {
    const far = isFar(kg, peakKg)
    const before = far ? '↑ ' : ''
    const after = ` ${format.kg(kg)}`
    const name = cutLabel({ label, ending }, roomPx - measure(before + after), measure)
    const text = before + isolate(name) + after
    return { text, widthPx: measure(text) + 2, y: far ? null : yOf(kg, plot) }
  })
  const { left, right, top } = plot
  const labels = labelLimits(drawn, { left: left + 4, right, top, linePx, crest })
  return drawn.map(({ text, y }, i) => ({ text, y, label: labels[i]! }))
}
