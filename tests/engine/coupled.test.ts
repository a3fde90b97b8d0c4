// Rations that follow energy, and water that follows heat: the loops between load, energy, food and water.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodyRanges } from '../../src/equations'
import { defaults, LIMITS, type StopDocument } from '../../src/plan'
import { ADULT_ENERGY_FROM_YEARS, type Reckoning, reckon } from '../../src/reckon'
import { naive } from './naive'
import { roughFuelKg } from './naive-energy'
import { documents, planOf } from './plans'
import { answered, noWater, reckoned, reckonSmall, type Small, smallPlan } from './small-plans'

const { WATER } = defaults

const kcalPerRation = (plan: ReturnType<typeof planOf>) =>
  plan.gear
    .filter(item => item.use === 'daily')
    .reduce((sum, item) => sum + item.massKg * item.count * (item.kcalPerKg ?? 0), 0)

describe('an energy ration', () => {
  it('settles where each day eats what it spends, to what one gram of load is worth', () => {
    const property = fc.property(documents({ ration: 'energy', litresPerHour: 'number' }), document => {
      const plan = planOf(document)
      fc.pre(plan.carrier.ageYears === null || plan.carrier.ageYears >= 14)
      const { days, rationRounds } = reckoned(plan)
      expect(rationRounds).toBeGreaterThanOrEqual(1)
      expect(rationRounds).toBeLessThanOrEqual(50)
      for (const { kcalTotal, ration } of days) {
        const asked = (kcalTotal! * (1 - plan.trip.meals.deficit)) / kcalPerRation(plan)
        expect(Math.abs(ration - asked)).toBeLessThan(0.01)
      }
    })
    fc.assert(property, { numRuns: 60 })
  })

  const food = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 } as const

  it('is smaller by the deficit that the hiker accepts', () => {
    const full = reckonSmall({ gear: [food], meals: { ration: 'energy' } })
    const less = reckonSmall({ gear: [food], meals: { ration: 'energy', deficit: 0.2 } })
    expect(less.days[0]!.ration / full.days[0]!.ration).toBeCloseTo(0.8, 2)
  })

  it('is one full ration for a child, with the notice that there are no energy figures', () => {
    const { days, legs, notices } = reckonSmall({
      carrier: { ageYears: 13 },
      gear: [food],
      meals: { ration: 'energy' },
    })
    expect(days).toMatchObject([{ ration: 1, kcalTotal: null, kcalWalking: null }])
    expect(legs[0]!.kcal).toBeNull()
    expect(notices).toContainEqual({ code: 'energy-not-for-children' })
  })

  it('is not iterated for a child, also where the water follows the heat', () => {
    const { rationRounds } = reckonSmall({
      carrier: { ageYears: 13 },
      gear: [food],
      meals: { ration: 'energy' },
      water: { litresPerHour: 'from-heat' },
    })
    expect(rationRounds).toBe(0)
  })

  it('that never settles is refused by the field that mends it', () => {
    const straw = { id: 'straw', massKg: 10, litres: 10, use: 'daily', kcalPerKg: 30 } as const
    const stops = [
      { name: 'Start' },
      { name: 'Camp', nights: 20, leg: { km: 20 } },
      { name: 'End', leg: { km: 20 } },
    ]
    const plan = smallPlan({ stops, gear: [straw], meals: { ration: 'energy' } })
    expect(naive(plan)).toBe('unsettled')
    const refused = reckon(plan)
    if (refused.ok) throw new Error('it settled')
    expect(refused.problem.path).toEqual(['trip', 'meals', 'ration'])
    expect(refused.problem.message).toContain('kcalPerKg')
    expect(refused.problem.said).not.toMatch(/[a-z][A-Z]|"/)
  })
})

describe('water from heat', () => {
  // Easy and hard efforts by weight of the gear; 40 °C and 50 % are above the last step of the table.
  const heated = (leg: Partial<NonNullable<StopDocument['leg']>>, small: Small = {}) =>
    reckonSmall({
      stops: [{ name: 'Start' }, { name: 'End', leg: { km: 4, hours: 1, ...leg } }],
      water: { ...noWater, litresPerHour: 'from-heat' },
      ...small,
    })
  const rate = (airC: number, massKg: number) =>
    heated({ airC }, { gear: [{ id: 'gear', massKg, litres: 20 }] }).legs[0]!.waterLitres

  it('is a quart and a quarter an hour in the greatest heat, whatever the work; a quart and a half in full sun', () => {
    expect(rate(45, 0)).toBeCloseTo(1.183, 3)
    expect(rate(45, 40)).toBeCloseTo(1.183, 3)
    expect(heated({ airC: 45, sun: true }).legs[0]!.litresPerHour).toBeCloseTo(1.4195, 4)
  })

  it('takes the trip’s weather for every leg that does not say its own', () => {
    const weather = { airC: 45, humidity: 0.6, sun: true }
    const alike = (a: Reckoning, b: Reckoning) => expect(a.legs).toEqual(b.legs)
    alike(heated({}, { weather }), heated(weather))
    alike(heated({ airC: 20 }, { weather }), heated({ ...weather, airC: 20 }))
    alike(heated({ humidity: 0.2 }, { weather }), heated({ ...weather, humidity: 0.2 }))
    alike(heated({ sun: false }, { weather }), heated({ ...weather, sun: false }))
    expect(heated({}, { weather }).notices.map(({ code }) => code)).not.toContain('air-assumed')
  })

  it('is on assumed air never less than the plain rate, which an easy leg of known air may be', () => {
    const dry = { humidity: 0.1, km: 1 }
    expect(heated(dry).legs[0]!.litresPerHour).toBe(WATER.litresPerHour)
    expect(heated({ ...dry, airC: 20 }).legs[0]!.litresPerHour).toBeLessThan(0.4)
    expect(heated(dry).notices).toContainEqual({ code: 'air-assumed', leg: 0, name: 'End' })
  })

  it('of the trip’s sun counts on assumed air too', () => {
    const humid = { humidity: 1 }
    const rates = [false, true].map(sun => heated({ ...humid, sun }).legs[0]!.litresPerHour)
    expect(rates[1]).toBeGreaterThan(rates[0]! + 0.1)
  })

  it('rises with the heat and with the work below that', () => {
    expect(rate(0, 5)).toBeLessThan(rate(15, 5))
    expect(rate(15, 5)).toBeLessThan(rate(28, 5))
    expect(rate(15, 0)).toBeLessThan(rate(15, 60))
  })

  it('says where it assumed the air, and which day asks for more than a body should take', () => {
    // Some 10.6 L of walking on both days: only the first has a camp besides.
    const leg = { km: 20, hours: 9, airC: 45 }
    const { notices, legs } = reckonSmall({
      stops: [
        { name: 'Start' },
        { name: 'Camp', nights: 1, leg },
        { name: 'Pass', leg: { km: 0, hours: 0 } },
        { name: 'End', leg },
      ],
      water: { litresPerHour: 'from-heat', campLitres: 2 },
    })
    expect(notices).toContainEqual({ code: 'air-assumed', leg: 1, name: 'Pass' })
    expect(notices).toContainEqual({ code: 'water-cap-day', day: 1, litres: legs[0]!.waterLitres + 2 })
    expect(notices.filter(notice => notice.code === 'water-cap-day')).toHaveLength(1)
  })

  it('gives no food a blame when effort swings between two classes', () => {
    // At these masses drinking more makes the load lighter, the work easy and so the drinking less, and back.
    const stops = [{ name: 'Start' }, { name: 'End', leg: { km: 22, hours: 6, airC: 30 } }]
    const gear = [
      { id: 'gear', massKg: 10, litres: 20 },
      { id: 'bag', massKg: 0.1, litres: 1, stow: 'outside-pocket', holdsWaterLitres: 5 } as const,
    ]
    for (let massKg = 84; massKg < 90; massKg += 0.1) {
      const plan = smallPlan({
        carrier: { massKg },
        stops,
        gear,
        water: { litresPerHour: 'from-heat', reserveLitres: 5 },
      })
      expect(reckon(plan), `a fixed ration is never refused: ${massKg} kg`).toMatchObject({ ok: true })
    }
  })
})

describe('a rate of the hiker’s own', () => {
  const leg = { km: 4, hours: 1 }
  const noticed = (small: Small) =>
    reckonSmall({ stops: [{ name: 'Start' }, { name: 'Dune', leg }, { name: 'End', leg }], ...small })
      .notices // The rest is not about the table.
      .filter(({ code }) => code === 'water-below-heat-table')

  it('under the heat table’s for the effort of a leg is told with both rates', () => {
    const stops = [{ name: 'Start' }, { name: 'Dune', leg: { ...leg, airC: 45 } }, { name: 'End', leg }]
    expect(noticed({ stops, water: { litresPerHour: 0.9 } })).toEqual([
      {
        code: 'water-below-heat-table',
        leg: 0,
        name: 'Dune',
        litresPerHour: 0.9,
        tableLitresPerHour: expect.closeTo(0.9464, 4),
      },
    ])
    expect(noticed({ stops, water: { litresPerHour: 0.95 } })).toEqual([])
  })

  it('is held to the table from 25.6 °C WBGT, which the trip’s weather may bring', () => {
    // At no humidity WBGT is 0.567 T + 3.94: 38.2 °C of air makes 25.6.
    const weather = (airC: number) => ({ weather: { airC, humidity: 0 }, water: { litresPerHour: 0.1 } })
    expect(noticed(weather(38.19))).toEqual([])
    expect(noticed(weather(38.21))).toHaveLength(2)
  })

  it('is not held to anything on assumed air, nor is a rate from heat', () => {
    expect(noticed({ water: { litresPerHour: 0 } })).toEqual([])
    expect(noticed({ weather: { airC: 45 }, water: { litresPerHour: 'from-heat' } })).toEqual([])
  })

  it('is for a child held to the table’s moderate work', () => {
    const child = { carrier: { ageYears: 9 }, weather: { airC: 30 }, water: { litresPerHour: 0.7 } }
    expect(noticed(child)).toMatchObject([
      { tableLitresPerHour: expect.closeTo(0.7098, 4) },
      { tableLitresPerHour: expect.closeTo(0.7098, 4) },
    ])
  })
})

describe('a body outside the equation’s range', () => {
  it('counts as not given where it is the height, and cannot be where it is age or mass', () => {
    const plan = smallPlan({})
    const resting = (heightCm: number) =>
      answered({ ...plan, carrier: { ...plan.carrier, heightCm } }).working.body
    expect(resting(99)).toEqual({ ...resting(170), assumed: true })
    expect(resting(100)!.assumed).toBe(false)
    const { massKg, ageYears } = LIMITS.carrier
    expect(bodyRanges.massKg).toMatchObject({ min: massKg.min, max: massKg.max })
    expect(bodyRanges.ageYears).toMatchObject({ min: ADULT_ENERGY_FROM_YEARS, max: ageYears.max })
  })
})

describe('fuel', () => {
  it('weighs what the heat asks for, whatever mass the document has', () => {
    const fuels = [
      { kind: 'gas', boilLitres: 1.5 },
      { kind: 'gas', boilLitres: 1, meltLitres: 3, startC: 5, altitudeM: 2500 },
      { kind: 'white-gas', boilLitres: 2, altitudeM: 4000 },
      { kind: 'ethanol', boilLitres: 1 },
      { kind: 'methanol', boilLitres: 1, efficiency: 0.3 },
      { kind: 'tablet', boilLitres: 0.8, startC: 20 },
    ] as const
    const stops = [
      { name: 'Start' },
      { name: 'Camp', nights: 3, leg: { km: 4 } },
      { name: 'End', leg: { km: 4 } },
    ]
    for (const fuel of fuels) {
      const gear = [{ id: 'fuel', massKg: 99, litres: 0, use: 'nightly', fuel } as const]
      const plan = smallPlan({ stops, gear })
      const perNight = reckoned(plan).moments[0]!.kg.nightly / 3
      // Within 0.3 %: the test's boiling point is a rule of thumb.
      expect(perNight / roughFuelKg(plan.gear[0]!.fuel!)).toBeCloseTo(1, 2.5)
    }
  })
})
