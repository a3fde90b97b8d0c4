// The hiker's own thresholds: said where they are given, silent where not, and never part of the codes.

import { describe, expect, it } from 'vitest'
import demo from '../../data/demo-plan.json'
import { parsePlan } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { formatsIn, setupInWords } from '../../src/report'

function wordsWith(settings: Record<string, number>) {
  const parsed = parsePlan({ ...demo, settings })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const reckoned = reckon(parsed.plan)
  if (!reckoned.ok) throw new Error('does not settle')
  const { reckoning } = reckoned
  const context = { plan: parsed.plan, reckoning, formats: formatsIn('metric') }
  const words = reckoning.packs.map(setup => setupInWords(setup, context))
  return { reckoning, words, codes: words.map(({ verdicts }) => verdicts.map(({ code }) => code)) }
}

describe('own thresholds', () => {
  it('are silent while the hiker has none', () => {
    expect(
      wordsWith({})
        .codes.flat()
        .filter(code => code.startsWith('own-')),
    ).toEqual([])
  })

  it('say which packs are light by the hiker’s measure, the limit included', () => {
    const limit = Math.min(...wordsWith({}).reckoning.packs.map(pack => pack.gramsPerLitre))
    const { words, reckoning } = wordsWith({ lightGramsPerLitre: limit })
    const leads = words.map(({ verdicts }) => verdicts.find(({ code }) => code === 'own-light')?.lead)
    expect(leads).toEqual(
      reckoning.packs.map(pack =>
        pack.gramsPerLitre <= limit ? 'Light by your measure:' : 'Not light by your measure:',
      ),
    )
    expect(new Set(leads).size).toBe(2)
  })

  it('ask for headroom only of packs that hold the need, and warn of less', () => {
    const { words, reckoning } = wordsWith({ headroomLitres: 20 })
    reckoning.packs.forEach((pack, i) => {
      const short = pack.bodyMarginLitres >= 0 && pack.bodyMarginLitres < 20
      expect(words[i]!.verdicts.some(({ code }) => code === 'own-headroom')).toBe(short)
      if (short) expect(words[i]!.verdicts.find(({ code }) => code === 'own-headroom')!.weight).toBe('warns')
    })
    expect(reckoning.packs.some(pack => pack.bodyMarginLitres >= 0 && pack.bodyMarginLitres < 20)).toBe(true)
  })

  it('change no code and no number of the Reckoning', () => {
    expect(wordsWith({ headroomLitres: 20, lightGramsPerLitre: 13 }).reckoning).toEqual(
      wordsWith({}).reckoning,
    )
  })
})
