import { describe, expect, test } from 'vitest'
import { fromPlanDocument, type PlanDocument, parsePlan, settle, toPlanDocument } from '../../../src/plan'
import {
  addBase,
  addPacking,
  addThing,
  duplicateBase,
  duplicateThing,
  keepAsIs,
  linesFrom,
  linkItems,
  moveBase,
  offersFor,
  packThings,
  removeBase,
  removeThings,
  renameBase,
  setBaseLines,
  setGroup,
  setRetired,
  setStow,
  setThing,
  setThingFact,
  shelveItems,
  takeOffer,
  withdrawPacking,
} from '../../../src/plan/shelf'
import { counter, wholeDraft } from '../drafts'
import { shelfOf, thing } from './shelves'

const outside = (now = 50) => ({ newId: counter('n'), now })
const shelf = shelfOf(thing('tent'), thing('bag'), thing('pot'))

describe('things', () => {
  test('note when each fact was last changed, and only where it changed', () => {
    const added = addThing(shelf, outside(10), { with: { name: 'Mat', litres: 9 }, at: 0 })
    expect(added.things[0]).toEqual({
      id: 'n1',
      item: { name: 'Mat', litres: 9 },
      changed: { name: 10, litres: 10 },
    })
    const set = setThing(added, 'n1', { item: { litres: 8, name: 'Mat' }, note: 'patched' }, 20)
    expect(set.things[0]).toEqual({
      id: 'n1',
      item: { name: 'Mat', litres: 8 },
      note: 'patched',
      changed: { name: 10, litres: 20 },
    })
    expect(setThing(set, 'n1', { item: { litres: 8 }, note: 'patched' }, 30)).toBe(set)
    const fuel = setThingFact(set, 'n1', { field: 'fuel/boilLitres', value: 2, now: 40 })
    expect(fuel.things[0]).toMatchObject({ item: { fuel: { boilLitres: 2 } }, changed: { fuel: 40 } })
    expect(setThing(fuel, 'n1', { item: { fuel: undefined } }, 60).things[0]!.item).toEqual(
      set.things[0]!.item,
    )
  })

  test('are changed many at once', () => {
    const grouped = setGroup(shelf, ['tent', 'pot'], 'Camp', 5)
    expect(grouped.things.map(({ item }) => item.group)).toEqual(['Camp', undefined, 'Camp'])
    expect(setGroup(grouped, ['tent', 'pot'], '', 6).things[0]!.item).not.toHaveProperty('group')
    expect(setStow(shelf, ['bag'], 'worn', 5).things[1]).toMatchObject({
      item: { stow: 'worn' },
      changed: { stow: 5 },
    })
    const retired = setRetired(shelf, ['bag'], true)
    expect(retired.things.map(({ retired }) => retired)).toEqual([undefined, true, undefined])
    expect(setRetired(retired, ['bag'], false)).toEqual(shelf)
  })

  test('go from every base too, and what rode in one rides on its own', () => {
    const lines = [{ thing: 'tent', inside: 'bag' }, { thing: 'bag' }, { thing: 'pot', count: 2 }]
    const full = addBase({ ...shelf, typed: { 'bag/massKg': 'x', 'tent/litres': 'y' } }, counter('b'), {
      name: 'Summer',
      lines,
    })
    const left = removeThings(full, ['bag'])
    expect(left.bases[0]!.lines).toEqual([{ thing: 'tent' }, { thing: 'pot', count: 2 }])
    expect(left.typed).toEqual({ 'tent/litres': 'y' })
    expect(removeThings(full, ['gone'])).toBe(full)
  })

  test('a copy stands after its original', () => {
    const copied = duplicateThing(shelf, 'tent', outside(9))
    expect(copied.things[1]).toEqual({
      id: 'n1',
      item: { name: 'tent (copy)', massKg: 1 },
      changed: { name: 9, massKg: 9 },
    })
  })
})

describe('bases and packings', () => {
  test('are made, named anew, filled, ordered and removed', () => {
    const newId = counter('b')
    let now = addBase(shelf, newId, { name: 'Summer', lines: [] })
    now = setBaseLines(now, 'b1', [{ thing: 'pot' }])
    now = duplicateBase(renameBase(now, 'b1', 'Autumn'), 'b1', newId)
    now = moveBase(now, 'b2', 0)
    expect(now.bases).toEqual([
      { id: 'b2', name: 'Autumn (copy)', lines: [{ thing: 'pot' }] },
      { id: 'b1', name: 'Autumn', lines: [{ thing: 'pot' }] },
    ])
    expect(removeBase(removeBase(now, 'b1'), 'b2').bases).toEqual([])
  })

  test('a packing is added and withdrawn', () => {
    const packing = {
      at: 5,
      gear: 'Ridge',
      pack: 'a box',
      bodyLitres: 40,
      said: { how: 'full', fullness: 0.8 },
      reckonedLitresAtFactor1: 30,
      factor: 1.07,
    } as const
    const added = addPacking(shelf, counter('p'), packing)
    expect(added.packings).toEqual([{ ...packing, id: 'p1' }])
    expect(withdrawPacking(added, 'p1')).toEqual(shelf)
    expect(withdrawPacking(added, 'gone')).toBe(added)
  })
})

describe('packing from the shelf', () => {
  test('makes linked items, as the base says how many, where and inside what', () => {
    const draft = packThings(wholeDraft(), shelf.things, {
      ...outside(),
      uses: [{ thing: 'pot', count: 2, stow: 'strapped-on', inside: 'bag' }],
    })
    expect(draft.gear.slice(3)).toEqual([
      { id: 'n1', name: 'tent', massKg: 1, shelf: { id: 'tent', at: 50 } },
      { id: 'n2', name: 'bag', massKg: 1, shelf: { id: 'bag', at: 50 } },
      {
        id: 'n3',
        name: 'pot',
        massKg: 1,
        count: 2,
        stow: 'strapped-on',
        inside: 'n2',
        shelf: { id: 'pot', at: 50 },
      },
    ])
  })

  test('and putting items on the shelf links them, once; the trip packs the same base again', () => {
    const trip = wholeDraft()
    const put = shelveItems(shelf, trip.gear, outside())
    const linked = linkItems(trip, put.links)
    expect(put.shelf.things).toHaveLength(6)
    expect(shelveItems(put.shelf, linked.gear, outside()).shelf).toBe(put.shelf)
    const lines = linesFrom(linked, put.shelf)
    const again = packThings(
      { ...trip, gear: [] },
      lines.map(line => put.shelf.things.find(({ id }) => id === line.thing)!),
      { ...outside(), uses: lines },
    )
    const bare = (gear: typeof trip.gear) =>
      gear.map(({ id: _id, inside, shelf: _s, ...rest }) => [!!inside, rest])
    expect(bare(again.gear)).toEqual(bare(trip.gear))
  })
})

describe('what the shelf knows better', () => {
  const packed = packThings({ ...wholeDraft(), gear: [] }, [thing('tent')], outside())
  const heavier = setThing(shelf, 'tent', { item: { massKg: 1.4, name: 'tent' } }, 60)

  test('is offered field by field, only if it was changed after it was taken, and differs', () => {
    expect(offersFor(packed, shelf)).toEqual([])
    const [offer] = offersFor(packed, heavier)
    expect(offer).toMatchObject({ itemId: 'n1', fields: [{ field: 'massKg', from: 1, to: 1.4 }] })
    const taken = takeOffer(packed, offer!, 70)
    expect(taken.gear[0]).toMatchObject({ massKg: 1.4, shelf: { id: 'tent', at: 70 } })
    expect(offersFor(taken, heavier)).toEqual([])
  })

  test('is not offered again once it was turned down, until it changes again', () => {
    const kept = keepAsIs(packed, offersFor(packed, heavier)[0]!, 70)
    expect(kept.gear[0]).toMatchObject({ massKg: 1 })
    expect(offersFor(kept, heavier)).toEqual([])
    expect(offersFor(kept, setThing(heavier, 'tent', { item: { massKg: 2 } }, 80))).toHaveLength(1)
  })

  test('offers to take a fact away where the shelf has none any more', () => {
    const without = setThing(heavier, 'tent', { item: { massKg: undefined } }, 65)
    const [offer] = offersFor(packed, without)
    expect(takeOffer(packed, offer!, 70).gear[0]).not.toHaveProperty('massKg')
  })
})

describe('the link to the shelf', () => {
  const linked = linkItems(wholeDraft(), new Map([['food', { id: 'tent', at: 5 }]]))

  test('is no part of a plan file', () => {
    const document = toPlanDocument(linked)
    expect(document.gear[0]).not.toHaveProperty('shelf')
    expect(document).toEqual(toPlanDocument(wholeDraft()))
    const parsed = parsePlan(document) as { document: PlanDocument }
    expect(fromPlanDocument(parsed.document, counter('x')).gear[0]).not.toHaveProperty('shelf')
  })

  test('does not reach what is reckoned', () => {
    const settled = settle(linked)
    expect(settled).toEqual(settle(wholeDraft()))
    expect(settled.leftOut).toEqual([])
  })
})
