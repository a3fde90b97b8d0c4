// What the reader of a Reckoning must know besides its numbers: shortfalls, assumptions, limits that were met.

import { maxLitresPerDay } from '../equations'
import type { Plan } from '../plan/types'
import type { Body, Energy } from './energy'
import { heatTableRate, type Rate } from './heat'
import type { Route } from './route'
import type { Need, Notice } from './types'
import { linerKgOf } from './verdicts'
import type { WaterPlan } from './water'

interface Findings {
  body: Body | null
  energy: Energy | null
  rates: Rate[]
  legLitres: number[]
  water: WaterPlan
}

export function noticesOf(
  plan: Plan,
  route: Route,
  { body, energy, rates, legLitres, water }: Findings,
): Notice[] {
  const { stops } = plan.trip
  const onLegs = (
    code: 'energy-out-of-range' | 'air-assumed' | 'water-cap-hour',
    holds: (leg: number) => boolean,
  ) => route.legs.flatMap((_, i) => (holds(i) ? [{ code, leg: i, name: stops[i + 1]!.name }] : []))
  return [
    ...water.carries.flatMap(({ stop, shortLitres }): Notice[] =>
      shortLitres > 0 ? [{ code: 'water-short', stop, litres: shortLitres }] : [],
    ),
    ...(water.capacityLitres === null ? [{ code: 'water-containers-missing' } as const] : []),
    ...(body === null ? [{ code: 'energy-not-for-children' } as const] : []),
    ...(body?.assumed ? [{ code: 'resting-assumed' } as const] : []),
    ...onLegs('energy-out-of-range', leg => energy !== null && energy.legs[leg]!.atLimit),
    ...onLegs('air-assumed', leg => rates[leg]!.airAssumed),
    ...onLegs('water-cap-hour', leg => rates[leg]!.capped),
    ...daysOverTheCap(plan, route, legLitres),
    ...belowTheHeatTable(plan, route, energy),
  ]
}

/** Of body mass: more than is commonly carried, whatever the hiker's own limit. Common practice and judgement. */
const COMMON_SHARE = { adult: 0.3, under18: 0.2 }
const ADULT_FROM_YEARS = 18

/** The set-up that is lightest to carry, or the contents alone without packs, against what is commonly carried. */
export function loadNotices(plan: Plan, { peakLoadFullWaterKg }: Need): Notice[] {
  const { carrier, packs } = plan
  const carriedKg = packs.flatMap(pack =>
    pack.setups.map(({ massKg }) => peakLoadFullWaterKg + linerKgOf(plan, pack) + massKg),
  )
  const leastKg = packs.length ? Math.min(...carriedKg) : peakLoadFullWaterKg
  const share = leastKg / carrier.massKg
  const limit =
    carrier.ageYears !== null && carrier.ageYears < ADULT_FROM_YEARS
      ? COMMON_SHARE.under18
      : COMMON_SHARE.adult
  return share > limit ? [{ code: 'load-over-common-practice', share, limit }] : []
}

/** Legs in the heat for which the hiker's own rate is less than the table's for their effort. */
function belowTheHeatTable(plan: Plan, route: Route, energy: Energy | null): Notice[] {
  const { stops, water } = plan.trip
  const { litresPerHour } = water
  if (litresPerHour === 'from-heat') return []
  return route.legs.flatMap((_, leg): Notice[] => {
    const tableLitresPerHour = heatTableRate(plan, leg, energy)
    if (tableLitresPerHour === null || litresPerHour >= tableLitresPerHour) return []
    const { name } = stops[leg + 1]!
    return [{ code: 'water-below-heat-table', leg, name, litresPerHour, tableLitresPerHour }]
  })
}

/** With water from heat: days whose drinking, on the trail and in the camp that ends them, passes the daily cap. */
function daysOverTheCap({ trip }: Plan, route: Route, legLitres: number[]): Notice[] {
  if (trip.water.litresPerHour !== 'from-heat') return []
  return route.days.flatMap(({ legs, sleepsAt }, i): Notice[] => {
    const walking = legs.reduce((sum, leg) => sum + legLitres[leg]!, 0)
    const litres = walking + (sleepsAt === null ? 0 : trip.water.campLitres)
    return litres > maxLitresPerDay ? [{ code: 'water-cap-day', day: i + 1, litres }] : []
  })
}
