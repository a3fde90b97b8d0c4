// A pack's main body in outline, to the scale of others beside it, filled to what a trip needs of it.

import { useId } from 'preact/hooks'
import { areaOf, fillHeight, heapOn, shapeOf, usualHeight } from './body-shape'
import { outlineOf } from './cutaway-plan'

interface BodyPictureProps {
  body: { bodyLitres: number; collarLitres: number; innerHeightCm: number | null }
  /** Likely litres; null: not known, and nothing is drawn in it. */
  needLitres: number | null
  /** The largest of all that stand beside it: litres of body and collar, or of the need. */
  scaleLitres: number
  label: string
}

/** Drawn units a centimetre. */
const SCALE = 4
const EDGE = 4

export function BodyPicture({ body, needLitres, scaleLitres, label }: BodyPictureProps) {
  const id = useId()
  const shape = shapeOf(body)
  const height = usualHeight(scaleLitres) * 1.25 * SCALE + 2 * EDGE
  const width = Math.sqrt(areaOf(scaleLitres) * 0.75) * 1.15 * SCALE + 2 * EDGE
  const at = { middle: width / 2, floorY: height - EDGE, scale: SCALE }
  const top = shape.collar.at(-1) ?? shape.body.at(-1)!
  const over = Math.max(0, (needLitres ?? 0) - body.bodyLitres - body.collarLitres)
  const [outline, collar, heap] = [shape.body, shape.collar, heapOn(top, over)].map(levels =>
    outlineOf(levels, at),
  )
  const levelY = at.floorY - fillHeight(shape, needLitres ?? 0) * SCALE
  return (
    <svg class="body-picture" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <clipPath id={id}>
        <path d={`${outline}${collar}${heap}`} />
      </clipPath>
      <path class="paper" d={outline} />
      {needLitres === null ? null : (
        <g clip-path={`url(#${id})`}>
          <rect class="fill" x="0" y={levelY} width={width} height={height} />
          <path class="level" d={`M0 ${levelY}H${width}`} />
        </g>
      )}
      {collar ? <path class="collar" d={collar} /> : null}
      {heap ? <path class="heap" d={heap} /> : null}
      <path class="body" d={outline} />
    </svg>
  )
}
