// The route: how long each leg takes, where and when each moment is, and which legs make a day.

import { blendedHours } from '../equations'
import type { Plan, Stop } from '../plan/types'
import type { Phase } from './types'

export interface Walk {
  km: number
  ascentM: number
  descentM: number
  hours: number
  /** Index into `Route.days`. */
  day: number
}

export interface Day {
  /** Indexes into `Route.legs`; a rest day has none. */
  legs: number[]
  hours: number
  /** The stop whose night ends this day; null on the last day. */
  sleepsAt: number | null
}

export interface Moments {
  stop: number
  phase: Phase
  day: number
  km: number
  hours: number
}

export interface Route {
  /** `legs[i]` leads from stop i to stop i + 1. */
  legs: Walk[]
  days: Day[]
  moments: Moments[]
  hours: number
}

export function routeOf({ trip: { stops, pace } }: Plan): Route {
  const legs: Walk[] = stops.flatMap(({ leg }) =>
    leg
      ? [
          {
            km: leg.km,
            ascentM: leg.ascentM,
            descentM: leg.descentM,
            hours: leg.hours ?? hoursOf(leg, pace),
            day: 0,
          },
        ]
      : [],
  )
  const days = daysOf(stops, legs)
  days.forEach((day, index) => {
    for (const leg of day.legs) legs[leg]!.day = index
  })
  return { legs, days, moments: momentsOf(stops, legs), hours: legs.reduce((sum, leg) => sum + leg.hours, 0) }
}

function hoursOf(leg: NonNullable<Stop['leg']>, pace: Plan['trip']['pace']): number {
  const hours = blendedHours({ km: leg.km, ascentM: leg.ascentM, descentM: leg.descentM, pace })
  // The plan's schema holds every leg and pace inside the equation's range.
  if (!hours.ok) throw new RangeError(`walking time: ${hours.field} is out of range`)
  return hours.value
}

/** A day is the stretch between stops with nights; each further night at a stop is a rest day of its own. */
function daysOf(stops: Stop[], legs: Walk[]): Day[] {
  const days: Day[] = []
  let walked: number[] = []
  const close = (sleepsAt: number | null) => {
    days.push({ legs: walked, hours: walked.reduce((sum, leg) => sum + legs[leg]!.hours, 0), sleepsAt })
    walked = []
  }
  stops.forEach((stop, i) => {
    if (i > 0) walked.push(i - 1)
    for (let night = 0; night < stop.nights; night++) close(i)
  })
  close(null)
  return days
}

function momentsOf(stops: Stop[], legs: Walk[]): Moments[] {
  const moments: Moments[] = []
  let day = 1
  let km = 0
  let hours = 0
  stops.forEach((stop, i) => {
    const leg = legs[i - 1]
    if (leg) {
      km += leg.km
      hours += leg.hours
      moments.push({ stop: i, phase: 'arrive', day, km, hours })
    }
    day += stop.nights
    if (i < stops.length - 1) moments.push({ stop: i, phase: 'depart', day, km, hours })
  })
  return moments
}

/** The index of a stop's departure among the moments: that of the start, then the arrival and the departure of each stop. */
export const departureOf = (stop: number): number => 2 * stop
