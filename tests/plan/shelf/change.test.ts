// Between a trip and the shelf: a thing edited as an item is, items put on the shelf together, and what differs.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Draft, type DraftItem, emptyDraft } from '../../../src/plan'
import {
  asInTrip,
  asOnShelf,
  changeThing,
  differences,
  emptyShelf,
  offersFor,
  packThings,
  putOnShelf,
  type Shelf,
  type Thing,
} from '../../../src/plan/shelf'

const counter = () => {
  let n = 0
  return () => `new ${++n}`
}
const thing = (id: string, item: Thing['item'], more: Partial<Thing> = {}): Thing => ({
  id,
  item,
  changed: {},
  ...more,
})
const shelfOf = (...things: Thing[]): Shelf => ({ ...emptyShelf(), things })
const draftOf = (...gear: DraftItem[]): Draft => ({ ...emptyDraft(), gear })

const item = fc.record(
  {
    id: fc.uuid(),
    name: fc.constantFrom('Mug', 'mug ', 'Tent', 'Cord', ''),
    massKg: fc.constantFrom(0.1, 0.2, 0.5),
    group: fc.constantFrom('Cooking', 'Shelter'),
  },
  { requiredKeys: ['id'] },
) as fc.Arbitrary<DraftItem>
const gear = fc.uniqueArray(item, { selector: ({ id }) => id, maxLength: 12 })

describe('a thing edited as an item is', () => {
  test('notes the time of each fact that becomes another, and of no other', () => {
    const before = shelfOf(thing('a', { name: 'Mug', massKg: 0.1 }, { changed: { name: 1, massKg: 1 } }))
    const after = changeThing(before, 'a', { change: of => ({ ...of, massKg: 0.12 }), now: 9 })
    expect(after.things[0]).toEqual(
      thing('a', { name: 'Mug', massKg: 0.12 }, { changed: { name: 1, massKg: 9 } }),
    )
  })

  test('loses the facts that the change takes away, and they are offered to trips as gone', () => {
    const before = shelfOf(thing('a', { name: 'Mug', litres: 0.4 }))
    const trip = packThings(emptyDraft(), before.things, { newId: counter(), now: 5 })
    const after = changeThing(before, 'a', {
      change: ({ litres: _litres, ...rest }) => rest,
      now: 9,
    })
    expect(after.things[0]!.item).toEqual({ name: 'Mug' })
    expect(offersFor(trip, after)[0]!.fields).toEqual([{ field: 'litres', from: 0.4, to: undefined }])
  })

  test('drops its unread text where a value has taken its place, and keeps all other text', () => {
    const typed = { 'a/massKg': 'heavy', 'a/litres': 'big', 'b/massKg': 'light' }
    const before = { ...shelfOf(thing('a', { name: 'Mug' }), thing('b', {})), typed }
    const after = changeThing(before, 'a', { change: of => ({ ...of, massKg: 0.12 }), now: 9 })
    expect(after.typed).toEqual({ 'a/litres': 'big', 'b/massKg': 'light' })
  })

  test('that is gone or stays the same is no change', () => {
    const before = shelfOf(thing('a', { name: 'Mug' }))
    expect(changeThing(before, 'z', { change: of => of, now: 9 })).toBe(before)
    expect(changeThing(before, 'a', { change: of => ({ ...of }), now: 9 })).toBe(before)
  })
})

describe('items put on the shelf', () => {
  test('are all linked, each to its own thing, and stay as they are in the trip', () => {
    fc.assert(
      fc.property(gear, gear, (items, owned) => {
        const shelf = shelfOf(...owned.map(({ id, ...facts }) => thing(`thing ${id}`, facts)))
        const draft = draftOf(...items)
        const after = putOnShelf(
          { draft, shelf },
          items.map(({ id }) => id),
          { newId: counter(), now: 7 },
        )
        const links = after.draft.gear.map(each => each.shelf!.id)
        expect(new Set(links).size).toBe(items.length)
        for (const id of links) expect(after.shelf.things.some(other => other.id === id)).toBe(true)
        expect(after.draft.gear.map(({ shelf: _link, ...rest }) => rest)).toEqual(items)
        expect(after.shelf.things.slice(0, owned.length)).toEqual(shelf.things)
        expect(offersFor(after.draft, after.shelf)).toEqual([])
      }),
    )
  })

  test('are put there once: again changes nothing', () => {
    fc.assert(
      fc.property(gear, items => {
        const ids = items.map(({ id }) => id)
        const outside = { newId: counter(), now: 7 }
        const once = putOnShelf({ draft: draftOf(...items), shelf: emptyShelf() }, ids, outside)
        const twice = putOnShelf(once, ids, outside)
        expect(twice.draft).toBe(once.draft)
        expect(twice.shelf).toBe(once.shelf)
      }),
    )
  })

  test('of a name that is on the shelf are linked to that thing, once', () => {
    const shelf = shelfOf(thing('t', { name: 'Tin mug', massKg: 0.2 }))
    const draft = draftOf({ id: 'a', name: 'tin mug ' }, { id: 'b', name: 'Tin mug' })
    const after = putOnShelf({ draft, shelf }, ['a', 'b'], { newId: counter(), now: 7 })
    expect(after.draft.gear.map(each => each.shelf?.id)).toEqual(['t', 'new 1'])
    expect(after.shelf.things).toHaveLength(2)
  })

  test('without a name are never taken for one another', () => {
    const shelf = shelfOf(thing('t', {}))
    const after = putOnShelf({ draft: draftOf({ id: 'a' }), shelf }, ['a'], { newId: counter(), now: 7 })
    expect(after.draft.gear[0]!.shelf?.id).toBe('new 1')
  })
})

describe('what differs between a trip and the shelf', () => {
  const tent = thing('t', { name: 'Tent', massKg: 1.2, stow: 'main-body' })
  const trip = packThings(emptyDraft(), [tent], { newId: () => 'i', now: 5 })
  const changed = { ...trip, gear: [{ ...trip.gear[0]!, massKg: 1.3, count: 2 }] }

  test('is nothing after packing', () => {
    expect(differences(trip.gear[0]!, tent)).toEqual([])
  })

  test('is each fact with both values', () => {
    expect(differences(changed.gear[0]!, tent)).toEqual([
      { field: 'massKg', from: 1.3, to: 1.2 },
      { field: 'count', from: 2, to: undefined },
    ])
  })

  test('is gone when the item is made as on the shelf', () => {
    expect(asOnShelf(changed, changed.gear[0]!, tent, 8).gear[0]).toEqual({
      ...trip.gear[0],
      shelf: { id: 't', at: 8 },
    })
  })

  test('is gone when the shelf is made as in the trip, which other trips are then offered', () => {
    const other = packThings(emptyDraft(), [tent], { newId: () => 'j', now: 6 })
    const both = asInTrip(
      { draft: changed, shelf: shelfOf(tent) },
      { item: changed.gear[0]!, thing: tent, now: 8 },
    )
    expect(differences(both.draft.gear[0]!, both.shelf.things[0]!)).toEqual([])
    expect(offersFor(both.draft, both.shelf)).toEqual([])
    expect(offersFor(other, both.shelf)[0]!.fields.map(({ field, to }) => [field, to])).toEqual([
      ['massKg', 1.3],
      ['count', 2],
    ])
  })
})
