// The terrain as it is drawn: the silhouette with its ridge, a stem at every stop, drops on the sources, and the scale.

import { Mark } from './mark'
import type { Plot } from './route-line'
import { px } from './scale'
import type { Strip } from './stop-strip'
import type { Dot, Terrain } from './terrain'

const lineOf = (run: readonly Dot[]): string => run.map(({ x, y }) => `${px(x)} ${px(y)}`).join('L')

interface TerrainDrawingProps {
  plot: Pick<Plot, 'left' | 'right'>
  strip: Strip
  terrain: Terrain
}

export function TerrainDrawing({ plot, strip, terrain }: TerrainDrawingProps) {
  const { bottom, runs } = terrain
  const ground = runs
    .map(run => `M${px(run[0]!.x)} ${px(bottom)}L${lineOf(run)}L${px(run.at(-1)!.x)} ${px(bottom)}Z`)
    .join('')
  const onGround = terrain.stopYs.flatMap((y, stop) =>
    y === null ? [] : [{ stop, x: strip.stopXs[stop]!, y }],
  )
  return (
    <g class="terrain">
      <path class="ground" d={ground} />
      <path class="stem" d={onGround.map(({ x, y }) => `M${px(x)} ${px(y)}V${px(bottom)}`).join('')} />
      <path class="ridge" d={runs.map(run => `M${lineOf(run)}`).join('')} />
      <path class="axis" d={`M${px(plot.left)} ${px(bottom)}H${px(plot.right)}`} />
      <path
        class="unsurveyed"
        d={terrain.gaps.map(({ from, to }) => `M${px(from)} ${px(bottom - 8)}H${px(to)}`).join('')}
      />
      {onGround.map(({ stop, x, y }) => {
        const source = strip.marks.find(
          ({ kind, stops }) =>
            (kind === 'sure' || kind === 'doubtful') && stops.some(mark => mark.stop === stop),
        )
        return source ? (
          <Mark key={stop} kind={source.kind} x={x} y={y - strip.markPx * 0.62} size={strip.markPx} />
        ) : (
          <circle key={stop} class="spot" cx={px(x)} cy={px(y)} r={px(Math.min(3, strip.markPx / 3))} />
        )
      })}
      {terrain.labels.map(({ y, text }) => (
        <text key={text} x={px(plot.left - 6)} y={px(y)} class="end faint">
          {text}
        </text>
      ))}
      {terrain.above && (
        <text x={px(plot.left)} y={px(terrain.above.y)} class="faint">
          {terrain.above.text}
        </text>
      )}
    </g>
  )
}
