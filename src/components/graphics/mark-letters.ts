// The letters marks are called by: A to Z, then AA, AB …, and where each goes so that it hides no mark and no letter.

/** The first `count` letters. */
export const letters = (count: number): string[] => Array.from({ length: count }, (_, i) => letter(i))

function letter(i: number): string {
  const last = String.fromCharCode(65 + (i % 26))
  return i < 26 ? last : letter(Math.floor(i / 26) - 1) + last
}

interface Spot {
  x: number
  y: number
}

const ASIDE = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
  [2, 0],
  [-2, 0],
  [0, -2],
  [0, 2],
] as const

/** The middle of each mark's letter, in px: beside its mark, inside the box, clear of the others while there is room. */
export function letterSpots(
  marks: readonly Spot[],
  {
    stepPx,
    left,
    right,
    top,
    bottom,
  }: { stepPx: number; left: number; right: number; top: number; bottom: number },
): Spot[] {
  const placed: Spot[] = []
  const clear = (spot: Spot, others: readonly Spot[]) =>
    others.every(
      other => Math.abs(other.x - spot.x) >= stepPx * 0.85 || Math.abs(other.y - spot.y) >= stepPx * 0.85,
    )
  const inside = ({ x, y }: Spot) => x >= left && x <= right && y >= top && y <= bottom
  for (const mark of marks) {
    const spots = ASIDE.map(([dx, dy]) => ({ x: mark.x + dx * stepPx, y: mark.y + dy * stepPx })).filter(
      inside,
    )
    placed.push(
      spots.find(spot => clear(spot, placed) && clear(spot, marks)) ??
        spots.find(spot => clear(spot, placed)) ??
        spots[0] ??
        mark,
    )
  }
  return placed
}
