// How far what is really left lasts, against the moments of the trip; the pace walked, and the ration eaten.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Draft, emptyDraft, fromPlanDocument, type StopDocument, withPaceBy } from '../../src/plan'
import { emptyShelf, foodThings, unusedOnShelf, withOwnRation, withUnusedNoted } from '../../src/plan/shelf'
import { drunkFrom, onTheWay, reckon, usedFrom } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import { ownRation } from '../../src/report/after-trip'
import { aheadAt, dryAhead, lasting, shortOf, walkedPace } from '../../src/report/really-left'
import { counter } from '../plan/drafts'
import { documents, planOf } from './plans'
import { documentOf, reckoned, smallPlan } from './small-plans'

const formats = formatsIn('metric')
const asked = documents({ ration: 'fixed', litresPerHour: 'number' })
  .filter(({ trip }) => trip.stops.length > 2)
  .chain(document =>
    fc.tuple(fc.constant(document), fc.integer({ min: 1, max: document.trip.stops.length - 2 })),
  )

describe('what is used from a stop on', () => {
  test('is what the moments have less of, and all but the spare food by the time it is bought again', () => {
    fc.assert(
      fc.property(asked, ([document, stop]) => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        const { reckoning } = result
        const { moments } = reckoning
        const { to } = onTheWay(plan, reckoning, stop, 0).sections[0]!
        for (const use of ['daily', 'nightly'] as const) {
          const used = usedFrom(plan, reckoning, { use, from: stop, to })
          const start = moments[2 * stop]!.kg[use]
          let before = 0
          for (const { stop: at, phase, amount } of used) {
            expect(amount).toBeGreaterThanOrEqual(before - 1e-9)
            before = amount
            const moment = moments[2 * at - (phase === 'arrive' ? 1 : 0)]!
            const isBought = at === to && phase === 'depart'
            if (!isBought) expect(amount).toBeCloseTo(start - moment.kg[use], 6)
            expect(amount).toBeLessThanOrEqual(start + 1e-9)
          }
        }
      }),
    )
  })

  test('of water is, with the reserve, what the source must be left with', () => {
    fc.assert(
      fc.property(asked, ([document]) => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        for (const { stop, needLitres } of result.reckoning.carries) {
          const used = drunkFrom(plan, result.reckoning, stop)
          expect((used.at(-1)?.amount ?? 0) + plan.trip.water.reserveLitres).toBeCloseTo(needLitres, 6)
        }
      }),
    )
  })
})

const stops: StopDocument[] = [
  { name: 'Start' },
  { name: 'Spring', water: 'sure', nights: 1, leg: { km: 12 } },
  { name: 'Dry', nights: 1, leg: { km: 12 } },
  { name: 'Hut', water: 'sure', nights: 1, resupply: true, leg: { km: 12 } },
  { name: 'End', leg: { km: 12 } },
]
const document = documentOf({
  stops,
  gear: [
    { id: 'food', name: 'Food', massKg: 1, litres: 2, use: 'daily' },
    { id: 'gas', name: 'Gas', massKg: 0.1, litres: 0.1, use: 'nightly' },
    { id: 'bottle', name: 'Bottle', massKg: 0.1, litres: 0, holdsWaterLitres: 8 },
  ],
})
const plan = planOf(document)
const reckoning = reckoned(plan)
const context = { plan, reckoning, formats }
const left = onTheWay(plan, reckoning, 1)
const say = (at: object) =>
  lasting(at, left, context).map(({ what, says }) => `${what}: ${says}`.replaceAll('\u00a0', ' '))

describe('what is really left', () => {
  // From Spring: trail 0.4, night at Dry 0.35 + 0.25, trail 0.4, night at the hut 0.35 + 0.25: 2 kg; water 4.5 L and 0.5 L.
  test('lasts to the end of the section, or as far as it goes, and is short by the rest', () => {
    expect(say({ foodKg: 2.3 })).toEqual(['Food: Enough until you leave Hut; 0.3 kg to spare.'])
    expect(say({ foodKg: 1.2 })).toEqual([
      'Food: Enough until you leave Dry; short by 0.8 kg until you leave Hut. It lasts at 60 % of a full ration.',
    ])
    expect(say({ foodKg: 0 })).toEqual([
      'Food: Not enough until you reach Dry; short by 2.0 kg until you leave Hut.',
    ])
    expect(say({ fuelKg: 0.15 })).toEqual([
      'Fuel: Enough until you reach Hut; short by 50 g until you leave Hut.',
    ])
    expect(say({ waterLitres: 4 })).toEqual([
      'Water: Enough until you reach Dry; short by 2.5 L until you reach Hut.',
    ])
    expect(say({ waterLitres: 6.2 })).toEqual([
      'Water: Enough until you reach Hut, but 0.3 L of the reserve is missing.',
    ])
    expect(say({})).toEqual([])
  })

  test('says of a doubtful water source that it may be dry', () => {
    const doubtful = planOf({
      ...document,
      trip: {
        ...document.trip,
        water: { trustDoubtful: true },
        stops: stops.map(stop => (stop.name === 'Hut' ? { ...stop, water: 'doubtful' } : stop)),
      },
    })
    const there = { plan: doubtful, reckoning: reckoned(doubtful), formats }
    const told = (waterLitres: number) =>
      lasting({ waterLitres }, onTheWay(doubtful, there.reckoning, 1), there)[0]!.says
    for (const litres of [4, 6.2, 9])
      expect(told(litres)).toMatch(/ Hut is doubtful: if it is dry, you have no water\.$/)
    expect(say({ waterLitres: 9 })[0]).not.toContain('doubtful')
  })

  test('brings its caution where it is short, and none where it is not', () => {
    const of = (at: object) => shortOf(lasting(at, left, context), plan).map(({ about }) => about)
    expect(of({ foodKg: 1, waterLitres: 1 })).toEqual(['water', 'food'])
    expect(of({ foodKg: 9, waterLitres: 9, fuelKg: 1 })).toEqual([])
  })
})

describe('the pace walked', () => {
  const stopIds = ['a', 'b', 'c', 'd', 'e']
  // Each leg of 12 km is planned at 3 h.
  const log = { setOff: { a: 480, b: 450, gone: 3 }, reached: { b: 480 + 240, c: 450 + 210, other: 5 } }
  const at = { plan, reckoning, log, stopIds }

  test('is the hours between the times noted, by those of the plan', () => {
    expect(walkedPace(at)).toMatchObject({ legs: 2, hours: 7.5, plannedHours: 6, factor: 1.25, isSane: true })
    expect(walkedPace({ ...at, log: {} })).toBeNull()
    expect(walkedPace({ ...at, log: { setOff: { a: 480 }, reached: { b: 482 } } })).toMatchObject({
      isSane: false,
    })
  })

  test('is not believed where one leg of an hour or more cannot be, whatever the others come to', () => {
    // 4 h, and 13 h instead of 1: together 2.83 times the plan.
    const mistyped = { setOff: log.setOff, reached: { b: 480 + 240, c: 450 + 13 * 60 } }
    expect(walkedPace({ ...at, log: mistyped })).toMatchObject({ legs: 2, isSane: false })
    const short = stops.map(stop => (stop.name === 'Dry' ? { ...stop, leg: { km: 2 } } : stop))
    const other = planOf({ ...document, trip: { ...document.trip, stops: short } })
    const rested = { setOff: log.setOff, reached: { b: 480 + 240, c: 450 + 110 } }
    expect(walkedPace({ ...at, plan: other, reckoning: reckoned(other), log: rested })).toMatchObject({
      legs: 2,
      isSane: true,
    })
  })

  test('warns of the dry stretch that one stands in, and of none that lies behind', () => {
    const dry = planOf({
      ...document,
      gear: document.gear!.map(item => (item.id === 'bottle' ? { ...item, holdsWaterLitres: 2 } : item)),
      trip: {
        ...document.trip,
        stops: stops.map(stop => ({ ...stop, nights: stop.name === 'Hut' ? 1 : 0 })),
      },
    })
    const warned = (stop: number) =>
      dryAhead(aheadAt({ ...at, plan: dry, reckoning: reckoned(dry) }, stop, 1.5)!, stop, formats)
    // Dry lies on the way from Spring to Hut.
    expect(warned(2)[0]?.text).toContain('needed from Spring to Hut')
    expect(warned(3).flatMap(({ at: where }) => where)).not.toContain(1)
  })

  test('changes the legs ahead and nothing before', () => {
    const ahead = aheadAt(at, 2, 1.25)!
    expect(ahead.reckoning.legs.map(({ hours }) => hours)).toEqual([3, 3, 3.75, 3.75])
    expect(ahead.stops.map(({ hours, minute }) => [hours, minute])).toEqual([
      [3.75, null],
      [7.5, null],
    ])
    const today = aheadAt({ ...at, log: { setOff: { c: 480 } } }, 2, 1.25)!
    expect(today.stops.map(({ minute }) => minute)).toEqual([480 + 225, null])
    expect(ahead.left.waterLitres).toBeGreaterThanOrEqual(onTheWay(plan, reckoning, 2).waterLitres)
  })

  test('kept, is what the plan then walks', () => {
    const draft = withPaceBy(fromPlanDocument(document, counter('s')), plan.trip.pace, 1.25)
    const kept = smallPlan({ stops, gear: [] })
    const paced = reckoned({
      ...kept,
      trip: { ...kept.trip, pace: draft.trip.pace as typeof kept.trip.pace },
    })
    expect(paced.legs.map(({ hours }) => hours)).toEqual([3.75, 3.75, 3.75, 3.75])
  })
})

describe('after the trip', () => {
  test('what was eaten is what was packed and bought less what was left, by the days of food', () => {
    const { planned, listedKg } = ownRation(plan, reckoning, { overKg: 0 })!
    const bought = planned.rations + listedKg * 0.5
    expect(planned.packedKg).toBeCloseTo(bought, 9)
    expect(ownRation(plan, reckoning, { overKg: 0.5 })!.ownKg).toBeCloseTo(1, 9)
    expect(ownRation(plan, reckoning, { overKg: planned.packedKg })).toBeNull()
    const bare = smallPlan({ stops, gear: [] })
    expect(ownRation(bare, reckoned(bare), { overKg: 1 })).toBeNull()
  })

  const item = {
    id: 'food',
    name: 'Food',
    use: 'daily',
    massKg: 1,
    litres: 2,
    shelf: { id: 't', at: 1 },
  } as const
  const draft: Draft = { ...emptyDraft(), name: 'Ridge', gear: [item, { id: 'kit', massKg: 1 }] }
  const shelf = { ...emptyShelf(), things: [{ id: 't', item: { massKg: 1, litres: 2 }, changed: {} }] }

  const own = { listedKg: 1, ownKg: 0.8, planned: { packedKg: 4, rations: 4 }, now: 9 }

  test('what was left over, corrected after it was taken on, is held against the plan as it was', () => {
    const before = ownRation(plan, reckoning, { overKg: 0.5 })!
    const times = before.ownKg / before.listedKg / 2
    const gear = document.gear!.map(it => (it.use === 'daily' ? { ...it, massKg: it.massKg! * times } : it))
    const less = planOf({ ...document, gear })
    const again = (overKg: number) => ownRation(less, reckoned(less), { overKg, before: before.planned })!
    expect(again(0.5).ownKg).toBeCloseTo(before.ownKg, 9)
    expect(again(0.2).ownKg).toBeCloseTo(ownRation(plan, reckoning, { overKg: 0.2 })!.ownKg, 9)
    expect(again(0.2).listedKg).toBeCloseTo(before.listedKg * times, 9)
  })

  test('litres that follow the mass go on following it, in the list and on the shelf', () => {
    const facts = {
      ...{ massKg: 1, litresFrom: 'kind' as const },
      litresRange: { low: 1, typical: 2, high: 3 },
      litresPerKg: { low: 1, typical: 2, high: 3 },
    }
    const [food, ...rest] = draft.gear
    const next = withOwnRation(
      {
        draft: { ...draft, gear: [{ ...facts, id: food!.id, use: 'daily', shelf: item.shelf }, ...rest] },
        shelf: { ...shelf, things: [{ id: 't', item: facts, changed: {} }] },
      },
      own,
    )
    const less = {
      massKg: 0.8,
      litresPerKg: facts.litresPerKg,
      litresRange: { low: 0.8, typical: 1.6, high: 2.4 },
    }
    expect(next.draft.gear[0]).toMatchObject(less)
    expect(next.shelf.things[0]!.item).toMatchObject(less)
  })

  test('the things that the food was packed from are those still on the shelf', () => {
    expect(foodThings(draft, shelf).map(({ id }) => id)).toEqual(['t'])
    expect(foodThings(draft, emptyShelf())).toEqual([])
    expect(foodThings({ ...draft, gear: [{ id: 'food', use: 'daily', massKg: 1 }] }, shelf)).toEqual([])
  })

  test('one’s own ration goes into the food of the list and its things on the shelf, and nothing else', () => {
    const next = withOwnRation({ draft, shelf }, own)
    expect(next.draft.gear).toEqual([{ ...item, massKg: 0.8, litres: 1.6 }, draft.gear[1]])
    expect(next.draft.log).toEqual({ rationKg: 0.8, foodPlanned: own.planned })
    expect(next.shelf.things[0]).toMatchObject({ item: { massKg: 0.8, litres: 1.6 }, changed: { massKg: 9 } })
  })

  test('what came home unused is noted on the shelf once', () => {
    const unused = { ...draft, log: { unused: { food: true, gone: true } as const } }
    expect(unusedOnShelf(unused, shelf)).toEqual(['t'])
    const noted = withUnusedNoted(shelf, unused)
    expect(noted.things[0]!.note).toBe('Came home unused: Ridge.')
    expect(unusedOnShelf(unused, noted)).toEqual([])
    expect(withUnusedNoted(noted, unused)).toBe(noted)
  })
})
