// All that an item holds has a column, and a box's sizes are told from a roll's.

import { describe, expect, test } from 'vitest'
import { FIELDS, guessLayout, readGrid, readRows } from '../../../src/files/csv'
import { itemSchema } from '../../../src/plan/schema'

const firstOf = (text: string) => {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  return readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' })).items[0]!.item
}

/**
 * Fields of an item that no cell holds by themselves: an id is the document's own, a container is named by its name, and
 * whose a thing is belongs to one party.
 */
const WITHOUT_PATH = ['id', 'inside', 'owner', 'carriedBy', 'shareable']

describe('the columns of a table', () => {
  test('are there for each field of an item', () => {
    const written = new Set(Object.values(FIELDS).flatMap(({ path }) => (path ? [path[0]] : [])))
    const open = Object.keys(itemSchema.def.shape).filter(key => !written.has(key))
    expect(open).toEqual(WITHOUT_PATH)
    expect(FIELDS).toHaveProperty('inside')
  })

  test('take the width of a box for a width, and a diameter for one', () => {
    const box = firstOf('Item,Length (cm),Width (cm),Depth (cm)\nBox,30,21,12')
    expect(box).toMatchObject({ lengthCm: 30, widthCm: 21, depthCm: 12 })
    expect(box).not.toHaveProperty('diameterCm')
    expect(firstOf('Item,Length (cm),Diameter (cm)\nMat,50,12')).toMatchObject({ diameterCm: 12 })
    expect(firstOf('Item,Length (in),Across (in)\nMat,10,5').diameterCm).toBeCloseTo(12.7, 9)
  })
})
