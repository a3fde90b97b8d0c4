// Marks on a plot: told apart by shape and letter, with a key that says in words what each is.

import { usePortions } from '../long-list'
import { letterSpots } from './mark-letters'
import type { Frame } from './Plot'
import { px } from './scale'

export type MarkShape = 'dot' | 'half-dot' | 'ring' | 'cross'

export interface Mark {
  letter: string
  /** What the letter stands for; a name, kept apart from the words after it. */
  name: string
  /** What the shape stands for, in words. */
  words: string
  shape: MarkShape
  /** In the units of the axes; null: not on the picture, as `words` say. */
  at: { x: number; y: number } | null
}

const R = 5

export function Marks({ marks, frame }: { marks: readonly Mark[]; frame: Frame }) {
  const shown = marks.flatMap(mark =>
    mark.at ? [{ ...mark, x: frame.x(mark.at.x), y: frame.y(mark.at.y) }] : [],
  )
  const { left, right, top, bottom, emPx } = frame
  const half = 0.5 * emPx
  const spots = letterSpots(shown, {
    stepPx: 1.05 * emPx,
    left: left + half,
    right: right - half,
    top: top - half,
    bottom: bottom - half,
  })
  return (
    <>
      {shown.map(({ letter, shape, x, y }) => (
        <MarkPath key={letter} shape={shape} x={x} y={y} />
      ))}
      {shown.map(({ letter }, i) => (
        <text key={letter} class="mid strong halo" x={px(spots[i]!.x)} y={px(spots[i]!.y)}>
          {letter}
        </text>
      ))}
    </>
  )
}

/** One mark, as in a key. */
export function MarkPath({ shape, x, y }: { shape: MarkShape; x: number; y: number }) {
  const [cx, cy] = [px(x), px(y)]
  if (shape === 'dot') return <circle class="mark full" cx={cx} cy={cy} r={R} />
  if (shape === 'ring') return <circle class="mark" cx={cx} cy={cy} r={R} />
  if (shape === 'half-dot')
    return (
      <>
        <circle class="mark" cx={cx} cy={cy} r={R} />
        <path class="mark full" d={`M${cx} ${cy - R}a${R} ${R} 0 0 0 0 ${2 * R}z`} />
      </>
    )
  return <path class="mark" d={`M${cx - R} ${cy - R}l${2 * R} ${2 * R}m0-${2 * R}l-${2 * R} ${2 * R}`} />
}

export function Key({ marks }: { marks: readonly Mark[] }) {
  const { drawn, more } = usePortions(marks.length, 'marks')
  return (
    <>
      <ul class="chart-key">
        {marks.slice(0, drawn).map(({ letter, name, words, shape }) => (
          <li key={letter}>
            <svg width="14" height="14" aria-hidden="true">
              <MarkPath shape={shape} x={7} y={7} />
            </svg>
            <span>
              <strong>{letter}</strong> <bdi>{name}</bdi>: {words}
            </span>
          </li>
        ))}
      </ul>
      {more}
    </>
  )
}
