// Tables of packs as spreadsheets really hold them: words for frames, parts that weigh something too, totals, notes.

import { describe, expect, it, test } from 'vitest'
import {
  compareWithPacks,
  guessPacksLayout,
  readGrid,
  readPackRows,
  takePacks,
  unitlessMasses,
} from '../../../src/files/csv'
import { emptyDraft } from '../../../src/plan'

function open(text: string) {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  const layout = guessPacksLayout(grid, { system: 'metric' })
  return { layout, ...readPackRows(grid, layout) }
}
const framesOf = (text: string) => open(text).packs.map(({ pack }) => pack.setups.map(({ frame }) => frame))
const fieldOf = (heading: string) => open(`Name\t${heading}\nA\t1`).layout.columns[1]!.field

describe('a frame in words', () => {
  test.each([
    ['framed, no hip belt', ['framed']],
    ['internal frame without load lifters', ['framed']],
    ['non-removable', ['framed']],
    ['Frame sheet, not removable', ['framed']],
    ['no internal frame', ['frameless']],
    ['Removable stay', ['framed', 'frameless']],
    ['–', [undefined]],
    ['n/a', [undefined]],
  ])('%s', (cell, frames) => expect(framesOf(`Name;Frame\nA;${cell}`)).toEqual([frames]))

  it('may have a column of its own for being removable', () => {
    expect(framesOf('Name,Frame,Removable frame\nA,yes,yes\nB,yes,no\nC,no,no')).toEqual([
      ['framed', 'frameless'],
      ['framed'],
      ['frameless'],
    ])
  })
})

describe('a heading', () => {
  test.each([
    ['Frame weight (g)', null],
    ['Frame in weight (g)', 'mass'],
    ['Weight max (g)', 'mass'],
    ['Capacity (kg)', 'rated'],
    ['Rain cover', null],
    ['Load lifters', null],
    ['Main fabric', 'fabric'],
    ['Hip belt pockets', null],
    ['No. of pockets', null],
    ['Waterproof rating', null],
    ['Weight (g)*', 'mass'],
    ['Weight per maker (g)', 'mass'],
    ['Weight per litre', null],
  ])('"%s" is read as %s', (heading, field) => expect(fieldOf(heading)).toBe(field))

  it('may begin with a figure, and come again further down', () => {
    const { packs, problems } = open('Pack,3D back,Weight (g)\nA,yes,900\nPack,3D back,Weight (g)\nB,no,800')
    expect([packs.map(({ pack }) => pack.name), problems]).toEqual([['A', 'B'], []])
  })
})

describe('litres', () => {
  it('of the whole and of the main body leave those of the pockets', () => {
    expect(open('Pack,Body (L),Total (L)\nA,50,62').packs[0]!.pack).toMatchObject({
      bodyLitres: 50,
      outsideLitres: 12,
    })
  })

  it('that contradict each other are told', () => {
    expect(open('Pack,Body (L),Total (L)\nA,62,50').problems[0]!.why).toMatch(/larger than the total/)
  })

  it('of a total alone are told to be an estimate', () => {
    expect(open('Pack,Total (L)\nA,60\nB,50').doubts).toEqual([
      'Rows 2, 3: the main body is taken as 85 % of the total, our estimate.',
    ])
  })
})

describe('what people write around a figure', () => {
  it('is left, and the figure taken', () => {
    const { packs, problems } = open(
      'Pack;Weight;Body (L);Max load\nA;950 g*;ca. 45;up to 12 kg\nB;1 kg (M);50;12 to 15 kg\nC;900 g;40;12 kg (max)',
    )
    expect(problems).toEqual([])
    expect(
      packs.map(({ pack }) => [pack.setups[0]!.massKg, pack.bodyLitres, pack.setups[0]!.ratedKg]),
    ).toEqual([
      [0.95, 45, 12],
      [1, 50, 12],
      [0.9, 40, 12],
    ])
  })

  it('leaves a pack its place where only the price cannot be read', () => {
    const { packs, doubts } = open('Pack,Price\nA,ask\nB,"210,-"\nC,US$ 99')
    expect(packs.map(({ pack }) => pack.price)).toEqual([undefined, 210, 99])
    expect(doubts).toEqual(['Row 2: the price “ask” is left out.'])
  })

  it('in a row of sums, or in one that is there already, is no pack', () => {
    const { packs, doubts } = open('Pack,Weight (g)\nA,900\nA,900\nTotal,1800')
    expect(packs).toHaveLength(1)
    expect(doubts).toEqual([
      'Row 4: “Total” is left out as a sum of the others.',
      'Row 3: the same as a row before, and left out.',
    ])
  })

  it('of a set-up without a frame that has a mass without it is a contradiction', () => {
    expect(open('Pack,Frame,Weight (g),Weight without frame (g)\nA,no,900,700').problems).toHaveLength(1)
  })
})

describe('where litres are from', () => {
  const draft = takePacks(
    emptyDraft(),
    {
      added: [
        { rows: [2], pack: { name: 'A', bodyLitres: 52, bodyFrom: 'test-method', setups: [{ massKg: 1 }] } },
      ],
      changed: [],
    },
    () => 'x',
  )
  const told = (text: string) =>
    compareWithPacks(draft.packs, open(text).packs, () => 'y').changed.flatMap(({ changes }) =>
      changes.map(({ field, to }) => [field, to]),
    )

  it('follows the litres that the table gives', () => {
    expect(told('Pack,Body (L)\nA,50')).toEqual([
      ['bodyLitres', 50],
      ['bodyFrom', 'stated'],
    ])
  })

  it('is never made a guess of what is known', () => {
    expect(told('Pack,Volume (L)\nA,60')).toEqual([])
  })
})

describe('what is decided without being told', () => {
  const unitless = (text: string) => {
    const grid = readGrid(text)
    if (!grid.ok) throw new Error(grid.message)
    return unitlessMasses(grid, guessPacksLayout(grid, { system: 'metric' }))
  }

  it('is said of masses that name no unit anywhere', () => {
    expect(unitless('Pack,Weight,Max load\nA,40,30\nB,55,25')).toEqual([
      { heading: 'Weight', unit: 'g' },
      { heading: 'Max load', unit: 'kg' },
    ])
    expect(unitless('Pack,Weight (oz),Max load\nA,40,30 lb')).toEqual([])
  })

  it('is said of rows of one pack that differ', () => {
    const { packs, doubts } = open(
      'Pack,Frame,Weight (g),Body (L),Price,Pockets (L)\nA,yes,900,45,200,5\nA,no,700,45,150,5',
    )
    expect(packs[0]!.pack.price).toBe(200)
    expect(doubts).toEqual(['Row 3 differs from row 2 in Price: what row 2 says is taken.'])
  })
})
