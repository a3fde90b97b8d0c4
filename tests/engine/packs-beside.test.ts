// Packs side by side: the best of each row, what tells them apart in words, and the engine's figures behind both.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DraftPack, settle } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { formatsIn, marginText } from '../../src/report'
import { packsApart, packsBeside } from '../../src/report/compare-packs'
import { wholeDraft } from '../plan/drafts'

const formats = formatsIn('metric')
const plain = (text: string) => text.replace(/\s/g, ' ')
const trip = { draft: { ...wholeDraft(), packs: [] }, typed: {} }

const packOf = (
  id: string,
  rest: Partial<DraftPack>,
  setup: Partial<DraftPack['setups'][number]> = {},
): DraftPack => ({
  id,
  name: id,
  bodyLitres: 50,
  ...rest,
  setups: [{ id: 's', name: 'as sold', massKg: 1, frame: 'framed', ...setup }],
})
const beside = (...packs: DraftPack[]) =>
  packsBeside(
    packsApart(packs.map((pack, index) => ({ pack, setup: pack.setups[0]!.id, index }))),
    trip,
    formats,
  )
const rowIn = (found: ReturnType<typeof beside>, what: string) =>
  found.rows.find(row => row.what === what)?.cells.map(({ text, isBest }) => [plain(text), isBest])

const RIDGE = packOf(
  'Ridge',
  { price: 200, currency: 'EUR', outsideLitres: 5 },
  { massKg: 1.24, ratedKg: 15 },
)
const FELL = packOf(
  'Fell',
  { bodyLitres: 47, price: 240, currency: 'EUR', outsideLitres: 5 },
  { massKg: 1.48, ratedKg: 18 },
)

describe('the best of a row', () => {
  test('is the least mass and price and the most to carry; of litres none is', () => {
    const found = beside(RIDGE, FELL)
    expect(rowIn(found, 'Pack mass')).toEqual([
      ['1.24 kg', true],
      ['1.48 kg', false],
    ])
    expect(rowIn(found, 'Price')).toEqual([
      ['200 EUR', true],
      ['240 EUR', false],
    ])
    expect(rowIn(found, 'Load it can carry')!.map(([, isBest]) => isBest)).toEqual([false, true])
    expect(rowIn(found, 'Main body')).toEqual([
      ['50 L', false],
      ['47 L', false],
    ])
  })

  test('is none where all read the same, nor among prices of two currencies; two alike are best together', () => {
    const other = packOf('Other', { price: 10, currency: 'CHF' }, { massKg: 1.24 })
    const found = beside(RIDGE, FELL, other)
    expect(rowIn(found, 'Price')!.some(([, isBest]) => isBest)).toBe(false)
    expect(rowIn(found, 'Pack mass')!.map(([, isBest]) => isBest)).toEqual([true, false, true])
    expect(rowIn(beside(RIDGE, RIDGE), 'Pack mass')!.some(([, isBest]) => isBest)).toBe(false)
  })

  test('is never one of which the figure is not known, and a figure known of none has no row', () => {
    const bare: DraftPack = { id: 'b', name: 'Bare', setups: [{ id: 's', frame: 'frameless' }] }
    const found = beside(RIDGE, bare)
    expect(rowIn(found, 'Pack mass')).toEqual([
      ['1.24 kg', false],
      ['–', false],
    ])
    expect(rowIn(found, 'Collar')).toBeUndefined()
  })
})

describe('differences in words', () => {
  test('are told against the first', () => {
    expect(beside(RIDGE, FELL).differences.map(plain)).toEqual([
      'Fell is 3.0 L smaller, 240 g heavier and 40 EUR dearer than Ridge. It can carry 2.8 kg more.',
    ])
  })

  test('are silent on what is not known or reads the same', () => {
    const light = packOf('Light', { bodyLitres: 50.01 }, { massKg: 0.9, frame: 'frameless' })
    expect(beside(RIDGE, light).differences.map(plain)).toEqual([
      'Light is 340 g lighter than Ridge. It can carry 5.6 kg less and is frameless.',
    ])
    expect(beside(RIDGE, { ...RIDGE, name: 'Twin' }).differences).toEqual([
      'Twin: as Ridge in all that is known.',
    ])
  })

  test('name packs of one name and set-ups of one pack apart', () => {
    const two = {
      ...RIDGE,
      setups: [...RIDGE.setups, { id: 'bare', name: 'bare', massKg: 1, frame: 'frameless' as const }],
    }
    const names = packsApart([
      { pack: two, setup: 's', index: 0 },
      { pack: two, setup: 'bare', index: 0 },
      { pack: RIDGE, setup: 's', index: 0 },
      { pack: RIDGE, setup: 's', index: 0 },
    ]).map(({ name }) => name)
    expect(names).toEqual(['Ridge, as sold', 'Ridge, bare', 'Ridge', 'Ridge′'])
  })
})

test('one without a name is called by its place in the list, as everywhere', () => {
  const { name: _name, ...bare } = RIDGE
  expect(packsApart([{ pack: bare, setup: 's', index: 3 }])[0]!.name).toBe('Pack 4')
})

test('what each can carry and has to spare is what the engine makes of it alone on the trip', () => {
  const figure = (min: number, max: number) => fc.integer({ min, max }).map(n => n / 10)
  const anyPack = fc
    .record({ litres: figure(200, 900), massKg: figure(4, 30), ratedKg: figure(50, 300) })
    .map(({ litres, massKg, ratedKg }) => packOf('any', { bodyLitres: litres }, { massKg, ratedKg }))
  fc.assert(
    fc.property(fc.array(anyPack, { minLength: 2, maxLength: 4 }), made => {
      const packs = made.map((pack, i) => ({ ...pack, id: `p${i}` }))
      const found = beside(...packs)
      const alone = packs.map(pack => {
        const reckoned = reckon(settle({ ...trip.draft, packs: [pack] }).plan)
        if (!reckoned.ok) throw new Error('refused')
        return reckoned.reckoning.packs[0]!
      })
      const spare = alone.map(setup => setup.loadLimitKg! - setup.ratedAgainstKg)
      const texts = spare.map(kg => plain(`${marginText(kg, formats.kg)} ${kg < 0 ? 'over' : 'to spare'}`))
      expect(rowIn(found, 'Load to spare')!.map(([text]) => text)).toEqual(texts)
      const best = texts[spare.indexOf(Math.max(...spare))]
      const isTold = new Set(texts).size > 1
      expect(rowIn(found, 'Load to spare')!.map(([, isBest]) => isBest)).toEqual(
        texts.map(text => isTold && text === best),
      )
    }),
    { numRuns: 60 },
  )
})
