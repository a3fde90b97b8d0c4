// What is said while the litres or the mass of a thing are not known: a lower bound, and no chance of anything.

import { describe, expect, it } from 'vitest'
import { textReport } from '../../src/cli/report'
import { withoutText } from '../../src/report'
import { enoughText } from '../../src/report/confidence'
import { allWords, draftOf, judged, kit, mat, metric, plain, tent, textOf } from './missing-plans'

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
    expect(withoutText(missing, 'litres')).toBe('2 items without litres')
  })

  it('leave it open whether a pack does that large ones would not fit: no fit, no chance, no “more than needed”', () => {
    for (const bodyLitres of [17, 20, 30]) {
      const found = judged(draftOf([kit, tent, mat], { bodyLitres, collarLitres: 5 }))
      expect(found.words.answer).toBe('cannot-tell')
      expect(textOf(found)).toMatch(/^2 items without litres: if large, the pack would be too small\./)
      expect(textOf(found)).not.toMatch(/cases|Fits|More than needed/)
    }
  })

  it('turn no pack that holds them however large they are; more than needed it is not called', () => {
    const found = judged(draftOf([kit, tent, mat], { bodyLitres: 80 }, { ratedKg: 40 }))
    expect(found.words.answer).toBe('does')
    expect(textOf(found)).toMatch(/2 items without litres: even if large, it does\./)
    expect(textOf(found)).not.toMatch(/cases|More than needed/)
  })

  it('do not turn a pack that is too small into one that may do', () => {
    const found = judged(draftOf([kit, tent], { bodyLitres: 8 }))
    expect(found.words.answer).toBe('does-not')
    expect(textOf(found)).not.toMatch(/cases/)
  })
})

describe('a plan with things without litres', () => {
  const jacket = { id: 'jacket', name: 'Jacket', massKg: 0.5, litres: 4 }
  const CHANCE = /\d chances? in (?:10|20)|\d of 10 cases|[Ll]ikely \d|Chance that/
  /** Masses are all known here, so that a load is safe can be told. */
  const SAFE_LOAD = /at most,? (\d\S* kg )?in (about )?9 of 10 cases|Likely [\d.]+ to [\d.]+\skg:/g

  it('is told no chance and no likely range anywhere', () => {
    for (const bodyLitres of [8, 19.5, 80]) {
      const { help, look, why, rows, report } = allWords(
        judged(draftOf([kit, jacket, tent], { bodyLitres, outsideLitres: 6 }, { ratedKg: 40 })),
      )
      for (const text of [help, look, why, rows, report])
        expect(text.replaceAll(SAFE_LOAD, '')).not.toMatch(CHANCE)
    }
  })

  it('is told them where all is said', () => {
    const { why, report } = allWords(judged(draftOf([kit, jacket], { bodyLitres: 19.5 })))
    expect(why).toMatch(CHANCE)
    expect(report).toMatch(CHANCE)
  })

  it('asks of another pack at least what is counted', () => {
    const { look, why } = allWords(judged(draftOf([kit, tent], { bodyLitres: 3 })))
    expect(look).toMatch(/Look for at least \d+ L of main body/)
    expect(look).not.toMatch(/nine times in ten/)
    expect(why).toMatch(/"at least \d+\.\d L"/)
  })

  it('lets a change be told by what is counted', () => {
    const { help, remedies } = allWords(
      judged(draftOf([kit, jacket, tent], { bodyLitres: 17, outsideLitres: 6 }, { ratedKg: 40 })),
    )
    expect(remedies).not.toEqual([])
    expect(help).toMatch(/at least \d+\.\d L are needed/)
  })

  it('tells room and reach as the most they can be', () => {
    const food = { id: 'food', name: 'Food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 }
    const { report, why } = allWords(judged(draftOf([kit, food, tent], { bodyLitres: 40 })))
    expect(report).toMatch(/room at most \+\d/)
    expect(report).toMatch(/reach at most \d/)
    expect(report).not.toMatch(/rating at most/)
    expect(why).toMatch(/at most \d+\.\d L to spare/)
    expect(why).toMatch(/at most \d+\.\d days/)
  })
})

describe('a plan with things without a mass', () => {
  const rope = { id: 'rope', name: 'Rope', litres: 1 }

  it('is told no load that is safe, and its margins as the most they can be', () => {
    const { report, why, rows } = allWords(judged(draftOf([kit, rope])))
    for (const text of [report, why]) expect(text).not.toMatch(/at most,? (\d\S* kg )?in (about )?9 of 10/)
    expect(report).toMatch(/rating at most \+\d/)
    expect(report).toMatch(/carried at least \d/)
    expect(report).not.toMatch(/room at most/)
    expect(why).toMatch(/at most \d+\.\d kg to spare/)
    expect(rows).toMatch(/at least \d+\.\d kg where the rating is for the contents alone/)
  })

  it('asks of another pack at least what is counted, and leaves open whether it takes a frame', () => {
    const { look, why } = allWords(
      judged(draftOf([{ ...kit, massKg: 5 }, rope], { bodyLitres: 20 }, { ratedKg: 3 })),
    )
    expect(look).toMatch(/a rating of at least \d+\.\d kg for the contents \(at least \d/)
    expect(look).toMatch(/can’t be told whether it takes a frame/)
    expect(why).toMatch(/"at least \d+\.\d kg"/)
  })
})

describe('things without litres and things without a mass', () => {
  const rope = { id: 'rope', name: 'Rope', litres: 1 }

  it('are said in one verdict', () => {
    const open = judged(draftOf([kit, tent, mat, rope], { bodyLitres: 30 }, { ratedKg: 9 }))
    expect(textOf(open)).toMatch(
      /^2 items without litres and 1 item without a mass: if large or heavy, the pack may be too small or overloaded\./,
    )
    const sure = judged(draftOf([kit, tent, mat, rope], { bodyLitres: 80 }, { ratedKg: 40 }))
    expect(textOf(sure)).toMatch(/without a mass: even if large and heavy, it does\./)
    const fails = judged(draftOf([kit, tent, rope], { bodyLitres: 8 }))
    expect(textOf(fails)).toMatch(/1 item without litres and 1 item without a mass: not counted\./)
    for (const found of [open, sure, fails])
      expect(found.words.verdicts.filter(({ code }) => code.endsWith('-missing'))).toHaveLength(1)
  })
})

describe('things without a mass', () => {
  it('leave the load a lower bound and the room as sure as it was', () => {
    const found = judged(draftOf([kit, { id: 'rope', name: 'Rope', litres: 1 }]))
    expect(found.missing.litres).toEqual([])
    expect(found.missing.mass).toEqual([{ name: 'Rope', path: 'gear/rope/massKg' }])
    expect(found.words.answer).toBe('does')
    expect(textOf(found)).toMatch(/1 item without a mass: even if heavy, it does\./)
    expect(textOf(found)).toMatch(/Carries the load so far:/)
    expect(textOf(found)).toMatch(/that it fits/)
  })

  it('leave it open whether a pack does that heavy ones would overload', () => {
    const rope = { id: 'rope', name: 'Rope', litres: 1 }
    const found = judged(draftOf([kit, rope], { bodyLitres: 20 }, { ratedKg: 6 }))
    expect(found.words.answer).toBe('cannot-tell')
    expect(textOf(found)).toMatch(/^1 item without a mass: if heavy, the pack would be overloaded\./)
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

  it('says what a pack full of things of the usual weight would come to, where its limit is known', () => {
    const told = (pack: object, setup: object) =>
      plain(textOf(judged(draftOf([], pack, setup)))).replace('No gear yet: add what you carry. ', '')
    expect(told({ bodyLitres: 60 }, { ratedKg: 12 })).toMatch(
      /^Full, more than it can carry: about 14\.2 kg at 0\.22 kg\/L, over 12\.0 kg, its rating\.$/,
    )
    expect(told({ bodyLitres: 40 }, { ratedKg: 12 })).toMatch(
      /^Full, it can be carried: about 9\.8 kg .* within 12\.0 kg/,
    )
    expect(told({ bodyLitres: 50 }, { frame: 'frameless', ratedKg: undefined })).toMatch(
      /over 9\.1 kg, the usual limit without a frame/,
    )
    expect(told({ bodyLitres: 50 }, { ratedKg: undefined })).not.toMatch(/Full,/)
  })

  it('says of a pack that the water alone overloads just that, and gives no chance and no help', () => {
    const draft = draftOf([], { bodyLitres: 90 }, { ratedKg: 2 })
    draft.trip.water = { litresPerHour: 0, campLitres: 0, reserveLitres: 4 }
    const { plan, reckoning, words } = judged(draft)
    expect(words.answer).toBe('does-not')
    expect(words.verdicts.map(({ code }) => code)).toEqual(['overloaded', 'nothing-taken'])
    const printed = plain(textReport(plan, reckoning))
    expect(printed).toMatch(/Overloaded by/)
    expect(printed).not.toMatch(/in (about|more than) \d+ of|room |What would/)
  })
})

describe('a frameless set-up without a rating', () => {
  it('is held to the hiker’s own limit, and nothing is said of what it can bear', () => {
    const found = judged(draftOf([kit], { bodyLitres: 45 }, { frame: 'frameless', ratedKg: undefined }))
    expect(found.words.answer).toBe('with-care')
    expect(textOf(found)).toMatch(/the usual limit without a frame/)
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
    expect(enoughText(reckoning.need, metric)).toMatch(
      /^\d+\sL is enough in about 9 of 10 cases if the list is complete$/,
    )
  })
})
