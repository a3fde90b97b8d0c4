// What a mixed day comes to, and the ways to put it into the gear as the daily food.

import { useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { Why } from '../../components/why'
import { type DaysFood, FOOD_PACKING, type Portion, putDaysFood } from '../../plan/foods'
import { formatsIn } from '../../report'
import { actions, newId, openTrip } from '../../store'
import { formatQuantity } from '../../units'

const MOST_OFFERED = 3

interface FoodTotalsProps {
  day: DaysFood
  portions: readonly Portion[]
}

export function FoodTotals({ day, portions }: FoodTotalsProps) {
  const system = useSystem()
  const formats = formatsIn(system)
  const [put, setPut] = useState<string | null>(null)
  const daily = (openTrip.value?.draft.gear ?? []).filter(item => item.use === 'daily').slice(0, MOST_OFFERED)
  const use = (into?: string) => {
    actions.edit('Set the day’s food', draft =>
      putDaysFood(draft, day, { newId, ...(into === undefined ? {} : { into }) }),
    )
    setPut(JSON.stringify(day))
  }
  const amounts = portions.map(({ food, massKg }) => ({
    name: food.name,
    massKg,
    kcal: food.kcalPer100G * 10 * massKg,
    litres: massKg / food.kgPerLitre,
  }))
  const facts = [
    ['Mass a day', formats.gear(day.massKg)],
    ['Energy a day', `${Math.round(day.kcal)} kcal`],
    ['Packed a day', formatQuantity('volume', day.litres, { system, unit: 'L', digits: 2 })],
    ['Energy by mass', formatQuantity('energyDensity', day.kcalPerKg, { system, digits: 0 })],
  ]
  return (
    <>
      <div class="figures" data-figures="why">
        <dl class="facts">
          {facts.map(([term, figure]) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>{figure}</dd>
            </div>
          ))}
        </dl>
        <Why
          about={{ kind: 'days-food', portions: amounts, packing: FOOD_PACKING }}
          figure="What makes this day"
        />
      </div>
      {daily.map(item => (
        <button key={item.id} type="button" class="primary" onClick={() => use(item.id)}>
          Put into {item.name || 'the daily item'}
        </button>
      ))}
      <button type="button" class={daily.length ? 'quiet' : 'primary'} onClick={() => use()}>
        {daily.length ? 'Add as another daily item' : 'Use as the day’s food'}
      </button>
      <p role="status">{put === JSON.stringify(day) ? 'It is in the gear. You can undo it.' : ''}</p>
    </>
  )
}
