// The shipped tables of kinds and foods against their own notes, arithmetic and sources, and the matching of names.
// Standing: each row of data/item-kinds.json and data/foods.json says its own; nothing here makes it more than that.

import { describe, expect, it } from 'vitest'
import foodTable from '../../data/foods.json'
import kindTable from '../../data/item-kinds.json'
import { type Draft, emptyDraft, settle } from '../../src/plan'
import { daysFood, FOOD_PACKING, foods, foodWithId, putDaysFood, withoutDensity } from '../../src/plan/foods'
import { applyKind, type Kind, kindNamed, kinds, originText, suggestKinds } from '../../src/plan/kinds'

const rows = kindTable.kinds as (Kind & { note?: string; softness: string })[]

describe('the table of kinds', () => {
  it('holds 79 kinds, 51 of them from memory, and says the standing of each', () => {
    expect(rows).toHaveLength(79)
    const by = (origin: string) => rows.filter(row => row.origin === origin).length
    expect(['memory', 'computed', 'derived', 'published', 'judgement', 'sum'].map(by)).toEqual([
      51, 13, 8, 1, 4, 2,
    ])
    for (const kind of kinds) expect(originText(kind)).toMatch(/^typical, .*not measured$/)
    expect(kindTable.licence).toMatch(/under its licence/)
  })

  it('orders every range, and keeps the typical mass within the usual', () => {
    for (const { kind, litres, massG, massLowG, massHighG, softShare } of rows) {
      expect(litres.low > 0 && litres.low <= litres.typical && litres.typical <= litres.high, kind).toBe(true)
      expect(massLowG <= massG && massG <= massHighG, kind).toBe(true)
      expect(softShare >= 0 && softShare <= 1, kind).toBe(true)
    }
  })

  it('agrees with the cylinders and slabs in its notes (computed; the dimensions are from memory)', () => {
    let checked = 0
    for (const { note = '', litres, kind } of rows) {
      const cylinder = /dia ([\d.]+) x ([\d.]+) cm = ([\d.]+) L/.exec(note)
      const slab = /(\d+) x (\d+) x ([\d.]+) (cm|mm).*? = ([\d.]+) L/.exec(note)
      if (cylinder) {
        const [, across, long, stated] = cylinder.map(Number)
        expect((Math.PI * across! ** 2 * long!) / 4000, kind).toBeCloseTo(stated!, 1)
        expect(Math.abs(stated! - litres.typical), kind).toBeLessThan(0.02)
      } else if (slab) {
        const [, a, b, c] = slab.map(Number)
        const made = (a! * b! * c!) / (slab[4] === 'mm' ? 1e6 : 1000)
        expect(made, kind).toBeCloseTo(Number(slab[5]), 1)
      } else continue
      checked++
    }
    expect(checked).toBeGreaterThanOrEqual(6)
  })

  it('agrees with the sums of fill and shell in its notes (derived)', () => {
    let checked = 0
    for (const { note = '', litres, kind } of rows) {
      const sum = /(\d+) g fill at (\d+) g\/L.*? \+ (\d+) g shell at (\d+) g\/L = ([\d.]+) L/.exec(note)
      if (!sum) continue
      const [, fill, fillPer, shell, shellPer, stated] = sum.map(Number)
      // The densities in the notes are rounded, the sums were made before that.
      expect(Math.abs(fill! / fillPer! + shell! / shellPer! - stated!), kind).toBeLessThan(0.1)
      expect(stated! >= litres.low && stated! <= litres.high, kind).toBe(true)
      checked++
    }
    expect(checked).toBe(8)
  })

  it('offers nothing that is full of water, which the trip counts by itself', () => {
    expect(rows.length - kinds.length).toBe(3)
    for (const { kind } of kinds) expect(kind).not.toMatch(/1 L, full|2 L, full/)
  })
})

describe('names are matched', () => {
  it.each([
    ['Rain jacket', 0.3, 'rain jacket'],
    ['RAIN JACKETS', 0.3, 'rain jacket'],
    ['Sleeping bag', 0.85, 'down sleeping bag, 3-season'],
    ['Tent pegs', 0.014, 'tent stakes, set of eight'],
    ['Head torch', 0.09, 'headlamp'],
    ['Gas canister 230', 0.375, 'gas cartridge, 230 g net'],
    ['Pot 0.8 L', 0.13, 'solo pot with lid, 0.8 L inner'],
    ['Fleece', 0.34, 'fleece mid-layer'],
    ['Inflatable sleeping pad', 0.45, 'inflatable pad, rolled'],
    ['Socks', 0.075, 'socks, pair'],
    ['First aid kit', 0.2, 'first-aid kit'],
  ])('%s of %d kg is surely %s', (name, massKg, kind) => {
    expect(suggestKinds({ name, massKg })[0]).toMatchObject({ sure: true, kind: { kind } })
  })

  it.each([
    ['Toothbrush', 0.02],
    ['Jacket', undefined],
    ['Sleeping bag', undefined],
    ['Puffy', undefined],
    ['Quilt', undefined],
    ['Tent', undefined],
    ['Sleeping pad', 0.45],
  ])('%s of %s kg is not decided for the reader', (name, massKg) => {
    const found = suggestKinds({ name, massKg })
    expect(found.length).toBeGreaterThan(0)
    expect(found.some(({ sure }) => sure)).toBe(false)
  })

  it.each(['', '   ', 'Book', '🏕️', '12'])('"%s" is no kind', name => {
    expect(suggestKinds({ name })).toEqual([])
  })

  it('gives five at most, and finds a kind by its own name first', () => {
    for (const { kind } of kinds) {
      const found = suggestKinds({ name: kind })
      expect(found.length).toBeLessThanOrEqual(5)
      expect(found[0]?.kind.kind).toBe(kind)
    }
  })

  it('follows a word that is still being typed', () => {
    expect(suggestKinds({ name: 'sleeping b', typing: true })[0]?.kind.kind).toMatch(/sleeping bag/)
    expect(suggestKinds({ name: 'headl', typing: true })[0]?.kind.kind).toBe('headlamp')
    expect(suggestKinds({ name: 'headl' })).toEqual([])
  })
})

describe('a kind taken', () => {
  const itemAfter = (item: object, kind: string) =>
    applyKind({ ...emptyDraft(), gear: [{ id: 'a', ...item }] }, 'a', kindNamed(kind)!).gear[0]!

  it('fills only what is open, and makes the litres a range', () => {
    expect(
      itemAfter({ name: 'Mine', massKg: 0.25, massFrom: 'scale', group: 'Wet', litres: 9 }, 'rain jacket'),
    ).toEqual({
      id: 'a',
      name: 'Mine',
      massKg: 0.25,
      massFrom: 'scale',
      group: 'Wet',
      litresFrom: 'kind',
      litresRange: { low: 0.925, typical: 1.08, high: 1.25 },
      litresPerKg: { low: 3.7, typical: 4.33, high: 5 },
      build: 'soft',
      stow: 'main-body',
    })
    expect(itemAfter({}, 'rain jacket')).toMatchObject({ massKg: 0.3, massFrom: 'guess', group: 'Clothing' })
  })

  it('counts inside what may ride either way, and says that it may ride outside', () => {
    expect(itemAfter({}, 'camp sandals')).toMatchObject({
      stow: 'main-body',
      mayRideOutside: true,
      build: 'rigid',
    })
  })

  it('gives a peg its part of the set', () => {
    const { litresRange } = itemAfter({ massKg: 0.014, count: 8 }, 'tent stakes, set of eight')
    expect(litresRange!.high * 8).toBeCloseTo(0.3, 2)
    expect(itemAfter({ massKg: 0.11 }, 'tent stakes, set of eight').litresRange!.high).toBe(0.3)
  })

  it('settles without a word for every kind', () => {
    const gear = kinds.map(({ kind }) => ({ id: kind, name: kind }))
    const named: Draft = { ...emptyDraft(), gear }
    const draft = kinds.reduce((made, kind) => applyKind(made, kind.kind, kind), named)
    expect(settle(draft).leftOut.filter(({ path }) => path.startsWith('gear'))).toEqual([])
  })
})

describe('the table of foods', () => {
  it('states its sources: 62 rows of the USDA with density, 13 with energy only, 8 estimates of ours', () => {
    const by = (source: string) => foodTable.foods.filter(food => food.source === source).length
    expect(['usda', 'usda-energy', 'ours'].map(by)).toEqual([62, 13, 8])
    expect(foodTable.sources.usda.licence).toBe('public domain (US Government)')
    expect(foodTable.sources.ours.standing).toMatch(/estimate of ours/)
    expect(foods).toHaveLength(70)
    expect(withoutDensity).toBe(13)
  })

  it('has densities that follow from the published household measures', () => {
    let checked = 0
    for (const { name, kgPerLitre, measured } of foodTable.foods as {
      name: string
      kgPerLitre: number
      measured?: { g: number; mL: number }
    }[]) {
      if (!measured) continue
      // Grams and litres are given to whole grams: half a gram either way.
      expect(Math.abs(measured.g / measured.mL - kgPerLitre), name).toBeLessThan(0.6 / measured.mL)
      checked++
    }
    expect(checked).toBe(62)
  })

  it('keeps energy within what food can hold', () => {
    for (const { name, kcalPer100G } of foodTable.foods)
      expect(kcalPer100G >= 0 && kcalPer100G <= 902, name).toBe(true)
  })
})

describe('a day’s food', () => {
  const portion = (id: string, g: number) => ({ food: foodWithId(id)!, massKg: g / 1000 })
  const mixedDay = [
    portion('oats_rolled', 80),
    portion('milk_powder_whole', 30),
    portion('raisins', 30),
    portion('trail_mix', 120),
    portion('est_tortilla_flour', 98),
    portion('peanut_butter', 50),
    portion('cheddar_block', 60),
    portion('est_chocolate_bar', 50),
    portion('est_bar', 100),
    portion('couscous', 110),
    portion('olive_oil', 20),
    portion('est_jerky', 30),
    portion('est_drink_powder', 40),
  ]

  it('of thirteen foods comes to 0.818 kg, 3561 kcal and 1.232 L before packing (computed by a separate script)', () => {
    const day = daysFood(mixedDay)!
    expect(day.massKg).toBeCloseTo(0.818, 9)
    expect(Math.abs(day.kcal - 3561)).toBeLessThan(1)
    expect(day.litres / FOOD_PACKING).toBeCloseTo(1.232, 3)
    expect(day.kcalPerKg / 1000).toBeCloseTo(4.35, 2)
  })

  it('of nothing is none', () => {
    expect(daysFood([])).toBeNull()
    expect(daysFood([portion('oats_rolled', 0)])).toBeNull()
  })

  it('becomes one daily item, or the amounts of one that is there', () => {
    const day = daysFood(mixedDay)!
    const draft = putDaysFood(emptyDraft(), day, { newId: () => 'food' })
    expect(draft.gear).toEqual([
      {
        id: 'food',
        name: 'Food for a day',
        group: 'Food',
        use: 'daily',
        massKg: 0.818,
        massFrom: 'stated',
        litres: 1.42,
        litresFrom: 'guess',
        kcalPerKg: 4354,
      },
    ])
    const gear = [
      {
        id: 'own',
        name: 'Mine',
        use: 'daily' as const,
        litresFrom: 'kind' as const,
        litresRange: { low: 1, typical: 2, high: 3 },
      },
    ]
    const put = putDaysFood({ ...emptyDraft(), gear }, day, { into: 'own', newId: () => 'never' })
    expect(put.gear).toEqual([
      {
        id: 'own',
        name: 'Mine',
        use: 'daily',
        massKg: 0.818,
        massFrom: 'stated',
        litres: 1.42,
        litresFrom: 'guess',
        kcalPerKg: 4354,
      },
    ])
    expect(settle(put).leftOut.filter(({ path }) => path.startsWith('gear'))).toEqual([])
  })
})
