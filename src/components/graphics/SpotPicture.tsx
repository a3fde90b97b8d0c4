// Things as marks between two measures; where one is asked for, the region in which a mark would do.

import { useId } from 'preact/hooks'
import { type Axis, type Frame, Plot } from './Plot'
import { PictureTable } from './picture-table'
import { Key, type Mark, Marks } from './plot-marks'
import { px } from './scale'

/** All that lies above `y` and beyond `x`; from `x` to `sureX` it may do. */
export interface Region {
  x: number
  sureX: number
  y: number
  /** What the region means, for the key. */
  label: string
}

interface SpotProps {
  caption: string
  says: string
  x: Axis
  y: Axis
  region?: Region
  marks: readonly Mark[]
  table: { heads: string[]; cells: (mark: number) => string[] }
}

export function SpotPicture({ caption, says, x, y, region, marks, table }: SpotProps) {
  return (
    <figure class="picture chart">
      <figcaption>{caption}</figcaption>
      <Plot says={says} x={x} y={y}>
        {frame => (
          <>
            {region ? <RegionShape region={region} frame={frame} /> : null}
            <Marks marks={marks} frame={frame} />
          </>
        )}
      </Plot>
      <Key marks={marks} region={region?.label} />
      <PictureTable
        caption={caption}
        heads={['Pack', ...table.heads]}
        rows={marks.map(({ letter, name }, i) => [
          <>
            {letter} <bdi>{name}</bdi>
          </>,
          ...table.cells(i),
        ])}
      />
    </figure>
  )
}

function RegionShape({ region, frame }: { region: Region; frame: Frame }) {
  const id = useId()
  const { top, right } = frame
  const [x, sure, y] = [frame.x(region.x), Math.min(right, frame.x(region.sureX)), frame.y(region.y)]
  return (
    <>
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse">
        <path class="range-hatch" d="M-1 8L8-1M-1 1L1-1M6 8L8 6" />
      </pattern>
      <path class="region" d={`M${px(x)} ${px(top)}V${px(y)}H${px(right)}V${px(top)}z`} />
      <path
        class="region-maybe"
        fill={`url(#${id})`}
        d={`M${px(x)} ${px(top)}V${px(y)}H${px(sure)}V${px(top)}z`}
      />
      <path class="region-edge" d={`M${px(x)} ${px(top)}V${px(y)}H${px(right)}`} />
    </>
  )
}
