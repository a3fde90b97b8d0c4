// The marks of the stops and their names, as they stand under the load and under the terrain.

import { Mark } from './mark'
import { px } from './scale'
import type { Strip } from './stop-strip'
import { isolate } from './words'

export function StripDrawing({ strip, linePx }: { strip: Strip; linePx: number }) {
  return (
    <>
      {strip.marks.map(({ kind, y, stops }) =>
        stops.map(({ stop, x }) => (
          <Mark key={`${kind}${stop}`} kind={kind} x={x} y={y} size={strip.markPx} />
        )),
      )}
      {strip.names.map(({ stop, x, y, at, row, text }) => (
        <g key={stop}>
          {row > 0 && (
            <path class="tick" d={`M${px(at)} ${px(y - linePx * 1.45)}V${px(y - linePx * 0.45)}`} />
          )}
          <text x={px(x)} y={px(y)} class="mid">
            {isolate(text)}
          </text>
        </g>
      ))}
    </>
  )
}
