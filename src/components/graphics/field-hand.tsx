// The hand on a field: pass over a mark to name it, tap it twice or click to open it, step through the marks by the
// arrow keys, drag to mark an area. A touch that turns into scrolling the page marks nothing.

import type { ReadonlySignal } from '@preact/signals'
import { useRef, useState } from 'preact/hooks'
import { nearestMark, type PlacedMark, stepMark } from './field-plan'
import type { Spot } from './mark-names'
import type { Frame } from './Plot'
import { clamp } from './scale'

/** Travel after which a press is a drag, px. */
const DRAG_PX = 8
/** How near a mark has to be to be meant: a fingertip. */
const NEAR_PX = 22

/** From and to along each axis, in its unit. */
export interface FieldSpan {
  x: readonly [number, number]
  y: readonly [number, number]
}

export interface HandProps {
  label: string
  placed: readonly PlacedMark[]
  frame: Frame
  lit: ReadonlySignal<string | null>
  /** A mark in words. */
  textOf: (key: string) => string
  onLit: (key: string | null) => void
  onOpen: (key: string) => void
  onSpan: (span: FieldSpan) => void
}

export function FieldHand(props: HandProps) {
  const { placed, frame, lit, onLit } = props
  const press = useRef<(Spot & { dragging: boolean }) | null>(null)
  const dragged = useRef(false)
  const [drag, setDrag] = useState<[Spot, Spot] | null>(null)
  const { left, right, top, bottom } = frame
  const spotOf = (event: MouseEvent): Spot => {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect()
    return { x: event.clientX - box.left, y: event.clientY - box.top }
  }
  const near = (at: Spot) => placed[nearestMark(placed, at, NEAR_PX)]?.key ?? null
  const now = placed.findIndex(({ key }) => key === lit.value)
  const inside = ({ x, y }: Spot): Spot => ({ x: clamp(x, left, right), y: clamp(y, top, bottom) })
  const end = () => {
    press.current = null
    setDrag(null)
  }
  return (
    <div
      class="field-hand"
      role="slider"
      tabIndex={0}
      aria-label={props.label}
      aria-valuemin={placed.length > 0 ? 1 : 0}
      aria-valuemax={placed.length}
      aria-valuenow={now + 1}
      aria-valuetext={now < 0 ? 'none named' : props.textOf(placed[now]!.key)}
      onKeyDown={event => {
        if (event.altKey || event.ctrlKey || event.metaKey) return
        if (event.key === 'Enter' && now >= 0) props.onOpen(placed[now]!.key)
        const step = STEPS[event.key]
        if (!step || placed.length === 0) return
        event.preventDefault()
        const by = step.by === 'end' ? placed.length : step.by === 'start' ? -placed.length : step.by
        onLit(placed[stepMark(placed, now, { ...step, by })]!.key)
      }}
      onPointerDown={event => {
        press.current = { ...spotOf(event), dragging: false }
        dragged.current = false
        if (event.pointerType === 'mouse') event.currentTarget.setPointerCapture?.(event.pointerId)
      }}
      onPointerMove={event => {
        const [at, from] = [spotOf(event), press.current]
        if (!from) {
          if (event.pointerType === 'mouse') onLit(near(at))
          return
        }
        if (Math.hypot(at.x - from.x, at.y - from.y) > DRAG_PX) from.dragging = true
        if (from.dragging) setDrag([inside(from), inside(at)])
      }}
      onPointerUp={() => {
        dragged.current = press.current?.dragging ?? false
        if (drag) props.onSpan(spanOf(drag, props))
        end()
      }}
      onPointerCancel={end}
      onPointerLeave={event => {
        if (event.pointerType === 'mouse' && !press.current) onLit(null)
      }}
      onClick={event => {
        if (dragged.current) return
        const key = near(spotOf(event))
        // Named already, as by passing over it: it is meant.
        if (key !== null && key === lit.peek()) props.onOpen(key)
        else onLit(key)
      }}
    >
      {drag ? <DragBox drag={drag} /> : null}
    </div>
  )
}

const STEPS: Readonly<Record<string, { by: number | 'start' | 'end'; along: 'x' | 'y' }>> = {
  ArrowLeft: { by: -1, along: 'x' },
  ArrowRight: { by: 1, along: 'x' },
  ArrowDown: { by: -1, along: 'y' },
  ArrowUp: { by: 1, along: 'y' },
  Home: { by: 'start', along: 'x' },
  End: { by: 'end', along: 'x' },
}

function DragBox({ drag: [a, b] }: { drag: readonly [Spot, Spot] }) {
  const [left, top] = [Math.min(a.x, b.x), Math.min(a.y, b.y)]
  const [width, height] = [Math.abs(a.x - b.x), Math.abs(a.y - b.y)]
  return (
    <div
      class="drag-box"
      style={{ left: `${left}px`, top: `${top}px`, width: `${width}px`, height: `${height}px` }}
    />
  )
}

function spanOf([a, b]: readonly [Spot, Spot], { frame }: HandProps): FieldSpan {
  const [from, to] = [frame.valueAt(a), frame.valueAt(b)]
  const ordered = (one: number, other: number) => [Math.min(one, other), Math.max(one, other)] as const
  return { x: ordered(from.x, to.x), y: ordered(from.y, to.y) }
}
