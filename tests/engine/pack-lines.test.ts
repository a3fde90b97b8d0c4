// The packs as lines: in whichever order, answers stay together; the guides of the chart say what the engine says.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Answer } from '../../src/reckon'
import { formatsIn, missingOf, shortReason } from '../../src/report'
import {
  brimLineOf,
  columnsIn,
  comparisonOf,
  cornerOf,
  FIGURE_NAMES,
  fieldText,
  inLineOrder,
  isInArea,
  judgedPacks,
  type LineOrder,
  linesOf,
  type PackLine,
} from '../../src/report/compare-packs'
import { onAnyPlan } from './why-context'

const formats = formatsIn('metric')
const ANY = { ration: 'fixed', litresPerHour: 'number' } as const
const answers: (Answer | null)[] = ['does', 'with-care', 'cannot-tell', 'does-not', null]
const figure = fc.integer({ min: -5, max: 5 })

const line: fc.Arbitrary<Omit<PackLine, 'key'>> = fc.record({
  packId: fc.constant('p'),
  setupId: fc.constant('s'),
  short: fc.constant(() => ''),
  setup: fc.constant(0),
  name: fc.string({ maxLength: 3 }),
  setupName: fc.constant(''),
  answer: fc.constantFrom(...answers),
  figures: fc.record({ mass: figure, 'spare-kg': figure }, { requiredKeys: [] }),
  currency: fc.constant(null),
  isStarred: fc.boolean(),
  aside: fc.option(fc.constant('too hot')),
})
const lines = fc.array(line).map(all => all.map((each, i): PackLine => ({ ...each, key: `${i}` })))
const order: fc.Arbitrary<LineOrder> = fc.record({
  by: fc.constantFrom(
    'mass' as const,
    'spare-kg' as const,
    'price' as const,
    'name' as const,
    'answer' as const,
  ),
  isDown: fc.boolean(),
  isMixed: fc.boolean(),
})

const rank = ({ answer }: PackLine) => answers.indexOf(answer)

describe('lines in order', () => {
  test('are the same lines, those set aside last', () => {
    fc.assert(
      fc.property(lines, order, (all, asked) => {
        const sorted = inLineOrder(all, asked)
        expect(sorted.map(({ key }) => key).sort()).toEqual(all.map(({ key }) => key).sort())
        const aside = sorted.map(each => Number(each.aside !== null))
        expect(aside).toEqual([...aside].sort())
      }),
    )
  })

  test('keep answers together, what does first, unless they are to be mixed', () => {
    fc.assert(
      fc.property(lines, order, (all, asked) => {
        fc.pre(asked.by !== 'answer')
        const sorted = inLineOrder(all, { ...asked, isMixed: false })
        for (const isAside of [false, true]) {
          const ranks = sorted.filter(each => (each.aside !== null) === isAside).map(rank)
          expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
        }
      }),
    )
  })

  test('rise or fall within an answer, with what is not known at the end either way', () => {
    fc.assert(
      fc.property(lines, fc.boolean(), (all, isDown) => {
        const sorted = inLineOrder(all, { by: 'mass', isDown, isMixed: false })
        sorted.slice(1).forEach((next, i) => {
          const here = sorted[i]!
          if (here.aside !== next.aside || here.answer !== next.answer) return
          const [a, b] = [here.figures.mass, next.figures.mass]
          if (a === undefined) expect(b).toBeUndefined()
          else if (b !== undefined) expect(isDown ? a >= b : a <= b).toBe(true)
        })
      }),
    )
  })
})

test('the sentence of the chart tells every line once, those set aside and those not judged too', () => {
  fc.assert(
    fc.property(lines, all => {
      const text = fieldText(all, null)
      const told = text.replace(/^Of \d+ /, '').match(/\d+/g) ?? []
      if (all.length > 0) expect(told.reduce((sum, n) => sum + Number(n), 0)).toBe(all.length)
      const does = all.filter(({ answer, aside }) => answer === 'does' && aside === null).length
      expect(/(\d+) do(?:es)?(?=[,.])/.exec(text)?.[1]).toBe(does > 0 ? `${does}` : undefined)
      expect(fieldText(all, null, { hasAnswers: false })).not.toMatch(/ do|judged|told/)
    }),
  )
})

describe('of any plan', () => {
  test('a line has the answer and the figures of its set-up, and a reason unless it does', () => {
    onAnyPlan(ANY, ({ plan, reckoning }) => {
      const packs = plan.packs.map(({ name, price, bodyLitres, setups }, i) => ({
        id: `p${i}`,
        name,
        bodyLitres,
        ...(price !== null && { price }),
        setups: setups.map(({ massKg }, j) => ({ id: `s${j}`, massKg })),
      }))
      const packIds = packs.map(({ id }) => id)
      const comparisons = comparisonOf(plan, reckoning)
      const all = linesOf(packs, {
        ...{ plan, reckoning, comparisons },
        judged: judgedPacks(packs, { plan, reckoning, comparisons, packIds }),
      })
      expect(
        all
          .map(({ setup }) => setup)
          .filter(at => at !== null)
          .sort((a, b) => a! - b!),
      ).toEqual(reckoning.packs.map((_, i) => i))
      for (const { setup, answer, figures, short } of all) {
        if (setup === null) continue
        const judged = reckoning.packs[setup]!
        expect(answer).toBe(judged.answer)
        expect(figures.bears ?? null).toBe(comparisons[setup]!.bearsKg)
        expect(short(formats)).toBe(shortReason(judged, { plan, reckoning, formats }))
        expect(short(formats) === '').toBe(answer === 'does')
      }
      if (all.length > 0)
        expect(fieldText(all, cornerOf(plan, reckoning, formats))).toContain(`Of ${all.length} `)
    })
  })

  test('a full pack weighs what the line of full packs says, and is overloaded just below it', () => {
    onAnyPlan(ANY, ({ plan, reckoning }) => {
      const brim = brimLineOf(plan, reckoning)
      if (missingOf(plan).gear || !brim) return
      const comparisons = comparisonOf(plan, reckoning)
      reckoning.packs.forEach((setup, i) => {
        const own = setup.ratedAgainstKg - reckoning.need.peakLoadFullWaterKg
        const full = brim.outsideKg + brim.kgPerLitre * plan.packs[setup.pack]!.bodyLitres
        expect(full + own).toBeCloseTo(setup.brimLoadKg!, 6)
        const { bearsKg } = comparisons[i]!
        if (setup.loadLimitKg !== null && Math.abs(bearsKg! - full) > 1e-6)
          expect(bearsKg! < full).toBe(setup.brimLoadKg! > setup.loadLimitKg)
      })
    })
  })

  test('the corner begins at the need and the load, with the likely range about it', () => {
    onAnyPlan(ANY, ({ plan, reckoning }) => {
      const corner = cornerOf(plan, reckoning, formats)
      const missing = missingOf(plan)
      if (missing.gear) return expect(corner).toBeNull()
      expect(corner).toMatchObject({
        litres: reckoning.need.bodyLitres,
        loadKg: reckoning.need.peakLoadFullWaterKg,
      })
      expect(corner!.lowLitres).toBeLessThanOrEqual(corner!.litres)
      expect(corner!.safeLitres).toBeGreaterThanOrEqual(corner!.litres)
    })
  })
})

test('an area holds what is known to lie within it', () => {
  const at = (figures: PackLine['figures']): PackLine => ({
    ...{
      key: 'a',
      packId: 'a',
      setupId: 's',
      short: () => '',
      setup: 0,
      name: 'A',
      setupName: '',
      answer: 'does',
    },
    ...{ currency: null, isStarred: false, aside: null, figures },
  })
  const area = { body: [40, 60], bears: [10, Number.POSITIVE_INFINITY] } as const
  expect(isInArea(at({ body: 40, bears: 30 }), area)).toBe(true)
  expect(isInArea(at({ body: 61, bears: 30 }), area)).toBe(false)
  expect(isInArea(at({ body: 50 }), area)).toBe(false)
})

test('columns are those chosen, in the order of the table, without any that is not known', () => {
  expect(columnsIn(['price', 'body', 'of another version'])).toEqual(['body', 'price'])
  expect(columnsIn([])).toEqual([])
  expect(columnsIn(undefined).every(name => FIGURE_NAMES.includes(name))).toBe(true)
})
