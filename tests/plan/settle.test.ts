import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Draft,
  emptyDraft,
  fieldPath,
  parsePlan,
  setField,
  settle,
  toPlanDocument,
} from '../../src/plan'
import { anyDraft, anyTyped, wholeDraft } from './drafts'

const said = (draft: Draft, typed = {}) => settle(draft, typed).leftOut.map(({ message }) => message)
const without = (path: string) => setField(wholeDraft(), path, undefined)
const set = (path: string, value: unknown) => setField(wholeDraft(), path, value)

describe('settling any draft', () => {
  test('a plan that is accepted comes out, whatever goes in', () => {
    fc.assert(
      fc.property(anyDraft, anyTyped, (draft, typed) => {
        const { document, plan, leftOut } = settle(draft, typed)
        const again = parsePlan(document)
        expect(again).toMatchObject({ ok: true })
        expect(plan.trip.stops.length).toBeGreaterThanOrEqual(2)
        for (const { message } of leftOut) expect(message).toMatch(/^.+: .+\.$/s)
      }),
      { numRuns: 300 },
    )
  })

  test('no item is lost, and no draft of the right make falls back to a bare trip', () => {
    fc.assert(
      fc.property(anyDraft, draft => {
        const items = Array.isArray(draft?.gear)
          ? draft.gear.filter(i => typeof i === 'object' && i && !Array.isArray(i))
          : []
        expect(settle(draft).plan.gear).toHaveLength(items.length)
      }),
      { numRuns: 150 },
    )
  })

  test('the draft itself is left as it was', () => {
    fc.assert(
      fc.property(anyDraft, draft => {
        const before = structuredClone(draft)
        settle(draft)
        expect(draft).toEqual(before)
      }),
      { numRuns: 100 },
    )
  })

  test('a draft without gaps is taken as it is, and nothing is said', () => {
    const { document, leftOut } = settle(wholeDraft())
    expect(leftOut).toEqual([])
    expect(document).toEqual(toPlanDocument(wholeDraft()))
  })
})

describe('what is said', () => {
  test('no distance counts as 0 km', () => {
    expect(said(without('trip/stops/s2/leg/km'))).toEqual([
      'Camp 1: no distance yet, so it is counted as 0 km.',
    ])
    expect(settle(without('trip/stops/s2/leg/km')).plan.trip.stops[1]?.leg?.km).toBe(0)
  })

  test('a stop without its leg counts as 0 km too', () => {
    expect(said(without('trip/stops/s2/leg'))).toEqual(['Camp 1: no distance yet, so it is counted as 0 km.'])
  })

  test('an item without litres takes no room, one without mass weighs nothing', () => {
    expect(said(without('gear/food/litres'))).toEqual([
      'Food: no litres yet, so it is counted as taking no room.',
    ])
    expect(said(without('gear/food/massKg'))).toEqual([
      'Food: no mass yet, so it is counted as weighing nothing.',
    ])
  })

  test('nothing is said of litres that are not asked for, nor of the mass of fuel that is reckoned', () => {
    expect(said(setField(without('gear/food/litres'), 'gear/food/stow', 'worn'))).toEqual([])
    const fuel = setField(setField(without('gear/pot/massKg'), 'gear/pot/use', 'nightly'), 'gear/pot/fuel', {
      kind: 'gas',
    })
    expect(said(fuel)).toEqual([])
  })

  test('fuel of no kind is left out, and then its mass is missed', () => {
    const fuel = setField(setField(without('gear/pot/massKg'), 'gear/pot/use', 'nightly'), 'gear/pot/fuel', {
      boilLitres: 1,
    })
    expect(said(fuel)).toEqual([
      'Pot: no kind yet, so it is left out.',
      'Pot: no mass yet, so it is counted as weighing nothing.',
    ])
  })

  test('a pack without litres is left out', () => {
    expect(said(without('packs/big/bodyLitres'))).toEqual([
      'Big: no main-body litres yet, so it is left out.',
    ])
    expect(settle(without('packs/big/bodyLitres')).plan.packs).toEqual([])
  })

  test('a set-up without mass is left out, and with the last one its pack', () => {
    const settled = settle(without('packs/big/setups/sold/massKg'))
    expect(settled.leftOut.map(({ message }) => message)).toEqual([
      'Big, as sold: no mass yet, so it is left out.',
      'Big: no set-up that can be judged, so it is left out.',
    ])
    expect(settled.leftOut[0]?.path).toBe('packs/big/setups/sold/massKg')
    expect(settled.plan.packs).toEqual([])
  })

  test('a packing that cannot be is left out, and the others count', () => {
    const good = { date: '2026-05-02', p: 0.9, packLitres: 40, W: 38, d: 0.02, things: [] }
    const settled = settle({ ...wholeDraft(), packings: [{ ...good, p: 2 }, good] })
    expect(settled.plan.packings).toMatchObject([{ p: 0.9, pack: null, packFrom: 'stated' }])
    expect(settled.leftOut).toEqual([
      {
        path: 'packings/0',
        what: 'Your own packing',
        message:
          'Your own packing: the packing of 2026-05-02 is left out: p write a number from 0.3 to 1.5 of the main body.',
      },
    ])
  })

  test('what was packed goes by the ids of the shelf, and in the plan by those of this list', () => {
    const thing = (id: string) => ({ id, litres: 1, litresFrom: 'guess' as const, u: 0.1 })
    const draft = wholeDraft()
    const gear = draft.gear.map(item => (item.id === 'pot' ? { ...item, shelf: { id: 'P', at: 1 } } : item))
    const things = [thing('P'), thing('food'), thing('gone')]
    const packings = [{ date: '2026-05-02', p: 0.9, packLitres: 40, W: 38, d: 0.02, things }]
    const ids = (of: { things: { id: string }[] }[] = []) => of[0]?.things.map(({ id }) => id)
    expect(ids(settle({ ...draft, gear, packings }).plan.packings)).toEqual(['pot', 'food', 'gone'])
    expect(ids(toPlanDocument({ ...draft, gear, packings }).packings)).toEqual(['pot', 'food', 'gone'])
    // Never one thing twice.
    const twice = [{ ...packings[0]!, things: [thing('P'), thing('pot')] }]
    expect(ids(settle({ ...draft, gear, packings: twice }).plan.packings)).toEqual(['P', 'pot'])
  })

  test('a missing body mass is assumed to be 70 kg', () => {
    expect(said(without('carrier/massKg'))).toEqual(['Hiker: no mass yet, so 70 kg is assumed.'])
  })

  test('a trip of fewer than two stops gets a start and an end', () => {
    const { leftOut, plan } = settle({ ...emptyDraft(), carrier: { massKg: 60 } })
    expect(leftOut.map(({ path }) => path)).toEqual(['trip/stops'])
    expect(plan.trip.stops.map(({ name }) => name)).toEqual(['Start', 'End'])
  })

  test('an item whose container is gone rides on its own', () => {
    const { leftOut, plan } = settle(set('gear/pot/inside', 'gone'))
    expect(leftOut).toMatchObject([{ path: 'gear/pot/inside', what: 'Pot' }])
    expect(plan.gear[2]?.inside).toBeNull()
  })

  test('a container that loses its room lets go of what was inside', () => {
    const { leftOut, plan } = settle(set('gear/box/holdsLitres', -4))
    expect(leftOut.map(({ path }) => path)).toEqual(['gear/box/holdsLitres', 'gear/pot/inside'])
    expect(plan.gear[2]?.inside).toBeNull()
  })

  test('meal shares that do not make 1 give way to the usual ones, and the other habits stay', () => {
    const { leftOut, plan } = settle(set('trip/meals', { breakfast: 0.9, spareDays: 2 }))
    expect(leftOut.map(({ path }) => path)).toEqual(['trip/meals'])
    expect(plan.trip.meals).toMatchObject({ breakfast: 0.25, spareDays: 2 })
  })

  test('an optional value out of range is said with its range', () => {
    expect(said(set('trip/water/campLitres', 99))).toEqual([
      'Water habits: water for a dry camp – write a number from 0 to 50 L; until then the usual value is used.',
    ])
  })

  test('text that could not be read is quoted, at a field that must be there and at one that need not', () => {
    const path = 'trip/water/campLitres'
    expect(said(wholeDraft(), { [path]: '3 q' })).toEqual([
      'Water habits: “3 q” cannot stand for the water for a dry camp, so the usual value is used.',
    ])
    expect(said(without('gear/food/massKg'), { 'gear/food/massKg': 'heavy' })).toEqual([
      'Food: “heavy” cannot stand for the mass, so it is counted as weighing nothing.',
    ])
  })

  test('text typed at a thing that is gone is not mentioned', () => {
    expect(said(wholeDraft(), { 'gear/gone/massKg': 'x' })).toEqual([])
  })

  test('more entries than a plan holds: the rest is left out', () => {
    const setups = Array.from({ length: 25 }, (_, i) => ({
      id: `${i}`,
      name: 'x',
      massKg: 1,
      frame: 'framed',
    }))
    const { plan, leftOut } = settle(set('packs/big/setups', setups))
    expect(plan.packs[0]?.setups).toHaveLength(20)
    expect(leftOut).toMatchObject([{ path: 'packs/big/setups' }])
  })

  test('an id with a slash in it is still found', () => {
    const draft: Draft = { ...wholeDraft(), gear: [{ id: 'a/b', name: 'Tent', massKg: 1 }] }
    const path = fieldPath('gear', 'a/b', 'litres')
    expect(settle(draft, { [path]: 'x' }).leftOut).toMatchObject([{ path, what: 'Tent' }])
  })
})
