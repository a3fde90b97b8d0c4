// The limits of the load line: where their level lines lie, and what is written on them.

import { cutLabel, labelLimits } from './limit-labels'
import type { LoadPicture } from './load-picture'
import { type Plot, yOf } from './route-line'
import type { Room } from './use-drawing'
import { isolate } from './words'

export interface DrawnLimit {
  text: string
  /** Null: so far over the load that it is named at the top edge only. */
  y: number | null
  labelY: number
  widthPx: number
  end: 'left' | 'right'
}

/** A limit this many times over the peak is named at the top edge instead of squeezing the load flat. */
const FAR_OVER = 2

const isFar = (kg: number, peakKg: number): boolean => peakKg > 0 && kg > peakKg * FAR_OVER

/** The load at the top edge of the plot: room for the peak and for every limit that is not far over it. */
export const topOf = (peakKg: number, { limits }: Pick<LoadPicture, 'limits'>): number =>
  Math.max(peakKg, ...limits.filter(({ kg }) => !isFar(kg, peakKg)).map(({ kg }) => kg)) || 1

/** Labels lie at the end that is further from the peak's leader. May rise above the plot's top. */
export function drawLimits(
  { limits, format }: LoadPicture,
  { plot, peakX, peakKg, linePx }: { plot: Plot; peakX: number; peakKg: number; linePx: number },
  { emPx, measure }: Room,
): DrawnLimit[] {
  const end = peakX - plot.left > plot.right - peakX ? 'left' : 'right'
  const roomPx = Math.max(peakX - plot.left, plot.right - peakX) - emPx * 2
  const drawn = limits.map(({ kg, label, ending }) => {
    const far = isFar(kg, peakKg)
    const before = far ? '↑ ' : ''
    const after = `, ${format.kg(kg)}`
    const name = cutLabel({ label, ending }, roomPx - measure(before + after), measure)
    const text = before + isolate(name) + after
    return { text, widthPx: measure(text), y: far ? null : yOf(kg, plot) }
  })
  const middles = labelLimits(
    drawn.map(({ y }) => y),
    { linePx, top: plot.top, bottom: plot.bottom - 2 },
  )
  return drawn.map((limit, i) => ({ ...limit, labelY: middles[i]!, end }))
}
