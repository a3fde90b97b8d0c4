// Day by day: how far, how long, with what load, at what cost in energy.

import { Why } from '../../parts/why'
import type { Plan } from '../../plan'
import type { DayReckoning, Reckoning } from '../../reckon'
import type { Shown } from '../../report'
import { dayEnergyRanges, kcalRangeText, rationText } from '../../report/why'
import { openTrip } from '../../store'

interface DaysProps {
  plan: Plan
  reckoning: Reckoning
  shown: Shown
  onGo: (path: string) => void
}

export function Days({ plan, reckoning, shown, onGo }: DaysProps) {
  const { days, moments } = reckoning
  const stopIds = (openTrip.value?.draft.trip.stops ?? []).map(stop => stop.id)
  const energies = dayEnergyRanges({ plan, reckoning, shown, stopIds })
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
        {days.map((day, i) => {
          const mine = moments.filter(m => m.day === day.day)
          const sets = mine.find(m => m.phase === 'depart')
          const ends = mine.at(-1)
          const energy = energies[i]
          return (
            <tbody key={day.day}>
              <tr>
                <th scope="row">
                  {day.day} <bdi>{sets && ends ? `to ${plan.trip.stops[ends.stop]!.name}` : 'Rest'}</bdi>
                </th>
                <td>{sets && ends ? `${shown.km(ends.km - sets.km)}, ${shown.hours(day.hours)}` : ''}</td>
                <td>{sets && ends ? `${shown.kg(sets.kg.total)} to ${shown.kg(ends.kg.total)}` : ''}</td>
              </tr>
              {energy ? (
                <tr>
                  <td colSpan={3}>
                    <Why
                      about={{ kind: 'day-energy', day: i }}
                      figure={`Energy ${kcalRangeText(energy.lowKcal, energy.highKcal)}`}
                      onGo={onGo}
                    />
                    <Ration plan={plan} day={day} onGo={onGo} />
                  </td>
                </tr>
              ) : null}
            </tbody>
          )
        })}
      </table>
      {energies.some(Boolean) ? (
        <p class="hint">
          Energy: from the backpacking equation of Looney and others 2022 to the totals of Yamamoto 2016, with
          rest by Mifflin and St Jeor 1990; give or take 20 %.
        </p>
      ) : null}
    </div>
  )
}

function Ration({ plan, day, onGo }: { plan: Plan; day: DayReckoning; onGo: (path: string) => void }) {
  if (plan.trip.meals.ration !== 'energy') return null
  return (
    <Why about={{ kind: 'ration', day: day.day - 1 }} figure={`Eats ${rationText(day.ration)}`} onGo={onGo} />
  )
}
