// Several people on one trip, edit by edit: what adding and removing one does to things, and that undoing loses nothing.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addPerson,
  type Draft,
  oneForEach,
  pinItem,
  removePerson,
  setField,
  setOwner,
  settle,
  settleAny,
  takenBy,
  takesPath,
} from '../../src/plan'
import { wholeDraft } from './drafts'

const alone = (): Draft => ({
  ...wholeDraft(),
  carrier: { massKg: 60, ageYears: 38 },
  gear: [
    { id: 'tent', name: 'Tent', massKg: 2, litres: 6 },
    { id: 'coat', name: 'Coat', massKg: 1, litres: 3, stow: 'worn' },
    { id: 'bottle', name: 'Bottle', massKg: 0.1, litres: 1, holdsWaterLitres: 1 },
  ],
})
const two = () => addPerson(alone(), 'bo')
const three = () => addPerson(two(), 'cy')
const itemIn = (draft: Draft, id: string) => draft.gear.find(item => item.id === id)!

describe('adding a person', () => {
  it('makes the hiker the first of two, who owns what they wear and drink from, and asks for nothing more', () => {
    const draft = two()
    expect(draft.people).toEqual([{ id: 'first', massKg: 60, ageYears: 38 }, { id: 'bo' }])
    expect(draft.gear.map(({ owner }) => owner)).toEqual([undefined, 'first', 'first'])
    const { leftOut } = settleAny(draft)
    expect(leftOut.map(({ what }) => what)).toEqual(['Person 2'])
  })

  it('and taking them away again gives the hiker as before', () => {
    expect(removePerson(two(), 'bo')).toEqual(alone())
  })

  it('ends at eight', () => {
    let draft = alone()
    for (let i = 0; i < 12; i++) draft = addPerson(draft, `p${i}`)
    expect(draft.people).toHaveLength(8)
  })
})

describe('removing a person', () => {
  const owned = () => {
    let draft = setOwner(three(), ['tent', 'coat'], 'cy')
    draft = setField(draft, 'gear/tent/shareable', true)
    return { ...pinItem(draft, 'bottle', null), split: { by: 'cy' }, shared: { tent: 'cy', stove: 'bo' } }
  }

  it('gives what they wear to the first, and all else of theirs to everybody', () => {
    const draft = removePerson(owned(), 'cy')
    expect(itemIn(draft, 'tent')).toEqual({ id: 'tent', name: 'Tent', massKg: 2, litres: 6 })
    expect(itemIn(draft, 'coat').owner).toBe('first')
    expect(draft.shared).toEqual({ stove: 'bo' })
    expect(draft).not.toHaveProperty('split')
  })

  it('lets go of what they were to carry', () => {
    expect(itemIn(removePerson(pinItem(three(), 'tent', 'cy'), 'cy'), 'tent')).not.toHaveProperty('carriedBy')
  })

  it('hands the pack of the trip to the next who is first', () => {
    const taken = { pack: 'big', setup: 'sold' }
    const draft = setField({ ...three(), takes: { pack: 'p', setup: 's' } }, 'people/bo/takes', taken)
    expect(takenBy(draft, 'bo')).toEqual(taken)
    const left = removePerson(draft, 'first')
    expect([left.takes, left.people![0]]).toEqual([taken, { id: 'bo' }])
    expect(takesPath(left, 'bo')).toBe('takes')
  })

  it('of nobody who is there changes nothing', () => {
    const draft = three()
    expect(removePerson(draft, 'nobody')).toBe(draft)
    expect(removePerson(alone(), 'first')).toEqual(alone())
  })
})

it('whose a thing is can be said of many at once, but what is worn is always somebody’s', () => {
  const draft = setOwner(three(), ['tent', 'coat'], 'bo')
  expect(draft.gear.map(({ owner }) => owner)).toEqual(['bo', 'bo', 'first'])
  expect(setOwner(draft, ['tent', 'coat'], null).gear.map(({ owner }) => owner)).toEqual([
    undefined,
    'bo',
    'first',
  ])
})

it('one for each gives every person a thing of their own, and keeps whose it was', () => {
  let ids = 0
  const draft = oneForEach(three(), ['tent', 'bottle'], () => `new${ids++}`)
  expect(draft.gear.map(({ name, owner }) => [name, owner])).toEqual([
    ['Tent', 'first'],
    ['Tent', 'bo'],
    ['Tent', 'cy'],
    ['Coat', 'first'],
    ['Bottle', 'first'],
    ['Bottle', 'bo'],
    ['Bottle', 'cy'],
  ])
  expect(new Set(draft.gear.map(({ id }) => id)).size).toBe(7)
})

it('whatever is added, said and removed, the plan of it has all people and all things, and none is without a word', () => {
  const ids = ['bo', 'cy', 'dee']
  const edit = fc.oneof(
    fc.constantFrom(...ids).map(id => (draft: Draft) => addPerson(draft, id)),
    fc.constantFrom('first', ...ids).map(id => (draft: Draft) => removePerson(draft, id)),
    fc.tuple(fc.constantFrom('tent', 'coat', 'bottle'), fc.constantFrom(null, 'first', ...ids)).map(
      ([thing, id]) =>
        (draft: Draft) =>
          setOwner(draft, [thing], id),
    ),
    fc.tuple(fc.constantFrom('tent', 'coat'), fc.constantFrom(null, 'first', ...ids)).map(
      ([thing, id]) =>
        (draft: Draft) =>
          pinItem(draft, thing, id),
    ),
  )
  fc.assert(
    fc.property(fc.array(edit, { maxLength: 10 }), edits => {
      const draft = edits.reduce((made, change) => change(made), alone())
      const { document } = settleAny(draft)
      expect(document.gear!.map(({ id }) => id)).toEqual(alone().gear.map(({ id }) => id))
      expect(document.people?.length ?? 0).toBe(new Set(draft.people?.map(({ id }) => id)).size)
    }),
  )
})

it('a draft of one hiker settles as it did, whichever way it is asked', () => {
  expect(settleAny(alone())).toEqual(settle(alone()))
})
