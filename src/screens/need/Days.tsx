// Day by day: how far, how long, with what load.

import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import type { Shown } from '../../report'

export function Days({ plan, reckoning, shown }: { plan: Plan; reckoning: Reckoning; shown: Shown }) {
  const { days, moments } = reckoning
  const withEnergy = days.some(day => day.kcalTotal !== null)
  return (
    <div class="scroll">
      <table class="days">
        <caption>Day by day</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Walk</th>
            <th scope="col">Load</th>
          </tr>
        </thead>
        <tbody>
          {days.map(({ day, hours, kcalTotal }) => {
            const mine = moments.filter(m => m.day === day)
            const sets = mine.find(m => m.phase === 'depart')
            const ends = mine.at(-1)
            const energy = kcalTotal === null ? '' : `${Math.round(kcalTotal / 50) * 50} kcal`
            return (
              <tr key={day}>
                <th scope="row">
                  {day} <bdi>{sets && ends ? `to ${plan.trip.stops[ends.stop]!.name}` : 'Rest'}</bdi>
                </th>
                <td>
                  {sets && ends ? `${shown.km(ends.km - sets.km)}, ${shown.hours(hours)}` : ''}
                  <br />
                  {energy}
                </td>
                <td>{sets && ends ? `${shown.kg(sets.kg.total)} to ${shown.kg(ends.kg.total)}` : ''}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
      {withEnergy ? (
        <p class="hint">
          Energy: walking by the backpacking equation of Looney et al. 2022, rest by Mifflin and St Jeor 1990;
          give or take 20 %.
        </p>
      ) : null}
    </div>
  )
}
