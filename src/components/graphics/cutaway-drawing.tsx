// The cutaway as it is drawn: the body, what fills it, what it spills, and the likely need across it.

import type { CutawayPlan } from './cutaway-plan'
import { fillOf } from './patterns'
import { px } from './scale'

interface CutawayDrawingProps {
  plan: CutawayPlan
  of: string
  known: boolean
  /** The layer that is singled out. */
  chosen: number | null
}

export function CutawayDrawing({ plan, of, known, chosen }: CutawayDrawingProps) {
  const { outlines, range, brimY, levelY, left, right, floorY, widthPx, linePx } = plan
  const inside = `${of}-inside`
  const reach = `${of}-reach`
  return (
    <>
      <defs>
        <clipPath id={inside}>
          <path d={outlines.body + outlines.collar + outlines.heap} />
        </clipPath>
        <clipPath id={reach}>
          <path d={outlines.body + outlines.collar + outlines.reach} />
        </clipPath>
        <pattern id={`${of}-range`} width="8" height="8" patternUnits="userSpaceOnUse">
          <path class="range-hatch" d="M-2 6L2 10M-2-2L10 10M6-2L10 2" />
        </pattern>
      </defs>
      {plan.hasHarness ? <Harness plan={plan} /> : null}
      <path class="body-paper" d={outlines.body} />
      <g clip-path={`url(#${inside})`}>
        {plan.layers.map(({ band, y, height }) => (
          <rect
            key={band}
            class="layer"
            x="0"
            width={widthPx}
            y={px(y)}
            height={px(height)}
            fill={fillOf(of, band)}
          />
        ))}
        {chosen !== null && plan.layers[chosen] ? (
          <rect
            class="layer-chosen"
            x={px(left)}
            width={px(right - left)}
            y={px(plan.layers[chosen].y)}
            height={px(plan.layers[chosen].height)}
          />
        ) : null}
      </g>
      {range.bottom > range.top && (
        <g clip-path={`url(#${reach})`}>
          <rect
            class="range-veil"
            x="0"
            y={px(range.top)}
            width={widthPx}
            height={px(range.bottom - range.top)}
          />
          <rect
            x="0"
            y={px(range.top)}
            width={widthPx}
            height={px(range.bottom - range.top)}
            fill={`url(#${of}-range)`}
          />
        </g>
      )}
      <path
        class="range-edge"
        d={`M${px(left)} ${px(range.top)}H${px(right + 8)}M${px(left)} ${px(range.bottom)}H${px(right + 8)}`}
      />
      <g clip-path={`url(#${inside})`}>
        <path class="level" d={`M0 ${px(levelY)}H${widthPx}`} />
      </g>
      {outlines.collar && <path class="collar" d={outlines.collar} />}
      {outlines.heap && <path class="heap" d={outlines.heap} />}
      <path class={known ? 'body' : 'body body-wanted'} d={outlines.body} />
      {known && <path class="brim" d={`M${px(left - 5)} ${px(brimY)}H${px(right + 12)}`} />}
      <path class="axis" d={`M0 ${px(floorY + 1)}H${widthPx}`} />
      {plan.labels.map(({ kind, lines, x, y, fromX, fromY }) => (
        <g key={kind}>
          <path class="leader" d={`M${px(fromX)} ${px(fromY)}L${px(x - 4)} ${px(y)}`} />
          {lines.map((line, i) => (
            <text key={i} x={px(x)} y={px(y + (i - (lines.length - 1) / 2) * linePx)} class={`label-${kind}`}>
              {line}
            </text>
          ))}
        </g>
      ))}
    </>
  )
}

/** Side pockets, hip belt and haul loop in pencil: they make the shape a pack, and count for nothing. */
function Harness({ plan: { left, right, floorY, scale, shape, brimY } }: { plan: CutawayPlan }) {
  const h = shape.heightCm * scale
  const out = h * 0.1
  const middle = (left + right) / 2
  const side = (sign: number) => {
    const edge = middle + (sign * (right - left) * 0.96) / 2
    const at = (dx: number, up: number) => `${px(edge + sign * dx * out)} ${px(floorY - up * h)}`
    const pocket = `M${at(0, 0.5)}L${at(0.5, 0.47)}Q${at(0.66, 0.34)} ${at(0.55, 0.2)}L${at(0, 0.17)}`
    const belt = `M${at(0, 0.14)}Q${at(0.9, 0.14)} ${at(1.1, 0.035)}L${at(0.86, 0.01)}Q${at(0.62, 0.07)} ${at(0, 0.06)}`
    return pocket + belt
  }
  const loop = `M${px(middle - 9)} ${px(brimY)}C${px(middle - 12)} ${px(brimY - 13)} ${px(middle + 12)} ${px(brimY - 13)} ${px(middle + 9)} ${px(brimY)}`
  return <path class="harness" d={side(-1) + side(1) + loop} />
}
