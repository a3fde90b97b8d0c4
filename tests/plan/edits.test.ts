// Long because all edits keep the same laws.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addItem,
  addPack,
  addSetup,
  addStop,
  type Draft,
  duplicateItem,
  duplicatePack,
  duplicateSetup,
  duplicateStop,
  emptyDraft,
  fieldAt,
  fieldPath,
  fromPlanDocument,
  hasPlace,
  moveItem,
  movePack,
  moveSetup,
  moveStop,
  quickTrip,
  removeItem,
  removePack,
  removeSetup,
  removeStop,
  setField,
  settle,
  toPlanDocument,
} from '../../src/plan'
import { counter, wholeDraft } from './drafts'

const names = (draft: Draft) => draft.trip.stops.map(({ name }) => name)
const km = (draft: Draft) => draft.trip.stops.reduce((sum, { leg }) => sum + (leg?.km ?? 0), 0)

function expectWhole({ trip: { stops } }: Draft) {
  stops.forEach((stop, i) => {
    expect('leg' in stop).toBe(i > 0)
    if (i === 0) expect(stop).not.toHaveProperty('nights')
    if (i === stops.length - 1) {
      expect(stop).not.toHaveProperty('nights')
      expect(stop).not.toHaveProperty('resupply')
    }
  })
  expect(new Set(stops.map(({ id }) => id)).size).toBe(stops.length)
}

type Step = { kind: 'add' | 'duplicate' | 'remove' | 'move'; from: number; to: number }
const steps = fc.array(
  fc.record({
    kind: fc.constantFrom<Step['kind']>('add', 'duplicate', 'remove', 'move'),
    from: fc.nat(8),
    to: fc.integer({ min: -1, max: 9 }),
  }),
)

describe('stops', () => {
  test('whatever is added, copied, moved and removed, the first stop alone has no leg and the last no nights', () => {
    fc.assert(
      fc.property(steps, list => {
        const newId = counter('x')
        let draft = quickTrip(emptyDraft(), { days: 4, resupplyEveryDays: 1 }, counter())
        for (const { kind, from, to } of list) {
          const id = draft.trip.stops[from]?.id ?? 'gone'
          if (kind === 'add')
            draft = addStop(draft, newId, { at: to, with: { name: 'x', nights: 2, resupply: true } })
          if (kind === 'duplicate') draft = duplicateStop(draft, id, newId)
          if (kind === 'remove') draft = removeStop(draft, id)
          if (kind === 'move') draft = moveStop(draft, id, to)
          expectWhole(draft)
        }
      }),
    )
  })

  test('moving a stop keeps the way as long', () => {
    fc.assert(
      fc.property(fc.nat(4), fc.nat(4), (from, to) => {
        const draft = wholeDraft()
        const stops = draft.trip.stops.map((stop, i) => (i ? { ...stop, leg: { km: 2 ** i } } : stop))
        const moved = moveStop({ ...draft, trip: { stops } }, stops[from]!.id, to)
        expect(km(moved)).toBe(2 + 4 + 8 + 16)
        expect(moved.trip.stops[to]?.id).toBe(stops[from]!.id)
      }),
    )
  })

  test("a removed middle stop's leg goes into the next one", () => {
    const draft = setField(
      setField(wholeDraft(), 'trip/stops/s2/leg', { km: 3, ascentM: 100, hours: 1 }),
      'trip/stops/s3/leg',
      { km: 4, descentM: 50, hours: 2 },
    )
    expect(removeStop(draft, 's2').trip.stops[1]).toMatchObject({
      id: 's3',
      leg: { km: 7, ascentM: 100, descentM: 50, hours: 3 },
    })
  })

  test('hours known for one of two merged legs only are given up', () => {
    const draft = setField(wholeDraft(), 'trip/stops/s2/leg/hours', 3)
    expect(removeStop(draft, 's2').trip.stops[1]?.leg).not.toHaveProperty('hours')
  })

  test('removing the first stop starts the trip at the next; removing the last ends it before', () => {
    const draft = removeStop(removeStop(wholeDraft(), 's1'), 's5')
    expect(names(draft)).toEqual(['Camp 1', 'Camp 2', 'Camp 3'])
    expectWhole(draft)
  })
})

describe('gear and packs', () => {
  test('removing a container frees what was inside', () => {
    expect(removeItem(wholeDraft(), 'box').gear).toEqual([
      wholeDraft().gear[0],
      { id: 'pot', name: 'Pot', massKg: 0.2, litres: 1 },
    ])
  })

  test('a copy has its own ids and stands after its original', () => {
    const draft = duplicatePack(duplicateItem(wholeDraft(), 'food', counter('i')), 'big', counter('p'))
    expect(draft.gear.map(({ id, name }) => [id, name])).toEqual([
      ['food', 'Food'],
      ['i1', 'Food (copy)'],
      ['box', 'Box'],
      ['pot', 'Pot'],
    ])
    expect(draft.packs[1]).toMatchObject({
      name: 'Big (copy)',
      bodyLitres: 60,
      setups: [{ name: 'as sold', massKg: 1.6 }],
    })
    const ids = draft.packs.flatMap(({ id, setups }) => [id, ...setups.map(setup => setup.id)])
    expect(new Set(ids).size).toBe(4)
  })

  test('things are added where asked, moved, and removed again', () => {
    let draft = addItem(wholeDraft(), counter('i'), { at: 0, with: { name: 'Map' } })
    expect(draft.gear[0]).toEqual({ id: 'i1', name: 'Map' })
    draft = moveItem(draft, 'i1', 99)
    expect(draft.gear.at(-1)?.id).toBe('i1')
    expect(removeItem(draft, 'i1')).toEqual(wholeDraft())

    draft = addSetup(addPack(wholeDraft(), counter('p')), 'big', {
      newId: counter('u'),
      with: { massKg: 1.2 },
    })
    expect(draft.packs[1]).toEqual({ id: 'p1', setups: [{ id: 'p2', frame: 'framed' }] })
    draft = duplicateSetup(moveSetup(draft, 'big', { id: 'u1', to: 0 }), 'big', {
      id: 'sold',
      newId: counter('v'),
    })
    expect(draft.packs[0]?.setups.map(({ id }) => id)).toEqual(['u1', 'sold', 'v1'])
    draft = removePack(movePack(draft, 'p1', 0), 'p1')
    expect(removeSetup(removeSetup(draft, 'big', 'u1'), 'big', 'v1')).toEqual(wholeDraft())
  })

  test('a thing that is gone changes nothing', () => {
    const draft = wholeDraft()
    const newId = counter()
    for (const same of [
      removeItem(draft, 'no'),
      moveItem(draft, 'no', 0),
      duplicateItem(draft, 'no', newId),
      removePack(draft, 'no'),
      movePack(draft, 'no', 0),
      duplicatePack(draft, 'no', newId),
      addSetup(draft, 'no', { newId }),
      removeSetup(draft, 'big', 'no'),
      duplicateSetup(draft, 'big', { id: 'no', newId }),
      removeStop(draft, 'no'),
      moveStop(draft, 'no', 0),
      duplicateStop(draft, 'no', newId),
      setField(draft, 'gear/no/massKg', 1),
      setField(draft, 'gear/no', { id: 'no' }),
    ])
      expect(same).toBe(draft)
  })
})

describe('fields', () => {
  test('what was set is read again, and taking it away restores the draft', () => {
    const paths = [
      'name',
      'carrier/ageYears',
      'trip/water/campLitres',
      'trip/stops/s2/leg/airC',
      'gear/food/leaves',
      'packs/big/setups/sold/ratedKg',
      'settings/roomyRatio',
    ]
    for (const path of paths) {
      const draft = setField(wholeDraft(), path, 5)
      expect(fieldAt(draft, path)).toBe(5)
      expect(fieldAt(setField(draft, path, undefined), path)).toBeUndefined()
    }
    expect(setField(setField(wholeDraft(), 'carrier/ageYears', 5), 'carrier/ageYears', undefined)).toEqual(
      wholeDraft(),
    )
  })

  test('setting a field to what it is, or taking away what is not there, gives the same draft', () => {
    const draft = wholeDraft()
    expect(setField(draft, 'gear/food/massKg', 0.7)).toBe(draft)
    expect(setField(draft, 'settings/roomyRatio', undefined)).toBe(draft)
  })

  test('a path cannot reach a prototype', () => {
    const draft = setField(wholeDraft(), '__proto__/polluted', 1)
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
    expect(Object.getPrototypeOf(draft)).toBe(Object.prototype)
    expect(fieldAt(wholeDraft(), 'constructor/name')).toBeUndefined()
  })

  test('a place is there as long as the things on its way are', () => {
    expect(hasPlace(wholeDraft(), 'gear/food/fuel/boilLitres')).toBe(true)
    expect(hasPlace(wholeDraft(), 'settings/linerKg')).toBe(true)
    expect(hasPlace(removeItem(wholeDraft(), 'food'), 'gear/food/massKg')).toBe(false)
  })

  test('any id can be part of a path', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), id => {
        const draft: Draft = { ...wholeDraft(), gear: [{ id, massKg: 2 }] }
        expect(fieldAt(draft, fieldPath('gear', id, 'massKg'))).toBe(2)
      }),
    )
  })
})

describe('a plan file', () => {
  test('goes into a draft and out again as it was', () => {
    const { document } = settle(wholeDraft())
    const draft = fromPlanDocument(document, counter('q'))
    expect(toPlanDocument(draft)).toEqual(document)
    expect(new Set(draft.trip.stops.map(({ id }) => id)).size).toBe(5)
  })
})

describe('a quick trip', () => {
  const trip = (inputs: Omit<Parameters<typeof quickTrip>[1], 'days'> & { days: number }) =>
    quickTrip({ ...emptyDraft(), carrier: { massKg: 60 } }, inputs, counter())

  test('has a camp after each day but the last, even legs and water everywhere', () => {
    const draft = trip({ days: 3 })
    expect(names(draft)).toEqual(['Start', 'Camp 1', 'Camp 2', 'End'])
    expect(draft.trip.stops.map(({ nights }) => nights)).toEqual([undefined, 1, 1, undefined])
    expect(draft.trip.stops.every(({ water }) => water === 'sure')).toBe(true)
    expect(draft.trip.stops[3]?.leg).toEqual({ km: 15, ascentM: 500, descentM: 500 })
  })

  test('a dry stretch of n days is n days from one source to the next, in the middle', () => {
    const dry = (days: number, dryStretchDays: number) =>
      trip({ days, dryStretchDays })
        .trip.stops.map(({ water }) => (water === 'none' ? '-' : 'w'))
        .join('')
    expect(dry(6, 0)).toBe('wwwwwww')
    expect(dry(6, 1)).toBe('wwwwwww')
    expect(dry(6, 2)).toBe('www-www')
    expect(dry(7, 3)).toBe('www--www')
    expect(dry(3, 9)).toBe('w--w')
  })

  test('resupplies at every n-th camp, never at the end', () => {
    const at = trip({ days: 6, resupplyEveryDays: 2 }).trip.stops.flatMap(({ name, resupply }) =>
      resupply ? [name] : [],
    )
    expect(at).toEqual(['Camp 2', 'Camp 4'])
  })

  test('buys food where there is water: the dry stretch lies between two resupplies', () => {
    const stops = (days: number, dryStretchDays: number, resupplyEveryDays: number) =>
      trip({ days, dryStretchDays, resupplyEveryDays })
        .trip.stops.map(({ water, resupply }) => (water === 'none' ? '-' : resupply ? 'R' : 'w'))
        .join('')
    expect(stops(6, 2, 3)).toBe('ww-Rwww')
    expect(stops(8, 3, 4)).toBe('ww--Rwwww')
    // Longer than the way from one resupply to the next: that one is left out.
    expect(stops(6, 4, 2)).toBe('ww---ww')
    fc.assert(
      fc.property(fc.nat(30), fc.nat(8), fc.nat(8), (days, dry, every) => {
        const { stops: made } = trip({ days, dryStretchDays: dry, resupplyEveryDays: every }).trip
        expect(made.filter(({ water, resupply }) => resupply && water !== 'sure')).toEqual([])
      }),
    )
  })

  test('is a whole trip for any numbers, and the rest of the draft stays', () => {
    const any = fc.oneof(fc.double(), fc.integer({ min: -3, max: 60 }))
    fc.assert(
      fc.property(
        any,
        any,
        any,
        any,
        any,
        (days, kmPerDay, ascentMPerDay, dryStretchDays, resupplyEveryDays) => {
          const draft = trip({ days, kmPerDay, ascentMPerDay, dryStretchDays, resupplyEveryDays })
          expectWhole(draft)
          expect(settle(draft).leftOut).toEqual([])
          expect(draft.carrier.massKg).toBe(60)
        },
      ),
      { numRuns: 60 },
    )
  })
})
