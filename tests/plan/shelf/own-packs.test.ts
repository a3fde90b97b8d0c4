import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Draft, type DraftPack, emptyDraft, setField } from '../../../src/plan'
import { emptyShelf, givenToList, parted, type Shelf, withList, withListTexts } from '../../../src/plan/shelf'

const pack = (id: string, facts: Partial<DraftPack> = {}): DraftPack => ({
  id,
  name: `Pack ${id}`,
  bodyLitres: 50,
  setups: [{ id: `${id}-s`, name: 'as sold', massKg: 1, frame: 'framed' }],
  ...facts,
})
const trip = (id: string, packs: DraftPack[], rest: Partial<Draft> = {}) => ({
  id,
  demo: false,
  draft: { ...emptyDraft(), name: id, packs, ...rest },
  typed: {},
})
const shelfOf = (...packs: DraftPack[]): Shelf => ({ ...emptyShelf(), packs })

const anyPack = fc
  .record({
    id: fc.constantFrom('a', 'b', 'c'),
    name: fc.constantFrom('One', 'Two', ''),
    bodyLitres: fc.constantFrom(30, 40),
  })
  .map(({ id, ...facts }) => pack(id, facts))
const packs = fc.uniqueArray(anyPack, { selector: ({ id }) => id, maxLength: 3 })
const trips = fc.array(packs, { maxLength: 4 }).map(all => all.map((list, i) => trip(`t${i}`, list)))

/** What a pack holds, whatever it is called. */
const facts = ({ bodyLitres, setups }: DraftPack) =>
  JSON.stringify([bodyLitres, setups.map(({ id: _id, ...setup }) => setup)])

describe('packs that trips bring', () => {
  test('are all on the list afterwards, each under an id of its own, and none is there twice', () => {
    fc.assert(
      fc.property(packs, trips, (known, bringing) => {
        const { shelf, trips: given } = givenToList(shelfOf(...known), bringing)
        expect(shelf.packs.slice(0, known.length)).toEqual(known)
        expect(new Set(shelf.packs.map(({ id }) => id)).size).toBe(shelf.packs.length)
        const held = new Set(shelf.packs.map(facts))
        for (const { draft } of bringing) for (const each of draft.packs) expect(held).toContain(facts(each))
        for (const { draft } of given) expect(draft.packs).toEqual([])
        const names = shelf.packs.map(each => `${each.name} ${facts(each)}`)
        if (new Set(known.map(each => `${each.name} ${facts(each)}`)).size === known.length)
          expect(new Set(names).size).toBe(names.length)
      }),
    )
  })

  test('brought once more change nothing', () => {
    fc.assert(
      fc.property(packs, trips, (known, bringing) => {
        const { shelf } = givenToList(shelfOf(...known), bringing)
        expect(givenToList(shelf, bringing).shelf.packs).toEqual(shelf.packs)
      }),
    )
  })

  test('of one name that differ are both kept, the second told apart by its trip', () => {
    const { shelf } = givenToList(shelfOf(pack('p')), [trip('Lake', [pack('p', { bodyLitres: 40 })])])
    expect(shelf.packs).toEqual([
      pack('p'),
      pack('p', { id: 'p-Lake', name: 'Pack p (Lake)', bodyLitres: 40 }),
    ])
  })

  test('that are the same but for what the hiker says of them are one', () => {
    const mine = pack('p', { starred: true, notes: 'squeaks' })
    const { shelf } = givenToList(shelfOf(mine), [trip('Lake', [pack('other', { name: mine.name! })])])
    expect(shelf.packs).toEqual([mine])
  })

  test('go with what was typed at them, and the trip goes on taking its own', () => {
    const bringing = {
      ...trip('Lake', [pack('q', { name: 'Pack p' })], { takes: { pack: 'q', setup: 'q-s' } }),
      typed: { 'packs/q/price': 'cheap', 'packs/q/setups/q-s/ratedKg': 'much', 'gear/a/massKg': 'x' },
    }
    const { shelf, trips: given } = givenToList(shelfOf(pack('p')), [bringing])
    expect(shelf.typed).toEqual({ 'packs/p/price': 'cheap', 'packs/p/setups/p-s/ratedKg': 'much' })
    expect(given[0]?.typed).toEqual({ 'gear/a/massKg': 'x' })
    expect(given[0]?.draft.takes).toEqual({ pack: 'p', setup: 'p-s' })
  })

  test('stay with the demo, whose packs are invented', () => {
    const demo = { ...trip('Demo', [pack('p')]), demo: true }
    const shelf = shelfOf()
    expect(givenToList(shelf, [demo])).toEqual({ shelf, trips: [] })
  })
})

describe('a trip edited with the list in it', () => {
  const shelf: Shelf = {
    ...shelfOf(pack('p'), pack('q')),
    typed: { 'packs/p/price': 'cheap', 't/massKg': 'x' },
  }
  const ours = { ...trip('Lake', []), typed: { 'carrier/massKg': 'fat' } }
  const shown = {
    draft: withList(ours.draft, shelf.packs),
    typed: withListTexts(ours.typed, { 'packs/p/price': 'cheap' }),
  }

  test('and left as it was is the very same trip and list', () => {
    const after = parted(shown, { ...ours, shelf })
    expect(after.draft).toBe(ours.draft)
    expect(after.typed).toBe(ours.typed)
    expect(after.shelf).toBe(shelf)
  })

  test('changes the list alone where a pack is changed, and the trip alone where anything else is', () => {
    const heavier = parted(
      { ...shown, draft: setField(shown.draft, 'packs/q/setups/q-s/massKg', 2) },
      { ...ours, shelf },
    )
    expect(heavier.draft).toBe(ours.draft)
    expect(heavier.shelf.packs[1]?.setups[0]?.massKg).toBe(2)
    expect(heavier.shelf.packs[0]).toBe(shelf.packs[0])
    const renamed = parted({ ...shown, draft: setField(shown.draft, 'name', 'Moor') }, { ...ours, shelf })
    expect(renamed.draft).toEqual({ ...ours.draft, name: 'Moor' })
    expect(renamed.shelf).toBe(shelf)
  })

  test('keeps text typed at a pack with the list, and all other text with the trip', () => {
    const { typed, shelf: next } = parted(
      { ...shown, typed: { 'packs/q/price': 'dear', 'gear/a/massKg': 'y' } },
      { ...ours, shelf },
    )
    expect(typed).toEqual({ 'gear/a/massKg': 'y' })
    expect(next.typed).toEqual({ 't/massKg': 'x', 'packs/q/price': 'dear' })
  })

  test('keeps the demo’s packs in the demo, and one of the list that hides behind the same id on the list', () => {
    const demo = trip('Demo', [pack('p', { bodyLitres: 10 })])
    const draft = withList(demo.draft, shelf.packs)
    expect(draft.packs.map(({ id, bodyLitres }) => [id, bodyLitres])).toEqual([
      ['p', 10],
      ['q', 50],
    ])
    const after = parted({ draft: setField(draft, 'packs/p/bodyLitres', 11), typed: {} }, { ...demo, shelf })
    expect(after.draft.packs).toEqual([pack('p', { bodyLitres: 11 })])
    expect(after.shelf.packs).toContain(shelf.packs[0])
  })
})
