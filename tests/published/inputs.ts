// From a case's inputs, under the names of its source, to the quantities of our equations; and the cases that
// chain several equations, such as a whole day or a winter's fuel.

import {
  backpackingWPerKg,
  faoKcalPerDay,
  fuelForHeatG,
  fuelKinds,
  gradedWalkingWPerKg,
  heatToBoilKj,
  heatToMeltKj,
  litresPerQuart,
  naismithHours,
  restingKcalPerDay,
  restingWPerKg,
  saturationK,
  swissHours,
  swissMinPerKm,
  typicalWatts,
  waterRate,
  yamamotoKcal,
} from '../../src/equations'
import { type Inputs, value } from './cases'

/** The argument of the least value of f on a fine grid. */
export function argmin(
  f: (x: number) => number,
  { from, to, step }: { from: number; to: number; step: number },
) {
  let best = from
  for (let x = from; x < to; x += step) if (f(x) < f(best)) best = x
  return best
}

const number = (i: Inputs, name: string, otherwise: number) => (i.has(name) ? i(name) : otherwise)
export const air = (i: Inputs) => ({ airC: i('T_C'), humidity: i('RH') / 100 })
export const altitude = (i: Inputs) => ({ altitudeM: i.has('ft') ? i('ft') * 0.3048 : i('h_m') })
export const totals = (i: Inputs) => ({ km: i('km'), ascentM: i('up_m'), descentM: i('down_m') })
export const body = (i: Inputs) => ({
  massKg: i('kg'),
  heightCm: i('cm'),
  ageYears: i('yr'),
  sex: i.flag('male') ? ('male' as const) : ('female' as const),
})
export const walk = (i: Inputs) => ({
  bodyKg: i('W'),
  loadKg: i('L'),
  speedMPerS: i('V'),
  gradePercent: i('G'),
  terrainFactor: i('eta'),
})
export const graded = (speedMPerS: number, gradePercent: number) =>
  value(gradedWalkingWPerKg({ speedMPerS, gradePercent }))

export function naismith(i: Inputs): number {
  return value(
    naismithHours({
      km: i('km'),
      ascentM: i('up_m'),
      gentleDescentM: number(i, 'down_5_12deg_m', 0),
      steepDescentM: number(i, 'down_gt12deg_m', 0),
    }),
  )
}

export function fao(i: Inputs): number {
  const ageYears = i.has('band_from') ? i('band_from') : Number(i.text('band').split('-')[0])
  const sex = i.text('sex') === 'f' ? 'female' : 'male'
  return value(faoKcalPerDay({ massKg: i('kg'), ageYears, sex }))
}

export const yamamoto = (i: Inputs) =>
  value(
    yamamotoKcal({
      hours: i('hours'),
      km: i('km'),
      ascentM: 1000 * i('up_km'),
      descentM: 1000 * i('down_km'),
      bodyKg: i('body_plus_pack_kg'),
      loadKg: 0,
    }),
  )

export const dayHours = (i: Inputs) => value(swissHours(totals(i)))

/**
 * The worked day walks its two parts at their own Swiss speeds, where `legPowerWPerKg` takes one speed for
 * the leg, and converts exactly, 3600 / 4184 kcal a watt-hour: so the parts are summed here by hand.
 */
export function dayWalkKcal(i: Inputs): number {
  const kcalPerDay = value(restingKcalPerDay(body(i)))
  const state = {
    loadShare: i('L') / i('W'),
    terrainFactor: i('eta'),
    restingWPerKg: value(restingWPerKg({ kcalPerDay, massKg: i('W') })),
  }
  const heightM = i('up_m') + i('down_m')
  const parts = [
    { km: (i('km') * i('up_m')) / heightM, slope: heightM / 1000 / i('km') },
    { km: (i('km') * i('down_m')) / heightM, slope: -heightM / 1000 / i('km') },
  ]
  const wattHours = parts.map(({ km, slope }) => {
    const hours = (km * value(swissMinPerKm({ slope }))) / 60
    const pace = { speedMPerS: km / hours / 3.6, gradePercent: 100 * slope }
    return value(backpackingWPerKg({ ...state, ...pace })) * i('W') * hours
  })
  return (wattHours.reduce((sum, part) => sum + part, 0) * 3600) / 4184
}

export function dayTotalKcal(i: Inputs): number {
  const camp = (i('camp_par') * value(restingKcalPerDay(body(i))) * (24 - dayHours(i))) / 24
  return dayWalkKcal(i) + camp
}

export const dayBody = (run: (i: Inputs) => number) => (i: Inputs) => run(dayInputs(i))

/** The worked day names body mass W; the body functions ask for kg. */
function dayInputs(i: Inputs): Inputs {
  return Object.assign((name: string) => i(name === 'kg' ? 'W' : name), {
    has: i.has,
    text: i.text,
    flag: i.flag,
  })
}

export function tableRow(i: Inputs): number[] {
  const low = i('wbgt_F_low')
  const high = i.has('wbgt_F_high') && low < 90 ? i('wbgt_F_high') : low + 1
  const wbgtC = ((low + high) / 2 - 32) / 1.8
  const { easy, moderate, hard } = typicalWatts
  return [easy, moderate, hard].map(
    watts => value(waterRate({ wbgtC, watts })).litresPerHour / litresPerQuart,
  )
}

/** The pressure whose boiling point is a temperature, by halving. */
export function pressureAt(kelvin: number): number {
  let [low, high] = [611.213, 22_064_000]
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2
    if (value(saturationK({ pressurePa: middle })) < kelvin) low = middle
    else high = middle
  }
  return low
}

export const heating = (kind: keyof typeof fuelKinds) => () => fuelKinds[kind].lowerHeatingMjPerKg

export function gramsForLitres(i: Inputs, lowerHeatingMjPerKg: number): number {
  const litres = number(i, 'L', 1)
  const heatKj = value(heatToBoilKj({ litres, startC: number(i, 'T0', 10), endC: number(i, 'Tb', 100) }))
  return value(fuelForHeatG({ heatKj, lowerHeatingMjPerKg, efficiency: i('eta') }))
}

export function winterGrams(i: Inputs): number {
  const boil = value(heatToMeltKj({ litres: i('boil_from_snow_L'), snowC: -10, endC: 100 }))
  const melt = value(heatToMeltKj({ litres: i('melt_to_10C_L'), snowC: -10, endC: 10 }))
  const { lowerHeatingMjPerKg } = fuelKinds.gas
  return value(fuelForHeatG({ heatKj: boil + melt, lowerHeatingMjPerKg, efficiency: i('eta') }))
}
