// A list of rows and headings of which only those near the window are drawn, so that thousands open and scroll at once.
// Short lists are drawn whole. What is open, focused or being dragged stays drawn wherever it lies.

import { type ComponentChildren, h } from 'preact'
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { DragMarks, MoveWords } from './Grip'
import type { Mover } from './mover'
import { drawnIndices, type Entry, slotAt, topsOf } from './slots'
import './long-list.css'

/** Up to here a list is drawn whole. */
const WHOLE = 60
/** Drawn beyond the window so that a flick meets rows, and how near its end may come before more are drawn. */
const BEYOND_PX = 600
const MARGIN_PX = 250
const ROW_PX = 60
const HEADING_PX = 42

interface LongListProps {
  entries: readonly Entry[]
  /** The key of the row that is open, which stays drawn. */
  open: string | null
  /** Where rows can be dragged. */
  mover?: Mover
  /** A list whose order says something, as that of stops. */
  ordered?: boolean
  /** Rows of a table instead of entries of a list: `draw` makes elements of the role `row`; `MoveWords` stand outside. */
  inGrid?: boolean
  /** Of the list, besides its own. */
  class?: string
  /**
   * Draws one entry as an `<li>` with `entryProps(key, index, of)`. `of` is the length of the list where not all of it
   * is drawn.
   */
  draw: (index: number, of: number | undefined) => ComponentChildren
}

/** What an entry's `<li>` carries: its key, and its place where the rest is not drawn. */
export const entryProps = (key: string, index: number, of: number | undefined) => ({
  'data-entry': key,
  ...(of === undefined ? {} : { 'aria-setsize': of, 'aria-posinset': index + 1 }),
})

export function LongList(props: LongListProps) {
  const { entries, open, mover, ordered = false, inGrid = false, class: extra = '', draw } = props
  const list = useRef<HTMLElement>(null)
  const count = entries.length
  const isWhole = count <= WHOLE
  const [focused, setFocused] = useState<string | null>(null)
  const { range, tops, gapPx } = useDrawn(list, entries, isWhole)
  useLayoutEffect(() => {
    if (mover) mover.now.list = list.current
  })

  const held = [open, focused, mover?.dragged.value ?? null]
  const drawn = isWhole
    ? entries.map((_, index) => index)
    : drawnIndices(
        range,
        held.map(key => (key === null ? -1 : indexOfKey(entries, key))),
        count,
      )
  const hole = (from: number, to: number) => {
    const height = tops[to]! - tops[from]! - gapPx
    return from < to
      ? h(inGrid ? 'div' : 'li', {
          key: `hole-${to}`,
          'aria-hidden': 'true',
          class: 'hole',
          style: { blockSize: `${Math.max(0, height)}px` },
        })
      : null
  }
  const onFocusIn = (event: FocusEvent) =>
    setFocused((event.target as HTMLElement).closest<HTMLElement>('[data-entry]')?.dataset.entry ?? null)
  return (
    <>
      {mover && !inGrid ? <MoveWords mover={mover} /> : null}
      {h(
        inGrid ? 'div' : ordered ? 'ol' : 'ul',
        {
          class: `rows long ${extra}`.trim(),
          ref: list,
          onFocusIn,
          ...(inGrid ? { role: 'rowgroup' } : {}),
        },
        drawn.flatMap((index, i) =>
          isWhole ? draw(index, undefined) : [hole((drawn[i - 1] ?? -1) + 1, index), draw(index, count)],
        ),
        isWhole ? null : hole((drawn.at(-1) ?? -1) + 1, count),
        mover ? <DragMarks mover={mover} as={inGrid ? 'div' : 'li'} /> : null,
      )}
    </>
  )
}

const indexOfKey = (entries: readonly Entry[], key: string) => entries.findIndex(entry => entry.key === key)

/** Which stretch of the list is drawn, and where its entries lie. */
function useDrawn(list: { current: HTMLElement | null }, entries: readonly Entry[], isWhole: boolean) {
  const heights = useRef(new Map<string, number>())
  const gap = useRef(0)
  const [version, redraw] = useState(0)
  const [range, setRange] = useState({ first: 0, last: 20 })
  const tops = useMemo(
    () => (isWhole ? [] : topsOf(heightsOf(entries, heights.current), gap.current)),
    [entries, isWhole, version],
  )
  const latest = useRef({ tops, range })
  latest.current = { tops, range }

  const look = () => {
    const { tops, range } = latest.current
    const box = list.current?.getBoundingClientRect()
    if (!box || tops.length === 0) return
    const span = (px: number) => ({
      first: slotAt(tops, -box.top - px),
      last: slotAt(tops, innerHeight - box.top + px),
    })
    const needed = span(MARGIN_PX)
    if (needed.first < range.first || needed.last > range.last) setRange(span(BEYOND_PX))
  }

  // Another list, as a search makes it, has its rows elsewhere.
  useLayoutEffect(look, [entries])

  useEffect(() => {
    if (isWhole || !list.current) return
    gap.current = Number.parseFloat(getComputedStyle(list.current).rowGap) || 0
    let widthPx = list.current.clientWidth
    const onResize = () => {
      // In another width every row may break its lines elsewhere.
      if (list.current && list.current.clientWidth !== widthPx) {
        widthPx = list.current.clientWidth
        heights.current.clear()
      }
      look()
    }
    // The window, or the pane that the list stands in.
    addEventListener('scroll', look, { passive: true, capture: true })
    addEventListener('resize', onResize)
    redraw(n => n + 1)
    return () => {
      removeEventListener('scroll', look, { capture: true })
      removeEventListener('resize', onResize)
    }
  }, [isWhole])

  const sizes = useRef<ResizeObserver | null>(null)
  useEffect(() => () => sizes.current?.disconnect(), [])
  useLayoutEffect(() => {
    if (isWhole || typeof ResizeObserver === 'undefined') return
    sizes.current ??= new ResizeObserver(changes => {
      let isNew = false
      for (const { target, borderBoxSize } of changes) {
        const key = (target as HTMLElement).dataset.entry
        const height = borderBoxSize[0]?.blockSize
        if (!key || !height || !target.isConnected || heights.current.get(key) === height) continue
        heights.current.set(key, height)
        isNew = true
      }
      if (isNew) redraw(n => n + 1)
    })
    // Observing again what is observed does nothing.
    for (const row of list.current?.children ?? [])
      if ((row as HTMLElement).dataset.entry) sizes.current.observe(row)
  })
  return { range, tops, gapPx: gap.current }
}

/** The height of every entry: its own where it was drawn, else the mean of its like. */
function heightsOf(entries: readonly Entry[], known: ReadonlyMap<string, number>): number[] {
  const sums = { row: { px: 0, n: 0 }, heading: { px: 0, n: 0 } }
  const like = (entry: Entry) => (entry.heading === undefined ? 'row' : 'heading')
  for (const entry of entries) {
    const height = known.get(entry.key)
    if (height === undefined) continue
    const sum = sums[like(entry)]
    sum.px += height
    sum.n++
  }
  const usual = {
    row: sums.row.n > 0 ? sums.row.px / sums.row.n : ROW_PX,
    heading: sums.heading.n > 0 ? sums.heading.px / sums.heading.n : HEADING_PX,
  }
  return entries.map(entry => known.get(entry.key) ?? usual[like(entry)])
}
