// Where the name of a limit goes: on its own line, or under it, or, among lines too close for either, above them all;
// and how it is cut to the room there is.

import type { Measure } from './fit-text'
import type { LoadLimit } from './load-picture'

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

/**
 * Middles of the labels for level lines at `ys`, in their order: no label lies over a line or another label. May rise
 * above `top`: the caller makes room. A line of null (off the picture) has its label at the very top.
 */
export function labelLimits(
  ys: readonly (number | null)[],
  { linePx, top, bottom }: { linePx: number; top: number; bottom: number },
): number[] {
  const gap = 4
  const lines = ys.filter(y => y !== null)
  const placed: number[] = []
  const free = (middle: number) =>
    middle + linePx / 2 <= bottom &&
    lines.every(y => Math.abs(y - middle) >= linePx / 2 + 1) &&
    placed.every(other => Math.abs(other - middle) >= linePx - 1)
  const place = (y: number | null): number => {
    const wishes = y === null ? [top + linePx / 2] : [y - gap - linePx / 2, y + gap + linePx / 2]
    const wish = wishes.find(free)
    if (wish !== undefined) return wish
    return Math.min(...lines.map(line => line - gap), ...placed.map(other => other - linePx / 2)) - linePx / 2
  }
  const middles = ys.map(() => 0)
  const order = ys.map((_, i) => i).sort((a, b) => (ys[a] ?? -1) - (ys[b] ?? -1))
  for (const i of order) {
    middles[i] = place(ys[i]!)
    placed.push(middles[i]!)
  }
  return middles
}
