// What the marks and lines of the chart stand for, each only where it is drawn.

import { type FieldMark, MarkPath, type MarkShape } from '../../../components/graphics'
import type { Answer } from '../../../reckon'
import { ANSWERS } from '../../../report'
import { SHAPES } from './axes'

interface KeyProps {
  marks: readonly FieldMark[]
  line: boolean
  corner: boolean
  /** Apart from any trip there are none. */
  hasAnswers: boolean
}

export function ChartKey({ marks, line, corner, hasAnswers }: KeyProps) {
  const shapes = new Set(marks.map(({ shape }) => shape))
  const drawn = (Object.keys(SHAPES) as Answer[]).filter(answer => shapes.has(SHAPES[answer]))
  const answers = hasAnswers ? drawn : []
  const words = [
    corner ? 'Shaded: enough room and load. Hatched: the room is uncertain.' : '',
    line ? 'Under the dashed line: overloaded when full.' : '',
    marks.some(({ y }) => y === null) ? 'Beside “?”: not known.' : '',
  ]
  return (
    <p class="cluster field-key hint">
      {answers.map(answer => (
        <span key={answer}>
          <Sample shape={SHAPES[answer]} /> {ANSWERS[answer].words.toLowerCase()}
        </span>
      ))}
      <span>{words.filter(Boolean).join(' ')}</span>
    </p>
  )
}

const Sample = ({ shape }: { shape: MarkShape }) => (
  <svg class="chart-key" width="14" height="14" aria-hidden="true">
    <MarkPath shape={shape} x={7} y={7} />
  </svg>
)
