// Day by day: where to, how far, how high, how long, with what load.

import { loadThen, walkOf } from '../../report'
import type { SheetParts } from './parts'

export function SheetDays({ plan, reckoning, formats, rows }: SheetParts) {
  const { stops } = plan.trip
  return (
    <table class="sheet-days">
      <caption>Days</caption>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col">To</th>
          <th scope="col" class="number">
            Way
          </th>
          <th scope="col" class="number">
            Climb
          </th>
          <th scope="col" class="number">
            Time
          </th>
          <th scope="col" class="number">
            Load
          </th>
        </tr>
      </thead>
      <tbody>
        {reckoning.days.slice(0, rows).map(({ day, hours }) => {
          const walk = walkOf(reckoning, day)
          if (!walk)
            return (
              <tr key={day}>
                <th scope="row">{day}</th>
                <td colSpan={5}>Rest</td>
              </tr>
            )
          const { sets, ends } = walk
          const walked = stops.slice(sets.stop + 1, ends.stop + 1)
          const climbM = walked.reduce((sum, { leg }) => sum + (leg?.ascentM ?? 0), 0)
          return (
            <tr key={day}>
              <th scope="row">{day}</th>
              <td>
                <bdi>{stops[ends.stop]!.name}</bdi>
              </td>
              <td class="number">{formats.km(ends.km - sets.km)}</td>
              <td class="number">{formats.metres(climbM)}</td>
              <td class="number">{formats.hours(hours)}</td>
              <td class="number">
                {formats.kg(loadThen(sets))} to {formats.kg(loadThen(ends))}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
