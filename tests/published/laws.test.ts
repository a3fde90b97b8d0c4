// Laws the equations keep whatever the numbers: what must rise, what must meet, what must be zero.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  backpackingRanges,
  backpackingWPerKg,
  blendedHours,
  boilingPointC,
  cappedLitresPerHour,
  fuelG,
  fuelKinds,
  heatCategories,
  legPowerWPerKg,
  naismithHours,
  planningAnchors,
  restingKcalPerDay,
  santeeWatts,
  swissHours,
  swissMinPerKm,
  toblerHours,
  typicalWatts,
  waterRate,
  workClassLimits,
} from '../../src/equations'
import { value } from './cases'

const within = (range: { min: number; max: number }) => fc.double({ ...range, noNaN: true })
const state = fc.record({
  speedMPerS: within(backpackingRanges.speedMPerS),
  gradePercent: within(backpackingRanges.gradePercent),
  loadShare: within(backpackingRanges.loadShare),
  terrainFactor: within({ min: 1, max: 2.1 }),
  restingWPerKg: within({ min: 0.8, max: 1.4 }),
})
const power = (at: Parameters<typeof backpackingWPerKg>[0]) => value(backpackingWPerKg(at))

describe('the power of walking with a pack', () => {
  it.each(['speedMPerS', 'loadShare', 'terrainFactor'] as const)('rises with %s', field => {
    fc.assert(
      fc.property(state, within({ min: 0, max: 1 }), (at, share) => {
        const more = at[field] + share * (backpackingRanges[field].max - at[field])
        expect(power({ ...at, [field]: more })).toBeGreaterThanOrEqual(power(at) - 1e-12)
      }),
    )
  })

  it('rises strictly at a common walking state', () => {
    const at = { speedMPerS: 1.1, gradePercent: -8, loadShare: 0.2, terrainFactor: 1.1, restingWPerKg: 1.1 }
    for (const field of ['speedMPerS', 'loadShare', 'terrainFactor'] as const) {
      expect(power({ ...at, [field]: at[field] * 1.1 })).toBeGreaterThan(power(at))
    }
  })

  it('never falls under resting', () => {
    fc.assert(
      fc.property(state, at => {
        expect(power(at)).toBeGreaterThan(at.restingWPerKg)
      }),
    )
  })

  it('meets itself at grade 0 from both sides', () => {
    fc.assert(
      fc.property(state, at => {
        const [below, level, above] = [-1e-9, 0, 1e-9].map(gradePercent => power({ ...at, gradePercent }))
        expect(Math.abs(above! - level!)).toBeLessThan(1e-7)
        expect(Math.abs(below! - level!)).toBeLessThan(1e-7)
      }),
    )
  })
})

describe('the power of a leg', () => {
  const leg = {
    km: 6,
    ascentM: 0,
    descentM: 0,
    hours: 1.5,
    loadShare: 0.2,
    terrainFactor: 1.1,
    restingWPerKg: 1.1,
  }
  const atSpeed = (speedMPerS: number, gradePercent: number) =>
    power({ speedMPerS, gradePercent, loadShare: 0.2, terrainFactor: 1.1, restingWPerKg: 1.1 })
  const legPower = (change: Partial<typeof leg>) => value(legPowerWPerKg({ ...leg, ...change }))

  it('is the level power where nothing climbs or falls', () => {
    expect(legPower({}).wattsPerKg).toBeCloseTo(atSpeed(4 / 3.6, 0), 12)
  })

  it('weighs climb and descent by their share of the height, at one grade and one speed', () => {
    const { wattsPerKg, atLimit } = legPower({ ascentM: 450, descentM: 150 })
    expect(wattsPerKg).toBeCloseTo(0.75 * atSpeed(4 / 3.6, 10) + 0.25 * atSpeed(4 / 3.6, -10), 12)
    expect(atLimit).toBe(false)
  })

  it('stands still, unflagged, where no way is made, in time or in none', () => {
    const standing = { wattsPerKg: atSpeed(0, 0), atLimit: false, loadBeyondStudy: false }
    expect(legPower({ km: 0 })).toEqual(standing)
    expect(legPower({ km: 0, hours: 0 })).toEqual(standing)
  })

  it('is taken at 1.97 m/s and flagged where the pace is faster or takes no time', () => {
    for (const hours of [0, -0, 0.5]) {
      const { wattsPerKg, atLimit } = legPower({ hours })
      expect(wattsPerKg).toBeCloseTo(atSpeed(1.97, 0), 12)
      expect(atLimit).toBe(true)
    }
  })

  it('is taken at 45 % and flagged where the leg is steeper, up, down or straight up', () => {
    expect(legPower({ ascentM: 6000 })).toMatchObject({ wattsPerKg: atSpeed(4 / 3.6, 45), atLimit: true })
    expect(legPower({ descentM: 6000 })).toMatchObject({ wattsPerKg: atSpeed(4 / 3.6, -45), atLimit: true })
    expect(legPower({ km: 0, ascentM: 10 })).toMatchObject({ wattsPerKg: atSpeed(0, 45), atLimit: true })
    expect(legPower({ ascentM: 2700 }).atLimit).toBe(false)
  })

  it('follows the formula past the studied load and says so', () => {
    expect(legPower({ loadShare: 0.66 }).loadBeyondStudy).toBe(false)
    const beyond = legPower({ loadShare: 0.9 })
    expect(beyond.loadBeyondStudy).toBe(true)
    expect(beyond.wattsPerKg).toBeGreaterThan(legPower({ loadShare: 0.66 }).wattsPerKg)
  })
})

describe('walking time', () => {
  const leg = fc.record({
    km: within({ min: 1, max: 40 }),
    ascentM: within({ min: 0, max: 400 }),
    descentM: within({ min: 0, max: 400 }),
  })
  const more = within({ min: 0, max: 100 })

  it.each(['km', 'ascentM', 'descentM'] as const)('by the blend rises with %s', field => {
    fc.assert(
      fc.property(leg, more, (totals, extra) => {
        const longer = value(blendedHours({ ...totals, [field]: totals[field] + extra }))
        expect(longer).toBeGreaterThanOrEqual(value(blendedHours(totals)) - 1e-12)
      }),
    )
  })

  it('by the blend lies between the larger part alone and both parts in full', () => {
    fc.assert(
      fc.property(leg, totals => {
        const [flat, vertical] = [totals.km / 4, totals.ascentM / 300 + totals.descentM / 500]
        const hours = value(blendedHours(totals))
        expect(hours).toBeGreaterThanOrEqual(Math.max(flat, vertical))
        expect(hours).toBeLessThanOrEqual(flat + vertical + 1e-12)
      }),
    )
  })

  it('by slope halves at a pace factor of 2', () => {
    fc.assert(
      fc.property(leg, totals => {
        for (const hours of [toblerHours, swissHours]) {
          const half = value(hours({ ...totals, paceFactor: 2 }))
          expect(half).toBeCloseTo(value(hours(totals)) / 2, 10)
        }
      }),
    )
  })

  it('by the Swiss polynomial rises with every steeper climb, in 0.1 % steps to 100 %', () => {
    const minutes = Array.from({ length: 1001 }, (_, i) => value(swissMinPerKm({ slope: i / 1000 })))
    expect(minutes.every((now, i) => i === 0 || now > minutes[i - 1]!)).toBe(true)
  })

  it('by Naismith refuses more gentle descent than a 12° slope can lose over the way', () => {
    expect(naismithHours({ km: 1, ascentM: 0, gentleDescentM: 212 }).ok).toBe(true)
    expect(naismithHours({ km: 1, ascentM: 0, gentleDescentM: 213 })).toMatchObject({
      ok: false,
      field: 'gentleDescentM',
      got: 213,
    })
  })
})

describe('older power models', () => {
  it('refuse level ground in the downhill correction, which does not meet the level value', () => {
    const level = { bodyKg: 80, loadKg: 0, speedMPerS: 1.34, gradePercent: 0, terrainFactor: 1 }
    expect(santeeWatts(level)).toMatchObject({ ok: false, field: 'gradePercent', got: 0 })
  })
})

describe('resting energy', () => {
  it('is the mean of both sexes where the sex is not given', () => {
    const body = { massKg: 70, heightCm: 170, ageYears: 35 }
    const [female, male] = (['female', 'male'] as const).map(sex =>
      value(restingKcalPerDay({ ...body, sex })),
    )
    expect(value(restingKcalPerDay(body))).toBe((female! + male!) / 2)
    expect(value(restingKcalPerDay({ ...body, sex: null }))).toBe((female! + male!) / 2)
  })
})

describe('the water rate', () => {
  const wbgt = within({ min: -30, max: 60 })
  const watts = within({ min: 0, max: 1200 })
  const rate = (wbgtC: number, w: number) => value(waterRate({ wbgtC, watts: w })).litresPerHour

  it('never falls as the heat rises', () => {
    fc.assert(
      fc.property(wbgt, wbgt, watts, (a, b, w) => {
        expect(rate(Math.max(a, b), w)).toBeGreaterThanOrEqual(rate(Math.min(a, b), w) - 1e-12)
      }),
    )
  })

  it('never falls as the work hardens', () => {
    fc.assert(
      fc.property(wbgt, watts, watts, (heat, a, b) => {
        expect(rate(heat, Math.max(a, b))).toBeGreaterThanOrEqual(rate(heat, Math.min(a, b)) - 1e-12)
      }),
    )
  })

  it('meets its anchors and holds still under the first', () => {
    const work = { easy: 300, moderate: 400, hard: 600 } as const
    for (const { wbgtC, litresPerHour } of planningAnchors) {
      for (const name of ['easy', 'moderate', 'hard'] as const) {
        expect(rate(wbgtC, work[name])).toBeCloseTo(litresPerHour[name], 12)
      }
    }
    expect(rate(-20, 300)).toBe(0.2)
    expect(rate(10, 300)).toBeCloseTo(0.25, 12)
    expect(rate(25.6 - 1e-9, 600)).toBeCloseTo(rate(25.6, 600), 9)
  })

  it('steps at the lower end of a heat category', () => {
    const hot = heatCategories[4]!
    expect(rate(hot.fromWbgtC - 0.01, 300)).toBeCloseTo(0.7098, 4)
    expect(rate(hot.fromWbgtC, 300)).toBeCloseTo(0.9464, 4)
  })

  it('counts work as moderate from 337 W and as hard from 512 W, midpoints rounded down', () => {
    const classOf = (w: number) => value(waterRate({ wbgtC: 20, watts: w })).workClass
    expect([336.9, 337, 511.9, 512].map(classOf)).toEqual(['easy', 'moderate', 'moderate', 'hard'])
    const { easy, moderate, hard } = typicalWatts
    expect(workClassLimits.moderateFromW).toBe(Math.floor((easy + moderate) / 2))
    expect(workClassLimits.hardFromW).toBe(Math.floor((moderate + hard) / 2))
  })

  it('is capped at 1.42 L an hour, flagged only above it', () => {
    expect(value(cappedLitresPerHour({ litresPerHour: 1.42 }))).toEqual({
      litresPerHour: 1.42,
      capped: false,
    })
    expect(value(cappedLitresPerHour({ litresPerHour: 1.43 }))).toEqual({ litresPerHour: 1.42, capped: true })
  })
})

describe('fuel', () => {
  const kinds = Object.keys(fuelKinds) as (keyof typeof fuelKinds)[]
  const kind = fc.constantFrom(...kinds)
  const litres = within({ min: 0, max: 20 })

  it('rises with the litres boiled and the litres melted', () => {
    fc.assert(
      fc.property(kind, litres, litres, litres, (of, a, b, melt) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)]
        const boiled = (boilLitres: number) => value(fuelG({ kind: of, boilLitres, meltLitres: melt }))
        const melted = (meltLitres: number) => value(fuelG({ kind: of, boilLitres: melt, meltLitres }))
        expect(boiled(high)).toBeGreaterThanOrEqual(boiled(low))
        expect(melted(high)).toBeGreaterThanOrEqual(melted(low))
      }),
    )
  })

  it('is none for no water, and falls with altitude and with efficiency', () => {
    for (const of of kinds) {
      const use = { kind: of, boilLitres: 1 }
      expect(value(fuelG({ ...use, boilLitres: 0 }))).toBe(0)
      expect(value(fuelG({ ...use, altitudeM: 3000 }))).toBeLessThan(value(fuelG(use)))
      expect(value(fuelG({ ...use, efficiency: 0.9 }))).toBeLessThan(value(fuelG(use)))
    }
  })

  it('carries the margin of 1.25 over the bare heat', () => {
    const bare = (1.5 * 4.19 * (value(boilingPointC({ altitudeM: 0 })) - 10)) / (45.7 * 0.45)
    expect(value(fuelG({ kind: 'gas', boilLitres: 1.5 }))).toBeCloseTo(1.25 * bare, 10)
  })

  it('in a cartridge is 80 % isobutane (45.58 MJ/kg) with 20 % propane (46.33 MJ/kg)', () => {
    expect(fuelKinds.gas.lowerHeatingMjPerKg).toBeCloseTo(0.8 * 45.58 + 0.2 * 46.33, 1)
  })
})
