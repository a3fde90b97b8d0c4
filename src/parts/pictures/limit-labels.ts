// Where the name of a limit goes: on its own line, or under it, or, among lines too close for either, above them all.

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
