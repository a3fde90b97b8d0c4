// Where the name of a limit goes: on its own line or under it, clear of the load, of the other lines and names; where
// there is no such place, above the load with a leader to its line; and how it is cut to the room there is.

import { type Box, overlaps } from './boxes'
import type { Measure } from './fit-text'
import type { LoadLimit } from './load-picture'
import { clamp } from './scale'

/** The label cut to `widthPx`: in its middle, and in its ending only where nothing before that would be left. */
export function cutLabel(
  { label, ending = '' }: Pick<LoadLimit, 'label' | 'ending'>,
  widthPx: number,
  measure: Measure,
): string {
  const name = label.slice(0, label.length - ending.length)
  const shortest = cutMiddle(name, 2)
  if (measure(shortest + ending) > widthPx) return widest(label, text => measure(text) <= widthPx)
  return widest(name, text => measure(text + ending) <= widthPx) + ending
}

/** As much of a text's beginning, and half as much of its end, as fits; never cuts a character in two. */
function widest(text: string, fitsIn: (text: string) => boolean): string {
  if (fitsIn(text)) return text
  let fits = 0
  let over = [...text].length
  while (over - fits > 1) {
    const middle = (fits + over) >> 1
    if (fitsIn(cutMiddle(text, middle))) fits = middle
    else over = middle
  }
  return cutMiddle(text, fits)
}

function cutMiddle(text: string, keep: number): string {
  const characters = [...text]
  if (keep >= characters.length) return text
  const end = Math.floor(keep / 3)
  const before = characters.slice(0, keep - end).join('')
  return `${before.trimEnd()}…${characters
    .slice(characters.length - end)
    .join('')
    .trimStart()}`
}

export interface LimitLabel extends Box {
  /** It lies away from its line. */
  isApart: boolean
}

interface Around {
  left: number
  right: number
  top: number
  linePx: number
  /** The top of the load, in order of x. */
  crest: readonly (readonly [x: number, y: number])[]
}

/** Steps in which a free place is looked for, px. */
const STEP_PX = 8
const GAP_PX = 3

/**
 * Boxes of the labels for level lines at `ys`, in their order, none of them over the load, a line or another label. May
 * rise above `top`: the caller makes room. A line of null (off the picture) has its label above the load.
 */
export function labelLimits(
  limits: readonly { y: number | null; widthPx: number }[],
  { left, right, top, linePx, crest }: Around,
): LimitLabel[] {
  const lines = limits.flatMap(({ y }) => (y === null ? [] : [{ left, right, top: y - 1, bottom: y + 1 }]))
  const placed: Box[] = []
  const labels: LimitLabel[] = []
  const order = limits.map((_, i) => i).sort((a, b) => (limits[a]!.y ?? -1) - (limits[b]!.y ?? -1))
  for (const i of order) {
    const label = place(limits[i]!)
    labels[i] = label
    placed.push(label)
  }
  return labels

  function place({ y, widthPx }: { y: number | null; widthPx: number }): LimitLabel {
    const last = Math.max(left, right - widthPx)
    const xs = Array.from({ length: Math.floor((last - left) / STEP_PX) + 1 }, (_, i) => last - i * STEP_PX)
    const tops = y === null ? [top] : [y - GAP_PX - linePx, y + GAP_PX]
    for (const at of tops)
      for (const x of [...xs, left]) {
        const box = { left: x, right: x + widthPx, top: at, bottom: at + linePx }
        const isFree = ![...lines, ...placed].some(other => overlaps(box, other))
        if (isFree && box.bottom < highest(box)) return { ...box, isApart: false }
      }
    const box = { left: last, right: last + widthPx }
    const above = [...lines, ...placed].filter(other => other.left < box.right && other.right > box.left)
    const bottom = Math.min(highest(box), ...above.map(other => other.top)) - GAP_PX
    return { ...box, top: bottom - linePx, bottom, isApart: y !== null }
  }

  /** The highest the load comes between two places. */
  function highest({ left: from, right: to }: Pick<Box, 'left' | 'right'>): number {
    let most = Number.POSITIVE_INFINITY
    crest.forEach(([x, y], i) => {
      if (x >= from && x <= to) most = Math.min(most, y)
      const next = crest[i + 1]
      if (!next || next[0] < from || x > to) return
      const slope = next[0] > x ? (next[1] - y) / (next[0] - x) : 0
      for (const edge of [clamp(from, x, next[0]), clamp(to, x, next[0])])
        most = Math.min(most, y + slope * (edge - x))
    })
    return most
  }
}
