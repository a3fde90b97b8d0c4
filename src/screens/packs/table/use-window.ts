// Which rows of a table in a box that scrolls are near its window: only those are drawn.

import type { RefObject } from 'preact'
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { drawnIndices } from '../../../components/long-list'

/** Drawn beyond either end, so that scrolling meets rows. */
const BEYOND = 6
/** Before anything is measured. */
const FIRST = { rowPx: 40, headPx: 40, heightPx: 480 }

export interface Drawn {
  index: number
  /** The height of what is left out before it, px. */
  gapPx: number
}

/** `focused`: a row that stays drawn wherever it lies. Rows are `tr[data-row]`, all of one height. */
export function useWindow(box: RefObject<HTMLElement | null>, count: number, focused: number) {
  const [sizes, setSizes] = useState(FIRST)
  const [first, setFirst] = useState(0)
  const latest = useRef(sizes)
  latest.current = sizes
  const look = () => {
    const { rowPx } = latest.current
    const top = Math.floor((box.current?.scrollTop ?? 0) / rowPx)
    setFirst(before => (Math.abs(before - top) >= BEYOND / 2 || top === 0 ? top : before))
  }
  useLayoutEffect(() => {
    const element = box.current
    if (!element) return
    const measure = () => {
      const heightOf = (part: string, otherwise: number) =>
        element.querySelector(part)?.getBoundingClientRect().height || otherwise
      const next = {
        rowPx: heightOf('tr[data-row]', FIRST.rowPx),
        headPx: heightOf('thead', FIRST.headPx),
        heightPx: element.clientHeight || FIRST.heightPx,
      }
      const was = latest.current
      const isSame = was.rowPx === next.rowPx && was.headPx === next.headPx && was.heightPx === next.heightPx
      if (!isSame) setSizes(next)
    }
    measure()
    element.addEventListener('scroll', look, { passive: true })
    const watch = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(measure)
    watch?.observe(element)
    return () => {
      element.removeEventListener('scroll', look)
      watch?.disconnect()
    }
  }, [count > 0])

  const shown = Math.ceil(sizes.heightPx / sizes.rowPx)
  const drawn = useMemo(() => {
    const range = { first: first - BEYOND, last: first + shown + BEYOND }
    const indices = drawnIndices(range, [focused], count)
    return indices.map(
      (index, i): Drawn => ({ index, gapPx: (index - (indices[i - 1] ?? -1) - 1) * sizes.rowPx }),
    )
  }, [first, shown, focused, count, sizes.rowPx])
  const afterPx = (count - 1 - (drawn.at(-1)?.index ?? count - 1)) * sizes.rowPx

  /** Scrolls no farther than it takes to have a row in view, under the head. */
  const show = (index: number) => {
    const element = box.current
    if (!element) return
    const { rowPx, headPx, heightPx } = latest.current
    const top = index * rowPx
    const room = heightPx - headPx - rowPx
    if (element.scrollTop > top) element.scrollTop = top
    else if (element.scrollTop < top - room) element.scrollTop = top - room
  }
  return { drawn, afterPx, show, pageRows: Math.max(1, shown - 3) }
}
