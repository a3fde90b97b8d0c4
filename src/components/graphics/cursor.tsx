// The hand on the load line: a slider over its moments. Tap, drag sideways or use the arrow keys; a touch that
// turns into scrolling the page moves nothing.

import { useRef } from 'preact/hooks'
import { momentNear } from './route-line'
import { clamp } from './scale'

/** Sideways travel after which a press is a drag, px. */
const DRAG_PX = 6

export interface CursorProps {
  xs: readonly number[]
  moment: number
  onMoment(index: number): void
  /** The moment as a sentence. */
  valueText: string
  top: number
  heightPx: number
}

export function Cursor({ xs, moment, onMoment, valueText, top, heightPx }: CursorProps) {
  const press = useRef<{ x: number; y: number; dragging: boolean } | null>(null)
  const last = xs.length - 1
  const go = (index: number) => {
    const next = clamp(index, 0, last)
    if (next !== moment) onMoment(next)
  }
  const point = (event: MouseEvent) => {
    const box = event.currentTarget as HTMLElement
    go(momentNear(event.clientX - box.getBoundingClientRect().left, xs))
  }
  const steps: Record<string, number> = {
    ArrowLeft: -1,
    ArrowDown: -1,
    ArrowRight: 1,
    ArrowUp: 1,
    PageDown: -Math.ceil(xs.length / 10),
    PageUp: Math.ceil(xs.length / 10),
    Home: -last,
    End: last,
  }
  return (
    <div
      class="cursor"
      style={{ top: `${top}px`, height: `${heightPx}px` }}
      role="slider"
      tabIndex={0}
      aria-label="Moment of the trip"
      aria-orientation="horizontal"
      aria-valuemin={1}
      aria-valuemax={xs.length}
      aria-valuenow={moment + 1}
      aria-valuetext={valueText}
      onKeyDown={event => {
        const step = event.altKey || event.ctrlKey || event.metaKey ? undefined : steps[event.key]
        if (step === undefined) return
        event.preventDefault()
        go(moment + step)
      }}
      onPointerDown={event => {
        press.current = { x: event.clientX, y: event.clientY, dragging: false }
        if (event.pointerType === 'mouse') event.currentTarget.setPointerCapture(event.pointerId)
      }}
      onPointerMove={event => {
        const from = press.current
        if (!from) return
        const across = Math.abs(event.clientX - from.x)
        if (across > DRAG_PX && across > Math.abs(event.clientY - from.y)) from.dragging = true
        if (from.dragging) point(event)
      }}
      onPointerUp={() => {
        press.current = null
      }}
      onPointerCancel={() => {
        press.current = null
      }}
      onClick={point}
    />
  )
}
