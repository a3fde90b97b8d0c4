import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addThing,
  mergeShelves,
  moveThing,
  removeThings,
  type Shelf,
  same,
  setThing,
  type Thing,
} from '../../../src/plan/shelf'
import { counter } from '../drafts'
import { type Doing, doings, shelfOf, thing } from './shelves'

const base = shelfOf(...['tent', 'stove', 'bag', 'mat', 'pot'].map(id => thing(id)))

function after(shelf: Shelf, doing: Doing[], tab: string): Shelf {
  const newId = counter(tab)
  return doing.reduce((at, { what, which, n }) => {
    const id = at.things[which % Math.max(1, at.things.length)]?.id ?? ''
    if (what === 'add') return addThing(at, { newId, now: n }, { with: { name: `${tab} ${n}` }, at: which })
    if (what === 'remove') return removeThings(at, [id])
    if (what === 'move') return moveThing(at, id, n)
    if (what === 'weigh') return setThing(at, id, { item: { massKg: n } }, 7)
    if (what === 'rename') return setThing(at, id, { item: { name: `${n}` } }, 7)
    return setThing(at, id, { note: `${n}` }, 7)
  }, shelf)
}

const merge = (ours: Shelf, theirs: Shelf, from = base) =>
  mergeShelves({ base: from, ours, theirs }, counter('second'))
const find = ({ things }: Shelf, id: string) => things.find(other => other.id === id)
const ids = ({ things }: Shelf) => things.map(({ id }) => id)

/** Whether a thing is there, perhaps as the second version of one. */
const holds = (shelf: Shelf, wanted: Thing) =>
  shelf.things.some(({ id, item, ...rest }) => {
    const { name, ...facts } = item
    const { id: _id, item: other, ...others } = wanted
    const isNamed = name === other.name || name === `${other.name} (other tab)`
    return isNamed && same({ ...facts, name: other.name }, other) && same(rest, others)
  })

describe('two tabs’ shelves joined', () => {
  test('lose nothing that either has added or changed, and hold no id twice', () => {
    fc.assert(
      fc.property(doings, doings, (one, two) => {
        const [ours, theirs] = [after(base, one, 'ours'), after(base, two, 'theirs')]
        const { shelf } = merge(ours, theirs)
        for (const side of [ours, theirs])
          for (const wanted of side.things)
            if (!same(wanted, find(base, wanted.id))) expect(holds(shelf, wanted)).toBe(true)
        expect(new Set(ids(shelf)).size).toBe(shelf.things.length)
      }),
    )
  })

  test('hold neither more nor less than what was left alone or wanted', () => {
    fc.assert(
      fc.property(doings, doings, (one, two) => {
        const [ours, theirs] = [after(base, one, 'ours'), after(base, two, 'theirs')]
        const { shelf } = merge(ours, theirs)
        for (const was of base.things) {
          const [mine, other] = [find(ours, was.id), find(theirs, was.id)]
          const isKept = mine && other ? true : Boolean(mine ?? other) && !same(mine ?? other, was)
          expect(Boolean(find(shelf, was.id))).toBe(isKept)
        }
      }),
    )
  })

  test('are what one of them is, where the other changed nothing, in its order', () => {
    fc.assert(
      fc.property(doings, one => {
        const changed = after(base, one, 'ours')
        const untouched = structuredClone(base)
        expect(merge(changed, untouched).shelf.things).toEqual(changed.things)
        expect(merge(untouched, changed).shelf.things).toEqual(changed.things)
        expect(merge(changed, structuredClone(changed))).toMatchObject({
          shelf: { things: changed.things },
          twice: [],
        })
      }),
    )
  })

  test('keep both versions of what both have changed differently, the other tab’s after ours, and say so', () => {
    const ours = setThing(base, 'stove', { item: { massKg: 2 } }, 5)
    const theirs = setThing(base, 'stove', { item: { massKg: 3 } }, 6)
    const { shelf, twice } = merge(ours, theirs)
    expect(ids(shelf)).toEqual(['tent', 'stove', 'second1', 'bag', 'mat', 'pot'])
    expect([shelf.things[1]!.item, shelf.things[2]!.item]).toEqual([
      { name: 'stove', massKg: 2 },
      { name: 'stove (other tab)', massKg: 3 },
    ])
    expect(twice).toEqual(['stove'])
  })

  test('hold one thing where both have made the same edit, with the later times', () => {
    const ours = setThing(base, 'stove', { item: { massKg: 2, litres: 1 } }, 5)
    const theirs = setThing(
      setThing(base, 'stove', { item: { massKg: 2 } }, 6),
      'stove',
      { item: { litres: 1 } },
      4,
    )
    for (const { shelf, twice } of [merge(ours, theirs), merge(theirs, ours)]) {
      expect(twice).toEqual([])
      expect(ids(shelf)).toEqual(ids(base))
      expect(find(shelf, 'stove')?.changed).toEqual({ massKg: 6, litres: 5 })
    }
  })

  test('put a new thing without any neighbour last', () => {
    const none = { ...base, things: [] }
    expect(ids(merge({ ...base, things: [thing('new')] }, base, none).shelf)).toEqual([...ids(base), 'new'])
  })

  test('keep what one removed and the other changed; what one removed and the other left alone goes', () => {
    const ours = removeThings(base, ['stove', 'bag'])
    const theirs = setThing(base, 'stove', { note: 'mended' }, 5)
    expect(ids(merge(ours, theirs).shelf)).toEqual(['tent', 'stove', 'mat', 'pot'])
    expect(ids(merge(theirs, ours).shelf)).toEqual(['tent', 'stove', 'mat', 'pot'])
  })

  test('put a new thing next to its neighbour', () => {
    const outside = { newId: counter('new'), now: 1 }
    const ours = addThing(base, outside, { at: 1, with: { name: 'a' } })
    const theirs = addThing(base, outside, { at: 3, with: { name: 'b' } })
    expect(ids(merge(ours, theirs).shelf)).toEqual(['tent', 'new1', 'stove', 'bag', 'new2', 'mat', 'pot'])
  })

  test('join bases and packings in the same way, and unread text path by path', () => {
    const from = { ...base, bases: [{ id: 'b', name: 'Summer', lines: [] }], typed: { 'tent/massKg': 'x' } }
    const ours = {
      ...from,
      bases: [{ id: 'b', name: 'Summers', lines: [] }],
      typed: { 'stove/massKg': 'y', 'tent/massKg': 'x' },
    }
    const theirs = {
      ...from,
      things: from.things.filter(({ id }) => id !== 'stove'),
      bases: [{ id: 'b', name: 'Winter', lines: [{ thing: 'mat' }] }],
      typed: {},
    }
    const { shelf } = merge(ours, theirs, from)
    expect(shelf.bases).toEqual([
      { id: 'b', name: 'Summers', lines: [] },
      { id: 'second1', name: 'Winter (other tab)', lines: [{ thing: 'mat' }] },
    ])
    // The stove is gone, and the tent's text was taken away by the other.
    expect(shelf.typed).toEqual({})
  })
})
