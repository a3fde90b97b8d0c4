import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference, type Patch, patched, REFUSED } from '../../src/store/patch'

const patch = (from: unknown, to: unknown) => difference(from, to) as Patch
const leaf = fc.oneof(fc.integer({ min: 0, max: 3 }), fc.constantFrom('a', 'b', '__proto__'), fc.boolean())
const things = fc.uniqueArray(
  fc.record({
    id: fc.constantFrom('1', '2', '3', '4', '5', '6', '__proto__', 'constructor'),
    name: fc.option(leaf, { nil: undefined }),
    fuel: fc.option(fc.dictionary(fc.constantFrom('x', 'y'), leaf), { nil: undefined }),
  }),
  { selector: ({ id }) => id },
)
const state = fc.record({
  name: leaf,
  gear: things,
  order: fc.array(leaf),
  typed: fc.dictionary(fc.constantFrom('a/b', '__proto__', 'c'), leaf),
})

describe('a difference', () => {
  test('leads from one state to the other and back, whatever they are', () => {
    fc.assert(
      fc.property(state, state, (from, to) => {
        const made = difference(from, to)
        if (made === null) return expect(from).toEqual(to)
        // As it comes out of the database.
        const stored = structuredClone(made)
        expect(patched(from, stored, 'forth')).toEqual(to)
        expect(patched(to, stored, 'back')).toEqual(from)
      }),
    )
  })

  test('holds only what differs', () => {
    const gear = Array.from({ length: 5000 }, (_, i) => ({ id: `${i}`, massKg: i }))
    const heavier = gear.with(40, { id: '40', massKg: 7 })
    expect(patch({ gear }, { gear: heavier })).toEqual({
      keys: [
        [
          'gear',
          { list: { gone: [], came: [], kept: [['40', { keys: [['massKg', { from: 40, to: 7 }]] }]] } },
        ],
      ],
    })
    const fewer = gear.toSpliced(10, 1)
    expect(patch(gear, fewer)).toEqual({ list: { gone: [[10, gear[10]]], came: [], kept: [] } })
  })

  test('is null between equal states, however they were made', () => {
    const gear = [{ id: 'a', litresRange: { low: 1, high: 2 } }]
    expect(difference({ gear, typed: {} }, structuredClone({ typed: {}, gear }))).toBeNull()
  })

  test('treats a list in which an id stands twice as one value', () => {
    const twice = [{ id: 'a' }, { id: 'a', name: 'b' }]
    const made = patch(twice, [])
    expect(patched([], made, 'back')).toEqual(twice)
  })
})

describe('a difference that does not fit any more is refused', () => {
  const a = { id: 'a', massKg: 1 }
  const b = { id: 'b', massKg: 2 }
  test.each([
    ['a value changed meanwhile', patch([a], [{ ...a, massKg: 5 }]), [{ ...a, massKg: 9 }]],
    ['a thing that is gone', patch([a], [{ ...a, massKg: 5 }]), [b]],
    ['an added thing that was changed', patch([], [a]), [{ ...a, massKg: 9 }]],
    ['a removed thing that is back already', patch([a, b], [b]), [a, b]],
    ['another kind of value', patch({ x: { y: 1 } }, { x: { y: 2 } }), { x: 3 }],
  ])('%s', (_, made, now) => {
    expect(patched(now, made, 'back')).toBe(REFUSED)
  })

  test('but things that others have added are no hindrance', () => {
    const made = patch([a, b], [b, { ...a, massKg: 5 }])
    const c = { id: 'c', massKg: 3 }
    expect(patched([b, c, { ...a, massKg: 5 }], made, 'back')).toEqual([a, c, b])
  })
})
