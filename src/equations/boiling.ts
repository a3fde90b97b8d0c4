// Where water boils by altitude, and the heat it takes to bring water or snow there.
// Sources: isa-1975 (pressure), iapws-if97 (boiling point, coefficients from memory but held to the release's
// own check value, see the tests), water-heats (heat capacities and heat of fusion, from memory).

import { firstOutside, found, type Outcome, type Range } from './outcome'

export const altitudeRanges = {
  altitudeM: { min: -500, max: 9000, unit: 'm', source: 'our-judgement' },
} as const satisfies Record<string, Range>

export const saturationRanges = {
  pressurePa: { min: 611.213, max: 22_064_000, unit: 'Pa', source: 'iapws-if97' },
} as const satisfies Record<string, Range>

/** kJ per kg and K, or kJ per kg; one litre of water is taken as one kilogram. */
export const waterHeats = { water: 4.19, ice: 2.09, fusion: 333.55 } as const

const pressureFormula = (altitudeM: number) => 101_325 * (1 - 2.25577e-5 * altitudeM) ** 5.25588

/**
 * Air pressure in Pa at an altitude.
 *
 * Source: isa-1975: 101325 (1 − 2.25577e−5 h)^5.25588, made for 0 to 11 km.
 * Symbols: h = altitudeM. Ignores: weather, about ±3 %, or ±1 K of boiling point.
 *
 * @example
 * pressurePa({ altitudeM: 3000 }) // 70108.5
 */
export function pressurePa(place: { altitudeM: number }): Outcome<number> {
  return firstOutside(altitudeRanges, place) ?? found(pressureFormula(place.altitudeM))
}

/** n1…n10 of the saturation equation. */
const n = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const

/**
 * Temperature in K at which water boils under a pressure.
 *
 * Source: iapws-if97, eq. 31. Symbols: p = pressurePa / 1e6, β = p^(1/4), n1…n10 above.
 * Ignores: dissolved salts, a fraction of a kelvin.
 *
 * @example
 * saturationK({ pressurePa: 100000 }) // 372.755919
 */
export function saturationK(state: { pressurePa: number }): Outcome<number> {
  const refusal = firstOutside(saturationRanges, state)
  if (refusal) return refusal
  const beta = (state.pressurePa / 1e6) ** 0.25
  const e = beta ** 2 + n[2] * beta + n[5]
  const f = n[0] * beta ** 2 + n[3] * beta + n[6]
  const g = n[1] * beta ** 2 + n[4] * beta + n[7]
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g))
  return found((n[9] + d - Math.sqrt((n[9] + d) ** 2 - 4 * (n[8] + n[9] * d))) / 2)
}

/**
 * Boiling point of water in °C at an altitude.
 *
 * Source: isa-1975 for the pressure, iapws-if97 eq. 31 for the temperature.
 * Symbols: h = altitudeM. Ignores: weather.
 *
 * @example
 * boilingPointC({ altitudeM: 3000 }) // 89.97229
 */
export function boilingPointC(place: { altitudeM: number }): Outcome<number> {
  const pressure = pressurePa(place)
  if (!pressure.ok) return pressure
  const kelvin = saturationK({ pressurePa: pressure.value })
  return kelvin.ok ? found(kelvin.value - 273.15) : kelvin
}

const heatingRanges = {
  litres: { min: 0, max: 50, unit: 'L', source: 'our-judgement' },
  startC: { min: 0, max: 60, unit: '°C', source: 'our-judgement' },
  endC: { min: 60, max: 105, unit: '°C', source: 'our-judgement' },
} as const satisfies Record<string, Range>

const meltingRanges = {
  litres: heatingRanges.litres,
  snowC: { min: -60, max: 0, unit: '°C', source: 'our-judgement' },
  endC: { min: 0, max: 105, unit: '°C', source: 'our-judgement' },
} as const satisfies Record<string, Range>

/**
 * Heat in kJ to bring water to the boil.
 *
 * Source: water-heats: Q = 4.19 L (Tb − T0). Symbols: L = litres, T0 = startC, Tb = endC.
 * Ignores: the pot, evaporation, simmering.
 *
 * @example
 * heatToBoilKj({ litres: 1, startC: 10, endC: 100 }) // 377.1
 */
export function heatToBoilKj(water: { litres: number; startC: number; endC: number }): Outcome<number> {
  const refusal = firstOutside(heatingRanges, water)
  return refusal ?? found(water.litres * waterHeats.water * (water.endC - water.startC))
}

/**
 * Heat in kJ to melt snow and warm the water.
 *
 * Source: water-heats: Q = L (2.09 |Ts| + 333.55 + 4.19 T). Symbols: L = litres of water, Ts = snowC, T = endC.
 * Ignores: the pot, evaporation, water already in wet snow.
 *
 * @example
 * heatToMeltKj({ litres: 1, snowC: -10, endC: 10 }) // 396.35
 */
export function heatToMeltKj(snow: { litres: number; snowC: number; endC: number }): Outcome<number> {
  const refusal = firstOutside(meltingRanges, snow)
  if (refusal) return refusal
  const perKg = waterHeats.ice * -snow.snowC + waterHeats.fusion + waterHeats.water * snow.endC
  return found(snow.litres * perKg)
}
