// Every value that the load line plots, as a table; the limits follow as rows of their own.

import { TOP_DOWN } from './bands'
import { hoursText } from './load-words'
import { PictureTable, type PictureTableProps } from './picture-table'
import { alongOf } from './route-line'
import type { Shown } from './shown'
import { marksOf, stopName } from './words'

export function LoadTable({ moments, stops, limits, format }: Shown) {
  const along = alongOf(moments)
  const heads = ['Moment', 'Load', ...TOP_DOWN.map(({ word }) => word), 'Day', 'Walked', 'At the stop']
  const rows: PictureTableProps['rows'] = moments.map(({ stop, phase, day, km, hours, kg }) => [
    <>
      {phase === 'arrive' ? 'Reaching ' : 'Leaving '}
      <bdi>{stopName(stops, stop)}</bdi>
    </>,
    format.kg(kg.total),
    ...TOP_DOWN.map(({ band }) => format.kg(kg[band])),
    day,
    along === 'hours' ? hoursText(hours) : format.km(km),
    marksOf(stops[stop]),
  ])
  for (const { label, kg } of limits)
    rows.push([
      <>
        Limit: <bdi>{label}</bdi>
      </>,
      format.kg(kg),
      ...heads.slice(2).map(() => ''),
    ])
  return <PictureTable caption="The load at every stop" heads={heads} rows={rows} />
}
