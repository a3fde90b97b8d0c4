// Fuel for boiling water and melting snow, by kind of fuel.
// Heating values are computed from enthalpies of formation (fuel-enthalpies) and stand within 1 % of the
// published ones (harc-heating-values) for single fuels; efficiencies and the margin are our-judgement.

import { altitudeRanges, boilingPointC, heatToBoilKj, heatToMeltKj } from './boiling'
import { firstOutside, found, type Outcome, type Range } from './outcome'

export type FuelKind = 'gas' | 'white-gas' | 'ethanol' | 'methanol' | 'tablet'

export interface FuelProperties {
  readonly lowerHeatingMjPerKg: number
  readonly densityKgPerLitre: number
  /** Heat into the water over heat in the fuel: an ordinary pot with a windshield. */
  readonly efficiency: number
}

/** Gas is 80 % isobutane with 20 % propane; tablets are pure hexamine; ethanol is pure. */
export const fuelKinds: Readonly<Record<FuelKind, FuelProperties>> = {
  gas: { lowerHeatingMjPerKg: 45.7, densityKgPerLitre: 0.54, efficiency: 0.45 },
  'white-gas': { lowerHeatingMjPerKg: 44.9, densityKgPerLitre: 0.725, efficiency: 0.45 },
  ethanol: { lowerHeatingMjPerKg: 26.8, densityKgPerLitre: 0.789, efficiency: 0.45 },
  methanol: { lowerHeatingMjPerKg: 19.9, densityKgPerLitre: 0.794, efficiency: 0.45 },
  tablet: { lowerHeatingMjPerKg: 28.1, densityKgPerLitre: 1.33, efficiency: 0.35 },
}

/** For wind, lighting and spills. */
export const fuelMargin = 1.25

/** Snow is taken at this temperature and melted to `startC` of the default, 10 °C. */
export const snow = { snowC: -10, endC: 10 } as const

export const fuelRanges = {
  boilLitres: { min: 0, max: 50, unit: 'L', source: 'our-judgement' },
  startC: { min: 0, max: 60, unit: '°C', source: 'our-judgement' },
  meltLitres: { min: 0, max: 50, unit: 'L', source: 'our-judgement' },
  altitudeM: altitudeRanges.altitudeM,
  efficiency: { min: 0.05, max: 0.95, unit: 'as a share of 1', source: 'our-judgement' },
} as const satisfies Record<string, Range>

const heatRanges = {
  heatKj: { min: 0, max: 1e6, unit: 'kJ', source: 'our-judgement' },
  lowerHeatingMjPerKg: { min: 10, max: 60, unit: 'MJ/kg', source: 'our-judgement' },
  efficiency: fuelRanges.efficiency,
} as const satisfies Record<string, Range>

/**
 * Grams of fuel that give a heat to the water, without margin.
 *
 * Source: fuel-enthalpies: Q / (LHV η). Symbols: Q = heatKj, LHV = lowerHeatingMjPerKg, η = efficiency.
 * Ignores: wind, lighting, spills.
 *
 * @example
 * fuelForHeatG({ heatKj: 377.1, lowerHeatingMjPerKg: 45.7, efficiency: 0.5 }) // 16.50328
 */
export function fuelForHeatG(burn: {
  heatKj: number
  lowerHeatingMjPerKg: number
  efficiency: number
}): Outcome<number> {
  const refusal = firstOutside(heatRanges, burn)
  return refusal ?? found(burn.heatKj / (burn.lowerHeatingMjPerKg * burn.efficiency))
}

export interface FuelUse {
  kind: FuelKind
  boilLitres: number
  startC?: number | undefined
  meltLitres?: number | undefined
  altitudeM?: number | undefined
  efficiency?: number | null | undefined
}

/**
 * Grams of fuel to boil water, and to melt snow besides, with the margin.
 *
 * Source: water-heats, fuel-enthalpies, our-judgement: 1.25 Q / (LHV η),
 * Q = L_hot × 4.19 (Tb − T0) + L_melt (2.09 |Ts| + 333.55 + 4.19 Tw).
 * Symbols: L_hot = boilLitres, T0 = startC (10), L_melt = meltLitres (0), Tb by altitudeM (0),
 * Ts = −10 °C, Tw = 10 °C, η = efficiency (by kind).
 * Ignores: simmering, priming, cold cartridges.
 * Outside a range: `ok: false` with the field and its limit.
 *
 * @example
 * fuelG({ kind: 'gas', boilLitres: 1.5 }) // 34.37202
 */
export function fuelG(use: FuelUse): Outcome<number> {
  const { kind, boilLitres, startC = 10, meltLitres = 0, altitudeM = 0 } = use
  const { lowerHeatingMjPerKg, efficiency: usual } = fuelKinds[kind]
  const efficiency = use.efficiency ?? usual
  const refusal = firstOutside(fuelRanges, { boilLitres, startC, meltLitres, altitudeM, efficiency })
  if (refusal) return refusal
  const boilsAt = boilingPointC({ altitudeM })
  if (!boilsAt.ok) return boilsAt
  const boil = heatToBoilKj({ litres: boilLitres, startC, endC: boilsAt.value })
  if (!boil.ok) return boil
  const melt = heatToMeltKj({ litres: meltLitres, ...snow })
  if (!melt.ok) return melt
  const heatKj = fuelMargin * (boil.value + melt.value)
  return fuelForHeatG({ heatKj, lowerHeatingMjPerKg, efficiency })
}
