// Plane geometry of a pack's section and of what goes through it. All lengths in cm, all positive: checked by callers.
// Source: elementary-geometry (keys of data/sources.json); the perimeter of an ellipse by ramanujan-1914.

export type SectionShape = 'ellipse' | 'rectangle'

export interface Section {
  shape: SectionShape
  widthCm: number
  depthCm: number
}

/** Half of the last place of a tape: what misses by less goes in. */
const ROUNDING = 1e-9

/** Ramanujan's second approximation; a, b: the semi-axes. Off by less than 0.001 % down to b = a / 5. */
export function ellipsePerimeter(a: number, b: number): number {
  const k = ((a - b) / (a + b)) ** 2
  return Math.PI * (a + b) * (1 + (3 * k) / (10 + Math.sqrt(4 - 3 * k)))
}

export function perimeterOf({ shape, widthCm, depthCm }: Section): number {
  return shape === 'ellipse' ? ellipsePerimeter(widthCm / 2, depthCm / 2) : 2 * (widthCm + depthCm)
}

export const takesCircle = ({ widthCm, depthCm }: Section, diameterCm: number): boolean =>
  diameterCm <= Math.min(widthCm, depthCm) + ROUNDING

/**
 * How full a rectangle makes the section: 1 is just in. Its longer side lies along the section's: in an ellipse no
 * turn does better; in a rectangle one may, for a long thin piece, which is left out.
 */
function rectangleIndex({ shape, widthCm, depthCm }: Section, sideCm: number, otherCm: number): number {
  const long = Math.max(sideCm, otherCm) / Math.max(widthCm, depthCm)
  const short = Math.min(sideCm, otherCm) / Math.min(widthCm, depthCm)
  return shape === 'ellipse' ? long ** 2 + short ** 2 : Math.max(long, short)
}

export const takesRectangle = (section: Section, sideCm: number, otherCm: number): boolean =>
  rectangleIndex(section, sideCm, otherCm) <= 1 + ROUNDING

/** Longest side of a rectangle that the section takes beside its other side `besideCm`; 0 where it takes none. */
export function sideRoom({ shape, widthCm, depthCm }: Section, besideCm: number): number {
  const [major, minor] = [Math.max(widthCm, depthCm), Math.min(widthCm, depthCm)]
  const along = (axisCm: number, acrossCm: number) => {
    if (besideCm > acrossCm) return 0
    return shape === 'rectangle' ? axisCm : axisCm * Math.sqrt(1 - (besideCm / acrossCm) ** 2)
  }
  const asTheLonger = along(major, minor)
  return asTheLonger >= besideCm ? asTheLonger : Math.min(besideCm, along(minor, major))
}

/** Longest strip `thickCm` wide in a rectangle, turned as it goes in best; 0 where it is too wide for any. */
export function longestStrip(widthCm: number, heightCm: number, thickCm: number): number {
  const [long, short] = [Math.max(widthCm, heightCm), Math.min(widthCm, heightCm)]
  if (thickCm > short) return 0
  const byWidth = (angle: number) => (long - thickCm * Math.sin(angle)) / Math.cos(angle)
  const byHeight = (angle: number) => (short - thickCm * Math.cos(angle)) / Math.sin(angle)
  // The strip's bounding box fills the rectangle where both agree; whatever the angle, the lesser of them goes in.
  let [low, high] = [1e-12, Math.PI / 2 - 1e-12]
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (byWidth(middle) < byHeight(middle)) low = middle
    else high = middle
  }
  return Math.max(long, Math.min(byWidth(low), byHeight(low)))
}

/** Longest strip of the section that is `thickCm` wide. */
export function longestInSection({ shape, widthCm, depthCm }: Section, thickCm: number): number {
  if (shape === 'rectangle') return longestStrip(widthCm, depthCm, thickCm)
  const [major, minor] = [Math.max(widthCm, depthCm), Math.min(widthCm, depthCm)]
  return thickCm > minor ? 0 : major * Math.sqrt(1 - (thickCm / minor) ** 2)
}
