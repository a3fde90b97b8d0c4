// What a list of packs says in few words: why each is what it is, how many are suitable, and what is asked for.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { reckon } from '../../src/reckon'
import { formatsIn, missingOf } from '../../src/report'
import { type askedBy, askedLine, suitableSentence } from '../../src/report/compare-packs'
import { shortReason } from '../../src/report/short-reason'
import { documents, planOf } from './plans'

const formats = formatsIn('metric')
const plain = (text: string) => text.replace(/\s/g, ' ')

describe('the shortest reason', () => {
  test('is there for every answer but a plain yes, and its kilograms are those over the limit', () => {
    fc.assert(
      fc.property(documents({ ration: 'fixed', litresPerHour: 'number' }), document => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        const context = { plan, reckoning: result.reckoning, formats }
        for (const setup of result.reckoning.packs) {
          const short = plain(shortReason(setup, context))
          if (setup.answer === 'does') expect(short).toBe('')
          else expect(short).not.toBe('')
          expect(/too small|over|is too/.test(short) && !/pockets|when full/.test(short)).toBe(
            setup.answer === 'does-not',
          )
          const over = / ?([\d.]+) kg over/.exec(short)
          if (over && missingOf(plan).mass.length === 0)
            expect(Math.abs(Number(over[1]) - (setup.ratedAgainstKg - setup.loadLimitKg!))).toBeLessThan(0.1)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('the sentence over the packs', () => {
  const told = { isEmpty: false }
  test.each([
    [[], 'No packs yet'],
    [['does', 'does-not'], '1 of 2 packs is suitable'],
    [['does', 'with-care', 'cannot-tell'], '2 of 3 packs are suitable, 1 with care'],
    [['with-care', 'does-not'], '1 of 2 packs is suitable with care'],
    [['does-not'], '0 of 1 pack is suitable'],
    // What may be is not denied.
    [['does-not', 'cannot-tell', null], '2 of 3 packs may be suitable'],
  ] as const)('of %j is “%s”', (answers, sentence) => {
    expect(suitableSentence(answers, told)).toBe(sentence)
  })

  test('says that nothing can be told without gear', () => {
    expect(suitableSentence(['cannot-tell'], { isEmpty: true })).toBe('Can’t tell yet: no gear')
  })
})

describe('what is asked for, in one line', () => {
  const asked = {
    likelyLitres: 43.2,
    packKg: 1,
    wanted: {
      bodyLitresSafe: 45.3,
      outsideLitres: 0,
      contentsKg: 16,
      ratedKg: 17,
      frame: true,
      innerHeightCm: null,
      innerWidthCm: null,
    },
    atLeast: { litres: false, mass: false },
  }
  const line = (part: Partial<NonNullable<ReturnType<typeof askedBy>>> = {}) =>
    plain(askedLine({ ...asked, ...part }, formats))

  test('is room, frame and rating', () => {
    expect(line()).toBe('46 L to be safe · frame · rated 17.0 kg')
    expect(line({ wanted: { ...asked.wanted, frame: false } })).toMatch(/ · frame optional · /)
  })

  test('calls nothing safe that may be more', () => {
    expect(line({ atLeast: { litres: true, mass: false } })).toBe('at least 44 L · frame · rated 17.0 kg')
    expect(line({ wanted: { ...asked.wanted, frame: false }, atLeast: { litres: false, mass: true } })).toBe(
      '46 L to be safe · rated at least 17.0 kg',
    )
  })
})
