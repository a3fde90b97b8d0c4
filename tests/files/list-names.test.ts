// What a row's name says of it: one's own pack is no gear, food is said to be eaten or not, a bare number is marked.

import { describe, expect, test } from 'vitest'
import { guessLayout, readGrid, readRows } from '../../src/files/csv'
import { isFood, isOwnPack, itemOf, readList } from '../../src/files/list'
import { kindNamed } from '../../src/plan/kinds'

const rowOf = (text: string) => {
  const read = readList(text, { system: 'metric' })
  const row = read.ok ? read.rows[0] : undefined
  if (!row?.ok) throw new Error('not understood')
  return row
}

describe('one’s own pack', () => {
  test.each([
    'Backpack',
    'Rucksack',
    'pack',
    'My pack',
    'Hiking backpack, blue',
    'Backpack (55 L)',
    'Backpack 55 L',
    'Framed pack',
    'Back-pack with hip belt',
  ])('is told: %s', name => expect(isOwnPack(name)).toBe(true))

  test.each([
    'Pack cover',
    'Pack liner',
    'Backpack rain cover',
    'Battery pack',
    'Ice pack',
    'Packable backpack',
    'Day pack',
    'Packing cubes',
    'Rucksack liner',
    'Tent',
  ])('is not: %s', name => expect(isOwnPack(name)).toBe(false))

  test('is marked in a list and in a table', () => {
    expect(rowOf('Backpack 55 L, 1250 g')).toMatchObject({ isPack: true, massKg: 1.25 })
    expect(rowOf('Pack cover 90 g').isPack).toBe(false)
    const grid = readGrid('Item,Weight (g)\nRucksack,1250\nTent,900')
    if (!grid.ok) throw new Error(grid.message)
    const { items } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
    expect(items.map(({ isPack }) => isPack)).toEqual([true, false])
  })
})

describe('food', () => {
  test.each([
    'Food',
    'Trail snacks',
    'Rations',
    'Meals (3)',
    'Food for 4 days',
    'Food 3 days',
    'Energy bars',
  ])('is told: %s', name => expect(isFood(name)).toBe(true))

  test.each(['Food bag', 'Lunch box', 'Food canister', 'Dog bowl', 'Tent'])('is not: %s', name =>
    expect(isFood(name)).toBe(false),
  )

  test.each(['Food per day 700 g', 'Food 700 g/day', 'Food, 700 g a day', 'Daily food 700 g'])(
    'is a day’s where the line says so: %s',
    text => {
      const row = rowOf(text)
      expect(row).toMatchObject({ use: 'daily', massKg: 0.7 })
      expect(itemOf({ row, kind: null })).toMatchObject({ use: 'daily' })
      expect(itemOf({ row, kind: kindNamed('dense snack food, 500 g')! })).toMatchObject({ use: 'daily' })
    },
  )

  test.each(['Food 700 g', '3 x food per day 700 g', 'Day pack 400 g'])(
    'is not where it does not: %s',
    text => expect(rowOf(text).use).toBeUndefined(),
  )
})

test('a last number without a unit is marked as the mass, and not said of each row', () => {
  expect(rowOf('Groundsheet 150')).toMatchObject({ isBare: true, massKg: 0.15, notes: [] })
  expect(rowOf('Groundsheet 150 g').isBare).toBeUndefined()
})
