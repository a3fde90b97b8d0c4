// Tables as people have them: what each means is guessed right, said when it is not clear, and every slip is named.

import { describe, expect, test } from 'vitest'
import {
  addTable,
  type GearLayout,
  guessLayout,
  looksSame,
  readGrid,
  readRows,
  TABLE_CAPS,
  type Target,
} from '../../../src/files/csv'
import { emptyDraft } from '../../../src/plan'

const OUNCE_KG = 0.028349523125

function open(
  text: string,
  changes: Partial<GearLayout> = {},
  { target = 'trip' as Target, system = 'metric' as 'metric' | 'us' } = {},
) {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  const layout = { ...guessLayout(grid, { target, system }), ...changes }
  return { grid, layout, ...readRows(grid, layout) }
}

const itemsOf = (text: string, changes?: Partial<GearLayout>) =>
  open(text, changes).items.map(({ item }) => item)
const fieldsOf = (text: string) => open(text).layout.columns.map(({ field }) => field)
const problemsOf = (text: string, changes?: Partial<GearLayout>) =>
  open(text, changes).problems.map(
    ({ row, column, text, why }) => `${row}/${column?.number ?? ''} ${text}: ${why}`,
  )

describe('what parts the cells is guessed', () => {
  test.each([
    ['commas', 'a,b,c\n1,2,3', ','],
    ['semicolons beside decimal commas', 'Name;Weight\nTent;1,5\nBag;0,8', ';'],
    ['tabs, as spreadsheets copy', 'Name\tWeight\nTent, red\t1,5', '\t'],
    ['strokes', 'Name|Weight\nTent|5', '|'],
    ['by a first line that says so', 'sep=;\nName;Weight\nTent;5', ';'],
    ['below a title', 'My list, 2026\n\nName;Weight\nTent;5\nBag;6', ';'],
    ['nothing at all', 'Tent\nBag', ','],
  ])('%s', (_, text, separator) => expect(open(text).grid.separator).toBe(separator))
})

describe('line ends', () => {
  test.each([['\n'], ['\r\n'], ['\r']])('%j', end => {
    expect(itemsOf(`Name,Weight (g)${end}Tent,5${end}Bag,6${end}`)).toMatchObject([
      { name: 'Tent' },
      { name: 'Bag' },
    ])
  })

  test('of two sorts, as where a cell has a line break of its own', () => {
    expect(itemsOf('Name,Weight (g)\r\n"Tent\nred",5\r\nBag,6\r\n')).toMatchObject([
      { name: 'Tent red', massKg: 0.005 },
      { name: 'Bag', massKg: 0.006 },
    ])
  })
})

describe('what the columns hold is guessed', () => {
  test('from their names, in any order, with their units', () => {
    const { items, layout } = open(
      'Weight (oz)\tPrice\tItem\tQty\tVolume [ml]\tCategory\n10\t99\tTent\t2\t500\tShelter',
    )
    expect(layout.columns.map(({ field, unit }) => [field, unit])).toEqual([
      ['mass', 'oz'],
      [null, null],
      ['name', null],
      ['count', 'x'],
      ['litres', 'mL'],
      ['group', null],
    ])
    expect(items[0]!.item).toMatchObject({ name: 'Tent', count: 2, litres: 0.5, group: 'Shelter' })
    expect(items[0]!.item.massKg).toBeCloseTo(10 * OUNCE_KG, 12)
  })

  test('from what the cells look like, where nothing names them', () => {
    expect(fieldsOf('Tent,1.2 kg,3 L\nBag,1 lb 3 oz,250 ml')).toEqual(['name', 'mass', 'litres'])
    expect(fieldsOf('Shelter,Tent,1,1500\nShelter,Peg,8,14\nSleep,Bag,1,850\nSleep,Mat,1,450')).toEqual([
      'group',
      'name',
      'count',
      'mass',
    ])
    expect(fieldsOf('Name;Gewicht;Volumen\nZelt;1,5 kg;4,5 L')).toEqual(['name', 'mass', 'litres'])
  })

  test('not from bare numbers under names that say otherwise: a price is no mass', () => {
    expect(fieldsOf('Item,Price\nTent,420')).toEqual(['name', null])
  })

  test('the mass of one piece before that of all', () => {
    expect(fieldsOf('Item,Qty,Total weight (g),Weight (g)\nPeg,8,112,14')).toEqual([
      'name',
      'count',
      null,
      'mass',
    ])
    expect(itemsOf('Item,Qty,Total weight (g)\nPeg,8,112')[0]!.massKg).toBeCloseTo(0.014, 12)
  })

  test('a column of units gives each row its own', () => {
    const items = itemsOf('name,weight,unit\n"Tent, red",1500,g\nBag,30,oz')
    expect(items[0]!.massKg).toBe(1.5)
    expect(items[1]!.massKg).toBeCloseTo(30 * OUNCE_KG, 12)
    expect(problemsOf('name,weight,unit\nTent,5,stones and bits')[0]).toMatch(/write g, kg, oz or lb/)
  })

  test('energy by mass, by piece, and place, use and what is worn', () => {
    expect(itemsOf('Item,Weight (g),kcal per 100 g,Use\nNuts,100,600,daily')[0]).toMatchObject({
      kcalPerKg: 6000,
      use: 'daily',
    })
    expect(itemsOf('Item,Weight (g),kcal\nBar,50,250')[0]).toMatchObject({ kcalPerKg: 5000 })
    expect(itemsOf('Item,Weight (g),Worn,Place\nHat,50,x,pocket\nMap,30,,pocket')).toMatchObject([
      { stow: 'worn' },
      { stow: 'outside-pocket' },
    ])
  })

  test('a note is for the shelf alone', () => {
    const table = 'Item,Weight (g),Note\nTent,1500,"mended\nin May"'
    expect(fieldsOf(table)[2]).toBe(null)
    expect(open(table, {}, { target: 'shelf' }).items[0]!.thing).toEqual({ note: 'mended\nin May' })
  })

  test('bare numbers without a unit are grams, or ounces for a reader of those', () => {
    expect(itemsOf('Item,Weight\nTent,300')[0]!.massKg).toBe(0.3)
    const us = open('Item,Weight\nTent,10', {}, { system: 'us' })
    expect(us.items[0]!.item.massKg).toBeCloseTo(10 * OUNCE_KG, 12)
  })
})

describe('decimal marks', () => {
  test('are guessed for the whole table, and decide what could be read both ways', () => {
    expect(itemsOf('Item;Weight (g)\nTent;1.234\nBag;0,5').map(({ massKg }) => massKg)).toEqual([
      1.234, 0.0005,
    ])
    expect(itemsOf('Item,Weight (g)\nTent,"1,234"\nBag,0.5').map(({ massKg }) => massKg)).toEqual([
      1.234, 0.0005,
    ])
    expect(open('Item,Weight (g)\nTent,"1,234"', { decimal: ',' }).items[0]!.item.massKg).toBe(0.001234)
  })

  test('a clear number is read as it stands, whatever the table does', () => {
    expect(itemsOf('Item;Weight\nTent;1,5 kg\nBag;0,8 kg\nMug;1.2 kg').map(({ massKg }) => massKg)).toEqual([
      1.5, 0.8, 1.2,
    ])
  })
})

describe('rows that are no items', () => {
  const TABLE =
    'Item;Weight [g];Worn\nShelter;;\nTent;1500;\nClothing;;\nJacket;300;worn\n\nItem;Weight [g];Worn\nTotal;1800;'

  test('name the group of what follows, or are items, as one chooses', () => {
    expect(itemsOf(TABLE)).toMatchObject([
      { name: 'Tent', group: 'Shelter' },
      { name: 'Jacket', group: 'Clothing' },
      { name: 'Total' },
    ])
    expect(itemsOf(TABLE, { headings: false }).map(({ name }) => name)).toEqual([
      'Shelter',
      'Tent',
      'Clothing',
      'Jacket',
      'Total',
    ])
  })

  test('a sum of the others is told from a thing', () => {
    expect(open(TABLE).items.map(({ isSum }) => isSum)).toEqual([false, false, true])
  })
})

describe('a row that cannot be read is named with its column, its text and how to mend it, and the others come in', () => {
  test.each([
    [
      'Item,Weight (g)\nTent,heavy\nBag,5',
      '2/2 heavy: Cannot read "heavy". Write for instance 900 g, 2 lb or 32 oz.',
    ],
    [
      'Item,Weight (g)\nTent,-5\nBag,5',
      '2/2 -5: It is below zero; this field starts at 0. Write for instance 900 g, 2 lb or 32 oz.',
    ],
    ['Item,Weight (kg)\nTent,5000\nBag,5', '2/2 5000: It must lie between 0 g and 200.00 kg.'],
    ['Item,Weight (g)\n,5\nBag,5', '2/ 5: It has no name: write what it is.'],
    [
      'Item,Weight (g)\nTent, red,1500\nBag,5',
      '2/ 1500: The row has 3 cells where the headings name 2: put a text with commas in quotes.',
    ],
    ['Item,Qty,Weight (g)\nTent,1.5,3\nBag,1,5', '2/2 1.5: It is not a whole number. Write for instance 3.'],
    ['Item,Weight (g),Worn\nTent,3,perhaps\nBag,5,no', '2/3 perhaps: Write yes or no.'],
    [
      'Item,Weight (g)\nTent,#REF!\nBag,5',
      '2/2 #REF!: A spreadsheet puts that where a formula fails: write the number.',
    ],
    [
      `Item,Weight (g)\n${'x'.repeat(201)},5\nBag,5`,
      /2\/1 x+…: It has 201 characters: shorten it to 200 or fewer\./,
    ],
    [
      'Item,Weight (g),Where you carry it\nTent,5,on the dog\nBag,5,worn',
      '2/3 on the dog: Write one of: main body; pocket; strapped on; worn.',
    ],
    [
      'Item,Weight (g),Carried inside\nTent,5,Bag\nBag,5,',
      '2/3 Bag: No container of this name is in the table or the gear: say what it holds, or leave the cell empty.',
    ],
    [
      'Item,Weight (g),Fuel\nTent,5,gas\nBag,5,',
      '2/3 gas: Fuel is used up nightly: write nightly there, or leave the fuel empty.',
    ],
    [
      'Item,Weight (g),Least litres,Most litres\nTent,5,1,2\nBag,5,,',
      '2/ : It is empty: give the least, typical and most litres, or none.',
    ],
    [
      'Item,Weight (g),kcal\nTent,1,50\nBag,5,',
      '2/3 50: It comes to 5000 kcal/100 g, more than pure fat has: mend the energy or the mass.',
    ],
  ])('%s', (table, expected) => {
    const said = problemsOf(table).map(text => text.replaceAll('\u00a0', ' '))
    expect(said).toHaveLength(1)
    expect(said[0]).toEqual(typeof expected === 'string' ? expected : expect.stringMatching(expected))
    expect(itemsOf(table).map(({ name }) => name)).toEqual(['Bag'])
  })

  test('a table without a column of names says so for each row', () => {
    expect(problemsOf('1,2\n3,4')[0]).toMatch(/No column holds the names: choose which one does/)
  })

  test('a quote that is never closed, or stands alone, takes no other row with it', () => {
    expect(problemsOf('Item,Weight (g)\nTent,5\n"Bag,6\nMug,7')[0]).toMatch(
      /^3\/ .*never closed.*close it or take it out/,
    )
    const { items, problems } = open('Item,Weight (g)\n"6" pot",5\nBag,6')
    expect([items.length, problems[0]!.why]).toEqual([
      1,
      'A quote inside a quoted cell stands alone: write it twice ("") or take it out.',
    ])
  })

  test('short rows lack only what they lack', () => {
    expect(itemsOf('Item,Weight (g),Volume (L)\nBag,5\nTent')).toEqual([
      { name: 'Bag', massKg: 0.005, massFrom: 'stated' },
      { name: 'Tent' },
    ])
  })
})

describe('what looks like a thing that is there', () => {
  const { items } = open('Item,Weight (g)\nRain jacket,300\nTENT,1500\nTent,900\nMug,')
  const gear = [
    { name: 'tent!', massKg: 1.5 },
    { name: 'rain  Jacket' },
    { name: 'Mug', massKg: 0.06 },
    { name: '?', massKg: 1 },
  ]

  test('is found by its name and, where both have one, its mass', () => {
    expect([...looksSame(items, gear)]).toEqual([
      [2, 1],
      [3, 0],
      [5, 2],
    ])
  })

  test('stands in for a container that is left out since it is there', () => {
    const box = open('Item,Holds items,Carried inside\nBox,2 L,\nStove,,Box')
    const draft = { ...emptyDraft(), gear: [{ id: 'there', name: 'Box', holdsLitres: 2 }] }
    const rows = box.items.filter(({ row }) => row !== 2)
    const { gear } = addTable(draft, { rows, same: new Map([[2, 'there']]) }, () => 'new')
    expect(gear.at(-1)).toMatchObject({ name: 'Stove', inside: 'there' })
  })
})

describe('the caps', () => {
  test.each([
    ['bytes', 'é'.repeat(TABLE_CAPS.bytes / 2 + 1), /4\.0 MB; up to 4 MB are read/],
    ['rows', 'a\n'.repeat(TABLE_CAPS.rows + 2), /more than 20,000 rows/],
    ['columns', `a${','.repeat(TABLE_CAPS.columns)}`, /Row 1 has 201 cells; up to 200 columns/],
  ])('on %s is named when a table is over it', (_, text, message) => {
    expect(readGrid(text)).toMatchObject({ ok: false, message: expect.stringMatching(message) })
  })

  test('on the length of a cell costs that row alone', () => {
    const { items, problems } = open(`Item,Weight (g)\n"${'x'.repeat(TABLE_CAPS.cellLength + 1)}",5\nBag,6`)
    expect([items.length, problems[0]!.why]).toEqual([
      1,
      'It has 2001 characters; up to 2000 are read: shorten it.',
    ])
  })
})
