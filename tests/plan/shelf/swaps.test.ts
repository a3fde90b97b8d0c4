// Alternatives to an item: what taking one changes, keeps and loses nothing of, and what becomes of them elsewhere.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  checkDraft,
  type Draft,
  type DraftItem,
  emptyDraft,
  setField,
  settle,
  toPlanDocument,
} from '../../../src/plan'
import {
  addSwaps,
  alternativesOf,
  factsOf,
  offersFor,
  removeSwaps,
  removeThings,
  swapItem,
} from '../../../src/plan/shelf'
import { reckon } from '../../../src/reckon'
import { changeBetween } from '../../../src/store/change-between'
import { counter, wholeDraft } from '../drafts'
import { shelfOf, thing } from './shelves'

const SUMMER: DraftItem = {
  id: 'bag',
  name: 'Summer bag',
  massKg: 0.7,
  litres: 5,
  group: 'Sleep',
  atHome: true,
}
const WINTER = thing('winter', { item: { name: 'Winter bag', massKg: 1.4, litres: 11, group: 'Cold' } })

const draftWith = (...gear: DraftItem[]): Draft => ({ ...emptyDraft(), gear })
const outside = () => ({ newId: counter(), now: 7 })
const swapped = (both: Parameters<typeof swapItem>[0], thingId: string) =>
  swapItem(both, { itemId: 'bag', thingId, ...outside() })

describe('taking an alternative', () => {
  const before = { draft: addSwaps(draftWith(SUMMER), 'bag', ['winter']), shelf: shelfOf(WINTER) }
  const after = swapped(before, 'winter')

  test('gives the item the facts of the thing, and keeps its place', () => {
    expect(after.draft.gear).toEqual([
      {
        id: 'bag',
        name: 'Winter bag',
        massKg: 1.4,
        litres: 11,
        group: 'Sleep',
        atHome: true,
        shelf: { id: 'winter', at: 7 },
        swaps: [{ id: 'n1' }],
      },
    ])
  })

  test('puts the one before on the shelf, as an alternative', () => {
    expect(after.shelf.things.map(({ id, item }) => [id, item])).toEqual([
      ['winter', WINTER.item],
      ['n1', factsOf(SUMMER)],
    ])
    expect(alternativesOf(after.draft.gear[0]!, after.shelf).there.map(({ facts }) => facts.name)).toEqual([
      'Summer bag',
    ])
  })

  test('leaves no word of the one before that it is packed, or came home unused', () => {
    const log = { packed: { bag: true, box: true }, unused: { bag: true, box: true } } as const
    const ticked = swapped({ ...before, draft: { ...before.draft, log } }, 'winter')
    expect(ticked.draft.log).toEqual({ packed: { box: true }, unused: { box: true } })
  })

  test('keeps what only this trip knew of the one before, and is offered what the shelf learns later', () => {
    const weighed = { draft: setField(after.draft, 'gear/bag/massKg', 1.5), shelf: after.shelf }
    const away = swapped(weighed, 'n1')
    expect(away.draft.gear[0]!.swaps).toEqual([
      { id: 'winter', own: { at: 7, item: { name: 'Winter bag', massKg: 1.5, litres: 11 } } },
    ])
    const back = swapped(away, 'winter')
    expect(back.draft.gear[0]!.massKg).toBe(1.5)
    expect(offersFor(back.draft, back.shelf)).toEqual([])
    const changed = [{ ...WINTER, item: { ...WINTER.item, massKg: 1.45 }, changed: { massKg: 9 } }]
    expect(offersFor(back.draft, { ...back.shelf, things: changed })).toMatchObject([
      { fields: [{ field: 'massKg', from: 1.5, to: 1.45 }] },
    ])
  })

  test('changes nothing where item, thing or both are gone, or the thing is what the item is', () => {
    for (const [itemId, thingId] of [
      ['none', 'winter'],
      ['bag', 'none'],
      ['none', 'none'],
    ] as const)
      expect(swapItem(before, { itemId, thingId, ...outside() })).toEqual(before)
    expect(swapped(after, 'winter')).toEqual(after)
  })
})

test('an alternative is named once, never as the item itself, and is taken away again', () => {
  const draft = draftWith({ ...SUMMER, shelf: { id: 'summer', at: 1 } })
  const two = addSwaps(addSwaps(draft, 'bag', ['winter', 'summer']), 'bag', ['winter', 'quilt'])
  expect(two.gear[0]!.swaps).toEqual([{ id: 'winter' }, { id: 'quilt' }])
  expect(removeSwaps(two, 'bag', ['winter', 'quilt'])).toEqual(draft)
  expect(removeSwaps(draft, 'bag', ['winter'])).toBe(draft)
})

test('a thing deleted on the shelf is no choice any more; the others stay', () => {
  const draft = addSwaps(draftWith(SUMMER), 'bag', ['winter', 'quilt'])
  const shelf = removeThings(shelfOf(WINTER, thing('quilt')), ['winter'])
  const { there, gone } = alternativesOf(draft.gear[0]!, shelf)
  expect([there.map(it => it.thing.id), gone]).toEqual([['quilt'], ['winter']])
  expect(removeSwaps(draft, 'bag', gone).gear[0]!.swaps).toEqual([{ id: 'quilt' }])
})

const figure = fc.integer({ min: 0, max: 3000 }).map(grams => grams / 1000)
const facts = fc.record(
  {
    name: fc.constantFrom('Bag', 'Quilt', 'Stove'),
    massKg: figure,
    litres: figure,
    count: fc.integer({ min: 1, max: 3 }),
    group: fc.constantFrom('Sleep', 'Cold'),
    stow: fc.constantFrom('main-body' as const, 'strapped-on' as const),
    build: fc.constantFrom('soft' as const, 'rigid' as const),
    optional: fc.boolean(),
    litresFrom: fc.constantFrom('stated' as const, 'guess' as const),
  },
  { requiredKeys: [] },
)
const others = wholeDraft()
const anyBoth = fc
  .record({
    item: facts,
    own: facts,
    there: facts,
    atHome: fc.boolean(),
    isShelved: fc.boolean(),
    isInside: fc.boolean(),
  })
  .map(({ item, own, there, atHome, isShelved, isInside }) => {
    const bag: DraftItem = {
      ...item,
      id: 'bag',
      ...(atHome && { atHome }),
      ...(isInside && { inside: 'box' }),
      ...(isShelved && { shelf: { id: 'here', at: 3 } }),
    }
    const draft = addSwaps({ ...others, gear: [bag, ...others.gear] }, 'bag', ['there'])
    return { draft, shelf: shelfOf(thing('here', { item: own }), thing('there', { item: there })) }
  })

test('swapping and swapping back gives the same item, up to its link to the shelf', () => {
  fc.assert(
    fc.property(anyBoth, both => {
      const there = swapped(both, 'there')
      const back = swapItem(there, {
        itemId: 'bag',
        thingId: there.draft.gear[0]!.swaps![0]!.id,
        ...outside(),
      })
      const { shelf: _link, ...item } = back.draft.gear[0]!
      const { shelf: _old, ...was } = both.draft.gear[0]!
      expect(item).toEqual(was)
      expect(back.draft.gear.slice(1)).toEqual(both.draft.gear.slice(1))
      expect(back.shelf).toEqual(there.shelf)
    }),
  )
})

test('what is told of an alternative is the difference of the two plans as the engine reckons them', () => {
  fc.assert(
    fc.property(anyBoth, both => {
      const after = swapped(both, 'there').draft
      const item = both.draft.gear[0]!
      const { count, group, optional, ...rest } = both.shelf.things[1]!.item
      const { inside, atHome } = item
      const kept = { count: item.count, group: item.group, optional: item.optional, inside, atHome }
      const said = Object.fromEntries(Object.entries(kept).filter(([, value]) => value !== undefined))
      const written = { ...both.draft, gear: [{ ...rest, ...said, id: 'bag' }, ...others.gear] }
      const [known, then, plain] = [both.draft, after, written].map(draft => {
        const settled = settle(draft)
        return { ...settled, reckoned: reckon(settled.plan) }
      }) as [Known, Known, Known]
      expect(then.plan).toEqual(plain.plan)
      const told = changeBetween(known, then)!
      const need = (of: Known) => (of.reckoned.ok ? of.reckoned.reckoning.need : null)!
      expect(told.litres).toBe(need(plain).bodyLitres - need(known).bodyLitres)
      expect(told.kg).toBe(need(plain).peakLoadFullWaterKg - need(known).peakLoadFullWaterKg)
    }),
  )
})
type Known = ReturnType<typeof settle> & { reckoned: ReturnType<typeof reckon> }

describe('what comes in', () => {
  const sound = addSwaps(draftWith(SUMMER), 'bag', ['winter'])
  const withSwaps = (swaps: unknown) => draftWith({ ...SUMMER, swaps } as DraftItem)

  test('keeps sound alternatives', () => {
    const own = {
      at: 5,
      item: { name: 'Winter bag', massKg: 1.5, litresPerKg: { low: 1, typical: 2, high: 3 } },
    }
    for (const draft of [sound, withSwaps([{ id: 'winter', own }])])
      expect(checkDraft(draft)).toEqual({ ok: true, draft, leftOut: [] })
  })

  test.each<[string, unknown]>([
    ['no list', 'winter'],
    ['ids that are none', [{ id: 5 }]],
    ['one thing twice', [{ id: 'winter' }, { id: 'winter' }]],
    ['more than an alternative holds', [{ id: 'winter', mass: 3 }]],
    ['facts that no item has', [{ id: 'winter', own: { at: 1, item: { colour: 'red' } } }]],
    ['facts of another kind', [{ id: 'winter', own: { at: 1, item: { massKg: 'heavy' } } }]],
    ['what belongs to the place', [{ id: 'winter', own: { at: 1, item: { atHome: true } } }]],
    ['alternatives of an alternative', [{ id: 'winter', own: { at: 1, item: { swaps: [] } } }]],
    ['no time', [{ id: 'winter', own: { item: {} } }]],
    ['far too many', Array.from({ length: 51 }, (_, i) => ({ id: `${i}` }))],
  ])('takes out what is none: %s', (_, swaps) => {
    const checked = checkDraft(withSwaps(swaps))
    expect(checked).toMatchObject({
      ok: true,
      draft: draftWith(SUMMER),
      leftOut: [expect.stringContaining('alternatives')],
    })
  })

  test('goes into no plan file', () => {
    expect(toPlanDocument(sound).gear).toEqual(toPlanDocument(draftWith(SUMMER)).gear)
    expect(settle(sound).document).toEqual(settle(draftWith(SUMMER)).document)
  })
})
