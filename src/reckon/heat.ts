// Litres drunk per walking hour on each leg: the hiker's own rate, or one from heat and effort.

import { simplifiedWbgtC, typicalWatts, type WorkClass, waterRate } from '../equations'
import type { Plan } from '../plan/types'
import type { Energy } from './energy'
import type { Route } from './route'

export const ASSUMED_AIR_C = 20

export interface Rate {
  litresPerHour: number
  capped: boolean
  /** The leg's air temperature was not given. */
  airAssumed: boolean
  wbgtC: number | null
  workClass: WorkClass | null
}

/** One rate a leg. Without energy figures (children, or the first round) the effort is taken as moderate. */
export function ratesOf({ trip }: Plan, route: Route, energy: Energy | null): Rate[] {
  const { litresPerHour } = trip.water
  return route.legs.map((_, i) => {
    if (litresPerHour !== 'from-heat')
      return { litresPerHour, capped: false, airAssumed: false, wbgtC: null, workClass: null }
    const { airC, humidity } = trip.stops[i + 1]!.leg!
    const wbgt = simplifiedWbgtC({ airC: airC ?? ASSUMED_AIR_C, humidity })
    // The schema holds temperature and humidity inside the equation's range.
    if (!wbgt.ok) throw new RangeError(`WBGT: ${wbgt.field} is ${wbgt.got}`)
    const watts = energy ? energy.legs[i]!.watts : typicalWatts.moderate
    const rate = waterRate({ wbgtC: wbgt.value, watts })
    if (!rate.ok) throw new RangeError(`water rate: ${rate.field} is ${rate.got}`)
    return { ...rate.value, airAssumed: airC === null, wbgtC: wbgt.value }
  })
}
