// Energy: what each leg and each day cost the walker at the load then carried, the rations that answer it, and the
// fuel that a night's cooking takes. The equations live in ../equations; here they meet the plan.

import {
  fuelG,
  kcalPerWattHour,
  type LegPower,
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

/** What walking a leg costs, and what that was worked out with. */
export interface WalkingEffort extends LegPower {
  watts: number
  kcal: number
  /** Mean contents over the leg; the pack's own mass comes from the settings. */
  contentsKg: number
  /** Contents and pack for each kg of body, as far as the equation is followed. */
  loadShare: number
  terrainFactor: number
  /** The load was past what the equation is followed to, and was taken at that end. */
  beyondReason: boolean
}

export interface Energy {
  legs: WalkingEffort[]
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
    const askedShare = (contentsKg + plan.settings.packKgForEnergy) / massKg
    // Nobody walks with more: a ration that asks for it never settles.
    const loadShare = Math.min(askedShare, legPowerRanges.loadShare.max)
    const terrainFactor = terrainFactors[plan.trip.stops[i + 1]!.leg!.ground].factor
    const { restingWPerKg } = body
    const power = legPowerWPerKg({ km, ascentM, descentM, hours, loadShare, terrainFactor, restingWPerKg })
    // The schema and the clamps above hold every input inside the equation's ranges.
    if (!power.ok) throw new RangeError(`walking power: ${power.field} is ${power.got}`)
    const watts = power.value.wattsPerKg * massKg
    return {
      ...power.value,
      watts,
      kcal: watts * hours * kcalPerWattHour,
      contentsKg,
      loadShare,
      terrainFactor,
      beyondReason: askedShare > loadShare,
    }
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
