// Every value that the load line plots, as a table; the limits follow as rows of their own.

import { bandsIn, TOP_DOWN } from './bands'
import type { LoadMoment, LoadPicture } from './load-picture'
import { hoursText } from './load-words'
import { PictureTable, type Row } from './picture-table'
import { alongOf } from './route-line'
import { hasTerrain, stopElevations } from './terrain'
import { marksOf, metresText, stopName } from './words'

export function LoadTable(shown: LoadPicture) {
  const { moments, stops, limits, format } = shown
  const along = alongOf(moments)
  const grounded = hasTerrain(shown)
  const isShort = bandsIn(moments.map(({ kg }) => kg)).includes('wanted')
  const bands = TOP_DOWN.filter(({ band }) => isShort || band !== 'wanted')
  const heads = ['Moment', 'Load', ...bands.map(({ word }) => word), 'Day', 'Walked']
  if (grounded) heads.push('Elevation')
  heads.push('At the stop')
  const elevations = grounded ? stopElevations(shown) : []
  const elevationOf = (stop: number) => {
    const eleM = elevations[stop] ?? null
    return eleM === null ? 'not known' : metresText(eleM, format)
  }
  const momentRow = ({ stop, phase, day, km, hours, kg }: LoadMoment): Row => [
    <>
      {phase === 'arrive' ? 'Reaching ' : 'Leaving '}
      <bdi>{stopName(stops, stop)}</bdi>
    </>,
    format.kg(kg.total),
    ...bands.map(({ band }) => format.kg(kg[band] ?? 0)),
    day,
    along === 'hours' ? hoursText(hours) : format.km(km),
    ...(grounded ? [elevationOf(stop)] : []),
    marksOf(stops[stop]),
  ]
  const limitRow = ({ label, kg }: LoadPicture['limits'][number]): Row => [
    <>
      Limit: <bdi>{label}</bdi>
    </>,
    format.kg(kg),
    ...heads.slice(2).map(() => ''),
  ]
  const rows = {
    count: moments.length + limits.length,
    make: (index: number) =>
      index < moments.length ? momentRow(moments[index]!) : limitRow(limits[index - moments.length]!),
  }
  return <PictureTable caption="The load at every stop" heads={heads} rows={rows} />
}
