// What is said while the litres or the mass of a thing are not known: a lower bound, and no chance of anything.

import { describe, expect, it } from 'vitest'
import { type Draft, settle } from '../../src/plan'
import { formatsIn, missingOf, setupInWords, withoutText } from '../../src/report'
import { enoughText } from '../../src/report/confidence'
import { reckoned } from './small-plans'

const metric = formatsIn('metric')

const draftOf = (gear: object[], pack: object = { bodyLitres: 20 }, setup: object = { ratedKg: 12 }): Draft =>
  ({
    carrier: { massKg: 70 },
    trip: {
      stops: [
        { id: 's', name: 'Start' },
        { id: 'e', name: 'End', leg: { km: 5 } },
      ],
      water: { litresPerHour: 0, campLitres: 0, reserveLitres: 0 },
    },
    gear,
    packs: [{ id: 'p', name: 'Pack', ...pack, setups: [{ id: 'u', massKg: 1, frame: 'framed', ...setup }] }],
  }) as unknown as Draft

const kit = { id: 'kit', name: 'Kit', massKg: 4, litres: 14 }
const tent = { id: 'tent', name: 'Tent', massKg: 1.5 }
const mat = { id: 'mat', name: 'Mat', massKg: 0.5 }

function judged(draft: Draft) {
  const { plan } = settle(draft)
  const reckoning = reckoned(plan)
  const missing = missingOf(plan)
  return {
    missing,
    plan,
    reckoning,
    words: setupInWords(reckoning.packs[0]!, { plan, reckoning, shown: metric }),
  }
}
const textOf = ({ words }: ReturnType<typeof judged>) =>
  words.verdicts.map(({ lead, rest }) => lead + rest).join(' ')

describe('things without litres', () => {
  it('are named with the field that mends them; worn things need none', () => {
    const { missing } = judged(
      draftOf([kit, tent, mat, { id: 'hat', name: 'Hat', massKg: 0.1, stow: 'worn' }]),
    )
    expect(missing.litres).toEqual([
      { name: 'Tent', path: 'gear/tent/litres' },
      { name: 'Mat', path: 'gear/mat/litres' },
    ])
    expect(missing.mass).toEqual([])
    expect(withoutText(missing, 'litres')).toBe('2 things without litres')
  })

  it('leave it open whether a pack does that large ones would not fit: no fit, no chance, no “more than needed”', () => {
    for (const bodyLitres of [17, 20, 30]) {
      const found = judged(draftOf([kit, tent, mat], { bodyLitres, collarLitres: 5 }))
      expect(found.words.answer).toBe('cannot-tell')
      expect(textOf(found)).toMatch(/^2 things without litres: if large, it would not do\./)
      expect(textOf(found)).not.toMatch(/cases|Fits|More than needed/)
    }
  })

  it('turn no pack that holds them however large they are; more than needed it is not called', () => {
    const found = judged(draftOf([kit, tent, mat], { bodyLitres: 80 }, { ratedKg: 40 }))
    expect(found.words.answer).toBe('does')
    expect(textOf(found)).toMatch(/2 things without litres: even if large, it does\./)
    expect(textOf(found)).not.toMatch(/cases|More than needed/)
  })

  it('do not turn a pack that is too small into one that may do', () => {
    const found = judged(draftOf([kit, tent], { bodyLitres: 8 }))
    expect(found.words.answer).toBe('does-not')
    expect(textOf(found)).not.toMatch(/cases/)
  })
})

describe('things without a mass', () => {
  it('leave the load a lower bound and the room as sure as it was', () => {
    const found = judged(draftOf([kit, { id: 'rope', name: 'Rope', litres: 1 }]))
    expect(found.missing).toEqual({ litres: [], mass: [{ name: 'Rope', path: 'gear/rope/massKg' }] })
    expect(found.words.answer).toBe('does')
    expect(textOf(found)).toMatch(/1 thing without a mass: even if heavy, it does\./)
    expect(textOf(found)).toMatch(/Bears the load so far:/)
    expect(textOf(found)).toMatch(/it fits in/)
  })

  it('leave it open whether a pack does that heavy ones would overload', () => {
    const rope = { id: 'rope', name: 'Rope', litres: 1 }
    const found = judged(draftOf([kit, rope], { bodyLitres: 20 }, { ratedKg: 6 }))
    expect(found.words.answer).toBe('cannot-tell')
    expect(textOf(found)).toMatch(/^1 thing without a mass: if heavy, it would not do\./)
  })
})

describe('a list with nothing in it', () => {
  it('lets no pack do, whatever it is', () => {
    for (const gear of [[], [{ ...kit, count: 0 }]]) {
      const found = judged(draftOf(gear))
      expect(found.words.answer).toBe('cannot-tell')
      expect(textOf(found)).toMatch(/^No gear yet:/)
      expect(textOf(found)).not.toMatch(/cases|Fits|More than needed/)
    }
  })
})

describe('a frameless set-up without a rating', () => {
  it('is held to the hiker’s own limit, and nothing is said of what it can bear', () => {
    const found = judged(draftOf([kit], { bodyLitres: 45 }, { frame: 'frameless', ratedKg: undefined }))
    expect(found.words.answer).toBe('with-care')
    expect(textOf(found)).toMatch(/your limit without a frame/)
    expect(textOf(found)).not.toMatch(/can bear|ceiling/)
  })
})

describe('a pack of which all is known', () => {
  it('is judged in room and in load', () => {
    const found = judged(draftOf([kit], { bodyLitres: 22 }))
    expect(found.words.answer).toBe('does')
    expect(found.words.verdicts.map(({ code }) => code)).toEqual(
      expect.arrayContaining([expect.stringMatching(/fits|roomy/), 'bears-load']),
    )
  })

  it('cannot be told where a framed one has no rating, however roomy it is', () => {
    for (const bodyLitres of [22, 80]) {
      const found = judged(draftOf([kit], { bodyLitres }, {}))
      expect(found.words.answer).toBe('cannot-tell')
      expect(textOf(found)).not.toMatch(/cases|Fits|More than needed/)
      expect(found.words.verdicts[0].lead).toBe('Rating unknown:')
    }
  })
})

describe('what is enough in 9 of 10 cases', () => {
  it('is told in litres', () => {
    const { reckoning } = judged(draftOf([kit]))
    expect(enoughText(reckoning.need, metric)).toMatch(/^\d+\sL is enough in about 9 of 10 cases$/)
  })
})
