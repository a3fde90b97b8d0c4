// The way back from a pack's page to the list: its row is where it was in the window, and has the focus.

export interface Left {
  id: string
  /** Where its row was in the window, px from the top; null: it was not on the page. */
  topPx: number | null
}

/** So many frames later rows above have taken their heights. */
const SETTLING_FRAMES = 10

const rowOf = (id: string) => document.getElementById(`row-${id}`)

export const leftFor = (id: string): Left => ({ id, topPx: rowOf(id)?.getBoundingClientRect().top ?? null })

/** Goes back to the row; what it returns stops it. A row that is gone leaves the focus to the heading. */
export function backToRow({ id, topPx }: Left, { scrolls }: { scrolls: boolean }): () => void {
  const place = () => {
    const row = rowOf(id)
    if (!row || !scrolls) return
    const by = row.getBoundingClientRect().top - (topPx ?? innerHeight / 3)
    if (Math.abs(by) >= 1) scrollBy(0, by)
  }
  place()
  const heading = document.querySelector<HTMLElement>('.packs h2')
  const door = rowOf(id)?.querySelector<HTMLElement>('.door')
  if (heading && !door) heading.tabIndex = -1
  ;(door ?? heading)?.focus({ preventScroll: true })
  let frames = SETTLING_FRAMES
  let frame = 0
  const again = () => {
    place()
    frames -= 1
    if (frames > 0) frame = requestAnimationFrame(again)
  }
  frame = requestAnimationFrame(again)
  return () => cancelAnimationFrame(frame)
}
