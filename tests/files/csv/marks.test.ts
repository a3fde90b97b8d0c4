// What parts the cells of a table we write, its decimal mark, and that no mark of either sort begins a formula.

import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { gearCsv, guessLayout, type Marks, packsCsv, readGrid, readRows } from '../../../src/files/csv'
import type { DraftItem } from '../../../src/plan'

const MARKS = ['commas', 'semicolons'] as const

/** The items of a table of ours; without its separator named, it is guessed. */
const itemsOf = (csv: string, separator?: ',' | ';') => {
  const grid = readGrid(csv, separator)
  if (!grid.ok) throw new Error(grid.message)
  return readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' })).items.map(({ item }) => item)
}

describe('with semicolons and decimal commas', () => {
  test('a table has both, in the gear and in the packs', () => {
    const gear: DraftItem[] = [{ id: 'a', name: 'Tent, red; "old"', massKg: 1.2345, litres: 3.5 }]
    expect(gearCsv(gear, { system: 'metric', marks: 'semicolons' })).toBe(
      '\uFEFFName;Group;How many;Mass, each (g);Packed volume, each (L);Where you carry it;Used up;The mass is;The litres are\r\n' +
        '"Tent, red; ""old""";;;1234,5;3,5;;;;\r\n',
    )
    const setup = { id: 's', name: 'as sold', massKg: 1.8, frame: 'framed' as const }
    expect(packsCsv([{ id: 'p', name: 'Big', setups: [setup] }], 'semicolons')).toMatch(
      /\r\nBig;as sold;.*;1,8;framed;/,
    )
  })

  test.each(MARKS)('figures that could be read in two ways come back as they were, %s', marks => {
    const gear: DraftItem[] = [{ id: 'a', name: 'Peg', massKg: 0.001234 }]
    const [peg] = itemsOf(gearCsv(gear, { system: 'metric', marks }))
    expect(peg?.massKg).toBeCloseTo(0.001234, 12)
  })
})

describe('no cell of ours begins a formula', () => {
  const piece = fc.constantFrom(';', ',', '"', "'", ' ', '=', '+', '-', '@', '1', 'a')
  const words = fc
    .array(piece, { minLength: 1, maxLength: 12 })
    .map(pieces => `a${pieces.join('')}`.replace(/ +/g, ' ').trim())

  test('whatever a spreadsheet takes to part the cells, and the words come back as they were', () => {
    fc.assert(
      fc.property(words, words, fc.constantFrom<Marks>(...MARKS), (name, group, marks) => {
        const csv = gearCsv([{ id: 'a', name, group, massKg: 0.0015 }], { system: 'metric', marks })
        for (const delimiter of [',', ';', '\t'])
          for (const cell of Papa.parse<string[]>(csv, { delimiter }).data.flat())
            expect(cell).not.toMatch(/^[\s"]*[=+\-@]/)
        // A reader that knows no quotes at all.
        expect(csv).not.toMatch(/[;,\n][\s"]*[=+\-@]/)
        const items = itemsOf(csv, marks === 'commas' ? ',' : ';')
        expect(items.map(item => [item.name, item.group])).toEqual([[name, group]])
      }),
      { numRuns: 1000, examples: [['Box', 'a;"=1+1&"";x', 'commas']] },
    )
  })

  test('also behind a quote', () => {
    expect(gearCsv([{ id: 'a', name: 'a;"=1+1' }], { system: 'metric' })).toContain(`"a;""'=1+1"`)
  })
})
