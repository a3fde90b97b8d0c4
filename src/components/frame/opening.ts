// What happens when another place opens: the focus goes to its heading where it would be lost with the place that
// closed, and the need is found again where it was left to measure something.

import { useLayoutEffect, useRef } from 'preact/hooks'
import { library } from '../../store'

const PATIENCE_MS = 3000

/** Focuses the heading of a place that opens, unless something there has the focus. `pane`: where places lie side by side. */
export function useHeadingFocus(place: string, pane: string): void {
  const before = useRef(place)
  useLayoutEffect(() => {
    if (before.current === place) return
    before.current = place
    const until = performance.now() + PATIENCE_MS
    let frame = 0
    // A place may have to be fetched first.
    const look = () => {
      if (document.activeElement && document.activeElement !== document.body) return
      const within = document.querySelector(`.pane[aria-label="${pane}"]`) ?? document.querySelector('main')
      const heading = within?.querySelector<HTMLElement>('h1, h2')
      if (heading) {
        heading.tabIndex = -1
        heading.focus({ preventScroll: true })
      } else if (performance.now() < until) frame = requestAnimationFrame(look)
    }
    frame = requestAnimationFrame(look)
    return () => cancelAnimationFrame(frame)
  }, [place, pane])
}

const SETTLING_FRAMES = 10

let leftAt = 0

/** Keeps how far the need is scrolled, when a field is gone to from there. */
export function keepScroll(): void {
  if (library.peek().place.screen === 'need') leftAt = scrollY
}

/** Scrolls a place that is open again to where it was left by `keepScroll`. */
export function useScrollBack(isOpen: boolean): void {
  useLayoutEffect(() => {
    if (!isOpen || leftAt === 0) return
    const to = leftAt
    leftAt = 0
    scrollTo(0, to)
    // Pictures above take their room some frames later, and the browser would move along with what is in view.
    let frames = SETTLING_FRAMES
    let frame = 0
    const again = () => {
      if (Math.round(scrollY) !== Math.round(to)) scrollTo(0, to)
      frames -= 1
      if (frames > 0) frame = requestAnimationFrame(again)
    }
    frame = requestAnimationFrame(again)
    return () => cancelAnimationFrame(frame)
  }, [isOpen])
}
