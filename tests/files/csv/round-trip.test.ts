// What is written as a table reads back as the same gear, whatever its names look like to a spreadsheet.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addTable,
  decodeTable,
  gearCsv,
  guessLayout,
  type Marks,
  packsCsv,
  readGrid,
  readRows,
  shelfCsv,
  shelveTable,
} from '../../../src/files/csv'
import { type DraftItem, emptyDraft } from '../../../src/plan'
import { emptyShelf, factsOf, type Thing } from '../../../src/plan/shelf'
import { gearLists, words } from './items'

const someMarks = fc.constantFrom<Marks>('commas', 'semicolons')
const PATIENCE_MS = 120_000

const readBack = (csv: string, target: 'trip' | 'shelf', system: 'metric' | 'us' = 'metric') => {
  const { text, encoding } = decodeTable(new TextEncoder().encode(csv))
  expect(encoding).toBe('utf-8')
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  const read = readRows(grid, guessLayout(grid, { target, system }))
  expect(read.problems).toEqual([])
  return read
}

const counter = () => {
  let n = 0
  return () => `i${n++}`
}

/** Figures to fourteen digits: what the conversion to the unit of the column may move is the last bit. */
const rounded = (value: unknown): unknown => {
  if (typeof value === 'number') return Number(value.toPrecision(14))
  if (Array.isArray(value)) return value.map(rounded)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, rounded(child)]))
}

/** Beside its group, as every import puts things. */
const grouped = (gear: DraftItem[]) => {
  const groups = [...new Set(gear.map(({ group }) => group ?? ''))]
  return groups.flatMap(group => gear.filter(item => (item.group ?? '') === group))
}

describe('a gear list written as a table', () => {
  test.each(['metric', 'us'] as const)(
    'reads back as the same gear, %s',
    system => {
      fc.assert(
        fc.property(gearLists, someMarks, (gear, marks) => {
          fc.pre(gear.length > 0)
          const { items } = readBack(gearCsv(gear, { system, marks }), 'trip', system)
          const { gear: again } = addTable(emptyDraft(), { rows: items }, counter())
          expect(rounded(again)).toEqual(rounded(grouped(gear)))
        }),
        { numRuns: 300 },
      )
    },
    PATIENCE_MS,
  )

  test('has not one cell that a spreadsheet would take for a formula', () => {
    fc.assert(
      fc.property(gearLists, gear => {
        const grid = readGrid(gearCsv(gear, { system: 'metric' }))
        if (!grid.ok) throw new Error(grid.message)
        for (const cell of grid.rows.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/)
        // Where cells are parted by semicolons, one inside our quotes begins a cell too.
        expect(gearCsv(gear, { system: 'metric' })).not.toMatch(/(?:^|[;\n])\s*"?[=+\-@＝＋－＠]/)
      }),
      { numRuns: 300 },
    )
  })

  test('keeps a name that begins with a quote and a formula, and one that begins with quotes alone', () => {
    for (const name of [
      "'=1+1",
      "''-x",
      "'tis",
      "'",
      '-',
      '@home',
      '=HYPERLINK("http://x","y")',
      'a;=1',
      "a; '-b;;@",
    ]) {
      const { items } = readBack(gearCsv([{ id: 'a', name }], { system: 'metric' }), 'trip')
      expect(items.map(({ item }) => item.name)).toEqual([name])
    }
  })

  test('is plain CSV: a byte order mark, CRLF, a comma, a point, units in the headings', () => {
    const gear: DraftItem[] = [
      { id: 'a', name: 'Tent, "red"', massKg: 1.2345, litres: 3.5, massFrom: 'scale' },
      { id: 'b', name: '-5 °C bag', group: '=Sleep', count: 2, massKg: 0.85 },
    ]
    expect(gearCsv(gear, { system: 'metric' })).toBe(
      '\uFEFFName,Group,How many,"Mass, each (g)","Packed volume, each (L)",Where you carry it,Used up,The mass is,The litres are\r\n' +
        '"Tent, ""red""",,,1234.5,3.5,,,weighed,\r\n' +
        '"\'-5 °C bag","\'=Sleep",2,850,,,,,\r\n',
    )
  })

  test('names a container by its row where its name does not tell', () => {
    const gear: DraftItem[] = [
      { id: 'a', name: 'Box', holdsLitres: 2 },
      { id: 'b', name: 'Box', holdsLitres: 3 },
      { id: 'c', name: 'Stove', inside: 'b' },
      { id: 'd', name: 'Pot', holdsLitres: 1 },
      { id: 'e', name: 'Mug', inside: 'd' },
    ]
    const csv = gearCsv(gear, { system: 'metric' })
    expect(csv).toMatch(/Stove.*row 3/)
    expect(csv).toMatch(/Mug.*Pot/)
    const { gear: again } = addTable(emptyDraft(), { rows: readBack(csv, 'trip').items }, counter())
    expect(again.map(({ inside }) => inside)).toEqual([undefined, undefined, 'i1', undefined, 'i3'])
  })
})

describe('the shelf written as a table', () => {
  const things: fc.Arbitrary<Thing[]> = fc
    .array(
      fc.tuple(
        gearLists.filter(gear => gear.length > 0),
        words,
        fc.option(fc.constantFrom('2026-05-31', '1999-01-01'), { nil: undefined }),
        fc.boolean(),
      ),
      { minLength: 1, maxLength: 6 },
    )
    .map(list =>
      list.map(([[first], note, weighedOn, retired], i) => {
        const item = factsOf(first!)
        return {
          id: `i${i}`,
          item,
          ...(note ? { note: `${note}\n${note}` } : {}),
          ...(weighedOn ? { weighedOn } : {}),
          ...(retired ? { retired } : {}),
          changed: Object.fromEntries(Object.keys(item).map(fact => [fact, 7])),
        }
      }),
    )

  test('reads back as the same things, with their notes', () => {
    fc.assert(
      fc.property(things, someMarks, (shelf, marks) => {
        const { items } = readBack(shelfCsv(shelf, { system: 'metric', marks }), 'shelf')
        const again = shelveTable(emptyShelf(), { rows: items }, { newId: counter(), now: 7 })
        expect(rounded(again.things)).toEqual(rounded(shelf))
      }),
      { numRuns: 150 },
    )
  })
})

describe('packs written as a table', () => {
  test('have a row for each set-up, and one without any', () => {
    const csv = packsCsv([
      {
        id: 'p',
        name: '@Big',
        bodyLitres: 55,
        setups: [
          { id: 's', name: 'as sold', massKg: 1.8, frame: 'framed', ratedKg: 18 },
          { id: 't', name: 'without frame', massKg: 1.2, frame: 'frameless' },
        ],
      },
      { id: 'q', name: 'Small', setups: [] },
    ])
    const grid = readGrid(csv)
    if (!grid.ok) throw new Error(grid.message)
    expect(grid.rows.map(row => [row[0], row[1], row[2], row[6], row[7]])).toEqual([
      ['Pack', 'Set-up', 'Main body (L)', 'Mass (kg)', 'Frame'],
      ["'@Big", 'as sold', '55', '1.8', 'framed'],
      ["'@Big", 'without frame', '55', '1.2', 'frameless'],
      ['Small', '', '', '', ''],
    ])
  })
})
