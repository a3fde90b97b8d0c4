// What happens when another place opens: the focus goes to its heading where it would be lost with the place that
// closed, and the need is found again where it was left to measure something.

import { useLayoutEffect, useRef } from 'preact/hooks'

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

/** Keeps how far a place was scrolled when it was left by `leave`, and scrolls there when it is open again. */
export function useScrollBack(isOpen: boolean): { leave: () => void } {
  const left = useRef(0)
  useLayoutEffect(() => {
    if (!isOpen || left.current === 0) return
    const to = left.current
    left.current = 0
    scrollTo(0, to)
  }, [isOpen])
  return {
    leave: () => {
      left.current = scrollY
    },
  }
}
