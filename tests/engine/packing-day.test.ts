// Packing day: the order, what may be forgotten, and the laws of a scale reading shared out over guesses.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Draft, emptyDraft, mark, toPlanDocument, withSpread } from '../../src/plan'
import { emptyShelf } from '../../src/plan/shelf'
import { reckon } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import {
  causesOf,
  forgotten,
  guessesAboard,
  inPackingOrder,
  roomOf,
  spreadOver,
  unexplained,
  weighingOf,
  withForgotten,
} from '../../src/report/packing-day'
import { counter } from '../plan/drafts'
import { documents, planOf } from './plans'
import { reckoned, smallPlan } from './small-plans'

const formats = formatsIn('metric')
const gear = [
  { id: 'bag', name: 'Sleeping bag', massKg: 1, litres: 12 },
  { id: 'box', name: 'Box', massKg: 2.5, litres: 9, holdsLitres: 8 },
  { id: 'food', name: 'Food', massKg: 0.6, litres: 1.5, use: 'daily', inside: 'box', massFrom: 'guess' },
  { id: 'stove', name: 'Stove', massKg: 1.5, litres: 1, build: 'rigid' },
  { id: 'jacket', name: 'Jacket', massKg: 0.4, litres: 3, massFrom: 'guess' },
  { id: 'map', name: 'Map', massKg: 0.1, litres: 0.1, stow: 'outside-pocket', massFrom: 'scale' },
  { id: 'left', name: 'Left', massKg: 1, litres: 1, atHome: true },
  { id: 'boots', name: 'Boots', massKg: 1.2, litres: 5, stow: 'worn', massFrom: 'guess' },
] as const
const plan = smallPlan({ gear: [...gear] })

describe('the packing order', () => {
  test('is bulky and soft first, heavy for its size next to the back, contents under their container', () => {
    const order = inPackingOrder(plan, reckoned(plan))
    expect(order.map(({ title, rows }) => [title, rows.map(({ item }) => item.id)])).toEqual([
      ['At the bottom', ['bag', 'jacket']],
      ['Close to the back', ['box', 'food', 'stove']],
      ['Pockets', ['map']],
      ['Worn and in hand', ['boots']],
    ])
  })

  test('has every item that is taken, once, and nothing else', () => {
    fc.assert(
      fc.property(documents({ ration: 'fixed', litresPerHour: 'number' }), document => {
        const any = planOf(document)
        const result = reckon(any)
        const ids = inPackingOrder(any, result.ok ? result.reckoning : null).flatMap(({ rows }) =>
          rows.map(({ item }) => item.id),
        )
        const taken = any.gear.filter(({ count, atHome }) => count > 0 && !atHome).map(({ id }) => id)
        expect(ids.toSorted()).toEqual(taken.toSorted())
      }),
    )
  })
})

describe('a scale reading', () => {
  const state = (weighedKg: number, log = {}) => {
    const reckoning = reckoned(plan)
    return { plan, reckoning, log: { weighedKg, ...log }, setup: null }
  }
  const calculated = weighingOf(state(1))!.calculatedKg

  test('is held against the load on leaving the start, with the water that is said', () => {
    const { kg } = reckoned(plan).moments[0]!
    expect(calculated).toBeCloseTo(kg.total, 12)
    expect(weighingOf(state(1, { weighedWaterLitres: 0 }))!.calculatedKg).toBeCloseTo(kg.total - kg.water, 12)
    expect(weighingOf({ ...state(1), log: {} })).toBeNull()
  })

  test('counts the pack that is taken, and its liner where rain is likely', () => {
    const pack = {
      name: 'Big',
      bodyLitres: 60,
      setups: [{ name: 'as sold', massKg: 1.6, frame: 'framed' }],
    } as const
    const packed = smallPlan({ gear: [...gear], packs: [{ ...pack, setups: [...pack.setups] }] })
    const reckoning = reckoned(packed)
    const weighing = weighingOf({ plan: packed, reckoning, log: { weighedKg: 9 }, setup: 0 })!
    expect(weighing.packKg).toBeCloseTo(1.6 + packed.settings.linerKg, 9)
    const bare = weighingOf({ plan: packed, reckoning, log: { weighedKg: 9, weighedBare: true }, setup: 0 })!
    expect([bare.packKg, bare.calculatedKg]).toEqual([null, reckoning.moments[0]!.kg.total])
    expect(weighing.calculatedKg).toBeCloseTo(reckoning.moments[0]!.kg.total + weighing.packKg!, 9)
  })

  test('names guesses by how far they may be off, and what is not ticked where it is less', () => {
    const more = state(calculated + 0.2)
    expect(causesOf(weighingOf(more)!, more, formats).map(({ name }) => name)).toEqual(['Food', 'Jacket'])
    const less = state(calculated - 0.2, {
      packed: { bag: true, box: true, stove: true, food: true, gone: true },
    })
    expect(
      causesOf(weighingOf(less)!, less, formats)
        .map(({ name, says }) => `${name} ${says}`)
        .slice(0, 2),
    ).toEqual(['Jacket is not ticked', 'Map is not ticked'])
    const paths = causesOf(weighingOf(less)!, less, formats).map(({ path }) => path)
    expect(new Set(paths).size).toBe(paths.length)
  })

  test('that no range explains is said, and by how much', () => {
    const far = weighingOf(state(calculated + 9))!
    const over = 9 - far.guessedKg - far.statedKg
    expect(unexplained(far, plan, formats)).toMatch(`${formats.kg(over)} of it no range on the list explains`)
    expect(unexplained(weighingOf(state(calculated + 0.1))!, plan, formats)).toBeNull()
  })

  test('shared out is what the list then comes to, and a second time leaves no range', () => {
    const draft: Draft = { ...emptyDraft(), gear: gear.map(item => ({ ...item })) }
    const masses = (of: Draft) => new Map(of.gear.map(({ id, massKg }) => [id, massKg!]))
    const weigh = (of: Draft, readKg: number) => {
      const now = smallPlan({ gear: toPlanDocument(of).gear as never })
      return weighingOf({
        plan: now,
        reckoning: reckoned(now),
        log: { ...of.log, weighedKg: readKg },
        setup: null,
      })!
    }
    const once = withSpread(draft, weigh(draft, calculated + 0.1).shared.masses)
    expect(weigh(once, calculated + 0.1).differenceKg).toBeCloseTo(0, 9)
    const again = withSpread(once, weigh(once, calculated + 50).shared.masses)
    const last = withSpread(again, weigh(again, calculated + 50).shared.masses)
    const [first, end] = [masses(draft), masses(last)]
    for (const { id } of gear) {
      const isGuess = ['food', 'jacket'].includes(id)
      expect(end.get(id)).toBeCloseTo(first.get(id)! * (isGuess ? 1.2 : 1), 12)
    }
  })
})

describe('a difference shared out', () => {
  const guess = fc
    .tuple(fc.double({ min: 0.001, max: 5, noNaN: true }), fc.double({ min: 0.1, max: 10, noNaN: true }))
    .map(([firstKg, times]) => ({ firstKg, kg: firstKg, lowKg: 0.8 * firstKg, highKg: 1.2 * firstKg, times }))
  const guesses = fc.array(guess, { maxLength: 8 }).map(all => all.map((one, i) => ({ ...one, id: `${i}` })))

  test('keeps the sum, leaves no range, and says what is left', () => {
    fc.assert(
      fc.property(guesses, fc.double({ min: -20, max: 20, noNaN: true }), (all, difference) => {
        const { masses, restKg } = spreadOver(all, difference)
        const byId = new Map(all.map(one => [one.id, one]))
        let gained = 0
        for (const { id, toKg } of masses) {
          const { kg, lowKg, highKg, times } = byId.get(id)!
          expect(toKg).toBeGreaterThanOrEqual(lowKg)
          expect(toKg).toBeLessThanOrEqual(highKg)
          gained += times * (toKg - kg)
        }
        expect(Math.abs(gained + restKg - difference)).toBeLessThan(1e-9)
        const room = roomOf(all, difference > 0 ? 'more' : 'less')
        expect(Math.abs(restKg)).toBeCloseTo(Math.max(0, Math.abs(difference) - room), 9)
      }),
    )
  })

  test('touches nothing that is weighed, stated, worn or left at home, in any plan', () => {
    fc.assert(
      fc.property(
        documents({ ration: 'fixed', litresPerHour: 'number' }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (document, d) => {
          const any = planOf(document)
          const result = reckon(any)
          if (!result.ok) return
          const { masses } = spreadOver(guessesAboard(any, result.reckoning), d)
          const of = new Map(any.gear.map(item => [item.id, item]))
          for (const { id } of masses)
            expect(of.get(id)).toMatchObject({ massFrom: 'guess', atHome: false, fuel: null })
        },
      ),
    )
  })
})

describe('what may be forgotten', () => {
  const trip = (names: string[], nights = 1, demo = false) => ({
    demo,
    draft: {
      ...emptyDraft(),
      trip: { stops: [{ id: 's' }, { id: 'c', nights }, { id: 'e' }] },
      gear: names.map(name => ({ id: name, name, massKg: 0.1 })),
    } as Draft,
  })
  const here = trip(['Tent', 'Lamp']).draft

  test('is what past trips of about as many nights had, the most frequent first; the demo counts nowhere', () => {
    const past = [
      trip(['tent ', 'Whistle']),
      trip(['Whistle', 'Rope']),
      trip(['Skis'], 9),
      trip(['Demo'], 1, true),
    ]
    const { things, of } = forgotten(here, past)
    expect([things.map(({ name, trips }) => [name, trips]), of]).toEqual([
      [
        ['Whistle', 2],
        ['Rope', 1],
      ],
      2,
    ])
    expect(forgotten(here, [trip(['Skis'], 9)]).things.map(({ name }) => name)).toEqual(['Skis'])
    expect(forgotten(here, []).things).toEqual([])
    expect(forgotten(here, [trip(Array.from({ length: 20 }, (_, i) => `Thing ${i}`))]).things).toHaveLength(8)
  })

  test('passes over what came home unused', () => {
    const past = trip(['Whistle', 'Rope'])
    expect(
      forgotten(here, [{ ...past, draft: mark(past.draft, 'unused', 'Rope', true) }]).things.map(
        ({ name }) => name,
      ),
    ).toEqual(['Whistle'])
  })

  test('passes over what an item here was swapped for', () => {
    const past = trip(['Whistle', 'Winter bag'])
    past.draft.gear[1]!.shelf = { id: 'winter', at: 1 }
    const swapped = [{ id: 'bag', name: 'Quilt', shelf: { id: 'quilt', at: 1 }, swaps: [{ id: 'winter' }] }]
    expect(forgotten({ ...here, gear: swapped }, [past]).things.map(({ name }) => name)).toEqual(['Whistle'])
  })

  test('is added from the shelf where it is there, else as it was', () => {
    const item = { id: 'x', name: 'Rope', massKg: 0.3, inside: 'gone', shelf: { id: 'thing', at: 1 } }
    const shelf = {
      ...emptyShelf(),
      things: [{ id: 'thing', item: { name: 'Rope', massKg: 0.5 }, changed: {} }],
    }
    const add = (from: typeof shelf) =>
      withForgotten(here, { item }, { shelf: from, newId: counter('n'), now: 7 }).gear.at(-1)
    expect(add(shelf)).toEqual({ id: 'n1', name: 'Rope', massKg: 0.5, shelf: { id: 'thing', at: 7 } })
    expect(add(emptyShelf() as typeof shelf)).toEqual({ id: 'n1', name: 'Rope', massKg: 0.3 })
  })
})
