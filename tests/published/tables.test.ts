// Tables and constants that the app states as they are: a slip of a digit in one must not pass unseen.
// Standing: each table's own file says what was published, copied, remembered or judged.

import { describe, expect, it } from 'vitest'
import {
  cartridgeClasses,
  dinPace,
  faoKcalPerDay,
  fitPace,
  fuelG,
  fuelKinds,
  heatCategories,
  kcalPerWattHour,
  legPowerWPerKg,
  maxLitresPerDay,
  maxLitresPerHour,
  planningAnchors,
  restingKcalPerDay,
  stullWetBulbC,
  swissMinPerKm,
  terrainFactors,
  wattsPerKcalPerDay,
} from '../../src/equations'
import { value } from './cases'

describe('the tables', () => {
  it('of terrain factors hold the five grounds', () => {
    const factors = Object.entries(terrainFactors).map(([ground, { factor }]) => [ground, factor])
    expect(Object.fromEntries(factors)).toEqual({ paved: 1, trail: 1.1, rough: 1.2, brush: 1.5, sand: 2.1 })
  })

  it('of fuels hold heating value, density and efficiency', () => {
    const rows = Object.entries(fuelKinds).map(([kind, fuel]) => [kind, ...Object.values(fuel)])
    expect(rows).toEqual([
      ['gas', 45.7, 0.54, 0.45],
      ['white-gas', 44.9, 0.725, 0.45],
      ['ethanol', 26.8, 0.789, 0.45],
      ['methanol', 19.9, 0.794, 0.45],
      ['tablet', 28.1, 1.33, 0.35],
    ])
  })

  it('of cartridges hold net and empty grams and outer litres', () => {
    expect(cartridgeClasses.map(of => [of.netG, of.emptyG, of.outerLitres])).toEqual([
      [450, 215, 1.43],
      [230, 150, 0.86],
      [100, 98, 0.43],
    ])
  })

  it('of constants hold the rounded figures that the model states, close to the exact ones', () => {
    expect([maxLitresPerHour, maxLitresPerDay, kcalPerWattHour, wattsPerKcalPerDay]).toEqual([
      1.42, 11.36, 0.86, 0.0484259,
    ])
    expect(kcalPerWattHour).toBeCloseTo(3600 / 4184, 3)
    expect(wattsPerKcalPerDay).toBeCloseTo(4184 / 86_400, 7)
    expect(dinPace).toEqual({ flatKmh: 4, climbMPerH: 300, descendMPerH: 500 })
    expect(fitPace).toEqual({ flatKmh: 4, climbMPerH: 400, descendMPerH: 800 })
  })

  it('of water hold the lower ends of the heat categories and the planning rates below them', () => {
    expect(heatCategories.map(of => [of.category, of.fromWbgtC])).toEqual([
      [1, 25.6],
      [2, 27.8],
      [3, 29.4],
      [4, 31.1],
      [5, 32.2],
    ])
    expect(planningAnchors.slice(0, 2)).toEqual([
      { wbgtC: 5, litresPerHour: { easy: 0.2, moderate: 0.3, hard: 0.45 } },
      { wbgtC: 15, litresPerHour: { easy: 0.3, moderate: 0.45, hard: 0.6 } },
    ])
  })
})

describe('values by hand from the published equations', () => {
  it('melt snow of −10 °C to water of 10 °C: 2 L take 1.25 × 792.7 kJ / (45.7 × 0.45)', () => {
    expect(value(fuelG({ kind: 'gas', boilLitres: 0, meltLitres: 2 }))).toBeCloseTo(990.875 / 20.565, 10)
  })

  it('give Mifflin’s man of 75 kg, 178 cm, 35 years exactly 1692.5 kcal', () => {
    expect(value(restingKcalPerDay({ massKg: 75, heightCm: 178, ageYears: 35, sex: 'male' }))).toBe(1692.5)
  })

  it('give a girl of 50 kg and 15 years 13.384 × 50 + 692.6 kcal', () => {
    expect(value(faoKcalPerDay({ massKg: 50, ageYears: 15, sex: 'female' }))).toBeCloseTo(1361.8, 10)
  })

  it('start the row of an older age on the birthday', () => {
    const at = (ageYears: number) => value(faoKcalPerDay({ massKg: 75, ageYears, sex: 'male' }))
    expect([17.9, 18, 30, 60].map(at).map(Math.round)).toEqual([1985, 1821, 1734, 1466])
  })

  it('join the Swiss lines at ±40 % with the small steps of their source', () => {
    const at = (slope: number) => value(swissMinPerKm({ slope }))
    expect([at(0.4), at(-0.4)]).toEqual([68, 36])
    expect(at(0.4 - 1e-9)).toBeCloseTo(66.9442, 3)
    expect(at(-0.4 + 1e-9)).toBeCloseTo(36.5377, 3)
  })

  it('give dry air of 20 °C and 5 % a wet bulb as a separate script computes it', () => {
    expect(value(stullWetBulbC({ airC: 20, humidity: 0.05 }))).toBeCloseTo(5.6976, 4)
  })

  it('hold a leg of under an hour to its own speed', () => {
    const still = { ascentM: 0, descentM: 0, loadShare: 0, terrainFactor: 1, restingWPerKg: 1 }
    const half = value(legPowerWPerKg({ ...still, km: 2, hours: 0.5 }))
    expect(half).toEqual(value(legPowerWPerKg({ ...still, km: 4, hours: 1 })))
    expect(half.atLimit).toBe(false)
  })
})
