// Where the entries of a long list lie, from heights that are measured where they were drawn and estimated elsewhere.

/** What a list shows, in order: rows, and headings that stand above those that follow. Keys are unique. */
export interface Entry {
  key: string
  /** The group a heading names; absent in rows. */
  heading?: string
}

/** The top of each slot, px from the list's own top, and the end of the last. A slot is an entry and the gap after it. */
export function topsOf(heights: readonly number[], gapPx: number): number[] {
  const tops = [0]
  for (const height of heights) tops.push(tops.at(-1)! + height + gapPx)
  return tops
}

/** The index of the slot at a height, px from the list's top; beyond either end the first or last. */
export function slotAt(tops: readonly number[], y: number): number {
  let low = 0
  let high = Math.max(0, tops.length - 2)
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (tops[middle]! <= y) low = middle
    else high = middle - 1
  }
  return low
}

/** The indices to draw: a stretch of the list and what is held besides, in order, each once. */
export function drawnIndices(
  { first, last }: { first: number; last: number },
  held: readonly number[],
  count: number,
): number[] {
  const drawn = new Set(held.filter(index => index >= 0 && index < count))
  for (let index = Math.max(0, first); index <= Math.min(last, count - 1); index++) drawn.add(index)
  return [...drawn].sort((a, b) => a - b)
}
