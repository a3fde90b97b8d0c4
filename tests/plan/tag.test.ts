// A tag's figures: totals, ranges and what is kept of them.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { emptyDraft, keepTag, mainBodyOf, readRating, settle } from '../../src/plan'

const counter = () => {
  let next = 0
  return () => `id${next++}`
}

describe('a rated load', () => {
  test.each([
    ['12', 12],
    ['12 kg', 12],
    ['9–13 kg', 9],
    ['9-13', 9],
    ['9 to 13 kg', 9],
    ['13 — 9 kg', 9],
    ['9 kg – 13 kg', 9],
    ['9,5–13 kg', 9.5],
    ['900–1300 g', 0.9],
  ])('of "%s" counts as %d kg', (text, kg) => {
    expect(readRating(text, 'metric')).toMatchObject({ ok: true, kg })
  })

  test('takes the unit behind the second number for both', () => {
    const read = readRating('20–30 lb', 'metric')
    expect(read.ok && read.kg).toBeCloseTo(9.0718474, 6)
    expect(read.ok && read.range?.highKg).toBeCloseTo(13.6077711, 6)
  })

  test('is no range when it is a single amount of two units', () => {
    expect(readRating('20 lb 3 oz', 'us')).toMatchObject({ ok: true, range: null })
  })

  test('is nothing yet while the field is empty', () => {
    expect(readRating('  ', 'metric')).toMatchObject({ ok: true, kg: undefined })
  })

  test.each(['9–', 'heavy', '9–13 L', '–13 kg', '9–13–15 kg'])(
    'of "%s" is told apart from a number',
    text => {
      expect(readRating(text, 'metric').ok).toBe(false)
    },
  )

  test('of a range is its lower end, whichever end stands first', () => {
    const tenths = fc.integer({ min: 10, max: 500 }).map(n => n / 10)
    fc.assert(
      fc.property(tenths, tenths, fc.constantFrom('–', '-', ' to ', ' – '), (a, b, between) => {
        const read = readRating(`${a}${between}${b} kg`, 'metric')
        expect(read).toMatchObject({ ok: true, kg: Math.min(a, b), range: { highKg: Math.max(a, b) } })
      }),
    )
  })

  test('is answered at once, and by its length, where somebody pastes pages', () => {
    // With a pattern that looks for the ends of a range in every way, these would take minutes.
    for (const text of [`${'1'.repeat(2000)}${' '.repeat(2000)}-${' '.repeat(2000)}`, '1-'.repeat(5000)])
      expect(readRating(text, 'metric')).toMatchObject({
        ok: false,
        message: expect.stringMatching(/characters; the field reads up to 200/),
      })
  })

  test('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom('metric', 'us'), (text, system) => {
        readRating(text, system)
      }),
    )
  })
})

describe('a main body out of a total', () => {
  test('is what the pockets leave of it', () => {
    expect(mainBodyOf(60, 8)).toEqual({ ok: true, litres: 52 })
    expect(mainBodyOf(60, 0)).toEqual({ ok: true, litres: 60 })
  })

  test('is not known without the total, without the pockets, or when the pockets take it all', () => {
    expect(mainBodyOf(undefined, 8)).toEqual({ ok: false, reason: 'no-total' })
    expect(mainBodyOf(60, undefined)).toEqual({ ok: false, reason: 'no-pockets' })
    expect(mainBodyOf(60, 60)).toEqual({ ok: false, reason: 'pockets-too-large' })
  })
})

describe('a kept tag', () => {
  test('is one more pack with the figures it gave', () => {
    const tag = {
      name: 'Blue one',
      bodyLitres: 52,
      outsideLitres: 8,
      massKg: 1.2,
      ratedKg: 9,
      frame: 'frameless',
      ratingCovers: 'contents',
      sealed: true,
      price: 180,
    } as const
    const { plan, leftOut } = settle(keepTag(emptyDraft(), tag, counter()))
    expect(leftOut.filter(({ path }) => path.startsWith('packs'))).toEqual([])
    expect(plan.packs).toHaveLength(1)
    expect(plan.packs[0]).toMatchObject({
      name: 'Blue one',
      bodyLitres: 52,
      outsideLitres: 8,
      sealed: true,
      price: 180,
    })
    expect(plan.packs[0]!.setups).toMatchObject([
      { massKg: 1.2, ratedKg: 9, frame: 'frameless', ratingCovers: 'contents' },
    ])
  })

  test('leaves open what the tag did not say', () => {
    const draft = keepTag(emptyDraft(), { bodyLitres: 40, frame: 'framed' }, counter())
    const pack = draft.packs[0]!
    expect(Object.keys(pack).sort()).toEqual(['bodyLitres', 'id', 'setups'])
    expect(Object.keys(pack.setups[0]!).sort()).toEqual(['frame', 'id'])
  })
})
