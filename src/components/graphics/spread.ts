// Labels beside lines that lie close together: kept in order, and moved apart just enough not to overlap.

export interface Wanted {
  /** Where the middle of the label would best lie, px from the top. */
  at: number
  /** Its height in px. */
  size: number
}

/**
 * Middles for the labels, in the order given (sorted by `at`). Labels that would overlap form a block that lies about
 * the mean of their wishes; no block ends below `bottom`.
 */
export function spread(wanted: readonly Wanted[], bottom: number): number[] {
  const blocks: { labels: Wanted[]; top: number; size: number }[] = []
  for (const label of wanted) {
    let block = blockOf([label], bottom)
    for (let above = blocks.at(-1); above && above.top + above.size > block.top; above = blocks.at(-1)) {
      blocks.pop()
      block = blockOf([...above.labels, ...block.labels], bottom)
    }
    blocks.push(block)
  }
  return blocks.flatMap(({ labels, top }) => {
    let next = top
    return labels.map(({ size }) => {
      next += size
      return next - size / 2
    })
  })
}

function blockOf(labels: Wanted[], bottom: number) {
  let size = 0
  let wish = 0
  for (const label of labels) {
    wish += label.at - size - label.size / 2
    size += label.size
  }
  return { labels, size, top: Math.min(wish / labels.length, bottom - size) }
}
