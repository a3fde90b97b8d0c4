// What stays above the list while it scrolls; where it is too tall for that, as with large text, it scrolls along.

import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'

/** The list keeps the rest of the window. */
const MOST_OF_WINDOW = 1 / 3

export function Stays({ children }: { children: ComponentChildren }) {
  const bar = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (typeof ResizeObserver === 'undefined' || !bar.current) return
    const size = new ResizeObserver(([change]) => {
      const tall = (change?.borderBoxSize[0]?.blockSize ?? 0) > innerHeight * MOST_OF_WINDOW
      bar.current?.classList.toggle('flows', tall)
    })
    size.observe(bar.current)
    return () => size.disconnect()
  }, [])
  return (
    <div class="stays" ref={bar}>
      {children}
    </div>
  )
}
