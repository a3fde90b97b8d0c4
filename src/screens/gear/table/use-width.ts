// How wide the pane around a box is inside, in rem: so many columns are shown as fit.

import { useLayoutEffect, useRef, useState } from 'preact/hooks'

/** Until it is measured. */
const FIRST_REM = 60
/** The screen grows no wider. */
const MOST_REM = 110

export function useWidth() {
  const ref = useRef<HTMLDivElement>(null)
  const [rem, setRem] = useState(FIRST_REM)
  useLayoutEffect(() => {
    const box = ref.current?.closest('.pane')
    if (!box) return
    const look = () => {
      const { paddingInlineStart, paddingInlineEnd } = getComputedStyle(box)
      const [em, from, to] = [
        getComputedStyle(document.documentElement).fontSize,
        paddingInlineStart,
        paddingInlineEnd,
      ].map(Number.parseFloat) as [number, number, number]
      setRem(Math.min(MOST_REM, (box.clientWidth - from - to) / em))
    }
    look()
    if (typeof ResizeObserver === 'undefined') return
    const watch = new ResizeObserver(look)
    watch.observe(box)
    return () => watch.disconnect()
  }, [])
  return { ref, rem }
}
