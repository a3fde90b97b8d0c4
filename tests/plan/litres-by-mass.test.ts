// A range of litres that follows a mass: on a trip and on the shelf, until litres are given in another way.

import { describe, expect, test } from 'vitest'
import { checkDraft, type Draft, type DraftItem, emptyDraft, setField, toPlanDocument } from '../../src/plan'
import { itemOfKind, kindNamed } from '../../src/plan/kinds'
import { withLitres, withoutRange } from '../../src/plan/litres'
import { addThing, emptyShelf, offersFor, packThings, setThingFact, takeOffer } from '../../src/plan/shelf'

const quilt = kindNamed('down quilt, summer')!
const { from: _from, ...perKg } = quilt.litresPerKg!
const draftWith = (item: Partial<DraftItem>): Draft => ({
  ...emptyDraft(),
  gear: [itemOfKind({ id: 'a', name: 'Quilt', ...item }, quilt)],
})
const type = (draft: Draft, ...typed: [string, unknown][]) =>
  typed.reduce((made, [field, value]) => setField(made, `gear/a/${field}`, value), draft)
const rangeOf = ({ gear }: Draft) => gear[0]!.litresRange!

describe('a range of a soft kind', () => {
  test('is that of its mass, and follows the mass as it is typed, digit by digit', () => {
    const draft = draftWith({ massKg: 0.5 })
    expect(rangeOf(draft)).toEqual({ low: 3.91, typical: 4.73, high: 5.75 })
    const typed = type(draft, ['massKg', undefined], ['massKg', 0.007], ['massKg', 0.074], ['massKg', 0.74])
    expect(rangeOf(typed)).toEqual({ low: 5.79, typical: 7, high: 8.51 })
    expect(rangeOf(type(typed, ['massKg', 0.5]))).toEqual(rangeOf(draft))
  })

  test('stays as it is while the mass is empty, and is that of the kind where none was known', () => {
    const open = draftWith({})
    expect(rangeOf(open)).toEqual(quilt.litres)
    expect(rangeOf(type(open, ['massKg', 0.74])).typical).toBe(7)
    const known = draftWith({ massKg: 0.5 })
    expect(rangeOf(type(known, ['massKg', undefined]))).toEqual(rangeOf(known))
  })

  test('follows no more once one of its ends is typed, or a number stands in its place', () => {
    const draft = draftWith({ massKg: 0.5 })
    const mine = type(draft, ['litresRange/high', 6], ['massKg', 0.74])
    expect(rangeOf(mine)).toEqual({ low: 3.91, typical: 4.73, high: 6 })
    for (const change of [(of: DraftItem) => withLitres(of, 5, 'filled'), withoutRange]) {
      const gear = draft.gear.map(change)
      expect(type({ ...draft, gear }, ['massKg', 0.74]).gear[0]).not.toHaveProperty('litresRange')
    }
  })

  test('follows no mass where the kind has a shape', () => {
    const pot = itemOfKind({ id: 'a', massKg: 0.13 }, kindNamed('solo pot with lid, 0.8 L inner')!)
    const draft = { ...emptyDraft(), gear: [pot] }
    expect(rangeOf(type(draft, ['massKg', 0.2]))).toEqual(rangeOf(draft))
  })

  test('changes nothing else, and no other item', () => {
    const draft = draftWith({ massKg: 0.5 })
    const other = { ...draft.gear[0]!, id: 'b' }
    const typed = type({ ...draft, gear: [...draft.gear, other] }, ['massKg', 0.74])
    expect(typed.gear[1]).toBe(other)
    expect(typed.gear[0]).toEqual({ ...draft.gear[0], massKg: 0.74, litresRange: rangeOf(typed) })
  })
})

describe('on the shelf', () => {
  const { id: _id, ...item } = draftWith({ massKg: 0.5 }).gear[0]!
  const shelf = addThing(emptyShelf(), { newId: () => 't', now: 1 }, { with: item })

  test('the range follows the mass too, and both are offered to the trips that took them', () => {
    const draft = packThings(emptyDraft(), shelf.things, { newId: () => 'a', now: 2 })
    const changed = setThingFact(shelf, 't', { field: 'massKg', value: 0.74, now: 3 })
    expect(changed.things[0]!.item.litresRange!.typical).toBe(7)
    const [offer] = offersFor(draft, changed)
    expect(offer!.fields.map(({ field }) => field).sort()).toEqual(['litresRange', 'massKg'])
    const taken = takeOffer(draft, offer!, 4)
    expect(taken.gear[0]).toMatchObject({ massKg: 0.74, litresPerKg: perKg })
    expect(rangeOf(taken).typical).toBe(7)
  })

  test('a mass that is taken over alone takes the trip’s range with it', () => {
    const draft = packThings(emptyDraft(), shelf.things, { newId: () => 'a', now: 2 })
    const { litresPerKg: _perKg, litresRange: _range, litresFrom: _from, ...bare } = item
    const things = [{ ...shelf.things[0]!, item: { ...bare, massKg: 0.74 }, changed: { massKg: 3 } }]
    const taken = takeOffer(draft, offersFor(draft, { ...shelf, things })[0]!, 4)
    expect(rangeOf(taken).typical).toBe(7)
  })
})

test('what a range follows is no part of a plan file, and is kept in a backup where it is sound', () => {
  const draft = draftWith({ massKg: 0.5 })
  expect(toPlanDocument(draft).gear[0]).not.toHaveProperty('litresPerKg')
  expect(checkDraft(draft)).toEqual({ ok: true, draft, leftOut: [] })
  for (const litresPerKg of [null, 7, { low: 2, typical: 1, high: 3 }, { ...perKg, more: 1 }]) {
    const gear = [{ ...draft.gear[0]!, litresPerKg: litresPerKg as never }]
    expect(checkDraft({ ...draft, gear })).toMatchObject({ leftOut: ['Item 1, litres for each kg'] })
  }
})
