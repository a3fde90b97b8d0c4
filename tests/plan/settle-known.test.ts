// Settling that remembers the items it has checked gives what checking the whole plan anew gives, keystroke by keystroke.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Draft, parsePlan, setField, settle } from '../../src/plan'
import { settleBy } from '../../src/plan/settle'
import { anyDraft, anyTyped, wholeDraft } from './drafts'

/** Whole, and on a draft of which nothing can be remembered. */
const slowly = (draft: Draft, typed = {}) => settleBy(parsePlan, structuredClone(draft), typed)

const path = fc.constantFrom(
  ...['gear/a/massKg', 'gear/b/litres', 'gear/c/inside', 'gear/a/holdsLitres', 'gear/a/fuel/kind', 'gear/b'],
  ...['gear/d~1e/use', 'gear/food/litres', 'gear/pot/inside', 'gear/box/holdsLitres', 'gear/pot/fuel'],
  ...['gear/food/litresRange', 'gear/food/litresFrom', 'carrier/massKg', 'trip/meals/ration', 'name'],
  ...[
    'packs/big/bodyLitres',
    'packs/big/name',
    'packs/big/setups',
    'packs/big/setups/sold/massKg',
    'packs/big/notes',
  ],
  ...['packs/big/setups/sold/frame', 'packs/big/setups/sold/name', 'packs/big/denier'],
)
const value = fc.oneof(
  fc.constantFrom<unknown>(undefined, 0, 1, -1, 'box', 'a', 'x', 'nightly', 'daily', 'kind', 'energy'),
  fc.constantFrom<unknown>({ kind: 'gas' }, { boilLitres: 1 }, { low: 1, typical: 2, high: 3 }, [], null),
)
const edits = fc.array(fc.tuple(path, value), { maxLength: 8 })

describe('settling again and again', () => {
  test('gives what settling from nothing gives, after each of many edits', () => {
    fc.assert(
      fc.property(fc.oneof(anyDraft, fc.constant(wholeDraft())), anyTyped, edits, (first, typed, changes) => {
        let draft = first
        expect(settle(draft, typed)).toEqual(slowly(draft, typed))
        for (const [at, to] of changes) {
          if (typeof draft !== 'object' || draft === null) return
          draft = setField(draft, at, to)
          expect(settle(draft, typed)).toEqual(slowly(draft, typed))
        }
      }),
      { numRuns: 120 },
    )
  })

  test('looks anew only at the item that was changed, also where all of them lack their litres', () => {
    const gear = Array.from({ length: 50 }, (_, i) => ({ id: `i${i}`, name: `Thing ${i}`, massKg: 0.1 }))
    const draft = { ...wholeDraft(), gear }
    const before = settle(draft).plan.gear
    const after = settle(setField(draft, 'gear/i7/massKg', 0.2)).plan.gear
    expect(after.flatMap((item, i) => (item === before[i] ? [] : [item.id]))).toEqual(['i7'])
  })

  test('looks anew only at the pack that was changed, also where all of them lack their mass', () => {
    const setups = [{ id: 's', frame: 'framed' as const }]
    const packs = Array.from({ length: 50 }, (_, i) => ({
      id: `p${i}`,
      name: `Pack ${i}`,
      bodyLitres: 50,
      setups,
    }))
    const whole = packs.map((pack, i) =>
      i % 2 ? { ...pack, setups: [{ id: 's', frame: 'framed' as const, massKg: 1 }] } : pack,
    )
    const draft = { ...wholeDraft(), packs: whole }
    const before = settle(draft)
    const after = settle(setField(draft, 'packs/p7/bodyLitres', 40))
    expect(before.plan.packs).toHaveLength(25)
    const changed = after.plan.packs.filter((pack, i) => pack !== before.plan.packs[i])
    expect(changed.map(({ name }) => name)).toEqual(['Pack 7'])
  })

  test('leaves what it gave before as it was', () => {
    const whole = wholeDraft()
    const before = settle(whole)
    const kept = structuredClone(before)
    settle(setField(setField(whole, 'gear/pot/fuel', { kind: 'gas' }), 'gear/box/holdsLitres', -4))
    settle(setField(whole, 'gear/pot/massKg', 'heavy'))
    settle(setField(whole, 'packs/big/setups/sold/massKg', undefined))
    settle(setField(whole, 'packs/big/denier', -1))
    expect(before).toEqual(kept)
    expect(settle(whole)).toEqual(kept)
  })

  test('notices an item that was changed in place, though nobody should', () => {
    const draft = wholeDraft()
    settle(draft)
    const [food, , pot] = draft.gear
    food!.massKg = 0.9
    expect(settle(draft).plan.gear[0]?.massKg).toBe(0.9)
    pot!.use = 'nightly'
    pot!.fuel = { kind: 'gas' }
    settle(draft)
    pot!.fuel.boilLitres = 3
    expect(settle(draft)).toEqual(slowly(draft))
    delete pot!.inside
    expect(settle(draft).plan.gear[2]?.inside).toBeNull()
  })

  test('is the same for more items than a plan may hold, and for one with more fields than any has', () => {
    const many = Array.from({ length: 20_001 }, (_, i) => ({ id: `${i}`, massKg: 1, litres: 1 }))
    const crowded = Object.fromEntries(Array.from({ length: 101 }, (_, i) => [`f${i}`, i]))
    for (const gear of [many, [{ ...crowded, id: 'a' }, ...many.slice(0, 3)]]) {
      const draft = { ...wholeDraft(), gear }
      expect(settle(draft)).toEqual(slowly(draft))
    }
    expect(settle({ ...wholeDraft(), gear: many }).plan.gear).toHaveLength(20_000)
  })
})
