// Walking time, resting and walking energy and water from heat, written from the model page as by other hands:
// plain numbers in, plain numbers out, nothing shared with the equations under src/.
// Sources are those of the page: DIN 33466, Mifflin-St Jeor 1990, Looney et al. 2022, TB MED 507 (2003).

import type { Carrier, Fuel, Leg, Pace, Trip } from '../../src/plan'

export function walkingHours(leg: Leg, pace: Pace): number {
  if (leg.hours !== null) return leg.hours
  const flat = leg.km / pace.flatKmh
  const vertical = leg.ascentM / pace.climbMPerH + leg.descentM / pace.descendMPerH
  return flat > vertical ? flat + vertical / 2 : vertical + flat / 2
}

/** kcal a day; null under 14 years. Heights under 100 cm count as not given: nobody was studied there. */
export function restingKcal(carrier: Carrier): { kcal: number; assumed: boolean } | null {
  if (carrier.ageYears !== null && carrier.ageYears < 14) return null
  let assumed = false
  let { heightCm, ageYears } = carrier
  if (heightCm === null || heightCm < 100) {
    heightCm = 170
    assumed = true
  }
  if (ageYears === null) {
    ageYears = 35
    assumed = true
  }
  const common = 10 * carrier.massKg + 6.25 * heightCm - 5 * ageYears
  const man = common + 5
  const woman = common - 161
  if (carrier.sex === 'male') return { kcal: man, assumed }
  if (carrier.sex === 'female') return { kcal: woman, assumed }
  return { kcal: (man + woman) / 2, assumed }
}

const TERRAIN = { paved: 1, trail: 1.1, rough: 1.2, brush: 1.5, sand: 2.1 }

/** Watts of the whole body on a leg, and whether its speed or grade is beyond the equation. */
export function legWatts(leg: {
  km: number
  ascentM: number
  descentM: number
  hours: number
  ground: Leg['ground']
  loadKg: number
  massKg: number
  restingKcal: number
}): { watts: number; outOfRange: boolean } {
  const { km, ascentM, descentM, hours, massKg } = leg
  const speed = km === 0 ? 0 : (km * 1000) / (hours * 3600)
  const S = Math.min(speed, 1.97)
  const eta = TERRAIN[leg.ground]
  const load = 1 + 1.96 * (leg.loadKg / massKg) ** 1.36
  const resting = (leg.restingKcal * 0.0484259) / massKg
  const perKg = (G: number) => {
    const grade = 0.34 * S * G * (1 - 1.05 ** (1 - 1.1 ** (G + 32)))
    return resting + (0.19 + eta * (1.78 * S ** 0.58 + 0.27 * S ** 4 + grade)) * load
  }
  const both = ascentM + descentM
  if (both === 0) return { watts: perKg(0) * massKg, outOfRange: speed > 1.97 }
  const percent = both / (10 * km)
  const G = Math.min(percent, 45)
  const shareUp = ascentM / both
  const watts = (shareUp * perKg(G) + (1 - shareUp) * perKg(-G)) * massKg
  return { watts, outOfRange: speed > 1.97 || percent > 45 }
}

const QUART = 0.946352946
const COLUMN = { easy: 0, moderate: 1, hard: 2 }
const TABLE: [fromWbgtC: number, ...quarts: [number, number, number]][] = [
  [32.2, 1, 1, 1],
  [31.1, 0.75, 0.75, 1],
  [29.4, 0.75, 0.75, 1],
  [27.8, 0.5, 0.75, 1],
  [25.6, 0.5, 0.75, 0.75],
]
const AT_5 = [0.2, 0.3, 0.45]
const AT_15 = [0.3, 0.45, 0.6]
const AT_25_6 = [0.5 * QUART, 0.75 * QUART, 0.75 * QUART]

/** What a leg is walked in: each word its own, or the trip's. `airC` null where neither says. */
export function weatherOf({ stops, weather }: Trip, leg: number) {
  const own = stops[leg + 1]!.leg!
  return {
    airC: own.airC === null ? weather.airC : own.airC,
    humidity: own.humidity === null ? weather.humidity : own.humidity,
    sun: own.sun === null ? weather.sun : own.sun,
  }
}

export function wbgtOf(air: { airC: number; humidity: number }): number {
  const vapour = air.humidity * 6.105 * Math.exp((17.27 * air.airC) / (237.7 + air.airC))
  return 0.567 * air.airC + 0.393 * vapour + 3.94
}

/** Litres to carry for an hour: the table's, what the thirsty want on top, the least on assumed air, the cap. */
export function heatLitresPerHour(trip: Trip, leg: number, watts: number | null): number {
  const { airC, humidity, sun } = weatherOf(trip, leg)
  const wbgt = wbgtOf({ airC: airC ?? 20, humidity })
  let thirst = 0.25 * QUART * (sun ? 2 : 1)
  if (wbgt <= 15) thirst = 0
  else if (wbgt < 25.6) thirst *= (wbgt - 15) / (25.6 - 15)
  const rate = tableLitresPerHour(wbgt, watts) + thirst
  return Math.min(1.42, airC === null ? Math.max(0.5, rate) : rate)
}

/** The table from 25.6 °C WBGT, the planning rates below; without an effort, as moderate. */
export function tableLitresPerHour(wbgt: number, watts: number | null): number {
  const work = watts === null || (watts >= 337 && watts < 512) ? 'moderate' : watts < 337 ? 'easy' : 'hard'
  const column = COLUMN[work]
  for (const [from, ...quarts] of TABLE) if (wbgt >= from) return quarts[column]! * QUART
  if (wbgt <= 5) return AT_5[column]!
  if (wbgt <= 15) return AT_5[column]! + ((wbgt - 5) / 10) * (AT_15[column]! - AT_5[column]!)
  return AT_15[column]! + ((wbgt - 15) / 10.6) * (AT_25_6[column]! - AT_15[column]!)
}

const FUEL = {
  gas: [45.7, 0.45],
  'white-gas': [44.9, 0.45],
  ethanol: [26.8, 0.45],
  methanol: [19.9, 0.45],
  tablet: [28.1, 0.35],
} as const

/** Where water boils, by the rule of thumb 100 − h/300: within 0.15 K of the steam tables to 6000 m. */
const boilsAtC = (altitudeM: number) => 100 - altitudeM / 300

/** Fuel for one night, kg, margin 1.25 included; good to 0.3 %, for the boiling point is a rule of thumb. */
export function roughFuelKg(fuel: Fuel): number {
  const [megajoulesPerKg, usual] = FUEL[fuel.kind]
  const boil = fuel.boilLitres * 4.19 * (boilsAtC(fuel.altitudeM) - fuel.startC)
  const melt = fuel.meltLitres * (2.09 * 10 + 333.55 + 4.19 * 10)
  return (1.25 * (boil + melt)) / (megajoulesPerKg * 1000 * (fuel.efficiency ?? usual))
}
