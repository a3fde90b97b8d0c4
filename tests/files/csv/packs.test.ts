// Tables of packs as people have them: which column is which, what a row becomes, and what cannot be read is named.

import { describe, expect, it, test } from 'vitest'
import {
  guessPacksLayout,
  isTableOfPacks,
  type PackLayout,
  plainLitresHeading,
  readGrid,
  readPackRows,
  reckonedHeadings,
} from '../../../src/files/csv'

const POUND_KG = 0.45359237

function open(text: string, changes: Partial<PackLayout> = {}) {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  const layout = { ...guessPacksLayout(grid, { system: 'metric' }), ...changes }
  return { grid, layout, ...readPackRows(grid, layout) }
}

const packsOf = (text: string) => open(text).packs.map(({ pack }) => pack)
const fieldOf = (heading: string) => open(`Name\t${heading}\nA\t1`).layout.columns[1]!.field
const problemsOf = (text: string) =>
  open(text).problems.map(({ row, column, text, why }) =>
    `${row}/${column?.name ?? ''} ${text}: ${why}`.replace(/[\u00a0\u202f]/g, ' '),
  )

describe('a heading says what its column holds', () => {
  test.each([
    ['Main body (L)', 'body'],
    ['Body volume', 'body'],
    ['Volume without pockets', 'body'],
    ['Total volume', 'total'],
    ['Capacity incl. pockets', 'total'],
    ['Volume (L)', 'total'],
    ['L', 'total'],
    ['Pockets', 'outside'],
    ['Outside pockets (L)', 'outside'],
    ['Pocket volume (L)', 'outside'],
    ['Extension collar', 'collar'],
    ['Weight (g)', 'mass'],
    ['Total weight', 'mass'],
    ['oz', 'mass'],
    ['Weight without frame', 'massFrameOut'],
    ['Stripped weight', 'massFrameOut'],
    ['Weight w/o frame (oz)', 'massFrameOut'],
    ['Frame', 'frame'],
    ['Load rating (kg)', 'rated'],
    ['Max load', 'rated'],
    ['Max kg', 'rated'],
    ['Recommended max weight', 'rated'],
    ['Carrying capacity', 'rated'],
    ['Load capacity, frame out', 'ratedFrameOut'],
    ['Price', 'price'],
    ['MSRP (USD)', 'price'],
    ['Currency', 'currency'],
    ['Waterproof', 'sealed'],
    ['Material', 'fabric'],
    ['Denier', 'denier'],
    ['Brand', 'maker'],
    ['Backpack', null],
    ['Category', 'tags'],
    ['Remark', 'tags'],
    ['Notes', 'notes'],
  ])('%s', (heading, field) => expect(fieldOf(heading)).toBe(field))

  it('leaves what is no fact of a pack, or is reckoned from others', () => {
    for (const heading of ['Rating', 'Stars', 'Torso length', 'g/L', 'Weight per litre', 'Price/L', 'Score'])
      expect([heading, fieldOf(heading)]).toEqual([heading, null])
    const { grid, layout } = open('Name,Weight (g),Body (L),g / L,Weight per litre\nA,900,45,20,20')
    expect(reckonedHeadings(grid, layout)).toEqual(['g / L', 'Weight per litre'])
  })

  it('takes plain litres for the total, beside a total for the main body', () => {
    const alone = open('Name,Volume (L)\nA,60')
    expect(plainLitresHeading(alone.grid, alone.layout)).toBe('Volume (L)')
    const beside = open('Name,Volume (L),Total (L)\nA,50,60')
    expect(beside.layout.columns.map(({ field }) => field)).toEqual(['name', 'body', 'total'])
    expect(plainLitresHeading(beside.grid, beside.layout)).toBeNull()
  })

  it('tells a table of packs from one of gear', () => {
    for (const text of [
      'Pack,Frame,Weight,Body (L)\nA,yes,900,45',
      'Model,Weight (g),Max load (kg),Volume (L)\nA,900,12,45',
    ]) {
      const grid = readGrid(text)
      expect(grid.ok && isTableOfPacks(grid)).toBe(true)
    }
    for (const text of [
      'Item,Weight (g),Qty\nTent,900,1',
      'Name,Weight (g),Volume (L)\nTent,900,6',
      'Tent 900 g\nBag 800 g',
    ]) {
      const grid = readGrid(text)
      expect(grid.ok && isTableOfPacks(grid)).toBe(false)
    }
  })
})

describe('bare masses are in the unit that a pack can have', () => {
  test.each([
    ['900', 0.9],
    ['0.9', 0.9],
    ['2 lb', 2 * POUND_KG],
    ['1,250', 1.25],
  ])('%s', (cell, kg) => {
    const [pack] = packsOf(`Name;Weight;Body\nA;${cell};45`)
    expect(pack!.setups[0]!.massKg).toBeCloseTo(kg, 9)
  })
})

describe('a row is a pack as it arrives', () => {
  it('with the maker before its name, once', () => {
    expect(packsOf('Brand,Model\nVane,Long\nVane,Vane Short\nVane,').map(({ name }) => name)).toEqual([
      'Vane Long',
      'Vane Short',
      'Vane',
    ])
  })

  it('with the pockets taken off the total, or a share of it as a guess', () => {
    const [told, alone, body] = packsOf('Name,Body (L),Total (L),Pockets (L)\nA,,60,8\nB,,60,\nC,50,60,')
    expect(told).toMatchObject({ bodyLitres: 52, outsideLitres: 8 })
    expect(told!.bodyFrom).toBeUndefined()
    expect(alone).toMatchObject({ bodyLitres: 51, bodyFrom: 'guess' })
    expect(body!.bodyLitres).toBe(50)
    expect(body!.bodyFrom).toBeUndefined()
  })

  it.each([
    ['yes', 'framed'],
    ['Internal', 'framed'],
    ['Framesheet + stay', 'framed'],
    ['no', 'frameless'],
    ['None', 'frameless'],
    ['without', 'frameless'],
  ])('with the frame "%s"', (cell, frame) => {
    expect(packsOf(`Name,Frame\nA,${cell}`)[0]!.setups).toEqual([{ name: 'as sold', frame }])
  })

  it('with a removable frame as two set-ups, the second of which may lack its mass', () => {
    const [known, open] = packsOf(
      'Name,Frame,Weight (g),Weight frame out (g),Max load (kg)\nA,removable,1300,1000,14\nB,removable,1300,,14',
    )
    expect(known!.setups).toEqual([
      { name: 'frame in', frame: 'framed', massKg: 1.3, ratedKg: 14 },
      { name: 'frame out', frame: 'frameless', massKg: 1 },
    ])
    expect(open!.setups[1]).toEqual({ name: 'frame out', frame: 'frameless' })
  })

  it('with its price and currency, from the cell or the heading', () => {
    const prices = (text: string) => packsOf(text).map(({ price, currency }) => [price, currency])
    expect(prices('Name,Price\nA,"€1,234.50"\nB,95 GBP\nC,$80\nD,70')).toEqual([
      [1234.5, 'EUR'],
      [95, 'GBP'],
      [80, '$'],
      [70, undefined],
    ])
    expect(prices('Name,Price (CHF)\nA,70')).toEqual([[70, 'CHF']])
    expect(prices('Name,Price,Currency\nA,70,NOK')).toEqual([[70, 'NOK']])
  })

  it('with its collar apart, as the trade writes it (common practice, no source)', () => {
    const read = packsOf('Pack,Body\nA,50+10 L\nB,"45,5 + 8"\nC,40').map(({ bodyLitres, collarLitres }) => [
      bodyLitres,
      collarLitres,
    ])
    expect(read).toEqual([
      [50, 10],
      [45.5, 8],
      [40, undefined],
    ])
  })

  it('rated at the lower end of a range, which is told', () => {
    const { packs, doubts } = open('Pack,Max load\nA,15-18 kg\nB,12 – 14\nC,16')
    expect(packs.map(({ pack }) => pack.setups[0]!.ratedKg)).toEqual([15, 12, 16])
    expect(doubts).toEqual([
      'Row 2: of the range 15-18 kg its lower end is taken.',
      'Row 3: of the range 12 – 14 its lower end is taken.',
    ])
  })

  it('with the thinnest of its fabrics', () => {
    expect(packsOf('Name,Denier\nA,210D\nB,70/210\nC,100 den').map(({ denier }) => denier)).toEqual([
      210, 70, 100,
    ])
  })
})

describe('rows of one name', () => {
  it('and an equal main body are set-ups of one pack, which know what any of them says', () => {
    const { packs, doubts } = open(
      'Pack,Set-up,Frame,Weight (g),Body (L),Price\nOne,Light,no,700,40,\none ,Full,yes,1000,40,200\nTwo,,no,600,30,',
    )
    expect(packs.map(({ rows }) => rows)).toEqual([[2, 3], [4]])
    expect(packs[0]!.pack).toMatchObject({ name: 'One', bodyLitres: 40, price: 200 })
    expect(packs[0]!.pack.setups.map(({ name, massKg }) => [name, massKg])).toEqual([
      ['Light', 0.7],
      ['Full', 1],
    ])
    expect(doubts).toEqual([])
  })

  it('without names for their set-ups have those of their frames', () => {
    const [pack] = packsOf('Pack,Frame,Weight (g),Body (L)\nA,yes,900,40\nA,no,700,40\nA,no,650,40')
    expect(pack!.setups.map(({ name }) => name)).toEqual(['frame in', 'frame out', 'frame out 2'])
  })

  it('and different main bodies are packs of their own, which is told', () => {
    const { packs, doubts } = open('Pack,Body (L)\nA,40\nA,55\nB,40')
    expect(packs).toHaveLength(3)
    expect(doubts).toEqual(['Rows 2, 3: “A” with different litres is taken as different packs.'])
  })
})

describe('what cannot be read is named, and all else comes in', () => {
  test.each([
    ['Pack,Weight (g)\nA,heavy\nB,900', '2/Weight (g) heavy: '],
    ['Pack,Frame\nA,sort of\nB,yes', '2/Frame sort of: Write framed, frameless or removable.'],
    ['Pack,Body (L)\nA,900\nB,40', '2/Body (L) 900: It must lie between'],
    ['Pack,Body (L)\n,40\nB,40', '2/ 40: It has no name: write which pack it is.'],
    ['Pack,Total (L),Pockets (L)\nA,10,12\nB,40,5', '2/ 10, 12: The pockets are as large as the whole'],
    ['Pack,Weight (g)\nA,900,7\nB,900', '2/ 7: The row has 3 cells'],
    ['Pack,Weight (g)\nA,#VALUE!\nB,900', '2/Weight (g) #VALUE!: A spreadsheet puts that'],
  ])('%s', (text, problem) => {
    const [told, ...more] = problemsOf(text)
    expect(told).toContain(problem)
    expect(more).toEqual([])
    expect(packsOf(text).map(({ name }) => name)).toEqual(['B'])
  })

  it('in tables with decimal commas and semicolons, as RFC 4180 quotes cells', () => {
    const text = 'Pack;Weight (kg);Body (L)\r\n"A; ""long""";1,25;42,5\r\n'
    expect(packsOf(text)).toEqual([
      { name: 'A; "long"', bodyLitres: 42.5, setups: [{ name: 'as sold', massKg: 1.25 }] },
    ])
  })
})
