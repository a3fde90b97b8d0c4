// What should be left on the way, against the moments of the whole trip, the list of what happens on it, and the trip
// reckoned again with a resupply taken away.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanDocument, StopDocument } from '../../src/plan'
import { onTheWay, reckon } from '../../src/reckon'
import { differences } from './agree'
import { happenings, leftOf } from './naive-trip'
import { documents, planOf } from './plans'
import { documentOf, noWater, reckoned } from './small-plans'

const kinds = [
  { ration: 'fixed', litresPerHour: 'number', packed: true },
  { ration: 'energy', litresPerHour: 'number', packed: true },
  { ration: 'energy', litresPerHour: 'from-heat' },
] as const

/** Documents with a stop on the way, and that stop. */
const asked = (kind: (typeof kinds)[number]) =>
  documents(kind)
    .filter(({ trip }) => trip.stops.length > 2)
    .chain(document =>
      fc.tuple(fc.constant(document), fc.integer({ min: 1, max: document.trip.stops.length - 2 })),
    )

/** A resupply taken away, packings too, with the factor that the trip is reckoned with. */
function missed(document: PlanDocument, stop: number, factor: number): PlanDocument {
  const { packings: _packings, ...rest } = document
  const stops = rest.trip.stops.map(
    (each, i): StopDocument => (i === stop ? { ...each, resupply: false } : each),
  )
  return {
    ...rest,
    trip: { ...rest.trip, stops },
    settings: { ...rest.settings, personalFactor: factor },
  }
}

describe('what should be left on leaving a stop', () => {
  it.each(kinds)('is what the whole trip has there: $ration rations, water $litresPerHour', kind => {
    fc.assert(
      fc.property(asked(kind), ([document, stop]) => {
        const plan = planOf(document)
        const found = reckon(plan)
        if (!found.ok) return
        const { reckoning } = found
        const left = onTheWay(plan, reckoning, stop)
        const moment = reckoning.moments.find(m => m.stop === stop && m.phase === 'depart')!
        expect([left.loadKg, left.bodyLitres, left.foodKg, left.waterLitres]).toEqual([
          moment.kg.total,
          moment.bodyLitres,
          moment.kg.daily,
          moment.kg.water,
        ])
        // Food and nights by walking along the list of what happens.
        const rations = reckoning.days.map(day => day.ration)
        const list = happenings(
          plan,
          reckoning.legs.map(({ hours }) => hours),
          rations,
        )
        const lookAt = (at: number) =>
          list.findIndex(it => it.what === 'look' && it.stop === at && it.phase === 'depart')
        const ration = { use: 'daily', resupplied: true } as (typeof plan.gear)[number]
        const rationsAt = (at: number) => leftOf(ration, lookAt(at), list, plan, rations)
        expect(differences(left.rations, rationsAt(stop))).toEqual([])
        const nightly = plan.gear.filter(({ use }) => use === 'nightly')
        expect(left.nightly.map(({ id }) => id)).toEqual(nightly.map(({ id }) => id))
        for (const [i, item] of nightly.entries())
          expect(
            differences(left.nightly[i]!.units, leftOf(item, lookAt(stop), list, plan, rations)),
          ).toEqual([])
        // The sections join up from the one the stop is in to the end.
        const { sections } = left
        expect(sections[0]!.from).toBeLessThanOrEqual(stop)
        expect(sections.at(-1)!.to).toBe(plan.trip.stops.length - 1)
        sections.forEach(({ from, to, rations, foodKg }, i) => {
          expect(to).toBeGreaterThan(stop)
          if (i > 0) expect(from).toBe(sections[i - 1]!.to)
          if (from > 0) expect(plan.trip.stops[from]!.resupply).toBe(true)
          expect(differences(rations, rationsAt(from))).toEqual([])
          expect(foodKg).toBe(reckoning.moments[2 * from]!.kg.daily)
        })
      }),
      { numRuns: 60 },
    )
  })

  it('weighs, with all the water, what the plan with an endless weightless container strapped on weighs there', () => {
    fc.assert(
      fc.property(asked(kinds[1]), ([document, stop]) => {
        const plan = planOf(document)
        const found = reckon(plan)
        if (!found.ok) return
        const endless = {
          id: 'endless',
          massKg: 0,
          litres: 0,
          stow: 'strapped-on' as const,
          holdsWaterLitres: 100,
        }
        const all = reckon(
          planOf({
            ...document,
            gear: [
              ...document.gear!,
              ...Array.from({ length: 20 }, (_, i) => ({ ...endless, id: `endless ${i}` })),
            ],
          }),
        )
        if (!all.ok || all.reckoning.need.waterShortLitres > 0) return
        const { loadFullWaterKg } = onTheWay(plan, found.reckoning, stop)
        expect(differences(loadFullWaterKg, all.reckoning.moments[2 * stop]!.kg.total)).toEqual([])
      }),
      { numRuns: 40 },
    )
  })
})

describe('a resupply that is missed', () => {
  it.each(kinds)(
    'is the trip reckoned without it, from there on: $ration rations, water $litresPerHour',
    kind => {
      fc.assert(
        fc.property(asked(kind), ([document, stop]) => {
          const plan = planOf(document)
          const found = reckon(plan)
          if (!found.ok) return
          const { need } = found.reckoning
          const { ifSkipped } = onTheWay(plan, found.reckoning, stop)
          const shops = plan.trip.stops.flatMap(({ resupply }, i) => (resupply && i > stop ? [i] : []))
          expect(ifSkipped.map(({ stop }) => stop)).toEqual(shops)
          for (const skipped of ifSkipped) {
            const without = planOf(missed(document, skipped.stop, need.factor))
            const again = reckon(without)
            if (!again.ok) {
              expect(skipped.foodKg).toBe(null)
              continue
            }
            const rest = again.reckoning.moments.slice(2 * stop)
            expect(
              differences(skipped, {
                rations: onTheWay(without, again.reckoning, stop).rations,
                foodKg: rest[0]!.kg.daily,
                bodyLitres: Math.max(...rest.map(m => m.bodyLitres)),
                peakLoadKg: Math.max(...rest.map(m => m.kg.total)),
                peakLoadFullWaterKg: Math.max(...rest.map(m => m.fullWaterKg)),
              }),
            ).toEqual([])
          }
        }),
        { numRuns: 40 },
      )
    },
  )

  it('never lowers the load or the litres from there on', () => {
    fc.assert(
      fc.property(asked(kinds[0]), ([document, stop]) => {
        const plan = planOf(document)
        const { moments } = reckoned(plan)
        const left = onTheWay(plan, reckoned(plan), stop)
        const most = (of: (m: (typeof moments)[number]) => number) =>
          Math.max(...moments.slice(2 * stop).map(of))
        for (const skipped of left.ifSkipped) {
          expect(skipped.peakLoadKg).toBeGreaterThanOrEqual(most(m => m.kg.total) - 1e-9)
          expect(skipped.peakLoadFullWaterKg).toBeGreaterThanOrEqual(most(m => m.fullWaterKg) - 1e-9)
          expect(skipped.bodyLitres).toBeGreaterThanOrEqual(most(m => m.bodyLitres) - 1e-9)
          expect(skipped.rations).toBeGreaterThanOrEqual(left.rations)
        }
      }),
      { numRuns: 60 },
    )
  })
})

it('counts by hand: four days, a shop after the second night', () => {
  const stop = (name: string, more: Partial<StopDocument> = {}): StopDocument => ({
    name,
    nights: 1,
    water: 'sure',
    leg: { km: 4, hours: 1 },
    ...more,
  })
  const stops = [
    { name: 'Start' },
    stop('One'),
    stop('Two', { resupply: true }),
    stop('Three'),
    { name: 'End', leg: { km: 4, hours: 1 } },
  ]
  const meals = { breakfast: 0.25, trail: 0.4, supper: 0.35, spareDays: 0.5 }
  const gear = [
    { id: 'food', massKg: 1, litres: 2, use: 'daily' as const },
    { id: 'gas', massKg: 0.05, litres: 0, use: 'nightly' as const },
  ]
  const plan = planOf(documentOf({ stops, meals, water: noWater, gear }))
  const left = onTheWay(plan, reckoned(plan), 1)
  // Trail food of day 2, supper, breakfast of day 3 and half a day to spare; three nights less one.
  expect(left.rations).toBeCloseTo(0.4 + 0.35 + 0.25 + 0.5, 12)
  expect(left.nightly).toEqual([{ id: 'gas', units: 2 }])
  // From the start: a day more; from the shop: two days' trail food, supper and breakfast.
  const close = (rations: number) => expect.closeTo(rations, 9)
  expect(left.sections).toEqual([
    { from: 0, to: 2, rations: close(2.5), foodKg: close(2.5) },
    { from: 2, to: 4, rations: close(1.9), foodKg: close(1.9) },
  ])
  expect(left.ifSkipped).toMatchObject([{ stop: 2, rations: close(2.9), foodKg: close(2.9) }])
})

it('is asked of stops on the way alone', () => {
  const plan = planOf(documentOf({}))
  for (const stop of [0, 1, 2, -1, 0.5])
    expect(() => onTheWay(plan, reckoned(plan), stop)).toThrow(RangeError)
})
