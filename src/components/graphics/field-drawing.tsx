// What is drawn between the axes of a field: the corner that is asked for, the line of full packs, a path for all marks
// of a shape, and the few names.

import { useId } from 'preact/hooks'
import type { Box } from './boxes'
import {
  coveredBy,
  type FieldMark,
  LAYERS,
  type PlacedMark,
  placeMarks,
  radiusFor,
  type SlopeLine,
  shapePaths,
  slopeBoxes,
  slopeLine,
  strikes,
} from './field-plan'
import { cut } from './fit-text'
import { markGrid } from './mark-grid'
import { type NameBox, placeNames } from './mark-names'
import type { Frame } from './Plot'
import { px } from './scale'

/** All beyond `x` and above `y`; from `lowX` to `sureX` it is uncertain. */
export interface FieldCorner {
  x: number
  lowX: number
  sureX: number
  y: number
  label: string
}

/** The line of `base + slope · x`, in the units of the axes. */
export interface FieldLine {
  base: number
  slope: number
  text: string
}

export interface FieldName {
  key: string
  text: string
  isStrong?: boolean
}

export interface FieldDrawn {
  marks: readonly FieldMark[]
  /** Which are named where there is room, the most wanted first. */
  names: readonly FieldName[]
  corner: FieldCorner | null
  line: FieldLine | null
}

export interface FieldPlan {
  placed: PlacedMark[]
  radiusPx: number
  line: SlopeLine | null
  cornerLabel: Box | null
  names: (NameBox & FieldName & { text: string; from: PlacedMark })[]
}

const WIDEST_NAME_EM = 14

/** The whole field laid out. Pure. */
export function planField({ marks, names, corner, line }: FieldDrawn, frame: Frame): FieldPlan {
  const { left, right, top, bottom, emPx, measure, measureBold } = frame
  const placed = placeMarks(marks, frame, frame.strip)
  const radiusPx = radiusFor(marks.length)
  const cornerLabel = corner && cornerBox(corner, { placed, radiusPx }, frame)
  const labelled = cornerLabel ? [cornerLabel] : []
  const byKey = new Map(placed.map(mark => [mark.key, mark]))
  const wanted = names.flatMap(name => {
    const from = byKey.get(name.key)
    const width = name.isStrong ? measureBold : measure
    const text = cut(name.text, WIDEST_NAME_EM * emPx, width)
    return from ? [{ ...name, text, from, x: from.x, y: from.y, widthPx: width(text) }] : []
  })
  const grid = markGrid(placed, radiusPx)
  const boxes = placeNames(wanted, grid, {
    ...{ left, right, top, bottom: Math.max(bottom, frame.strip.bottom), radiusPx },
    linePx: 1.15 * emPx,
    taken: [...labelled, ...(line ? slopeBoxes(line, frame) : [])],
  })
  // Its words come last: the key says the same.
  const sloped = line && slopeLine(line, frame, { marks: grid, taken: [...labelled, ...boxes] })
  return {
    placed,
    radiusPx,
    line: sloped,
    cornerLabel,
    names: boxes.map(box => ({ ...wanted[box.index]!, ...box })),
  }
}

/** Along the edge of the corner or at its top, where it lies over the fewest marks. */
function cornerBox(
  { y, label }: FieldCorner,
  { placed, radiusPx }: Pick<FieldPlan, 'placed' | 'radiusPx'>,
  frame: Frame,
): Box {
  const { right, left, top, emPx, measure } = frame
  const wide = Math.min(measure(label), right - left)
  const high = 1.2 * emPx
  const edge = Math.max(frame.y(y), top + high)
  const near = left + 0.3 * emPx
  const places = [
    { at: right - wide, top: edge - high },
    { at: near, top: edge - high },
    { at: right - wide, top },
    { at: near, top: edge },
    { at: right - wide, top: edge },
  ].map(place => ({ left: place.at, right: place.at + wide, top: place.top, bottom: place.top + high }))
  const covered = places.map(box => coveredBy([box], placed, radiusPx))
  return places[covered.indexOf(Math.min(...covered))]!
}

export function FieldDrawing({ drawn, plan, frame }: { drawn: FieldDrawn; plan: FieldPlan; frame: Frame }) {
  const { placed, radiusPx: r, line, names } = plan
  const { emPx, strip } = frame
  return (
    <>
      {drawn.corner ? <Corner corner={drawn.corner} box={plan.cornerLabel!} frame={frame} /> : null}
      {line ? (
        <path
          class="full-line"
          d={`M${px(line.from.x)} ${px(line.from.y)}L${px(line.to.x)} ${px(line.to.y)}`}
        />
      ) : null}
      {strip.bottom > strip.top ? (
        <text class="end" x={px(frame.left - 0.4 * emPx)} y={px((strip.top + strip.bottom) / 2)}>
          ?
        </text>
      ) : null}
      {LAYERS.map(shape => {
        const { outline, full } = shapePaths(
          placed.filter(mark => mark.shape === shape),
          shape,
          r,
        )
        return (
          <g key={shape} class={`marks marks-${shape}`}>
            {outline ? <path class="mark" d={outline} /> : null}
            {full ? <path class="mark full" d={full} /> : null}
          </g>
        )
      })}
      <path class="strike" d={strikes(placed, r)} />
      {line?.words ? (
        <text
          class="mid faint halo"
          transform={`translate(${px(line.words.x)} ${px(line.words.y)}) rotate(${px(line.words.degrees)})`}
        >
          {drawn.line!.text}
        </text>
      ) : null}
      {names.map(name => (
        <g key={name.key}>
          {name.isApart ? (
            <path
              class="leader"
              d={`M${px(name.from.x)} ${px(name.from.y)}L${px(nearestIn(name.from.x, name.left, name.right))} ${px(nearestIn(name.from.y, name.top, name.bottom))}`}
            />
          ) : null}
          <text class={name.isStrong ? 'strong' : ''} x={px(name.left)} y={px((name.top + name.bottom) / 2)}>
            {name.text}
          </text>
        </g>
      ))}
    </>
  )
}

const nearestIn = (value: number, from: number, to: number) => Math.min(to, Math.max(from, value))

function Corner({ corner, box, frame }: { corner: FieldCorner; box: Box; frame: Frame }) {
  const id = useId()
  const { top, right, left } = frame
  const at = (value: number) => Math.min(right, Math.max(left, frame.x(value)))
  const [x, low, sure] = [at(corner.x), at(corner.lowX), at(corner.sureX)]
  const y = Math.max(top, frame.y(corner.y))
  return (
    <>
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse">
        <path class="range-hatch" d="M-1 8L8-1M-1 1L1-1M6 8L8 6" />
      </pattern>
      <path class="region" d={`M${px(x)} ${px(top)}V${px(y)}H${px(right)}V${px(top)}z`} />
      <path
        class="region-maybe"
        fill={`url(#${id})`}
        d={`M${px(low)} ${px(top)}V${px(y)}H${px(sure)}V${px(top)}z`}
      />
      <path
        class="need-edge"
        d={`M${px(x)} ${px(top)}V${px(frame.bottom)}M${px(left)} ${px(y)}H${px(right)}`}
      />
      <text class="halo" x={px(box.left)} y={px((box.top + box.bottom) / 2)}>
        {corner.label}
      </text>
    </>
  )
}
