// What lies between sources, and what a camp at water would save: against reckonings made apart from it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan, StopDocument } from '../../src/plan'
import { type DryStretch, dryStretchesOf, dryStretchSteps, isSource, reckon } from '../../src/reckon'
import { differences } from './agree'
import { documents, planOf } from './plans'
import { reckoned, smallPlan } from './small-plans'

const stretchesOf = (plan: Plan, mostCamps?: number): DryStretch[] =>
  dryStretchesOf(reckon, { plan, reckoning: reckoned(plan), ...(mostCamps !== undefined && { mostCamps }) })

/** Source, two dry camps, a source with a night, a dry stop without a night, the end. 4 km/h on the flat: 1 h a leg. */
const stops: StopDocument[] = [
  { name: 'Start' },
  { name: 'Dry one', nights: 1, leg: { km: 4, hours: 1 } },
  { name: 'Dry two', nights: 1, leg: { km: 8, hours: 2 } },
  { name: 'Spring', nights: 1, water: 'sure', leg: { km: 4, hours: 1 } },
  { name: 'Pass', leg: { km: 6, hours: 3 } },
  { name: 'End', leg: { km: 2, hours: 1 } },
]
const water = { litresPerHour: 0.5, campLitres: 3, reserveLitres: 0.5 }
const bags = (holdsWaterLitres: number) => ({ id: 'bags', massKg: 0.1, litres: 0.2, holdsWaterLitres })

describe('the stretches between sources', () => {
  const plan = smallPlan({ stops, water, gear: [bags(20)] })

  it('lead from each source to the next or the end, with their km and hours', () => {
    expect(stretchesOf(plan).map(({ carry, km, hours }) => [carry.stop, carry.to, km, hours])).toEqual([
      [0, 3, 16, 4],
      [3, 5, 8, 4],
    ])
  })

  it('name the dry camps on them: stops with a night and no source', () => {
    expect(stretchesOf(plan).map(({ camps }) => camps.map(camp => camp.stop))).toEqual([[1, 2], []])
  })

  it('say what a camp at water would save, reckoned by hand', () => {
    // Out of the start: 4 h and two camps, 0.5 + 2 + 6 = 8.5 L. With water at the first camp: 1 h in, then 3 h and a
    // camp, 0.5 + 1.5 + 3 = 5 L. At the second: 3 h and a camp, 5 L, then 1 h. Nothing but water changes the load.
    const [first] = stretchesOf(plan)
    expect(first!.carry.needLitres).toBeCloseTo(8.5, 9)
    for (const camp of first!.camps) {
      expect(camp.savesCarryLitres).toBeCloseTo(3.5, 9)
      expect(camp.savesPeakKg).toBeCloseTo(3.5, 9)
      expect(camp.leavesShortLitres).toBe(0)
    }
  })

  it('say how much the containers would still fall short', () => {
    const [first] = stretchesOf(smallPlan({ stops, water, gear: [bags(4)] }))
    expect(first!.carry.shortLitres).toBeCloseTo(4.5, 9)
    expect(first!.camps.map(camp => camp.leavesShortLitres)).toEqual([
      expect.closeTo(1, 9),
      expect.closeTo(1, 9),
    ])
  })

  it('count a doubtful source as dry until it is trusted', () => {
    const doubtful = stops.map(stop =>
      stop.name === 'Dry two' ? { ...stop, water: 'doubtful' as const } : stop,
    )
    const camps = (trustDoubtful: boolean) =>
      stretchesOf(smallPlan({ stops: doubtful, water: { ...water, trustDoubtful }, gear: [bags(20)] })).map(
        stretch => stretch.camps.map(camp => camp.stop),
      )
    expect(camps(false)).toEqual([[1, 2], []])
    expect(camps(true)).toEqual([[1], [], []])
  })
})

describe('the number of reckonings', () => {
  const camps = Array.from(
    { length: 20 },
    (_, i): StopDocument => ({
      name: `Camp ${i}`,
      nights: 1,
      ...(i === 9 && { water: 'sure' as const }),
      leg: { km: 5 },
    }),
  )
  const plan = smallPlan({ stops: [{ name: 'Start' }, ...camps, { name: 'End', leg: { km: 5 } }] })

  it('ends after the first twelve dry camps of the trip; the others are named', () => {
    let count = 0
    const reckoning = reckoned(plan)
    const counting = (each: Plan) => {
      count += 1
      return reckon(each)
    }
    const found = dryStretchesOf(counting, { plan, reckoning })
    expect(count).toBe(12)
    expect(found.map(stretch => stretch.camps.length)).toEqual([9, 3])
    expect(found.map(stretch => stretch.unreckoned)).toEqual([[], [14, 15, 16, 17, 18, 19, 20]])
  })

  it('is one for each step, so that a caller can stop in between', () => {
    let count = 0
    const counting = (each: Plan) => {
      count += 1
      return reckon(each)
    }
    const seen: [number, number, number][] = []
    for (const { stretches, campsLeft } of dryStretchSteps(counting, { plan, reckoning: reckoned(plan) })) {
      seen.push([count, campsLeft, stretches.flatMap(({ camps }) => camps).length])
      if (count === 3) break
    }
    expect(seen).toEqual([
      [0, 12, 0],
      [1, 11, 1],
      [2, 10, 2],
      [3, 9, 3],
    ])
  })

  it('leaves a camp unreckoned where the trip with water there does not settle', () => {
    const reckoning = reckoned(plan)
    const [first] = dryStretchesOf(() => ({ ok: false }), { plan, reckoning })
    expect(first).toMatchObject({ camps: [], unreckoned: [1, 2, 3, 4, 5, 6, 7, 8, 9] })
  })
})

describe.each([
  { ration: 'fixed', litresPerHour: 'number' },
  { ration: 'energy', litresPerHour: 'from-heat' },
] as const)('on any trip with $ration rations and water $litresPerHour', kind => {
  it('what is saved is the difference to the whole plan reckoned with water at that stop', () => {
    let camps = 0
    fc.assert(
      fc.property(documents(kind), document => {
        const plan = planOf(document)
        const before = reckon(plan)
        if (!before.ok) return
        for (const stretch of dryStretchesOf(reckon, { plan, reckoning: before.reckoning })) {
          for (const camp of stretch.camps) {
            camps += 1
            expect(isSource(plan, camp.stop)).toBe(false)
            const stops = document.trip.stops.map((stop, i) =>
              i === camp.stop ? { ...stop, water: 'sure' as const } : stop,
            )
            const after = reckoned(planOf({ ...document, trip: { ...document.trip, stops } }))
            const parts = after.carries.filter(
              ({ stop }) => stop === stretch.carry.stop || stop === camp.stop,
            )
            expect(parts.map(({ to }) => to)).toEqual([camp.stop, stretch.carry.to])
            const needed = Math.max(...parts.map(part => part.needLitres))
            const short = Math.max(...parts.map(part => part.shortLitres))
            expect(
              differences(camp, {
                savesCarryLitres: stretch.carry.needLitres - needed,
                savesPeakKg: before.reckoning.need.peakLoadFullWaterKg - after.need.peakLoadFullWaterKg,
                leavesShortLitres: short,
              }),
            ).toEqual([])
            if (kind.litresPerHour === 'number') expect(camp.savesCarryLitres).toBeGreaterThanOrEqual(-1e-9)
          }
        }
      }),
      { numRuns: 40 },
    )
    expect(camps).toBeGreaterThan(10)
  })

  it('the stretches cover the trip without gap or overlap', () => {
    fc.assert(
      fc.property(documents(kind), document => {
        const plan = planOf(document)
        const before = reckon(plan)
        if (!before.ok) return
        const { moments } = before.reckoning
        const found = dryStretchesOf(reckon, { plan, reckoning: before.reckoning, mostCamps: 0 })
        expect(found.map(({ carry }) => carry.to).slice(0, -1)).toEqual(
          found.map(({ carry }) => carry.stop).slice(1),
        )
        expect(found.reduce((sum, { km }) => sum + km, 0)).toBeCloseTo(moments.at(-1)!.km, 6)
        expect(found.reduce((sum, { hours }) => sum + hours, 0)).toBeCloseTo(moments.at(-1)!.hours, 6)
      }),
      { numRuns: 40 },
    )
  })
})
