// Day by day: how far, how long, with what load, at what cost in energy.

import { usePortions } from '../../components/long-list'
import { Why } from '../../components/why'
import type { Plan } from '../../plan'
import type { DayReckoning, Reckoning, Working } from '../../reckon'
import { type Formats, loadThen, walkOf } from '../../report'
import { dayEnergyRanges, kcalRangeText, rationText } from '../../report/why'
import { openTrip } from '../../store'

interface DaysProps {
  plan: Plan
  reckoning: Reckoning
  working: Working
  formats: Formats
}

export function Days({ plan, reckoning, working, formats }: DaysProps) {
  const stopIds = (openTrip.value?.draft.trip.stops ?? []).map(stop => stop.id)
  const { drawn, more } = usePortions(reckoning.days.length, 'days')
  const energies = dayEnergyRanges({ plan, reckoning, working, formats, stopIds }, drawn)
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
        {reckoning.days.slice(0, drawn).map((day, i) => {
          const walk = walkOf(reckoning, day.day)
          const energy = energies[i]
          return (
            <tbody key={day.day} data-figures="why">
              <tr>
                <th scope="row">
                  {day.day} <bdi>{walk ? `to ${plan.trip.stops[walk.ends.stop]!.name}` : 'Rest'}</bdi>
                </th>
                <td>
                  {walk ? `${formats.km(walk.ends.km - walk.sets.km)}, ${formats.hours(day.hours)}` : ''}
                </td>
                <td>
                  {walk ? `${formats.kg(loadThen(walk.sets))} to ${formats.kg(loadThen(walk.ends))}` : ''}
                </td>
              </tr>
              <tr>
                <td colSpan={3}>
                  <Why
                    about={{ kind: 'day', day: i }}
                    figure={
                      energy
                        ? `Energy ${kcalRangeText(energy.lowKcal, energy.highKcal)}`
                        : 'What makes this day'
                    }
                  />
                  <Ration plan={plan} day={day} />
                </td>
              </tr>
            </tbody>
          )
        })}
      </table>
      {more}
      {energies.some(Boolean) ? (
        <p class="hint" data-figures="cited">
          Energy, plus or minus 20 %. Walking: Looney and others 2022, up to the totals of Yamamoto 2016.
          Rest: Mifflin and St Jeor 1990.
        </p>
      ) : null}
    </div>
  )
}

function Ration({ plan, day }: { plan: Plan; day: DayReckoning }) {
  if (plan.trip.meals.ration !== 'energy') return null
  return <Why about={{ kind: 'ration', day: day.day - 1 }} figure={`Eats ${rationText(day.ration)}`} />
}
