// What is eaten, burnt and bought where: rations and nights consumed up to each moment, the sections between
// resupplies, and so how much of each kind of supply is aboard at each moment.

import type { Plan } from '../plan/types'
import type { Route } from './route'

/** The ways in which a thing's amount changes along the trip. `Again`: bought anew at each resupply. */
export const STREAMS = ['kept', 'dailyAgain', 'dailyOnce', 'nightlyAgain', 'nightlyOnce', 'spread'] as const
export type Stream = (typeof STREAMS)[number]

/** How much of each stream is aboard (rations, nights, or a share of the whole), and used since the last bin. */
export interface Stock {
  left: Record<Stream, number>
  used: Record<Stream, number>
  /** Of others' food that is carried with it, by the owner: their rations are not the carrier's. */
  of?: ReadonlyMap<string, Stock>
}

/** A stream as it is (`left`), or the rubbish it leaves when it is used (`used`). */
export interface Supply {
  stream: Stream
  state: 'left' | 'used'
}

/** Every supply, in the order in which accounts and amounts are listed. */
export const SUPPLIES: readonly Supply[] = STREAMS.flatMap(stream => [
  { stream, state: 'left' } as const,
  { stream, state: 'used' } as const,
])

/** How many units of each of `SUPPLIES` a stock has, and then of those of each other owner. */
export function unitsOf(stock: Stock): number[] {
  const units = SUPPLIES.map(({ stream, state }) => stock[state][stream])
  return stock.of ? [...units, ...[...stock.of.values()].flatMap(unitsOf)] : units
}

/** The stock at each of the route's moments, when day `d` eats `rations[d]` full rations. */
export function stockAtMoments(plan: Plan, route: Route, rations: number[]): Stock[] {
  const eaten = rationsEaten(plan, route, rations)
  const nights = nightsCooked(plan, route)
  const spread = route.moments.map(m => (route.hours > 0 ? m.hours / route.hours : 0))
  const sectionEnd = sectionEnds(plan, route)
  const lastBin = lastBins(plan, route)
  const end = route.moments.length - 1
  const afterEnd = plan.trip.meals.supperAfterEnd ? 0 : plan.trip.meals.supper * rations[rations.length - 1]!
  const spare = spareRationsOf(plan, rations)

  return route.moments.map((_, m) => {
    const until = sectionEnd[m]!
    const bin = lastBin[m]!
    const since = (total: number[]) => total[m]! - (bin < 0 ? 0 : total[bin]!)
    const toEnd = eaten[end]! - eaten[m]! + afterEnd + spare
    const toSectionEnd = eaten[until]! - eaten[m]! + (until === end ? afterEnd : 0) + spare
    return {
      left: {
        kept: 1,
        dailyAgain: toSectionEnd,
        dailyOnce: toEnd,
        nightlyAgain: nights[until]! - nights[m]!,
        nightlyOnce: nights[end]! - nights[m]!,
        spread: 1 - spread[m]!,
      },
      used: {
        kept: 0,
        dailyAgain: since(eaten),
        dailyOnce: since(eaten),
        nightlyAgain: since(nights),
        nightlyOnce: since(nights),
        spread: since(spread),
      },
    }
  })
}

/** Full rations carried to the end and never eaten: spare days count at the mean ration. */
export function spareRationsOf({ trip }: Plan, rations: number[]): number {
  return trip.meals.spareDays * mean(rations)
}

/** Rations eaten from the pack from the start up to each moment. */
function rationsEaten({ trip: { stops, meals } }: Plan, route: Route, rations: number[]): number[] {
  let eaten = 0
  return route.moments.map(({ stop, phase }) => {
    if (phase === 'arrive') eaten += onTheWay(stop - 1)
    else if (stop > 0 && stops[stop]!.meals === 'carried') eaten += inCamp(stop)
    return eaten
  })

  function onTheWay(leg: number): number {
    const day = route.days[route.legs[leg]!.day]!
    const share = day.hours > 0 ? route.legs[leg]!.hours / day.hours : 1 / day.legs.length
    return meals.trail * share * rations[route.legs[leg]!.day]!
  }

  /** Supper of the day that ends here, whole rest days, breakfast of the day that begins. */
  function inCamp(stop: number): number {
    const { nights } = stops[stop]!
    if (nights === 0) return 0
    const first = route.legs[stop - 1]!.day
    const restDays = rations.slice(first + 1, first + nights)
    return meals.supper * rations[first]! + sum(restDays) + meals.breakfast * rations[first + nights]!
  }
}

/** Nights with carried meals slept from the start up to each moment. */
function nightsCooked({ trip: { stops } }: Plan, route: Route): number[] {
  let cooked = 0
  return route.moments.map(({ stop, phase }) => {
    if (phase === 'depart' && stops[stop]!.meals === 'carried') cooked += stops[stop]!.nights
    return cooked
  })
}

/** For each moment, the moment that ends its section: the departure of the next resupply stop, or the end. */
function sectionEnds({ trip: { stops } }: Plan, route: Route): number[] {
  const ends = new Array<number>(route.moments.length)
  let until = route.moments.length - 1
  for (let m = route.moments.length - 1; m >= 0; m--) {
    ends[m] = until
    const { stop, phase } = route.moments[m]!
    // Shopping is the last thing done here: up to and including the arrival, the old section still runs.
    if (phase === 'depart' && stops[stop]!.resupply) until = m
  }
  return ends
}

/** For each moment, the last departure (it included) from a stop where rubbish is dropped; −1 before the first. */
function lastBins({ trip: { stops } }: Plan, route: Route): number[] {
  let last = -1
  return route.moments.map(({ stop, phase }, m) => {
    if (phase === 'depart' && (stops[stop]!.resupply || stops[stop]!.meals === 'provided')) last = m
    return last
  })
}

const sum = (numbers: number[]) => numbers.reduce((total, n) => total + n, 0)
const mean = (numbers: number[]) => sum(numbers) / numbers.length
