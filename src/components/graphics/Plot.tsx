// Two axes with round steps, laid out anew for every width; what is drawn between them is the caller's.

import type { ComponentChildren } from 'preact'
import { px, roundStep } from './scale'
import { useRoom } from './use-drawing'
import './charts.css'

export interface Axis {
  /** What is measured, with its unit. */
  label: string
  /** In the unit that is shown. */
  max: number
}

/** The box between the axes, in px, and where a value lies in it. */
export interface Frame {
  x: (value: number) => number
  y: (value: number) => number
  left: number
  right: number
  top: number
  bottom: number
  emPx: number
  measure: (text: string) => number
}

interface PlotProps {
  /** The picture in one sentence, for those who do not see it. */
  says: string
  x: Axis
  y: Axis
  children: (frame: Frame) => ComponentChildren
}

export function Plot({ says, x, y, children }: PlotProps) {
  const { ref, room, isMeasured } = useRoom()
  const { widthPx, emPx, measure } = room
  const height = Math.max(12 * emPx, Math.min(0.72 * widthPx, 22 * emPx))
  const top = 2.2 * emPx
  const bottom = height - 3 * emPx
  const ySteps = stepsOf(y.max, Math.max(2, Math.floor((bottom - top) / (2.4 * emPx))))
  const left = Math.max(...ySteps.map(step => measure(stepText(step)))) + 0.7 * emPx
  const right = widthPx - 0.8 * emPx
  const xSteps = stepsOf(x.max, Math.max(2, Math.floor((right - left) / (measure('000') + 2 * emPx))))
  const frame: Frame = {
    x: value => left + (value / x.max) * (right - left),
    y: value => bottom - (value / y.max) * (bottom - top),
    left,
    right,
    top,
    bottom,
    emPx,
    measure,
  }
  return (
    <div class="drawing" ref={ref}>
      <svg width={widthPx} height={px(height)} role="img" aria-label={says}>
        <text x={0} y={px(emPx * 0.7)} class="faint">
          {y.label}
        </text>
        <text x={px(right)} y={px(height - emPx * 0.6)} class="faint end">
          {x.label}
        </text>
        {ySteps.map(step => (
          <g key={step}>
            <path class="rule" d={`M${px(left)} ${px(frame.y(step))}H${px(right)}`} />
            <text x={px(left - 0.4 * emPx)} y={px(frame.y(step))} class="end">
              {stepText(step)}
            </text>
          </g>
        ))}
        {xSteps.map(step => (
          <g key={step}>
            <path class="tick" d={`M${px(frame.x(step))} ${px(bottom)}v4`} />
            <text x={px(frame.x(step))} y={px(bottom + 1.05 * emPx)} class="mid">
              {stepText(step)}
            </text>
          </g>
        ))}
        {isMeasured ? children(frame) : null}
        <path class="axis" d={`M${px(left)} ${px(top - 0.4 * emPx)}V${px(bottom)}H${px(right)}`} />
      </svg>
    </div>
  )
}

function stepsOf(max: number, pieces: number): number[] {
  const step = roundStep(max, pieces)
  return step > 0 ? Array.from({ length: Math.floor(max / step + 1e-9) + 1 }, (_, i) => i * step) : [0]
}

const stepText = (step: number) => String(Number(step.toPrecision(6)))
