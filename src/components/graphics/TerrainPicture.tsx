// The elevation profile of a way with its stops, without any load.

import './pictures.css'
import { useMemo } from 'preact/hooks'
import { MarkKey } from './load-key'
import type { PictureStop, WayPicture } from './load-picture'
import { xsOf } from './route-line'
import { layStrip } from './stop-strip'
import { StripDrawing } from './strip-drawing'
import { hasTerrain, layTerrain, rangeOf, terrainFigures } from './terrain'
import { TerrainDrawing } from './terrain-drawing'
import { type Room, useRoom } from './use-drawing'
import { isolate, metresText, stopName } from './words'

interface TerrainPictureProps extends Pick<WayPicture, 'format' | 'profile'> {
  /** In order; the last lies at the end of the way. Both lists should keep their identity between renders. */
  stops: readonly (PictureStop & { km: number })[]
}

/** Nothing where no elevation is known, or the way has no length. */
export function TerrainPicture({ stops, profile, format }: TerrainPictureProps) {
  const { ref, room, isMeasured } = useRoom()
  const shown = useMemo(
    (): WayPicture => ({
      moments: stops.map(({ km }, stop) => ({ stop, km, hours: 0 })),
      stops,
      format,
      profile,
    }),
    [stops, profile, format],
  )
  const plan = useMemo(() => (isMeasured ? planTerrain(shown, room) : null), [shown, room])
  if (!hasTerrain(shown)) return null
  return (
    <figure class="picture terrain-picture" data-figures="cited">
      <div class="drawing" ref={ref}>
        {plan && (
          <svg width={room.widthPx} height={plan.heightPx} role="img" aria-label={summary(shown)}>
            <TerrainDrawing {...plan} />
            <StripDrawing strip={plan.strip} linePx={plan.linePx} />
          </svg>
        )}
      </div>
      {plan && <MarkKey kinds={plan.strip.marks.map(({ kind }) => kind)} />}
    </figure>
  )
}

function planTerrain(shown: WayPicture, room: Room) {
  const { widthPx, emPx, measure } = room
  const linePx = Math.ceil(emPx * 1.3)
  const gutter = Math.max(0, ...terrainFigures(shown).map(measure)) + emPx * 0.5
  // Type so large that figures at the side would take the room of the picture: they stand above it.
  const ruled = gutter < widthPx * 0.22
  const plot = { left: ruled ? gutter : 2, right: widthPx - emPx * 0.5 }
  const terrain = layTerrain(shown, { ...plot, top: emPx, linePx, ruled })
  if (!terrain) return null
  const strip = layStrip(shown, { xs: xsOf(shown.moments, plot), top: terrain.bottom + 4, linePx }, room)
  return { plot, terrain, strip, linePx, heightPx: Math.ceil(strip.bottom + 4) }
}

/** "Elevation profile of 25.0 km, from 600 m to 1000 m. Nights at Larch Spring, 10.0 km." */
function summary({ stops, moments, format, profile = [] }: WayPicture): string {
  const { lowM, highM } = rangeOf(profile)!
  const nights = stops.flatMap(({ nights }, i) =>
    nights > 0 ? [`${isolate(stopName(stops, i))}, ${format.km(moments[i]!.km)}`] : [],
  )
  const far = format.km(moments.at(-1)!.km)
  const camps = nights.length > 0 ? ` Nights at ${nights.join('; ')}.` : ''
  return `Elevation profile of ${far}, from ${metresText(lowM, format)} to ${metresText(highM, format)}.${camps}`
}
