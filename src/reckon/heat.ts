// Litres drunk per walking hour on each leg: the hiker's own rate, or one from heat and effort.

import { heatCategories, simplifiedWbgtC, type ThirstyRate, thirstyRate, typicalWatts } from '../equations'
import type { Plan } from '../plan/types'
import type { Energy } from './energy'
import type { Route } from './route'

export const ASSUMED_AIR_C = 20
/** On assumed air never less than the plain rate of a plan that says nothing of heat. */
export const LEAST_ON_ASSUMED_AIR = 0.5

/** The air of a leg: its own, or where it does not say, the trip's weather. */
export interface LegAir {
  airC: number
  /** No air temperature was given for the leg or for the trip. */
  assumed: boolean
  humidity: number
  fullSun: boolean
  wbgtC: number
}

export function airOfLeg({ trip: { stops, weather } }: Plan, leg: number): LegAir {
  const own = stops[leg + 1]!.leg!
  const given = own.airC ?? weather.airC
  const airC = given ?? ASSUMED_AIR_C
  const humidity = own.humidity ?? weather.humidity
  const wbgt = simplifiedWbgtC({ airC, humidity })
  // The schema holds temperature and humidity inside the equation's range.
  if (!wbgt.ok) throw new RangeError(`WBGT: ${wbgt.field} is ${wbgt.got}`)
  return { airC, assumed: given === null, humidity, fullSun: own.sun ?? weather.sun, wbgtC: wbgt.value }
}

export interface HeatRate extends ThirstyRate {
  /** The air is assumed and the rate would have been less than the plain one. */
  raised: boolean
}

/** The rate of a leg from its air and the walking power, W; without one (children, the first round) as for moderate work. */
export function heatRateAt({ wbgtC, fullSun, assumed }: LegAir, watts: number | null): HeatRate {
  const rate = thirstyRate({ wbgtC, fullSun, watts: watts ?? typicalWatts.moderate })
  if (!rate.ok) throw new RangeError(`water rate: ${rate.field} is ${rate.got}`)
  const raised = assumed && rate.value.litresPerHour < LEAST_ON_ASSUMED_AIR
  return {
    ...rate.value,
    raised,
    litresPerHour: raised ? LEAST_ON_ASSUMED_AIR : rate.value.litresPerHour,
  }
}

export interface Rate {
  litresPerHour: number
  capped: boolean
  /** The leg's air temperature counts and was not given. */
  airAssumed: boolean
  /** Where the rate comes from the heat; null where it is the hiker's own. */
  heat: { air: LegAir; rate: HeatRate } | null
}

/** One rate a leg. */
export function ratesOf(plan: Plan, route: Route, energy: Energy | null): Rate[] {
  const { litresPerHour, heatShare = 1 } = plan.trip.water
  return route.legs.map((_, leg) => {
    if (litresPerHour !== 'from-heat') return { litresPerHour, capped: false, airAssumed: false, heat: null }
    const air = airOfLeg(plan, leg)
    const rate = heatRateAt(air, wattsOf(energy, leg))
    return {
      litresPerHour: rate.litresPerHour * heatShare,
      capped: rate.capped,
      airAssumed: air.assumed,
      heat: { air, rate },
    }
  })
}

const wattsOf = (energy: Energy | null, leg: number) => (energy === null ? null : energy.legs[leg]!.watts)

/** What the heat table asks for in an hour of a leg; null where it says nothing: cooler, or the air is not given. */
export function heatTableRate(plan: Plan, leg: number, energy: Energy | null): number | null {
  const air = airOfLeg(plan, leg)
  if (air.assumed || air.wbgtC < heatCategories[0]!.fromWbgtC) return null
  return heatRateAt(air, wattsOf(energy, leg)).tableLitresPerHour
}
