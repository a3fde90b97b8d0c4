// Heat of the air from temperature and humidity: vapour pressure, simplified WBGT, wet-bulb temperature.
// Sources: bom-wbgt (third-party copies), stull-2011 (abstract read, formula by a third-party copy).

import { firstOutside, found, type Outcome, type Range } from './outcome'

export interface Air {
  airC: number
  /** Relative humidity as a share of 1. */
  humidity: number
}

/** The formula's source names no range; these are the ends of weather on Earth. */
export const airRanges = {
  airC: { min: -60, max: 60, unit: '°C', source: 'our-judgement' },
  humidity: { min: 0, max: 1, unit: 'as a share of 1', source: 'our-judgement' },
} as const satisfies Record<keyof Air, Range>

/** Dry cold, the corner near −20 °C and 5 %, is outside the published fit too, by a curve we have not seen. */
export const stullRanges = {
  airC: { min: -20, max: 50, unit: '°C', source: 'stull-2011' },
  humidity: { min: 0.05, max: 0.99, unit: 'as a share of 1', source: 'stull-2011' },
} as const satisfies Record<keyof Air, Range>

const vapourFormula = ({ airC, humidity }: Air) =>
  humidity * 6.105 * Math.exp((17.27 * airC) / (237.7 + airC))

/**
 * Vapour pressure of the air in hPa.
 *
 * Source: bom-wbgt: e = RH/100 × 6.105 exp(17.27 T / (237.7 + T)).
 * Symbols: T = airC, RH/100 = humidity. Ignores: ice below 0 °C.
 *
 * @example
 * vapourPressureHPa({ airC: 20, humidity: 0.5 }) // 11.66134
 */
export function vapourPressureHPa(air: Air): Outcome<number> {
  return firstOutside(airRanges, air) ?? found(vapourFormula(air))
}

/**
 * Simplified wet-bulb globe temperature in °C.
 *
 * Source: bom-wbgt: 0.567 T + 0.393 e + 3.94.
 * Symbols: T = airC, e = vapour pressure in hPa.
 * Ignores: real sun and wind. It takes fairly strong sun and light wind: too high under cloud, in wind or
 * at night, perhaps too low in still air under full sun.
 *
 * @example
 * simplifiedWbgtC({ airC: 30, humidity: 0.5 }) // 29.25943
 */
export function simplifiedWbgtC(air: Air): Outcome<number> {
  return firstOutside(airRanges, air) ?? found(0.567 * air.airC + 0.393 * vapourFormula(air) + 3.94)
}

/**
 * Wet-bulb temperature in °C at sea-level pressure.
 *
 * Source: stull-2011, eq. 1. Symbols: T = airC, RH % = 100 × humidity; arctangents in radians.
 * Ignores: altitude. Error −1 to +0.65 K over the published range.
 *
 * @example
 * stullWetBulbC({ airC: 20, humidity: 0.5 }) // 13.69934
 */
export function stullWetBulbC(air: Air): Outcome<number> {
  const refusal = firstOutside(stullRanges, air)
  if (refusal) return refusal
  const t = air.airC
  const rh = 100 * air.humidity
  return found(
    t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659)) +
      Math.atan(t + rh) -
      Math.atan(rh - 1.676331) +
      0.00391838 * rh ** 1.5 * Math.atan(0.023101 * rh) -
      4.686035,
  )
}
