// The field of packs laid out: where each mark lies, the few paths that draw them all, the line of full packs with its
// words, and which mark is meant by a touch or a key.

import { type Box, overlaps } from './boxes'
import type { MarkGrid } from './mark-grid'
import { boxesAlong, type Spot } from './mark-names'
import type { Frame } from './Plot'
import type { MarkShape } from './plot-marks'
import { clamp, px } from './scale'

/** A thing between two measures, in the units of the axes; y null: not known, it lies in the strip below. */
export interface FieldMark {
  key: string
  shape: MarkShape
  x: number
  y: number | null
  /** Drawn struck through. */
  isAside?: boolean
}

export interface PlacedMark extends Spot {
  key: string
  shape: MarkShape
  isAside: boolean
}

/** Many marks are drawn smaller, so that they still can be told apart. */
export const radiusFor = (count: number): number => (count <= 100 ? 5 : count <= 400 ? 4 : 3)

/** The strip of what is not known, in heights of text, and its rows of marks. */
const STRIP_ROWS = 3

/** Each mark in px, within the frame; in the strip side by side in rows, so that they cover each other less. */
export function placeMarks(
  marks: readonly FieldMark[],
  { x, y, left, right, top, bottom }: Pick<Frame, 'x' | 'y' | 'left' | 'right' | 'top' | 'bottom'>,
  strip: { top: number; bottom: number },
): PlacedMark[] {
  let row = 0
  return marks.map(({ key, shape, x: atX, y: atY, isAside = false }) => {
    const across = clamp(x(atX), left, right)
    if (atY !== null) return { key, shape, isAside, x: across, y: clamp(y(atY), top, bottom) }
    row = (row + 1) % STRIP_ROWS
    const down = strip.top + ((row + 0.5) / STRIP_ROWS) * (strip.bottom - strip.top)
    return { key, shape, isAside, x: across, y: down }
  })
}

/** Those drawn first lie undermost: what does lies on top. */
export const LAYERS: readonly MarkShape[] = ['cross', 'ring', 'half-dot', 'dot']

/** Of more marks than this each lies at a whole px: what is written of a thousand fractions takes its time. */
const MOST_FINE = 400
const roundingFor = (count: number): ((value: number) => number) => (count > MOST_FINE ? Math.round : px)

const circleOf = (r: number) => `m-${r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0-${2 * r} 0z`
const crossOf = (r: number) => `m-${r}-${r}l${2 * r} ${2 * r}m0-${2 * r}l-${2 * r} ${2 * r}`
const halfOf = (r: number) => `m0-${r}a${r} ${r} 0 0 0 0 ${2 * r}z`

/** What is drawn at the middle of each mark of a shape. A dot’s light edge, which parts it from others, takes as much away. */
const DRAWN: Readonly<Record<MarkShape, (r: number) => { outline: string; full: string }>> = {
  cross: r => ({ outline: crossOf(r), full: '' }),
  ring: r => ({ outline: circleOf(r), full: '' }),
  'half-dot': r => ({ outline: circleOf(r), full: halfOf(r) }),
  dot: r => ({ outline: '', full: circleOf(r + 0.5) }),
}

/** One path for all marks of a shape: `outline` is drawn with a stroke and a light fill, `full` is filled with ink. */
export function shapePaths(marks: readonly Spot[], shape: MarkShape, r: number) {
  const round = roundingFor(marks.length)
  const { outline, full } = DRAWN[shape](r)
  const starts = marks.map(({ x, y }) => `M${round(x)} ${round(y)}`)
  const all = (drawn: string) => (drawn ? starts.map(start => start + drawn).join('') : '')
  return { outline: all(outline), full: all(full) }
}

/** A stroke through each mark that is set aside. */
export const strikes = (marks: readonly PlacedMark[], r: number): string =>
  marks
    .filter(mark => mark.isAside)
    .map(({ x, y }) => `M${px(x - 2 * r)} ${px(y)}h${4 * r}`)
    .join('')

/** The mark nearest to a point, no farther than `withinPx`; -1: there is none. */
export function nearestMark(marks: readonly Spot[], at: Spot, withinPx: number): number {
  let best = -1
  let least = withinPx
  marks.forEach((mark, i) => {
    const far = Math.hypot(mark.x - at.x, mark.y - at.y)
    if (far <= least) [best, least] = [i, far]
  })
  return best
}

/** The order in which keys step through the marks: sideways from left to right, up and down from the bottom. */
export function stepMark(
  marks: readonly Spot[],
  from: number,
  { by, along }: { by: number; along: 'x' | 'y' },
) {
  const way = along === 'x' ? 1 : -1
  const order = marks.map((_, i) => i).sort((a, b) => way * (marks[a]![along] - marks[b]![along]) || a - b)
  const at = order.indexOf(from)
  if (at < 0) return order[by > 0 ? 0 : order.length - 1] ?? -1
  return order[clamp(at + by, 0, order.length - 1)]!
}

export interface SlopeLine {
  from: Spot
  to: Spot
  /** Where its words are centred, and how steep they stand, in degrees; null where there is no room. */
  words: (Spot & { degrees: number }) | null
}

/** How near to the line no name may come, px. */
const LINE_PX = 6

/** How many marks of a radius lie under a text, wholly or in part. */
export const coveredBy = (boxes: readonly Box[], marks: readonly Spot[], r: number): number =>
  marks.filter(({ x, y }) =>
    boxes.some(box => x + r > box.left && x - r < box.right && y + r > box.top && y - r < box.bottom),
  ).length

/** Where along a line its words may stand: the middle of them, as a part of its length. */
const PLACES = [0.75, 0.6, 0.5, 0.4, 0.85, 0.3, 0.2, 0.7, 0.65, 0.55, 0.45, 0.35, 0.8, 0.9]

interface Slope {
  base: number
  slope: number
}

/** The ends of the line y = base + slope · x within the frame; null where it does not cross it. */
function endsOf({ base, slope }: Slope, frame: Frame): { from: Spot; to: Spot } | null {
  const { minX, maxX, maxY } = frame.ends
  if (base + slope * minX >= maxY || !(slope > 0)) return null
  const at = (x: number): Spot => ({ x: frame.x(x), y: frame.y(base + slope * x) })
  return { from: at(minX), to: at(Math.min(maxX, (maxY - base) / slope)) }
}

/** What the line itself takes of the frame. */
export function slopeBoxes(line: Slope, frame: Frame): Box[] {
  const ends = endsOf(line, frame)
  return ends ? boxesAlong(ends.from, ends.to, LINE_PX) : []
}

/** The line, with its words under or over it where they cover nothing. */
export function slopeLine(
  { text, ...line }: Slope & { text: string },
  frame: Frame,
  { marks, taken }: { marks: MarkGrid; taken: readonly Box[] },
): SlopeLine | null {
  const { emPx, measure } = frame
  const ends = endsOf(line, frame)
  if (!ends) return null
  const { from, to } = ends
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const half = measure(text) / 2
  const radians = Math.atan2(to.y - from.y, to.x - from.x)
  const along = { x: Math.cos(radians), y: Math.sin(radians) }
  for (const side of [0.75 * emPx, -0.75 * emPx])
    for (const part of PLACES) {
      const mid = part * length
      if (mid - half < emPx || mid + half > length - emPx) continue
      const centre = {
        x: from.x + mid * along.x - side * along.y,
        y: from.y + mid * along.y + side * along.x,
      }
      const end = (way: number) => ({
        x: centre.x + way * half * along.x,
        y: centre.y + way * half * along.y,
      })
      const boxes = boxesAlong(end(-1), end(1), emPx)
      const isInside = boxes.every(box => box.bottom <= frame.bottom && box.top >= frame.top)
      if (!isInside || boxes.some(box => taken.some(other => overlaps(box, other)))) continue
      if (boxes.some(marks.meets)) continue
      return { from, to, words: { ...centre, degrees: (radians * 180) / Math.PI } }
    }
  return { from, to, words: null }
}
