// The filter over packs: what one filter leaves out no other brings back, and what is asked of a set-up is asked of one
// and the same.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { DraftPack } from '../../src/plan'
import type { Answer } from '../../src/reckon'
import { NO_FILTERS, type PackFilters, packFilter, rankOf } from '../../src/report/compare-packs'

const ANSWERS: Answer[] = ['does', 'with-care', 'cannot-tell', 'does-not']
const WORDS = ['Vellow', 'übergross', 'winter', 'loan', 'nylon', 'laminate']

interface Judged {
  answer: Answer | null
  setups: Map<string, { answer: Answer }>
}
interface Case {
  pack: DraftPack
  judged: Judged
}

const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined })
const setup = fc.record({
  frame: fc.constantFrom('framed', 'frameless', undefined),
  massKg: maybe(fc.integer({ min: 1, max: 4 })),
  answer: fc.option(fc.constantFrom(...ANSWERS), { nil: null }),
})
const facts = fc.record({
  name: maybe(fc.constantFrom(...WORDS)),
  notes: maybe(fc.constantFrom(...WORDS)),
  tags: maybe(fc.subarray(WORDS)),
  fabric: maybe(fc.constantFrom(...WORDS)),
  sealed: maybe(fc.boolean()),
  has: fc.constantFrom('owned', 'wanted', undefined),
  starred: fc.constantFrom(true, undefined),
  aside: fc.constantFrom('', 'too hot', undefined),
  price: maybe(fc.integer({ min: 1, max: 4 })),
  bodyLitres: maybe(fc.integer({ min: 1, max: 4 })),
})

/** Without what is not said, as a draft has it; the answer of a pack is the best of its set-ups'. */
const said = <T extends object>(it: T) =>
  Object.fromEntries(Object.entries(it).filter(([, value]) => value !== undefined))
function caseOf(own: object, setups: readonly { answer: Answer | null }[]): Case {
  const answers = new Map(setups.flatMap(({ answer }, i) => (answer ? [[`s${i}`, answer] as const] : [])))
  const [best = null] = [...answers.values()].sort((a, b) => rankOf(a) - rankOf(b))
  const told = new Map([...answers].map(([id, answer]) => [id, { answer }]))
  const pack = {
    ...said(own),
    id: 'p',
    setups: setups.map(({ answer: _answer, ...rest }, i) => ({ ...said(rest), id: `s${i}` })),
  } as DraftPack
  return { pack, judged: { answer: best, setups: told } }
}
const cases = (most: number) =>
  fc.tuple(facts, fc.array(setup, { minLength: 1, maxLength: most })).map(([own, all]) => caseOf(own, all))

const figure = fc.option(fc.integer({ min: 1, max: 4 }), { nil: null })
const filters: fc.Arbitrary<PackFilters> = fc.record({
  sought: fc.constantFrom('', 'vel', 'ÜBER', 'winter loan', ' '),
  fabric: fc.constantFrom('', 'NYL', 'laminate'),
  answer: fc.constantFrom(null, ...ANSWERS),
  frame: fc.constantFrom(null, 'framed' as const, 'frameless' as const),
  sealed: fc.boolean(),
  has: fc.constantFrom(null, 'owned' as const, 'wanted' as const),
  starred: fc.boolean(),
  aside: fc.boolean(),
  tag: fc.constantFrom(null, ...WORDS),
  mostPrice: figure,
  mostKg: figure,
  leastLitres: figure,
  mostLitres: figure,
})
const NAMES = Object.keys(NO_FILTERS) as (keyof PackFilters)[]
/** A few of the filters on, so that packs pass often enough to say something. */
const few = fc.tuple(filters, fc.subarray(NAMES, { maxLength: 3 })).map(
  ([all, on]): PackFilters => ({
    ...NO_FILTERS,
    ...Object.fromEntries(on.map(name => [name, all[name]])),
  }),
)

const passes = ({ pack, judged }: Case, by: PackFilters) => packFilter(by)(pack, judged)
const alone = (by: PackFilters, name: keyof PackFilters): PackFilters => ({ ...NO_FILTERS, [name]: by[name] })
const without = (by: PackFilters, name: keyof PackFilters): PackFilters => ({
  ...by,
  [name]: NO_FILTERS[name],
})

describe('the filter over packs', () => {
  test('leaves nothing out while nothing is asked, not even a pack without a set-up', () => {
    fc.assert(fc.property(cases(3), it => passes(it, NO_FILTERS)))
    expect(packFilter(NO_FILTERS)({ id: 'p', setups: [] }, undefined)).toBe(true)
  })

  test('never hides a pack when a filter is removed', () => {
    fc.assert(
      fc.property(cases(3), few, fc.constantFrom(...NAMES), (it, by, name) => {
        fc.pre(passes(it, by))
        expect(passes(it, without(by, name))).toBe(true)
      }),
    )
  })

  test('shows a pack of one set-up exactly where every filter by itself does', () => {
    fc.assert(
      fc.property(cases(1), few, (it, by) => {
        expect(passes(it, by)).toBe(NAMES.every(name => passes(it, alone(by, name))))
      }),
    )
  })

  test('shows a pack exactly where one of the set-ups that its answer is of does by itself', () => {
    fc.assert(
      fc.property(cases(3), few, (it, by) => {
        const single = it.pack.setups.map((setup): Case => {
          const answer = it.judged.setups.get(setup.id)
          return {
            pack: { ...it.pack, setups: [setup] },
            judged: { answer: it.judged.answer, setups: new Map(answer ? [[setup.id, answer]] : []) },
          }
        })
        expect(passes(it, by)).toBe(single.some(one => passes(one, by)))
      }),
    )
  })

  test('parts the packs by their answers: each is under one', () => {
    fc.assert(
      fc.property(cases(3), few, (it, by) => {
        const under = ANSWERS.filter(answer => passes(it, { ...without(by, 'answer'), answer }))
        expect(under.length).toBeLessThanOrEqual(1)
        expect(under.filter(answer => answer !== it.judged.answer)).toEqual([])
      }),
    )
  })
})

describe('of one pack', () => {
  const removable = caseOf({ name: 'Vellow Übergross', price: 200, tags: ['winter'] }, [
    { answer: 'does', ...{ frame: 'framed', massKg: 1.2 } },
    { answer: 'does-not', ...{ frame: 'frameless', massKg: 0.8 } },
  ])
  const ask = (part: Partial<PackFilters>) => passes(removable, { ...NO_FILTERS, ...part })

  test('frame and mass are asked of one and the same set-up', () => {
    expect(ask({ frame: 'framed', mostKg: 1 })).toBe(false)
    expect(ask({ frame: 'frameless', mostKg: 1 })).toBe(true)
  })

  test('a suitable pack without a frame is not one that is suitable with it', () => {
    expect(ask({ answer: 'does', frame: 'framed' })).toBe(true)
    expect(ask({ answer: 'does', frame: 'frameless' })).toBe(false)
  })

  test('what is asked about and not known leaves it out', () => {
    expect(ask({ mostPrice: 500 })).toBe(true)
    expect(ask({ leastLitres: 10 })).toBe(false)
    expect(ask({ sealed: true })).toBe(false)
  })

  test('every word sought is in its name, notes or tags, whatever case and accents', () => {
    expect(ask({ sought: 'uber WINTER' })).toBe(true)
    expect(ask({ sought: 'uber summer' })).toBe(false)
  })
})
