// The answers to "why?" against the Reckoning they explain: each result is the engine's own number, computed anew from
// the inputs that are shown, on made trips, at the limits, and on random plans.

import { describe, expect, it } from 'vitest'
import demo from '../../data/demo-plan.json'
import sources from '../../data/sources.json'
import { completePlan, type ItemDocument, parsePlan, type StopDocument } from '../../src/plan'
import { CAMP_FACTOR } from '../../src/reckon'
import { dayEnergyRanges, explain, sourceText, type WhyContext } from '../../src/report/why'
import { type Small, smallPlan } from './small-plans'
import { contextOf, first, near, onAnyPlan } from './why-context'

/** Words for every figure of a random trip take their time on a busy machine. */
const PATIENCE_MS = 30_000

const food: ItemDocument = { id: 'food', massKg: 0.75, litres: 1.9, use: 'daily', kcalPerKg: 4400 }
const gas: ItemDocument = {
  id: 'gas',
  massKg: 0,
  litres: 0,
  use: 'nightly',
  fuel: { kind: 'gas', boilLitres: 1.5 },
}
const kit: ItemDocument = { id: 'kit', massKg: 6, litres: 20 }
const camp = (leg: NonNullable<StopDocument['leg']>, nights = 1): StopDocument => ({
  name: 'Camp',
  water: 'sure',
  nights,
  leg,
})

const stops: StopDocument[] = [
  { name: 'Start' },
  camp({ km: 14, ascentM: 900, descentM: 200, airC: 31, humidity: 0.6 }, 2),
  camp({ km: 9, ascentM: 100, descentM: 1300, hours: 5, airC: 12 }),
  { name: 'End', leg: { km: 11, ascentM: 0, descentM: 0, ground: 'rough' } },
]

const trip = (small: Small = {}) =>
  contextOf(
    smallPlan({
      stops,
      gear: [food, gas, kit],
      water: { litresPerHour: 'from-heat' },
      meals: { ration: 'energy' },
      ...small,
    }),
  )

/** Holds every explanation of a plan to the Reckoning. */
function holds(context: WhyContext) {
  const { plan, reckoning } = context
  reckoning.legs.forEach((figures, leg) => {
    near(first({ kind: 'walking-time', leg }, context).result.value, figures.hours)
    const energy = explain({ kind: 'leg-energy', leg }, context)
    expect(energy.length === 0).toBe(figures.kcal === null)
    if (figures.kcal !== null) near(energy[0]!.result.value, figures.kcal)
    const { value } = first({ kind: 'leg-water', leg }, context).result
    const fromHeat = plan.trip.water.litresPerHour === 'from-heat'
    expect(value).toBe(fromHeat ? figures.litresPerHour : figures.waterLitres)
  })
  reckoning.days.forEach(({ kcalTotal, ration }, day) => {
    const energy = explain({ kind: 'day-energy', day }, context)
    expect(energy.length === 0).toBe(kcalTotal === null)
    if (kcalTotal !== null) near(energy[0]!.result.value, kcalTotal)
    // The last round may still have moved the load by a gram.
    const [eaten] = explain({ kind: 'ration', day }, context)
    if (eaten) near(eaten.result.value, ration, 1e-3)
  })
  near(first({ kind: 'body-litres' }, context).result.value, reckoning.need.bodyLitres)
  near(first({ kind: 'peak-load' }, context).result.value, reckoning.need.peakLoadFullWaterKg)
}

describe('an explanation gives the number of the Reckoning', () => {
  it('on the demo trip', () => {
    const parsed = parsePlan(demo)
    if (!parsed.ok) throw new Error('the demo plan is refused')
    holds(contextOf(completePlan(parsed.document)))
  })

  it('on a trip with rations by energy, water by heat, a typed time and a rest day', () => holds(trip()))

  for (const ration of ['fixed', 'energy'] as const)
    it(
      `on any plan with rations ${ration === 'fixed' ? 'as listed' : 'by energy'}`,
      () => onAnyPlan({ ration, litresPerHour: 'from-heat' }, holds),
      PATIENCE_MS,
    )

  it('for the fuel of a night, which the load holds as often as there are nights', () => {
    const context = trip()
    const { value } = first({ kind: 'fuel', item: 'gas' }, context).result
    near(3 * value, context.reckoning.moments[0]!.kg.nightly)
  })

  it('for the resting energy, which a rest day costs so many times', () => {
    const context = trip()
    const { value } = first({ kind: 'resting-energy' }, context).result
    near(CAMP_FACTOR * value, context.reckoning.days[1]!.kcalTotal!)
  })
})

describe('the walking time', () => {
  it('stands beside three other published rules, and says how far they lie apart', () => {
    const { others } = first({ kind: 'walking-time', leg: 0 }, trip())
    expect(others?.list.map(rule => rule.label)).toEqual([
      'Naismith with Langmuir',
      'Tobler’s hiking function',
      'Swiss hiking paths',
    ])
    // Naismith: 14 / 5 + 900 / 600; the even slope of 1100 m in 14 km is under 5°, so the descent changes nothing.
    near(others!.list[0]!.value!, 4.3)
    expect(others?.note).toMatch(/A factor \d\.\d between published rules: plan with the slower/)
  })

  it('gives Langmuir’s credit on gentle descents and his penalty on steep ones', () => {
    const naismith = (km: number) => {
      const context = contextOf(
        smallPlan({ stops: [{ name: 'a' }, { name: 'b', leg: { km, descentM: 900 } }] }),
      )
      return first({ kind: 'walking-time', leg: 0 }, context).others!.list[0]!.value!
    }
    near(naismith(20), 4)
    near(naismith(6), 1.2 - 0.5)
    near(naismith(3), 0.6 + 0.5)
  })

  it('is the typed one where one is typed, with the computed one beside it', () => {
    const { equation, result, inputs, others } = first({ kind: 'walking-time', leg: 1 }, trip())
    expect(equation).toBe('Your own figure')
    expect(result.value).toBe(5)
    expect(inputs.map(input => input.path)).toEqual(['trip/stops/s2/leg/hours'])
    // 9 km at 4 km/h, 100 m up at 300 m/h and 1300 m down at 500 m/h.
    near(others!.list[0]!.value!, 2.25 / 2 + 100 / 300 + 1300 / 500)
  })

  it('says where another rule has no answer: a wall no path climbs', () => {
    const context = contextOf(
      smallPlan({ stops: [{ name: 'a' }, { name: 'b', leg: { km: 1, ascentM: 2000, hours: 6 } }] }),
    )
    const { list } = first({ kind: 'walking-time', leg: 0 }, context).others!
    expect(list.filter(rule => rule.value === null).map(rule => rule.text)).toEqual([
      'none: too steep for it',
      'none: too steep for it',
    ])
  })
})

describe('outside the range an equation was made for', () => {
  const steep = (leg: NonNullable<StopDocument['leg']>, small: Small = {}) =>
    contextOf(smallPlan({ stops: [{ name: 'a' }, { name: 'b', leg }], ...small }))

  it('a leg too fast says so, and that it is computed at the limit', () => {
    const { range, instead } = first({ kind: 'leg-energy', leg: 0 }, steep({ km: 20, hours: 2 }))
    expect(range.bounds.map(limit => limit.inside)).toEqual([false, true, true])
    expect(range.bounds[0]!.text).toBe('Speed 2.78, outside 0 to 1.97 m/s')
    expect(instead).toBe('What is faster or steeper is computed at the limit.')
  })

  it('a leg too steep says so', () => {
    const { range, instead } = first({ kind: 'leg-energy', leg: 0 }, steep({ km: 1, ascentM: 600 }))
    expect(range.bounds[1]!.text).toBe('Steepness 60, outside −45 to 45 %')
    expect(instead).toMatch(/computed at the limit/)
  })

  it('height gained over no distance has no number, and says so', () => {
    const { range } = first({ kind: 'leg-energy', leg: 0 }, steep({ km: 0, ascentM: 600 }))
    expect(range.bounds[1]!.text).toMatch(/^Steepness without end, outside/)
  })

  it('a load beyond the studied ones is followed all the same', () => {
    const heavy = { gear: [{ id: 'stone', massKg: 60, litres: 30 }] }
    const { range, instead } = first({ kind: 'leg-energy', leg: 0 }, steep({ km: 5 }, heavy))
    expect(range.bounds[2]!.inside).toBe(false)
    expect(instead).toMatch(/followed past what was studied/)
  })

  it('inside, nothing is done instead', () => {
    const { range, instead } = first({ kind: 'leg-energy', leg: 0 }, steep({ km: 5 }))
    expect(range.bounds.every(limit => limit.inside)).toBe(true)
    expect(instead).toBeNull()
  })

  it('an age that was not studied and a height no equation knows are named', () => {
    const old = first(
      { kind: 'resting-energy' },
      steep({ km: 5 }, { carrier: { ageYears: 90, heightCm: 90 } }),
    )
    expect(old.range.bounds[0]!.text).toBe('Age 90, outside 19 to 78 years')
    expect(old.instead).toBe(
      'The equation is used all the same at this age. A height under 100 cm is replaced by 170 cm.',
    )
  })

  it('what was not given is said to be assumed', () => {
    const plan = smallPlan({
      stops: [{ name: 'a' }, { name: 'b', leg: { km: 5 } }],
      water: { litresPerHour: 'from-heat' },
    })
    const context = contextOf({ ...plan, carrier: { ...plan.carrier, heightCm: null, ageYears: null } })
    const values = first({ kind: 'resting-energy' }, context).inputs.map(input => input.value)
    expect(values.slice(1, 3)).toEqual(
      ['170 cm, assumed', '35 years, assumed'].map(text => expect.stringMatching(text.replace(' ', '\\s'))),
    )
    const [, air] = explain({ kind: 'leg-water', leg: 0 }, context)
    expect(air!.instead).toMatch(/No air temperature was given/)
  })

  it('children get no energy figures, and water as for moderate work', () => {
    const context = steep({ km: 5 }, { carrier: { ageYears: 9 }, water: { litresPerHour: 'from-heat' } })
    expect(explain({ kind: 'leg-energy', leg: 0 }, context)).toEqual([])
    expect(explain({ kind: 'resting-energy' }, context)).toEqual([])
    expect(first({ kind: 'leg-water', leg: 0 }, context).inputs[1]!.value).toMatch(/taken as moderate work/)
  })
})

describe('water from heat', () => {
  it('is from the table in the heat and from our planning rates below it, and says which', () => {
    const hot = first({ kind: 'leg-water', leg: 0 }, trip())
    expect(hot.equation).toBe('Table of TB MED 507 (2003)')
    expect(hot.sourceKeys).toContain('tb-med-507')
    const cool = first({ kind: 'leg-water', leg: 1 }, trip())
    expect(cool.equation).toBe('Planning rates of ours')
    expect(cool.sourceKeys).toContain('our-judgement')
  })

  it('may be off by a quarter quart from person to person and as much by sun and shade', () => {
    const { others } = first({ kind: 'leg-water', leg: 0 }, trip())
    expect(others!.list.map(({ value }) => value!.toFixed(2))).toEqual(['0.24', '0.24'])
  })
})

describe('a day’s energy', () => {
  it('is a range from the backpacking equation to Yamamoto’s totals, one number on a rest day', () => {
    const context = trip()
    const ranges = dayEnergyRanges(context)
    ranges.forEach((range, day) => {
      const { kcalTotal, kcalWalking } = context.reckoning.days[day]!
      const [own] = explain({ kind: 'day-energy', day }, context)
      const yamamoto = own!.others?.list[0]?.value ?? kcalTotal!
      near(range!.lowKcal, Math.min(kcalTotal!, yamamoto))
      near(range!.highKcal, Math.max(kcalTotal!, yamamoto))
      if (kcalWalking === 0) near(range!.lowKcal, range!.highKcal)
    })
    expect(ranges[0]!.highKcal).toBeGreaterThan(ranges[0]!.lowKcal * 1.02)
  })
})

describe('sources', () => {
  it('of every explanation are in the register, and are put into words with their standing', () => {
    const context = trip()
    const all = (['walking-time', 'leg-energy', 'leg-water'] as const).flatMap(kind =>
      explain({ kind, leg: 1 }, context),
    )
    all.push(...(['day-energy', 'ration'] as const).flatMap(kind => explain({ kind, day: 0 }, context)))
    all.push(...explain({ kind: 'fuel', item: 'gas' }, context), ...explain({ kind: 'body-litres' }, context))
    const keys = new Set(
      all.flatMap(each => [...each.sourceKeys, ...(each.others?.list ?? []).flatMap(o => o.sourceKeys)]),
    )
    expect(keys.size).toBeGreaterThan(12)
    for (const key of keys) expect(key in sources, key).toBe(true)
    expect(sourceText(sources['mifflin-1990'])).toMatch(
      /^Mifflin MD and others \(1990\), .*: read in the abstract\./,
    )
    expect(sourceText(sources['our-judgement'])).toMatch(/^Our judgement/)
  })
})
