import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compareWithPacks, guessPacksLayout, readGrid, readPackRows, takePacks } from '../../src/files/csv'
import { givenPacks, readPacks } from '../../src/files/pack-list'
import { packsLink, readPacksLink, SHARE_CAPS } from '../../src/files/share'
import { type DraftPack, emptyDraft } from '../../src/plan'
import { counter } from '../plan/drafts'

const BASE = new URL('https://example.org/app/?x#y')
const withoutIds = (packs: readonly DraftPack[]) =>
  packs.map(({ id: _, setups, ...pack }) => ({
    ...pack,
    setups: setups.map(({ id: _id, ...setup }) => setup),
  }))
const said: DraftPack = {
  ...{ id: 'p', name: 'Big', bodyLitres: 60, has: 'owned', starred: true },
  ...{ aside: 'too hot', notes: 'squeaks', tags: ['winter'] },
  setups: [{ id: 's', name: 'as sold', massKg: 1.6, frame: 'framed' }],
}

function sixtyPacks(): DraftPack[] {
  const grid = readGrid(readFileSync('data/invented-packs.csv', 'utf8'))
  if (!grid.ok) throw new Error('the invented table is refused')
  const { packs } = readPackRows(grid, guessPacksLayout(grid, { system: 'metric' }))
  const newId = counter('p')
  return takePacks(emptyDraft(), compareWithPacks([], packs, newId), newId).packs
}

const pack = fc.record(
  {
    name: fc.string({ maxLength: 20 }),
    bodyLitres: fc.double({ min: 1, max: 300, noNaN: true }),
    price: fc.nat(900),
    fabric: fc.constantFrom('nylon', 'hemp'),
    setups: fc.array(
      fc.record({
        massKg: fc.double({ min: 0.1, max: 9, noNaN: true }),
        frame: fc.constantFrom('framed' as const, 'frameless' as const),
      }),
      { maxLength: 3 },
    ),
  },
  { requiredKeys: ['setups'] },
)

describe('packs given on', () => {
  test('come out of a file as they went in, but for their ids', () => {
    fc.assert(
      fc.property(fc.array(pack, { maxLength: 5 }), list => {
        const packs = list.map(({ setups, ...each }, i) => ({
          ...each,
          id: `${i}`,
          setups: setups.map((setup, j) => ({ ...setup, id: `${j}` })),
        }))
        const text = JSON.stringify(givenPacks(packs, { withNotes: false }))
        const read = readPacks(JSON.parse(text), counter('n'))
        if (!read.ok) throw new Error(read.message)
        const cleaned = (of: readonly DraftPack[]) => withoutIds(of).map(({ name: _, ...rest }) => rest)
        expect(cleaned(read.packs)).toEqual(cleaned(packs))
        expect(read.leftOut).toEqual([])
      }),
    )
  })

  test('never say whose they were or which had a star, and the rest only where that is wished', () => {
    const [plain] = givenPacks([said], { withNotes: false }).packs
    expect(Object.keys(plain!).sort()).toEqual(['bodyLitres', 'name', 'setups'])
    const [told] = givenPacks([said], { withNotes: true }).packs
    expect(told).toMatchObject({ aside: 'too hot', notes: 'squeaks', tags: ['winter'] })
    expect(told).not.toHaveProperty('has')
    expect(told).not.toHaveProperty('starred')
  })

  test('fit a link when they are the sixty of the invented table, and come out of it', async () => {
    const packs = sixtyPacks()
    expect(packs).toHaveLength(60)
    const made = await packsLink(givenPacks(packs, { withNotes: true }), BASE)
    if (!made.ok) throw new Error(made.message)
    expect(made.link.length).toBeLessThan(SHARE_CAPS.fragmentChars)
    const read = await readPacksLink(new URL(made.link).hash, counter('n'))
    if (!read.ok) throw new Error(read.message)
    expect(withoutIds(read.packs)).toEqual(withoutIds(packs))
  })

  test.each([
    [{ format: 'pack-reckoner/plan' }, /holds no list of packs/],
    [null, /holds no list of packs/],
    [{ format: 'pack-reckoner/packs', version: 2, packs: [] }, /newer version/],
    [{ format: 'pack-reckoner/packs', version: 1, packs: {} }, /damaged/],
    [
      { format: 'pack-reckoner/packs', version: 1, packs: Array(1001).fill({ setups: [] }) },
      /more than 1000 packs/,
    ],
  ])('%j is refused in words', (value, words) => {
    const read = readPacks(value, counter('n'))
    expect(read.ok ? '' : read.message).toMatch(words)
  })

  test('that are damaged in part leave that part out, say so, and take no star from a stranger', () => {
    const packs = [
      { name: 'Big', starred: true, has: 'owned', denier: 'thick', setups: [{ massKg: 1 }] },
      7,
      { setups: 'x' },
    ]
    const read = readPacks({ format: 'pack-reckoner/packs', version: 1, packs }, counter('n'))
    if (!read.ok) throw new Error(read.message)
    expect(read.packs).toEqual([{ id: 'n1', name: 'Big', setups: [{ id: 'n2', massKg: 1 }] }])
    expect(read.leftOut).toEqual([
      'Pack 2 is damaged and left out',
      'Pack 3 is damaged and left out',
      'Pack 1, denier',
    ])
  })
})
