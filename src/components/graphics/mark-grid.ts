// Marks by the squares they lie in, so that whether a box meets one of a thousand is asked of a few.

import type { Box } from './boxes'

interface Spot {
  x: number
  y: number
}

/** The side of a square, px: about as high as a name and its surroundings. */
const SIDE_PX = 24

/** Marks of one radius. */
export interface MarkGrid {
  /** Whether a mark lies under a box, wholly or in part. */
  meets: (box: Box) => boolean
  /** Those whose middles lie in a box, with some beyond its edges. */
  about: (box: Box) => Iterable<Spot>
}

export function markGrid(marks: readonly Spot[], radiusPx: number): MarkGrid {
  const columns = new Map<number, Map<number, Spot[]>>()
  const squareOf = (px: number) => Math.floor(px / SIDE_PX)
  for (const mark of marks) {
    const [column, row] = [squareOf(mark.x), squareOf(mark.y)]
    const rows = columns.get(column) ?? new Map<number, Spot[]>()
    const those = rows.get(row)
    if (those) those.push(mark)
    else rows.set(row, [mark])
    columns.set(column, rows)
  }
  function* about({ left, right, top, bottom }: Box) {
    for (let column = squareOf(left); column <= squareOf(right); column++) {
      const rows = columns.get(column)
      if (rows) for (let row = squareOf(top); row <= squareOf(bottom); row++) yield* rows.get(row) ?? []
    }
  }
  const meets = (box: Box) => {
    const r = radiusPx
    const wide = { left: box.left - r, right: box.right + r, top: box.top - r, bottom: box.bottom + r }
    for (const { x, y } of about(wide))
      if (x > wide.left && x < wide.right && y > wide.top && y < wide.bottom) return true
    return false
  }
  return { meets, about }
}
