// Tables of packs that the app writes, read again.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { guessPacksLayout, packsCsv, readGrid, readPackRows } from '../../../src/files/csv'
import type { DraftPack } from '../../../src/plan'

function open(text: string) {
  const grid = readGrid(text)
  if (!grid.ok) throw new Error(grid.message)
  return readPackRows(grid, guessPacksLayout(grid, { system: 'metric' }))
}

const name = fc.stringMatching(/^[A-Z][a-z]{2,9} [A-Z][a-z]{2,9}$/)
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map(n => n / 10)
const setup = fc.record(
  {
    massKg: fc.integer({ min: 100, max: 4000 }).map(g => g / 1000),
    frame: fc.constantFrom('framed', 'frameless'),
    ratingCovers: fc.constantFrom('contents', 'contents-and-pack'),
  },
  { requiredKeys: ['massKg', 'frame', 'ratingCovers'] },
)
const drawn = fc.record(
  {
    name,
    bodyLitres: tenths(10, 100),
    collarLitres: tenths(1, 20),
    outsideLitres: tenths(0, 30),
    bodyFrom: fc.constantFrom('test-method', 'measured', 'stated', 'guess'),
    sealed: fc.boolean(),
    fabric: fc.constantFrom('laminate', 'nylon; coated'),
    tags: fc.uniqueArray(fc.constantFrom('winter', 'on loan', 'yes'), { minLength: 1 }),
    denier: fc.integer({ min: 20, max: 1000 }),
    price: fc.integer({ min: 0, max: 90_000 }).map(cents => cents / 100),
    currency: fc.constantFrom('EUR', '$'),
    setups: fc.array(fc.tuple(setup, fc.option(tenths(5, 40), { nil: undefined })), {
      minLength: 1,
      maxLength: 3,
    }),
  },
  { requiredKeys: ['name', 'bodyLitres', 'bodyFrom', 'setups'] },
)
const packs = fc.uniqueArray(drawn, { selector: pack => pack.name.toLowerCase(), maxLength: 8 })

describe('what is written is read again as it was', () => {
  it.each(['commas', 'semicolons'] as const)('with %s', marks => {
    fc.assert(
      fc.property(packs, all => {
        const written = all.map(({ setups, ...pack }, i) => ({
          ...pack,
          id: `${i}`,
          setups: setups.map(([setup, ratedKg], j) => ({
            ...setup,
            ...(ratedKg !== undefined && { ratedKg }),
            id: `${j}`,
            name: `set-up ${j}`,
          })),
        })) as DraftPack[]
        const { packs: read, problems, doubts } = open(packsCsv(written, marks))
        expect(problems).toEqual([])
        expect(doubts).toEqual([])
        const bare = written.map(({ id: _id, setups, ...pack }) => ({
          ...pack,
          setups: setups.map(({ id: _id, ...setup }) => setup),
        }))
        expect(read.map(({ pack }) => pack)).toEqual(bare)
      }),
    )
  })
})
