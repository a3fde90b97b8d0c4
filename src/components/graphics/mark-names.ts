// Where the names of marks go: beside their marks or, with a leader, a little farther off; never on another name, a mark
// or what else is taken, and never out of the frame. A name without such a place is left out.

import { type Box, overlaps } from './boxes'
import type { MarkGrid } from './mark-grid'

export interface Spot {
  x: number
  y: number
}

export interface Named extends Spot {
  widthPx: number
}

export interface NameBox extends Box {
  /** Which of those that asked. */
  index: number
  /** Another mark is as near, or its own so far, that a line has to lead there. */
  isApart: boolean
}

interface Around extends Box {
  /** The height of a name. */
  linePx: number
  /** Of a mark, from its middle. */
  radiusPx: number
}

/** To each side, right first, then above and below, then between. */
const WAYS = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
] as const

const GAP_PX = 3
/** How many names' heights a name may lie from its mark. */
const FARTHEST = 4

/** The boxes of those names that have a place; who stands first chooses first. */
export function placeNames(
  named: readonly Named[],
  marks: MarkGrid,
  { taken, ...around }: Around & { taken: readonly Box[] },
): NameBox[] {
  const { linePx, radiusPx: r, left, right, top, bottom } = around
  const placed: NameBox[] = []
  const isFree = (box: Box) =>
    box.left >= left &&
    box.right <= right &&
    box.top >= top &&
    box.bottom <= bottom &&
    !placed.some(other => overlaps(box, other)) &&
    !taken.some(other => overlaps(box, other)) &&
    !marks.meets(box)
  named.forEach((at, index) => {
    for (let step = 0; step <= FARTHEST; step++)
      for (const [dx, dy] of WAYS) {
        const far = r + GAP_PX + step * linePx
        const x = at.x + dx * far + ((dx - 1) / 2) * at.widthPx
        const y = at.y + dy * (far + linePx / 2) - linePx / 2
        const box = { left: x, right: x + at.widthPx, top: y, bottom: y + linePx }
        if (!isFree(box)) continue
        placed.push({ ...box, index, isApart: step > 0 || !isNearest(box, at, marks) })
        return
      }
  })
  return placed
}

/** Whether no other mark is as near to a box as its own. */
function isNearest(box: Box, own: Spot, marks: MarkGrid): boolean {
  const far = ({ x, y }: Spot) =>
    Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom))
  const near = far(own) + GAP_PX
  const around = {
    left: box.left - near,
    right: box.right + near,
    top: box.top - near,
    bottom: box.bottom + near,
  }
  for (const mark of marks.about(around))
    if ((mark.x !== own.x || mark.y !== own.y) && far(mark) <= near) return false
  return true
}

/** The boxes that a text along a sloping line takes: small ones, one after the other. */
export function boxesAlong(from: Spot, to: Spot, linePx: number): Box[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const pieces = Math.max(1, Math.ceil((1.5 * length) / linePx))
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const x = from.x + ((to.x - from.x) * i) / pieces
    const y = from.y + ((to.y - from.y) * i) / pieces
    return { left: x - linePx / 2, right: x + linePx / 2, top: y - linePx / 2, bottom: y + linePx / 2 }
  })
}
