// Why a day eats more or less than one full ration, where rations follow the energy. Source key: our-judgement.

import { fieldPath } from '../../plan'
import { rationsFrom } from '../../reckon'
import { counted } from '../../units'
import type { Explanation, WhyContext } from './types'
import { kcalText, numberText } from './words'

/** None where a ration is what the gear list says. */
export function whyRation({ plan, reckoning, formats }: WhyContext, day: number): Explanation[] {
  const { kcalTotal, kcalWalking } = reckoning.days[day]!
  const { ration, deficit } = plan.trip.meals
  if (ration !== 'energy' || kcalTotal === null || kcalWalking === null) return []
  const rationsAt = (kcal: number) =>
    rationsFrom(plan, { legs: [], days: [{ kcalWalking: 0, kcalTotal: kcal }] })[0]!
  const result = rationsAt(kcalTotal)
  const foods = plan.gear.filter(item => item.use === 'daily' && item.kcalPerKg !== null)
  const fullKcal = (1 - deficit) / rationsAt(1)
  return [
    {
      title: `Ration of day ${day + 1}`,
      equation: 'The day’s energy by the energy of one full ration',
      says: `The load decides the energy, the energy the food, and the food the load: it settled in ${counted(reckoning.rationRounds, 'round')}, when no moment’s load moved by 1 g any more.`,
      inputs: [
        { label: `Energy of day ${day + 1}`, value: kcalText(kcalTotal) },
        { label: 'Energy to go without', value: formats.percent(deficit), path: 'trip/meals/deficit' },
        ...foods.map(item => ({
          label: `${item.name || 'Food'}, a day`,
          value: `${formats.gear(item.massKg * item.count)} at ${numberText(item.kcalPerKg ?? 0, 0)} kcal/kg`,
          path: fieldPath('gear', item.id, 'kcalPerKg'),
        })),
        { label: 'Energy of one full ration', value: kcalText(fullKcal) },
      ],
      result: { value: result, text: rationText(result) },
      range: { bounds: [], note: 'No range: it settles, or the plan is not calculated.' },
      instead: null,
      sourceKeys: ['our-judgement'],
      ignores: 'appetite, body fat that may be used, and the energy’s own ± 20 %.',
      others: null,
    },
  ]
}

export const rationText = (ration: number) => `${numberText(ration, 2)} of a full ration`
