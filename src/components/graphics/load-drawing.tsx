// The load line as it is drawn: everything but the cursor, so that moving the cursor redraws none of it.

import type { DrawnLimit } from './limits'
import type { LoadPlan } from './load-plan'
import { fillOf } from './patterns'
import { bandPaths, crestPath } from './route-line'
import { px } from './scale'
import { StripDrawing } from './strip-drawing'
import { TerrainDrawing } from './terrain-drawing'

/** Everything under the cursor. */
export function LoadBands({ plan, of }: { plan: LoadPlan; of: string }) {
  const { plot, xs, ys, strip } = plan
  return (
    <>
      {plan.rules.map(({ y, text }) => (
        <g key={text}>
          <path class="rule" d={`M${px(plot.left)} ${px(y)}H${px(plot.right)}`} />
          <text x={px(plot.left - 6)} y={px(y)} class="end faint">
            {text}
          </text>
        </g>
      ))}
      {bandPaths(xs, ys).map(({ band, d }) => (
        <path key={band} d={d} class="band" fill={fillOf(of, band)} />
      ))}
      <path class="crest" d={crestPath(xs, ys)} />
      <path class="axis" d={`M${px(plot.left)} ${px(plot.bottom)}H${px(plot.right)}`} />
      <path class="tick" d={strip.stopXs.map(x => `M${px(x)} ${px(plot.bottom)}v5`).join('')} />
      {plan.terrain && <TerrainDrawing plot={plot} strip={strip} terrain={plan.terrain} />}
    </>
  )
}

/** Everything over the cursor: words, limits, marks. */
export function LoadWords({ plan }: { plan: LoadPlan }) {
  const { peak, linePx, strip } = plan
  const firstLine = linePx * 0.5
  return (
    <>
      {plan.bands.map(({ band, word, x, y }) => (
        <text key={band} x={px(x)} y={px(y)} class="mid halo">
          {word}
        </text>
      ))}
      {plan.limits.map((limit, i) => (
        <LimitLine key={i} limit={limit} nth={i} plan={plan} />
      ))}
      {peak.lines.length > 0 && (
        <path class="leader" d={`M${px(peak.x)} ${px(linePx * peak.lines.length)}V${px(peak.y)}`} />
      )}
      <circle class="peak" cx={px(peak.x)} cy={px(peak.y)} r="4" />
      {peak.lines.map((line, i) => (
        <text key={i} x={px(peak.textX)} y={px(firstLine + i * linePx)} class="mid strong">
          {line}
        </text>
      ))}
      {plan.warnings.map(({ x, y }, i) => (
        <WarningMark key={i} x={x} y={y} size={plan.markPx} />
      ))}
      <StripDrawing strip={strip} linePx={linePx} />
      {plan.bar && <ScaleBar bar={plan.bar} />}
    </>
  )
}

function LimitLine({ limit, nth, plan }: { limit: DrawnLimit; nth: number; plan: LoadPlan }) {
  const { y, label, text } = limit
  const { left, right } = plan.plot
  return (
    <g>
      {y !== null && <path class={`limit limit-${nth}`} d={`M${px(left)} ${px(y)}H${px(right)}`} />}
      {y !== null && label.isApart && (
        <path class="leader" d={`M${px(right)} ${px(y)}V${px(label.bottom)}`} />
      )}
      <text x={px(label.right - 2)} y={px((label.top + label.bottom) / 2)} class="halo end">
        {text}
      </text>
    </g>
  )
}

/** The sign for a danger, where it waits. */
function WarningMark({ x, y, size }: { x: number; y: number; size: number }) {
  const half = size / 2
  return (
    <g>
      <path class="warning-mark" d={`M${px(x)} ${px(y - half)}l${px(half)} ${px(size)}h${px(-size)}Z`} />
      <path
        class="warning-bang"
        d={`M${px(x)} ${px(y - half * 0.35)}v${px(half * 0.6)}m0 ${px(half * 0.4)}v0.1`}
      />
    </g>
  )
}

function ScaleBar({ bar: { from, to, y, text } }: { bar: NonNullable<LoadPlan['bar']> }) {
  return (
    <>
      <path
        class="axis"
        d={`M${px(from)} ${px(y - 4)}v8M${px(from)} ${px(y)}H${px(to)}M${px(to)} ${px(y - 4)}v8`}
      />
      <text x={px(to + 6)} y={px(y)} class="faint">
        {text}
      </text>
    </>
  )
}
