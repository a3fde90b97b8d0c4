// Two axes with round steps, laid out anew for every width; what is drawn between them is the caller's.

import type { ComponentChildren } from 'preact'
import { useMemo } from 'preact/hooks'
import { px, roundStep } from './scale'
import { type Room, useRoom } from './use-drawing'
import './charts.css'

export interface Axis {
  /** What is measured, with its unit. */
  label: string
  /** Where it ends and begins, in the unit that is shown. */
  max: number
  min?: number
}

/** The box between the axes, in px, and where a value lies in it. */
export interface Frame {
  x: (value: number) => number
  y: (value: number) => number
  /** What lies at a place, in the units of the axes. */
  valueAt: (spot: { x: number; y: number }) => { x: number; y: number }
  ends: { minX: number; maxX: number; maxY: number }
  left: number
  right: number
  top: number
  bottom: number
  /** Under the axis, for what has no place above it; as high as nothing where none was asked for. */
  strip: { top: number; bottom: number }
  widthPx: number
  heightPx: number
  emPx: number
  measure: (text: string) => number
  measureBold: (text: string) => number
  steps: { x: number[]; y: number[] }
}

interface Ends {
  minX: number
  maxX: number
  maxY: number
  hasStrip: boolean
}

function frameOf({ hasStrip, ...ends }: Ends, { widthPx, emPx, measure, measureBold }: Room): Frame {
  const { minX, maxX, maxY } = ends
  const stripPx = hasStrip ? 2.4 * emPx : 0
  // Over the width of a desk lower, as more stands below it.
  const highest = widthPx > 60 * emPx ? 18 * emPx : 22 * emPx
  const heightPx = Math.max(12 * emPx, Math.min(0.72 * widthPx, highest)) + stripPx
  const top = 2.2 * emPx
  const bottom = heightPx - 3 * emPx - stripPx
  const ySteps = stepsOf(0, maxY, Math.max(2, Math.floor((bottom - top) / (2.4 * emPx))))
  const left = Math.max(...ySteps.map(step => measure(stepText(step)))) + 0.7 * emPx
  const right = widthPx - 0.8 * emPx
  const xSteps = stepsOf(minX, maxX, Math.max(2, Math.floor((right - left) / (measure('000') + 2 * emPx))))
  return {
    x: value => left + ((value - minX) / (maxX - minX)) * (right - left),
    y: value => bottom - (value / maxY) * (bottom - top),
    valueAt: spot => ({
      x: minX + ((spot.x - left) / (right - left)) * (maxX - minX),
      y: ((bottom - spot.y) / (bottom - top)) * maxY,
    }),
    ends,
    left,
    right,
    top,
    bottom,
    strip: { top: bottom, bottom: bottom + stripPx },
    widthPx,
    heightPx,
    emPx,
    measure,
    measureBold,
    steps: { x: xSteps, y: ySteps },
  }
}

/** The frame for the room there is: the same object until something changes. `ref` goes to the box of the drawing. */
export function useFrame(x: Axis, y: Axis, hasStrip = false) {
  const { ref, room, isMeasured } = useRoom()
  const minX = x.min ?? 0
  const frame = useMemo(
    () => frameOf({ minX, maxX: x.max, maxY: y.max, hasStrip }, room),
    [minX, x.max, y.max, hasStrip, room],
  )
  return { ref, frame, isMeasured }
}

interface AxesProps {
  /** The picture in one sentence, for those who do not see it. */
  says: string
  x: Axis
  y: Axis
  frame: Frame
  children: ComponentChildren
}

export function Axes({ says, x, y, frame, children }: AxesProps) {
  const { left, right, top, bottom, strip, emPx, heightPx, steps } = frame
  return (
    <svg width={frame.widthPx} height={px(heightPx)} role="img" aria-label={says}>
      <text x={0} y={px(emPx * 0.7)} class="faint">
        {y.label}
      </text>
      <text x={px(right)} y={px(heightPx - emPx * 0.6)} class="faint end">
        {x.label}
      </text>
      {steps.y.map(step => (
        <g key={step}>
          <path class="rule" d={`M${px(left)} ${px(frame.y(step))}H${px(right)}`} />
          <text x={px(left - 0.4 * emPx)} y={px(frame.y(step))} class="end">
            {stepText(step)}
          </text>
        </g>
      ))}
      {steps.x.map(step => (
        <g key={step}>
          <path class="tick" d={`M${px(frame.x(step))} ${px(strip.bottom)}v4`} />
          <text x={px(frame.x(step))} y={px(strip.bottom + 1.05 * emPx)} class="mid">
            {stepText(step)}
          </text>
        </g>
      ))}
      {children}
      <path class="axis" d={`M${px(left)} ${px(top - 0.4 * emPx)}V${px(bottom)}H${px(right)}`} />
    </svg>
  )
}

interface PlotProps extends Omit<AxesProps, 'frame' | 'children'> {
  children: (frame: Frame) => ComponentChildren
}

export function Plot({ children, ...axes }: PlotProps) {
  const { ref, frame, isMeasured } = useFrame(axes.x, axes.y)
  return (
    <div class="drawing" ref={ref}>
      <Axes {...axes} frame={frame}>
        {isMeasured ? children(frame) : null}
      </Axes>
    </div>
  )
}

function stepsOf(min: number, max: number, pieces: number): number[] {
  const step = roundStep(max - min, pieces)
  if (step === 0) return [min]
  const first = Math.ceil(min / step - 1e-9)
  return Array.from({ length: Math.floor(max / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step)
}

const stepText = (step: number) => String(Number(step.toPrecision(6)))
