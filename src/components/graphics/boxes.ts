/** A part of a drawing, px from its top left corner. */
export interface Box {
  left: number
  right: number
  top: number
  bottom: number
}

export const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
