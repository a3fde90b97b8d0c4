// Lists as people write them: each pattern with what it becomes, in a pasted list and in a table alike.

import { describe, expect, test } from 'vitest'
import { guessLayout, readGrid, readRows } from '../../src/files/csv'
import { addListed, itemOf, readList, type Understood } from '../../src/files/list'
import { emptyDraft, foodFor, putFoodInto, settle } from '../../src/plan'
import { kindOf } from '../../src/plan/kinds'

const rowsOf = (text: string) => {
  const read = readList(text, { system: 'metric' })
  if (!read.ok) throw new Error(read.message)
  return read.rows
}
const understood = (text: string): Understood => {
  const [row] = rowsOf(text)
  if (!row?.ok) throw new Error(row?.why ?? 'no row')
  return row
}
/** What stands beside name and mass. */
const saidBy = ({ name, count, holdsWaterLitres, holdsLitres, litres, use, worn }: Partial<Understood>) =>
  Object.fromEntries(
    Object.entries({ name, count, holdsWaterLitres, holdsLitres, litres, use, worn }).filter(
      ([, value]) => value !== undefined,
    ),
  )

/** A line without its mass, and what its words become. */
const WORDS: [string, object][] = [
  ['2 x 1 L bottle', { name: '1 L bottle', count: 2, holdsWaterLitres: 1 }],
  ['2x bottle 0.5 L', { name: 'bottle 0.5 L', count: 2, holdsWaterLitres: 0.5 }],
  ['socks x2', { name: 'socks', count: 2 }],
  ['Socks 2x', { name: 'Socks', count: 2 }],
  ['Socks (x2)', { name: 'Socks', count: 2 }],
  ['3 pairs of socks', { name: 'socks', count: 3 }],
  ['Bags, 4 pcs', { name: 'Bags', count: 4 }],
  ['8 tent pegs', { name: 'tent pegs', count: 8 }],
  ['2 person tent', { name: '2 person tent' }],
  ['3 season sleeping bag', { name: '3 season sleeping bag' }],
  ['3 x 3 m tarp', { name: '3 x 3 m tarp' }],
  ['Hydration bladder 2 L', { name: 'Hydration bladder 2 L', holdsWaterLitres: 2 }],
  ['3 L reservoir', { name: '3 L reservoir', holdsWaterLitres: 3 }],
  ['Water bag 4 L', { name: 'Water bag 4 L', holdsWaterLitres: 4 }],
  ['Soft flask 500 ml', { name: 'Soft flask 500 ml', holdsWaterLitres: 0.5 }],
  ['Dry bag 8 L', { name: 'Dry bag 8 L' }],
  ['Fuel bottle 0.5 L', { name: 'Fuel bottle 0.5 L' }],
  ['Alcohol bottle 250 ml', { name: 'Alcohol bottle 250 ml' }],
  ['Gas cartridge 0.45 L', { name: 'Gas cartridge 0.45 L' }],
  ['Pot 0.8 L', { name: 'Pot 0.8 L' }],
  ['Bear canister 9 L', { name: 'Bear canister 9 L', holdsLitres: 9 }],
  ['Food per day', { name: 'Food', use: 'daily' }],
  ['Food a day', { name: 'Food', use: 'daily' }],
  ['Sunscreen/day', { name: 'Sunscreen', use: 'daily' }],
  ['Daily snacks', { name: 'Daily snacks', use: 'daily' }],
  ['Food for one day', { name: 'Food for one day', use: 'daily' }],
  ['Hat for a day', { name: 'Hat for a day' }],
  ['Day pack', { name: 'Day pack' }],
  ['Gas per night', { name: 'Gas', use: 'nightly' }],
  ['Candle a night', { name: 'Candle', use: 'nightly' }],
  ['Rain jacket (worn)', { name: 'Rain jacket', worn: true }],
  ['Worn-out rag', { name: 'Worn-out rag' }],
]

describe('the words of a line', () => {
  test.each(WORDS)('%s, in a pasted list', (words, said) => {
    const row = understood(`${words} 75 g`)
    expect(saidBy(row)).toEqual(said)
    expect(row.massKg).toBe(0.075)
  })

  test('are read in a table by the same rule', () => {
    const cell = (words: string) => `"${words}",75`
    const grid = readGrid(`Item,Weight (g)\n${WORDS.map(([words]) => cell(words)).join('\n')}`)
    if (!grid.ok) throw new Error(grid.message)
    const { items, problems } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
    expect(problems).toEqual([])
    expect(
      items.map(({ item: { stow, ...item } }) =>
        saidBy({ ...item, ...(stow === 'worn' && { worn: true }) } as never),
      ),
    ).toEqual(WORDS.map(([, said]) => said))
  })

  test.each([
    ['Bottle 40 g 1 L', { holdsWaterLitres: 1 }],
    ['Bottle, 40 g, 1 L', { holdsWaterLitres: 1 }],
    ['Bottle 1 L, 40 g, 1.2 L', { holdsWaterLitres: 1, litres: 1.2 }],
    ['Sleeping bag 850 g 7 L', { litres: 7 }],
  ])('a volume beside the mass is what a bottle holds, else the packed volume: %s', (text, said) => {
    const { name: _name, ...rest } = saidBy(understood(text)) as { name: string }
    expect(rest).toEqual(said)
  })

  test('what a column says stands, and the word in the name stays', () => {
    const grid = readGrid(
      'Item,Qty,Weight (g),Capacity (L),Use\nSocks x2,1,75,,\nBottle 1 L per day,2,40,0.9,kept',
    )
    if (!grid.ok) throw new Error(grid.message)
    const { items } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
    expect(items.map(({ item }) => item)).toMatchObject([
      { name: 'Socks x2' },
      { count: 2, holdsWaterLitres: 0.9, use: 'kept' },
    ])
  })
})

describe('headings', () => {
  const groupsOf = (text: string) =>
    rowsOf(text).map(row => row.ok && [row.name, row.group, row.worn ?? false, row.isHeading ?? false])

  test('with a colon, a mark or alone name the group of what follows; a group called worn makes its things worn', () => {
    expect(
      groupsOf(
        'Shelter\nTent 1400 g\nSleep system:\nQuilt 740 g\n## Kitchen & food\nPot 130 g\nWorn\nShirt 180 g\nNot worn\nHat 60 g',
      ),
    ).toEqual([
      ['Tent', 'Shelter', false, false],
      ['Quilt', 'Sleep system', false, false],
      ['Pot', 'Kitchen & food', false, false],
      ['Shirt', 'Worn', true, false],
      ['Hat', 'Not worn', false, false],
    ])
  })

  test.each(['Worn:', 'WORN', 'Clothing (worn)', 'Wearing', 'On me', 'To wear:'])(
    'that make their things worn: %s',
    heading =>
      expect(groupsOf(`${heading}\nShirt 180 g`)).toMatchObject([['Shirt', expect.anything(), true, false]]),
  )

  test('in a spreadsheet’s cells, named or not', () => {
    expect(groupsOf('Shelter\t\nTent\t1400 g\nWorn\t\nBoots\t900 g')).toEqual([
      ['Tent', 'Shelter', false, false],
      ['Boots', 'Worn', true, false],
    ])
    expect(groupsOf('Item\tWeight (g)\nShelter\t\nTent\t1400\nWorn\t\nBoots\t900')).toEqual([
      ['Tent', 'Shelter', false, false],
      ['Boots', 'Worn', true, false],
    ])
    const grid = readGrid('Item,Weight (g)\nShelter,\nTent,1400\nWorn,\nBoots,900')
    if (!grid.ok) throw new Error(grid.message)
    const { items } = readRows(grid, guessLayout(grid, { target: 'trip', system: 'metric' }))
    expect(items.map(({ item: { name, group, stow } }) => [name, group, stow])).toEqual([
      ['Tent', 'Shelter', undefined],
      ['Boots', 'Worn', 'worn'],
    ])
  })

  test('that may be things are a doubt, and can be taken', () => {
    expect(groupsOf('Tent 1400 g\n\nSunglasses\nHat 60 g\n\nFirst aid\nPlasters 20 g')).toEqual([
      ['Tent', undefined, false, false],
      ['Sunglasses', undefined, false, true],
      ['Hat', 'Sunglasses', false, false],
      ['First aid', undefined, false, true],
      ['Plasters', 'First aid', false, false],
    ])
  })

  test('are not found among things without masses, nor where a thing of a known kind lacks one', () => {
    expect(groupsOf('Tent\nFood\nStove')).toHaveLength(3)
    const names = rowsOf('Hat 60 g\n\nHeadlamp\nRain jacket 300 g').map(row => row.ok && row.name)
    expect(names).toEqual(['Hat', 'Headlamp', 'Rain jacket'])
  })
})

describe('what can be read in two ways is a doubt', () => {
  test('two masses: the line is kept, and each can be chosen', () => {
    const [row] = rowsOf('Tent 1.2 kg (with poles 1.5 kg)')
    expect(row).toEqual({
      ok: false,
      line: 1,
      text: 'Tent 1.2 kg (with poles 1.5 kg)',
      why: 'Two masses, 1.2 kg and 1.5 kg: leave one.',
      fixes: [
        { label: 'Keep 1.2 kg', text: 'Tent 1.2 kg (with poles)' },
        { label: 'Keep 1.5 kg', text: 'Tent (with poles 1.5 kg)' },
      ],
    })
    expect(rowsOf('A 1 g, 2 g, 3 g')[0]).toMatchObject({ ok: false, why: expect.stringMatching(/^3 masses/) })
  })

  test.each([
    ['Hat 283 g (10 oz)', 0.283],
    ['2 x pole 225 g (450 g total)', 0.225],
    ['2 x pole 450 g total, 225 g', 0.225],
  ])('not where they say the same: %s', (text, massKg) => {
    expect(understood(text).massKg).toBeCloseTo(massKg, 9)
  })

  test.each([
    ['8 tent pegs 14 g', /8 of them, the mass as that of each/],
    ['3 x bar a day 60 g', /3 each day, or for 3 days\?/],
    ['2 x gas per night 25 g', /2 each night, or for 2 nights\?/],
  ])('%s', (text, doubt) => {
    const { notes, use } = understood(text)
    expect(notes).toEqual([expect.stringMatching(doubt)])
    expect(use).toBeUndefined()
  })
})

describe('a hard food container', () => {
  const taken = (text: string) => {
    const row = understood(text)
    return { row, kind: kindOf(row) }
  }

  test('gets inner litres from its kind, or those of its name, and its outer ones with them', () => {
    expect(itemOf(taken('Bear canister 1100 g'))).toMatchObject({
      holdsLitres: 9.7,
      build: 'rigid',
      litresRange: { low: 8, typical: 11.4, high: 17 },
    })
    expect(itemOf(taken('Bear canister 4.85 L 900 g'))).toMatchObject({
      holdsLitres: 4.85,
      litresRange: { low: 4, typical: 5.7, high: 8.5 },
    })
  })

  test('takes the food in one edit, and settles without a word', () => {
    let ids = 0
    const lines = ['Bear canister 1100 g', 'Food 650 g a day', 'Snacks 100 g a day', 'Hat 60 g']
    const draft = addListed(emptyDraft(), lines.map(taken), () => `i${++ids}`)
    expect(foodFor(draft, 'i1').map(({ id }) => id)).toEqual(['i2', 'i3'])
    const full = putFoodInto(draft, 'i1')
    expect(full.gear.map(({ id, inside }) => [id, inside])).toEqual([
      ['i1', undefined],
      ['i2', 'i1'],
      ['i3', 'i1'],
      ['i4', undefined],
    ])
    expect(putFoodInto(full, 'i1')).toBe(full)
    expect(putFoodInto(draft, 'i4')).toBe(draft)
    expect(settle(full).leftOut.filter(({ path }) => path.startsWith('gear'))).toEqual([])
  })
})

test('things count what they hold for each of them', () => {
  const row = understood('2 x 1 L bottle 100 g')
  expect(itemOf({ row, kind: kindOf(row) })).toMatchObject({
    count: 2,
    holdsWaterLitres: 1,
    build: 'rigid',
    stow: 'outside-pocket',
  })
})
