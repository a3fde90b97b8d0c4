// A table of packs brought in again: it updates and doubles nothing.

import { describe, expect, it } from 'vitest'
import {
  compareWithPacks,
  guessPacksLayout,
  packsCsv,
  readGrid,
  readPackRows,
  takePacks,
} from '../../../src/files/csv'
import { type Draft, emptyDraft } from '../../../src/plan'

const packsIn = (text: string) => {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  return readPackRows(grid, guessPacksLayout(grid, { system: 'metric' })).packs
}

let last = 0
const newId = () => `id${++last}`

function compared(draft: Draft, text: string) {
  const found = compareWithPacks(draft.packs, packsIn(text), newId)
  const told = found.changed.flatMap(({ changes }) =>
    changes.map(({ setup, field, from, to }) => [setup, field, from, to]),
  )
  return { ...found, told, taken: takePacks(draft, found, newId) }
}

const TABLE =
  'Pack,Set-up,Frame,Weight (g),Body (L),Price,Waterproof\nOne,Light,no,700,40,100,no\nOne,Full,yes,1000,40,100,no\nTwo,,yes,1500,60,,no'
const first = compared(emptyDraft(), TABLE).taken

describe('a table brought in again', () => {
  it('brings nothing where nothing has changed, also as the app writes it', () => {
    for (const text of [TABLE, packsCsv(first.packs)]) {
      const { added, same, told, taken } = compared(first, text)
      expect([added.length, same.length, told]).toEqual([0, 2, []])
      expect(taken).toEqual(first)
    }
  })

  it('changes what it says otherwise, in place, and leaves what it does not say', () => {
    const text =
      'Pack,Set-up,Weight (g),Body (L),Price,Fabric\none,light,650,40,100,\nOne,Full,1000,40,120,laminate\nThree,,800,30,,'
    const { added, told, taken } = compared(first, text)
    expect(added.map(({ pack }) => pack.name)).toEqual(['Three'])
    expect(told).toEqual([
      [null, 'fabric', undefined, 'laminate'],
      ['Light', 'massKg', 0.7, 0.65],
    ])
    expect(taken.packs.map(({ name }) => name)).toEqual(['One', 'Two', 'Three'])
    expect(taken.packs[0]).toMatchObject({
      id: first.packs[0]!.id,
      price: 100,
      fabric: 'laminate',
      sealed: false,
    })
    expect(taken.packs[0]!.setups.map(({ massKg, frame }) => [massKg, frame])).toEqual([
      [0.65, 'frameless'],
      [1, 'framed'],
    ])
    expect(taken.packs[1]).toBe(first.packs[1])
  })

  it('takes other litres of the only pack of a name for the same pack', () => {
    const { told, added } = compared(first, 'Pack,Frame,Weight (g),Body (L)\nTwo,yes,1500,62')
    expect(told).toEqual([[null, 'bodyLitres', 60, 62]])
    expect(added).toEqual([])
  })

  it('adds a pack beside one of its name where both sizes are in the table', () => {
    const { told, added } = compared(
      first,
      'Pack,Frame,Weight (g),Body (L)\nTwo,yes,1500,60\nTwo,yes,1700,70',
    )
    expect(told).toEqual([])
    expect(added.map(({ pack }) => pack.bodyLitres)).toEqual([70])
  })

  it('adds a set-up that is new to its pack', () => {
    const { told, taken } = compared(
      first,
      'Pack,Set-up,Frame,Weight (g),Body (L)\nTwo,Bare,no,1200,60\nTwo,as sold,yes,1500,60',
    )
    expect(told).toEqual([['Bare', 'setup', undefined, 'Bare']])
    expect(taken.packs[1]!.setups.map(({ name }) => name)).toEqual(['as sold', 'Bare'])
  })

  it('does not take "no" for a change where nothing was said', () => {
    const { told } = compared(
      compared(emptyDraft(), 'Pack,Weight (g)\nA,900').taken,
      'Pack,Weight (g),Waterproof\nA,900,no',
    )
    expect(told).toEqual([])
  })
})
