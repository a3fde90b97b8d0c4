// The geometry of the load line: where moments lie along the trip, and the bands between their edges.
// Pure: px in, px out; y grows downwards.

import { type Band, edgesOf, LOAD_BANDS } from './bands'
import type { LoadMoment, WayPicture } from './load-picture'
import { px } from './scale'

export interface Plot {
  left: number
  right: number
  top: number
  bottom: number
  /** Load at the top edge of the plot. */
  topKg: number
}

export type Along = 'km' | 'hours' | 'stops'

/** What the trip is measured along: km, or hours where no km are known, or else its stops, evenly. */
export function alongOf(moments: WayPicture['moments']): Along {
  const last = moments.at(-1)
  if (last && last.km > 0) return 'km'
  return last && last.hours > 0 ? 'hours' : 'stops'
}

/** x of each moment. Arriving and leaving a stop share one x. */
export function xsOf(
  moments: WayPicture['moments'],
  { left, right }: Pick<Plot, 'left' | 'right'>,
): number[] {
  const along = alongOf(moments)
  const values = moments.map(m => (along === 'stops' ? m.stop : m[along]))
  const span = values.at(-1)! || 1
  return values.map(value => left + (value / span) * (right - left))
}

export const yOf = (kg: number, plot: Plot): number =>
  plot.bottom - (kg / plot.topKg) * (plot.bottom - plot.top)

/** y of every band edge at every moment: [moment][edge], lowest edge first. */
export const edgeYs = (moments: readonly LoadMoment[], plot: Plot): number[][] =>
  moments.map(m => edgesOf(m.kg).map(kg => yOf(kg, plot)))

const through = (points: (readonly [x: number, y: number])[]): string =>
  points.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')

/** Closed paths of the bands that are not empty all along, bottom to top. */
export function bandPaths(xs: readonly number[], ys: readonly number[][]): { band: Band; d: string }[] {
  return LOAD_BANDS.flatMap(({ band }, b) => {
    if (ys.every(edges => edges[b] === edges[b + 1])) return []
    const above = xs.map((x, i) => [x, ys[i]![b + 1]!] as const)
    const below = xs.map((x, i) => [x, ys[i]![b]!] as const).reverse()
    return [{ band, d: `M${through(above)}L${through(below)}Z` }]
  })
}

/** The line along the top of the load, with its vertical step at every stop. */
export const crestPath = (xs: readonly number[], ys: readonly number[][]): string =>
  `M${through(xs.map((x, i) => [x, ys[i]!.at(-1)!]))}`

/**
 * The moment nearest to x. Where several share the nearest x, the first of them left of it (arriving), the last
 * right of it (leaving).
 */
export function momentNear(x: number, xs: readonly number[]): number {
  let best = 0
  for (let i = 1; i < xs.length; i++) {
    const nearer = Math.abs(xs[i]! - x) - Math.abs(xs[best]! - x)
    if (nearer < -1e-6 || (nearer < 1e-6 && x >= xs[i]!)) best = i
  }
  return best
}

/** The earliest moment with the greatest load. */
export const peakOf = (moments: readonly LoadMoment[]): number =>
  moments.reduce((peak, m, i) => (m.kg.total > moments[peak]!.kg.total ? i : peak), 0)
