// Why a day is as long and as heavy as it is: its legs, and the load at its first and its last moment.

import { routeOf } from '../../reckon'
import { whyDayEnergy } from './energy'
import { whyMomentLitres, whyMomentLoad } from './need'
import { whyRation } from './ration'
import { sumOf } from './sum'
import type { Explanation, WhyContext } from './types'
import { legName, legPath } from './words'

/** The whole row of a day: way, hours, loads, litres, energy and ration. */
export function whyDay(context: WhyContext, index: number): Explanation[] {
  const { reckoning, formats, plan } = context
  const { legs } = routeOf(plan).days[index]!
  const { day } = reckoning.days[index]!
  const rest = [...whyDayEnergy(context, index), ...whyRation(context, index)]
  if (legs.length === 0) return rest
  const sum = (title: string, says: string, of: 'km' | 'hours') =>
    sumOf({
      title: `${title} of day ${day}`,
      says,
      kind: of === 'km' ? 'distance' : 'duration',
      system: formats.system,
      show: of === 'km' ? formats.km : formats.hours,
      parts: legs.map(leg => ({
        label: `to ${legName(context, leg)}`,
        value: of === 'km' ? plan.trip.stops[leg + 1]!.leg!.km : reckoning.legs[leg]!.hours,
        path: legPath(context, leg, of),
      })),
    })
  const mine = reckoning.moments.flatMap((moment, i) => (moment.day === day ? [i] : []))
  const sets = mine.find(i => reckoning.moments[i]!.phase === 'depart')
  const ends = mine.at(-1)
  const loads = sets === undefined || ends === undefined ? [] : [sets, ends]
  return [
    sum('Way', 'Its legs, one after the other.', 'km'),
    sum('Walking time', 'Its legs, one after the other; tap each under Trip. Without breaks.', 'hours'),
    ...loads.map(i => whyMomentLoad(context, i)),
    ...loads.map(i => whyMomentLitres(context, i)),
    ...rest,
  ]
}
