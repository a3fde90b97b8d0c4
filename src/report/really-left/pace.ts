// The pace really walked, from the times that were noted, and the rest of the trip with it.

import { LIMITS, type Plan, type TripLog } from '../../plan'
import { type OnTheWay, onTheWay, type Reckoning, reckon } from '../../reckon'

const DAY_MIN = 1440

/** Beyond these times the plan's, times were mistyped rather than walked. */
const SANE = { min: 0.25, max: 3 } as const
const isSaneBy = (factor: number) => factor >= SANE.min && factor <= SANE.max

/** On a shorter leg one break may be several times the walk: only the sum tells. */
const TELLING_HOURS = 1

/** The clock time of leaving a stop, minutes: as noted, or where no night was spent there, of reaching it. */
function leftAtMinute(log: TripLog, id: string, nights: number): number | undefined {
  const of = (times: TripLog['reached']) => (times && Object.hasOwn(times, id) ? times[id] : undefined)
  return of(log.setOff) ?? (nights === 0 ? of(log.reached) : undefined)
}

export interface Walked {
  legs: number
  hours: number
  plannedHours: number
  /** Hours walked for each one planned. */
  factor: number
  /** Over all of them, and on each leg of an hour or more. */
  isSane: boolean
}

interface Asked {
  plan: Plan
  reckoning: Reckoning
  log: TripLog
  /** The draft's ids of the stops. */
  stopIds: readonly string[]
}

/** Over all legs whose times are noted and that follow the plan's pace; null where there are none. */
export function walkedPace({ plan, reckoning, log, stopIds }: Asked): Walked | null {
  let [legs, hours, plannedHours, isSane] = [0, 0, 0, true]
  for (const [i, leg] of reckoning.legs.entries()) {
    const [from, to] = [plan.trip.stops[i]!, plan.trip.stops[i + 1]!]
    if (to.leg?.hours != null || leg.hours === 0) continue
    const start = leftAtMinute(log, stopIds[i] ?? '', from.nights)
    const end = log.reached?.[stopIds[i + 1] ?? '']
    if (start === undefined || end === undefined || start === end) continue
    legs += 1
    const walked = ((end - start + DAY_MIN) % DAY_MIN) / 60
    if (leg.hours >= TELLING_HOURS && !isSaneBy(walked / leg.hours)) isSane = false
    hours += walked
    plannedHours += leg.hours
  }
  if (legs === 0) return null
  const factor = hours / plannedHours
  return { legs, hours, plannedHours, factor, isSane: isSane && isSaneBy(factor) }
}

/** The plan with the legs after a stop at that pace; a walking time the hiker typed stays. */
function withPaceFrom(
  plan: Plan,
  reckoning: Reckoning,
  { from, factor }: { from: number; factor: number },
): Plan {
  const stops = plan.trip.stops.map((stop, i) => {
    if (i <= from || !stop.leg || stop.leg.hours !== null) return stop
    const hours = Math.min(LIMITS.leg.hours.max, reckoning.legs[i - 1]!.hours * factor)
    return { ...stop, leg: { ...stop.leg, hours } }
  })
  return { ...plan, trip: { ...plan.trip, stops } }
}

export interface Ahead {
  plan: Plan
  reckoning: Reckoning
  left: OnTheWay
  /** Each stop ahead: hours of walking from here, with this pace and as planned; the clock time while no night lies between. */
  stops: { stop: number; hours: number; plannedHours: number; minute: number | null }[]
}

/** The rest of the trip at the pace walked, from leaving a stop on the way; null where it does not settle so. */
export function aheadAt(
  { plan, reckoning, log, stopIds }: Asked,
  stop: number,
  factor: number,
): Ahead | null {
  const paced = withPaceFrom(plan, reckoning, { from: stop, factor })
  const result = reckon(paced)
  if (!result.ok) return null
  const { stops } = plan.trip
  const start = leftAtMinute(log, stopIds[stop] ?? '', stops[stop]!.nights)
  let [hours, plannedHours, isToday] = [0, 0, true]
  const ahead = stops.slice(stop + 1).map((to, i) => {
    const leg = stop + i
    hours += result.reckoning.legs[leg]!.hours
    plannedHours += reckoning.legs[leg]!.hours
    const minute = start === undefined || !isToday ? null : Math.round(start + 60 * hours) % DAY_MIN
    if (to.nights > 0) isToday = false
    return { stop: leg + 1, hours, plannedHours, minute }
  })
  return {
    plan: paced,
    reckoning: result.reckoning,
    left: onTheWay(paced, result.reckoning, stop, 0),
    stops: ahead,
  }
}
