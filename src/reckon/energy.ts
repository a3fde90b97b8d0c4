// Energy: what each leg and each day cost the walker at the load then carried, the rations that answer it, and the
// fuel that a night's cooking takes. The equations live in ../equations; here they meet the plan.

import {
  fuelG,
  kcalPerWattHour,
  legPowerRanges,
  legPowerWPerKg,
  restingKcalPerDay,
  restingWPerKg,
  terrainFactors,
} from '../equations'
import type { Carrier, Fuel, Item, Plan } from '../plan/types'
import type { Route } from './route'
import type { Moment } from './types'

/** Under this age no energy figure is given: the equations know adults only. */
export const ADULT_ENERGY_FROM_YEARS = 14
export const ASSUMED = { heightCm: 170, ageYears: 35 }
/** Hours off the trail cost this many times the resting energy: a judgement of ours. */
export const CAMP_FACTOR = 1.4

export interface Body {
  restingKcal: number
  restingWPerKg: number
  /** Height or age was not given. */
  assumed: boolean
}

export interface Energy {
  /** `beyondReason`: the load was past what the equation is followed to, and was taken at that end. */
  legs: { watts: number; kcal: number; atLimit: boolean; beyondReason: boolean }[]
  days: { kcalWalking: number; kcalTotal: number }[]
}

/** The carrier's resting energy; null for children under 14. */
export function bodyOf({ massKg, heightCm, ageYears, sex }: Carrier): Body | null {
  if (ageYears !== null && ageYears < ADULT_ENERGY_FROM_YEARS) return null
  const known = { heightCm: heightCm ?? ASSUMED.heightCm, ageYears: ageYears ?? ASSUMED.ageYears }
  const given = restingKcalPerDay({ massKg, sex, ...known })
  // A height no equation knows is treated as not given.
  const resting = given.ok ? given : restingKcalPerDay({ massKg, sex, ...known, heightCm: ASSUMED.heightCm })
  if (!resting.ok) return null
  const rate = restingWPerKg({ kcalPerDay: resting.value, massKg })
  if (!rate.ok) return null
  return {
    restingKcal: resting.value,
    restingWPerKg: rate.value,
    assumed: heightCm === null || ageYears === null || !given.ok,
  }
}

/** Energy of every leg at the mean of the loads it is begun and ended with, and of every day. */
export function energyOf(plan: Plan, route: Route, moments: Moment[], body: Body | null): Energy | null {
  if (!body) return null
  const { massKg } = plan.carrier
  const legs = route.legs.map(({ km, ascentM, descentM, hours }, i) => {
    // The moments of leg i: the departure from stop i and the arrival at stop i + 1.
    const contentsKg = (moments[2 * i]!.kg.total + moments[2 * i + 1]!.kg.total) / 2
    const loadShare = (contentsKg + plan.settings.packKgForEnergy) / massKg
    // Nobody walks with this: a ration that asks for it never settles.
    const beyondReason = loadShare > legPowerRanges.loadShare.max
    const power = legPowerWPerKg({
      km,
      ascentM,
      descentM,
      hours,
      loadShare: Math.min(loadShare, legPowerRanges.loadShare.max),
      terrainFactor: terrainFactors[plan.trip.stops[i + 1]!.leg!.ground].factor,
      restingWPerKg: body.restingWPerKg,
    })
    // The schema and the clamps above hold every input inside the equation's ranges.
    if (!power.ok) throw new RangeError(`walking power: ${power.field} is ${power.got}`)
    const watts = power.value.wattsPerKg * massKg
    return { watts, kcal: watts * hours * kcalPerWattHour, atLimit: power.value.atLimit, beyondReason }
  })
  const days = route.days.map(day => {
    const kcalWalking = day.legs.reduce((sum, leg) => sum + legs[leg]!.kcal, 0)
    const offTrailHours = Math.max(0, 24 - day.hours)
    return { kcalWalking, kcalTotal: kcalWalking + (CAMP_FACTOR * body.restingKcal * offTrailHours) / 24 }
  })
  return { legs, days }
}

/** Full rations that each day's energy asks for, less the share the hiker goes without. */
export function rationsFrom({ gear, trip }: Pick<Plan, 'gear' | 'trip'>, { days }: Energy): number[] {
  const kcalPerRation = gear.reduce(
    (sum, item) => (item.use === 'daily' ? sum + item.massKg * item.count * (item.kcalPerKg ?? 0) : sum),
    0,
  )
  return days.map(({ kcalTotal }) => (kcalTotal * (1 - trip.meals.deficit)) / kcalPerRation)
}

/** The gear with the mass of what says what fuel it must be, worked out. */
export function withFuelMass(gear: Item[]): Item[] {
  return gear.map(item => (item.fuel ? { ...item, massKg: fuelMassOf(item.fuel) } : item))
}

/** Fuel for one night, kg. */
function fuelMassOf(fuel: Fuel): number {
  const grams = fuelG(fuel)
  // The schema holds a fuel's fields inside the equation's ranges.
  if (!grams.ok) throw new RangeError(`fuel: ${grams.field} is ${grams.got}`)
  return grams.value / 1000
}
