// Moving rows of a list by drag, with the pointer's events so that fingers and mice do alike, and by keys on the grip.
// A drag shows a line where the row would go and carries its name along; near the edges of the window it scrolls.

import { computed, signal } from '@preact/signals'
import type { Entry } from './slots'
import { type Spot, spotBefore, spotByKey } from './spot'

interface Drag {
  key: string
  name: string
  /** Of the pointer in the window, px from its top. */
  y: number
  /** Where the line is drawn, px from the list's top; null where the row would stay. */
  lineY: number | null
}

/** A row by its key, and what it is called. */
interface Row {
  key: string
  name: string
}

export interface Moving {
  entries: readonly Entry[]
  /** Carries the move out; the name that stands in the announcement is the row's. */
  onMove: (key: string, spot: Spot) => void
}

export type Mover = ReturnType<typeof createMover>

/** A press that moves less is a tap. */
const SLACK_PX = 5
/** This near to what covers the window's edges the list scrolls under the pointer. */
const EDGE_PX = 56
const SCROLL_PX = 14

export function createMover() {
  const drag = signal<Drag | null>(null)
  const said = signal('')
  const now: { moving: Moving | null; list: HTMLElement | null } = { moving: null, list: null }

  const rowOf = (key: string) => now.list?.querySelector<HTMLElement>(`[data-entry="${CSS.escape(key)}"]`)

  /** The entry before which the pointer is, and where that is drawn. */
  function aim(y: number): { before: number; lineY: number } | null {
    const { list, moving } = now
    if (!list || !moving) return null
    const rows = [...list.querySelectorAll<HTMLElement>(':scope > [data-entry]')]
    const top = list.getBoundingClientRect().top
    const below = rows.find(row => middleOf(row) > y)
    const key = (below ?? rows.at(-1))?.dataset.entry
    const at = moving.entries.findIndex(entry => entry.key === key)
    if (at < 0) return null
    if (below) return { before: at, lineY: below.getBoundingClientRect().top - top }
    return { before: at + 1, lineY: rows.at(-1)!.getBoundingClientRect().bottom - top }
  }

  function finish(key: string, name: string, spot: Spot | null) {
    if (!spot || !now.moving) return
    const focused = document.activeElement
    const isInRow = rowOf(key)?.contains(focused)
    now.moving.onMove(key, spot)
    const count = now.moving.entries.filter(entry => entry.heading === undefined).length
    // What is moved in the page loses the focus: it is given back once the list is drawn anew.
    requestAnimationFrame(() => {
      const row = rowOf(key)
      const back = isInRow ? (focused as HTMLElement) : row?.querySelector<HTMLElement>('.grip')
      back?.focus({ preventScroll: true })
      row?.scrollIntoView({ block: 'nearest' })
      const rows = now.moving?.entries.filter(entry => entry.heading === undefined) ?? []
      const place = rows.findIndex(entry => entry.key === key) + 1
      said.value = `${name}: place ${place} of ${count}${spot.under ? `, in ${spot.under}` : ''}.`
    })
  }

  function start(event: PointerEvent, { key, name }: Row) {
    if (event.button !== 0 || !now.moving) return
    const grip = event.currentTarget as HTMLElement
    const begun = event.clientY
    let frame = 0
    grip.setPointerCapture(event.pointerId)

    const tick = () => {
      const held = drag.peek()
      if (!held) return
      const scrolled = scrollNear(held.y)
      const aimed = aim(held.y)
      const spot = aimed && spotBefore(now.moving!.entries, key, aimed.before)
      const lineY = spot && aimed ? aimed.lineY : null
      if (lineY !== held.lineY) drag.value = { ...held, lineY }
      frame = scrolled ? requestAnimationFrame(tick) : 0
    }
    const onMove = ({ clientY: y }: PointerEvent) => {
      if (!drag.peek() && Math.abs(y - begun) < SLACK_PX) return
      if (!drag.peek()) rowOf(key)?.classList.add('lifted')
      drag.value = { key, name, y, lineY: drag.peek()?.lineY ?? null }
      frame ||= requestAnimationFrame(tick)
    }
    const end = (isDropped: boolean) => {
      const held = drag.peek()
      const aimed = isDropped && held ? aim(held.y) : null
      cancelAnimationFrame(frame)
      drag.value = null
      rowOf(key)?.classList.remove('lifted')
      grip.removeEventListener('pointermove', onMove)
      grip.removeEventListener('pointerup', onUp)
      grip.removeEventListener('pointercancel', onCancel)
      removeEventListener('keydown', onKey, true)
      if (aimed) finish(key, name, spotBefore(now.moving!.entries, key, aimed.before))
    }
    const onUp = () => end(true)
    const onCancel = () => end(false)
    const onKey = (pressed: KeyboardEvent) => {
      if (pressed.key !== 'Escape') return
      pressed.preventDefault()
      end(false)
    }
    grip.addEventListener('pointermove', onMove)
    grip.addEventListener('pointerup', onUp)
    grip.addEventListener('pointercancel', onCancel)
    addEventListener('keydown', onKey, true)
  }

  /** Moves a row as the key does on its grip; false where the key moves nothing. */
  function step({ key, name }: Row, pressed: string): boolean {
    const spot = now.moving && spotByKey(now.moving.entries, key, pressed)
    finish(key, name, spot)
    return spot !== null
  }

  return {
    drag,
    /** The key of the row that is dragged; apart, since the rest changes with every move of the pointer. */
    dragged: computed(() => drag.value?.key ?? null),
    /** The last move in words, for those who do not see it. */
    said,
    now,
    start,
    step,
    press(event: KeyboardEvent, row: Row) {
      const isPlain = !(event.altKey || event.ctrlKey || event.metaKey || event.shiftKey)
      if (isPlain && step(row, event.key)) event.preventDefault()
    },
  }
}

function middleOf(row: HTMLElement): number {
  const { top, height } = row.getBoundingClientRect()
  return top + height / 2
}

/** Scrolls the window when the pointer is near its edges, or what lies over them; whether it did. */
function scrollNear(y: number): boolean {
  const foot = document.querySelector('.foot')?.getBoundingClientRect().top ?? innerHeight
  // What stays above while one scrolls lies over the edge only once it has come there.
  const stays = document.querySelector('.stays')?.getBoundingClientRect()
  const head = stays && stays.top <= 0 ? stays.bottom : 0
  const by =
    y < Math.max(0, head) + EDGE_PX ? -SCROLL_PX : y > Math.min(innerHeight, foot) - EDGE_PX ? SCROLL_PX : 0
  if (by === 0) return false
  const before = scrollY
  scrollBy(0, by)
  return scrollY !== before
}
