// How far a set-up reaches: days of food against litres of water, the edge of what it holds and bears with the limit
// that makes it, and this trip's stretches as marks.

import { type Axis, type Frame, Plot } from './Plot'
import { PictureTable } from './picture-table'
import { Key, type Mark, Marks } from './plot-marks'
import { px } from './scale'

/** A part of the edge that one limit makes; days of null have no end. */
export interface ReachRun {
  label: string
  points: { water: number; days: number | null }[]
}

interface ReachProps {
  caption: string
  says: string
  water: Axis
  days: Axis
  runs: readonly ReachRun[]
  marks: readonly Mark[]
  table: { heads: string[]; rows: string[][] }
}

export function ReachPicture({ caption, says, water, days, runs, marks, table }: ReachProps) {
  return (
    <figure class="picture chart">
      <figcaption>{caption}</figcaption>
      <Plot says={says} x={water} y={days}>
        {frame => (
          <>
            <Edge runs={runs} frame={frame} />
            <Marks marks={marks} frame={frame} />
          </>
        )}
      </Plot>
      <Key marks={marks} />
      <PictureTable
        caption={caption}
        heads={table.heads}
        rows={table.rows.map(([head = '', ...cells]) => [head, ...cells])}
      />
    </figure>
  )
}

function Edge({ runs, frame }: { runs: readonly ReachRun[]; frame: Frame }) {
  const { top, bottom, left, right, emPx, measure } = frame
  const spot = ({ water, days }: ReachRun['points'][number]) => ({
    x: frame.x(water),
    y: days === null ? top : Math.max(top, frame.y(days)),
  })
  const line = runs.flatMap(run => run.points.map(spot))
  if (line.length === 0) return null
  const path = line.map(({ x, y }) => `${px(x)} ${px(y)}`).join('L')
  const end = line.at(-1)!
  return (
    <>
      <path class="region" d={`M${px(left)} ${px(bottom)}L${path}L${px(end.x)} ${px(bottom)}z`} />
      <path class="region-edge" d={`M${path}V${px(bottom)}`} />
      {runs.map(({ label, points }) => {
        const [a, b] = [spot(points[0]!), spot(points.at(-1)!)]
        const half = measure(label) / 2
        const x = Math.min(right - half, Math.max(left + half + 0.4 * emPx, (a.x + b.x) / 2))
        const y = Math.min(bottom - 0.8 * emPx, (a.y + b.y) / 2 + 1.1 * emPx)
        return (
          <text key={label + points[0]!.water} class="mid halo" x={px(x)} y={px(y)}>
            {label}
          </text>
        )
      })}
    </>
  )
}
