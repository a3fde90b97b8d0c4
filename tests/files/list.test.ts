// Pasted lists: what people really write is understood, nothing is lost, and doubt is said.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addListed, itemOf, LINE_END, LIST_CAPS, type ListRow, readList } from '../../src/files/list'
import { emptyDraft, LIMITS, settle } from '../../src/plan'
import { kindNamed } from '../../src/plan/kinds'

const rowsOf = (text: string, system: 'metric' | 'us' = 'metric'): ListRow[] => {
  const read = readList(text, { system })
  if (!read.ok) throw new Error(read.message)
  return read.rows
}

const understood = (text: string, system: 'metric' | 'us' = 'metric') => {
  const [row] = rowsOf(text, system)
  if (!row?.ok) throw new Error(row?.why ?? 'no row')
  const { name, massKg, litres, count, worn } = row
  return { name, massKg, litres, count, worn }
}

const why = (text: string) => {
  const [row] = rowsOf(text)
  if (!row || row.ok) throw new Error('it was understood')
  return row.why
}

describe('a line is understood', () => {
  test.each([
    ['Rain jacket 300 g', { name: 'Rain jacket', massKg: 0.3 }],
    ['2 x tent peg 14g', { name: 'tent peg', massKg: 0.014, count: 2 }],
    ['Sleeping bag, 850', { name: 'Sleeping bag', massKg: 0.85 }],
    ['Stove\t95 g\t0.4 L', { name: 'Stove', massKg: 0.095, litres: 0.4 }],
    ['• Tent 1,5 kg', { name: 'Tent', massKg: 1.5 }],
    ['- [x] Head torch – 90g', { name: 'Head torch', massKg: 0.09 }],
    ['1. Spoon: 18 g', { name: 'Spoon', massKg: 0.018 }],
    ['Mug (60 g)', { name: 'Mug', massKg: 0.06 }],
    ['Stove;95;0,4 L', { name: 'Stove', massKg: 0.095, litres: 0.4 }],
    ['"Tent, red";1500', { name: 'Tent, red', massKg: 1.5 }],
    ['Socks x2 75 g', { name: 'Socks', massKg: 0.075, count: 2 }],
    ['Trekking poles 2 x 225 g', { name: 'Trekking poles', massKg: 0.225, count: 2 }],
    ['8 x peg 112 g total', { name: 'peg', massKg: 0.014, count: 8 }],
    ['Rain jacket 300 g (worn)', { name: 'Rain jacket', massKg: 0.3, worn: true }],
    ['Sleeping bag 850 g 7 L', { name: 'Sleeping bag', massKg: 0.85, litres: 7 }],
    ['Groundsheet 150', { name: 'Groundsheet', massKg: 0.15 }],
    ['Boots 2 lb 3 oz', { name: 'Boots', massKg: 35 * 0.028349523125 }],
  ])('%s', (text, expected) => {
    const { massKg, ...rest } = understood(text)
    const { massKg: expectedKg, ...expectedRest } = { ...expected }
    expect(rest).toEqual({ litres: undefined, count: undefined, worn: undefined, ...expectedRest })
    expect(massKg).toBeCloseTo(expectedKg, 9)
  })

  test('figures that belong to the name stay there', () => {
    expect(understood('Pot 0.8 L 130 g')).toMatchObject({
      name: 'Pot 0.8 L',
      massKg: 0.13,
      litres: undefined,
    })
    expect(understood('Power bank 10000 mAh 190 g')).toMatchObject({ name: 'Power bank 10000 mAh' })
    expect(understood('Tarp 3 x 3 m 400 g')).toMatchObject({ name: 'Tarp 3 x 3 m', count: undefined })
    expect(understood('Tent 2')).toMatchObject({ name: 'Tent 2', massKg: undefined })
    expect(understood('Pot, 0.8 L inner, 130 g')).toMatchObject({ name: 'Pot, 0.8 L inner', massKg: 0.13 })
  })

  test('bare numbers are ounces for a reader of ounces', () => {
    expect(understood('Rain jacket, 10', 'us').massKg).toBeCloseTo(0.28349523125, 12)
  })

  test('a sum of the others is told from a thing', () => {
    expect(rowsOf('Total 8500 g')[0]).toMatchObject({ ok: true, isSum: true })
    expect(rowsOf('Tent 1500 g')[0]).toMatchObject({ ok: true, isSum: false })
  })
})

describe('a line is kept with the reason', () => {
  test.each([
    ['300 g', /No name/],
    ['Thing\t1\t95', /1 and 95 have no unit/],
    ['Tent 5000 kg', /0\sg to 200.00\skg/],
    ['Tent\t1 kg\t2 kg', /two masses/i],
    ['Peg\t14 g\t8', /"8" has no unit: write 8 g, 8 L or 8 x/],
    [`Tent ${'a,"b'.repeat(300)}`, /1205 characters; up to 1000 are read/],
    [`${'x'.repeat(201)} 5 g`, /201 characters: shorten it to 200/],
  ])('%s', (text, expected) => {
    expect(why(text)).toMatch(expected)
  })

  test('in words that scold nobody', () => {
    for (const text of ['300 g', 'Thing\t1\t95', 'Tent 5000 kg', 'Tent\t1 kg\t2 kg'])
      expect(why(text)).not.toMatch(/please|sorry|valid|oops|forbidden|required/i)
  })
})

describe('columns', () => {
  test('named in the first line are read by their names, in any order, with their units', () => {
    const read = readList(
      'Category\tItem\tQty\tWeight (g)\tVolume (L)\tPrice\nShelter\tTent\t1\t1500\t4,5\t300\n\tPeg\t8\t14\t\t3',
      { system: 'us' },
    )
    if (!read.ok) throw new Error(read.message)
    expect(read.unusedColumns).toEqual(['Price'])
    expect(read.rows).toMatchObject([
      { ok: true, name: 'Tent', group: 'Shelter', massKg: 1.5, litres: 4.5, count: 1 },
      { ok: true, name: 'Peg', massKg: 0.014, count: 8 },
    ])
  })

  test('of units give the unit of each mass', () => {
    expect(rowsOf('name,weight,unit\n"Tent, red",1500,g\nBag,30,oz')).toMatchObject([
      { name: 'Tent, red', massKg: 1.5 },
      { name: 'Bag', massKg: 30 * 0.028349523125 },
    ])
  })

  test('more than the first line names are not guessed at', () => {
    expect(rowsOf('Item,Weight\nTent, red,1500')[0]).toMatchObject({
      ok: false,
      why: expect.stringMatching(/3 columns, where the first line names 2/),
    })
  })
})

describe('headings', () => {
  test('name the group of what follows', () => {
    const groups = rowsOf('Rope 1 kg\nShelter:\nTent 1 kg\n## Sleep\nBag 1 kg').map(
      row => row.ok && row.group,
    )
    expect(groups).toEqual([undefined, 'Shelter', 'Sleep'])
  })
})

describe('the caps', () => {
  test('are named when a list is over them, and nothing is read', () => {
    const long = readList('a 1 g\n'.repeat(LIST_CAPS.lines + 1), { system: 'metric' })
    expect(long).toMatchObject({ ok: false, message: expect.stringMatching(/2002 lines; up to 2000 lines/) })
    const large = readList('é'.repeat(LIST_CAPS.bytes / 2 + 1), { system: 'metric' })
    expect(large).toMatchObject({ ok: false, message: expect.stringMatching(/201 kB of text; up to 200 kB/) })
    expect(readList('ä'.repeat(5_000_000), { system: 'metric' })).toMatchObject({
      message: expect.stringMatching(/over 5000 kB of text; up to 200 kB/),
    })
  })
})

describe('whatever is pasted', () => {
  const piece = fc.constantFrom(
    'Tent',
    ' ',
    '\t',
    ',',
    ';',
    '|',
    '"',
    '1',
    '1,5',
    '2 x',
    'g',
    'kg',
    'L',
    '½',
    ':',
    '#',
    '(',
    '-',
    'x',
    'é',
    '0',
    '.',
    'lb',
    'oz',
  )
  const line = fc.oneof(
    fc.array(piece, { maxLength: 12 }).map(pieces => pieces.join('')),
    fc.string({ unit: 'binary', maxLength: 60 }),
  )
  const text = fc.array(line, { maxLength: 8 }).map(lines => lines.join('\n'))

  test('every row is a line of the text, in order, and its figures are within the limits of an item', () => {
    fc.assert(
      fc.property(text, fc.constantFrom('metric' as const, 'us' as const), (pasted, system) => {
        const lines = pasted.replace(/^\uFEFF/, '').split(LINE_END)
        const rows = rowsOf(pasted, system)
        rows.forEach((row, i) => {
          expect(lines[row.line - 1]?.trim()).toBe(row.text)
          if (i > 0) expect(row.line).toBeGreaterThan(rows[i - 1]!.line)
          if (!row.ok) {
            expect(row.why.length).toBeGreaterThan(10)
            return
          }
          expect(row.name).toMatch(/\p{L}/u)
          for (const field of ['massKg', 'litres', 'count'] as const) {
            const value = row[field]
            if (value === undefined) continue
            expect(value).toBeGreaterThanOrEqual(0)
            expect(value).toBeLessThanOrEqual(LIMITS.item[field].max)
          }
        })
      }),
      { numRuns: 300 },
    )
  })

  test('a name and a mass written plainly come back, whatever parts them', () => {
    const word = fc.constantFrom('Tent', 'rain jacket', 'Sleeping bag', 'Kocher', 'réchaud')
    const between = fc.constantFrom(' ', ', ', '\t', '; ', ' - ', ': ', ' | ')
    const unit = fc.constantFrom(['g', 0.001], ['kg', 1], ['oz', 0.028349523125]) as fc.Arbitrary<
      [string, number]
    >
    fc.assert(
      fc.property(
        word,
        between,
        fc.integer({ min: 1, max: 150 }),
        unit,
        (name, mark, number, [symbol, kg]) => {
          const row = understood(`${name}${mark}${number} ${symbol}`)
          expect(row.name).toBe(name)
          expect(row.massKg).toBeCloseTo(number * kg, 9)
        },
      ),
    )
  })
})

describe('rows as items', () => {
  const [row] = rowsOf('Rain jacket 300 g')
  const [sized] = rowsOf('Rain jacket, 300 g, 2 L')
  if (!row?.ok || !sized?.ok) throw new Error('not understood')
  const kind = kindNamed('rain jacket')!

  test('take litres, build, place and group from the kind, and their own mass', () => {
    expect(itemOf({ row, kind })).toEqual({
      name: 'Rain jacket',
      massKg: 0.3,
      massFrom: 'stated',
      litresFrom: 'kind',
      litresRange: { low: 1.11, typical: 1.3, high: 1.5 },
      litresPerKg: { low: 3.7, typical: 4.33, high: 5 },
      build: 'soft',
      stow: 'main-body',
      group: 'Clothing',
    })
  })

  test('keep litres that the list states', () => {
    expect(itemOf({ row: sized, kind })).toMatchObject({ litres: 2, litresFrom: 'stated' })
    expect(itemOf({ row: sized, kind })).not.toHaveProperty('litresRange')
  })

  test('join their group in the gear, new groups at the end, and settle without a word', () => {
    const gear = [
      { id: 'a', name: 'Shirt', group: 'Clothing', massKg: 0.2, litres: 1 },
      { id: 'b', name: 'Bag', group: 'Sleep', massKg: 1, litres: 9 },
    ]
    let n = 0
    const tent = rowsOf('Shelter:\nTent 1 kg 5 L')[0]!
    if (!tent.ok) throw new Error(tent.why)
    const draft = addListed(
      { ...emptyDraft(), gear },
      [
        { row: tent, kind: null },
        { row, kind },
      ],
      () => `new ${++n}`,
    )
    expect(draft.gear.map(item => item.name)).toEqual(['Shirt', 'Rain jacket', 'Bag', 'Tent'])
    expect(new Set(draft.gear.map(item => item.id)).size).toBe(4)
    expect(settle(draft).leftOut.filter(({ path }) => path.startsWith('gear'))).toEqual([])
  })
})
