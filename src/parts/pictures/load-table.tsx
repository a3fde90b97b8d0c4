// Every value that the load line plots, as a table.

import { TOP_DOWN } from './bands'
import { hoursText } from './load-words'
import { PictureTable } from './picture-table'
import { alongOf } from './route-line'
import type { Shown } from './shown'
import { marksOf, stopName } from './words'

export function LoadTable({ moments, stops, limits, format }: Shown) {
  const along = alongOf(moments)
  const far = along === 'km' ? 'Walked' : 'Hours'
  return (
    <PictureTable caption="The load at every stop">
      <thead>
        <tr>
          <th scope="col">Moment</th>
          <th scope="col">Day</th>
          {along !== 'stops' && <th scope="col">{far}</th>}
          <th scope="col">Load</th>
          {TOP_DOWN.map(({ band, word }) => (
            <th key={band} scope="col">
              {word}
            </th>
          ))}
          <th scope="col">At the stop</th>
        </tr>
      </thead>
      <tbody>
        {moments.map((moment, i) => (
          <tr key={i}>
            <th scope="row">
              {moment.phase === 'arrive' ? 'Reaching ' : 'Leaving '}
              <bdi>{stopName(stops, moment.stop)}</bdi>
            </th>
            <td>{moment.day}</td>
            {along !== 'stops' && <td>{along === 'km' ? format.km(moment.km) : hoursText(moment.hours)}</td>}
            <td>{format.kg(moment.kg.total)}</td>
            {TOP_DOWN.map(({ band }) => (
              <td key={band}>{format.kg(moment.kg[band])}</td>
            ))}
            <td>{marksOf(stops[moment.stop]) || '–'}</td>
          </tr>
        ))}
      </tbody>
      {limits.length > 0 && (
        <tbody>
          {limits.map(({ label, kg }, i) => (
            <tr key={i}>
              <th scope="row" colSpan={along === 'stops' ? 2 : 3}>
                Limit: <bdi>{label}</bdi>
              </th>
              <td>{format.kg(kg)}</td>
              <td colSpan={TOP_DOWN.length + 1} />
            </tr>
          ))}
        </tbody>
      )}
    </PictureTable>
  )
}
