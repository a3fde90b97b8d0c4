// Where heavy things go: the centre and moment of the load, and that moving dense things to the back never adds to it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import sources from '../../data/sources.json'
import type { ItemDocument, PackDocument } from '../../src/plan'
import { reckon } from '../../src/reckon'
import { formatsIn, momentIndex } from '../../src/report'
import { COMFORT, movedName, placingOf, placingWords, STUDIES } from '../../src/report/placing'
import { explain } from '../../src/report/why'
import { documents, planOf } from './plans'
import { dryAfterSpring, hungryAndDry, noWater, reckoned, smallPlan } from './small-plans'
import { contextOf } from './why-context'

const g = 9.80665
const pack: PackDocument = {
  name: 'Pack',
  bodyLitres: 60,
  innerHeightCm: 60,
  innerWidthCm: 32,
  innerDepthCm: 24,
  setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 30 }],
}
/** 8 kg of 36 L, and a dense thing of 4 kg and 4 L, 16 cm thick: the case of geometry.values.json. */
const gear: ItemDocument[] = [
  { id: 'rest', name: 'Rest', massKg: 8, litres: 36 },
  { id: 'dense', name: 'Dense', massKg: 4, litres: 4, build: 'rigid', lengthCm: 20, diameterCm: 16 },
]
const placed = (things: ItemDocument[], more: Partial<PackDocument> = {}) => {
  const plan = smallPlan({ gear: things, packs: [{ ...pack, ...more }], water: noWater })
  const reckoning = reckoned(plan)
  return { plan, reckoning, placing: placingOf(plan, reckoning, plan.packs[0]!) }
}

describe('the load of a main body', () => {
  it('has its centre in the middle of the depth, and moves in when the dense thing goes to the back (computed)', () => {
    const { placing } = placed(gear)
    expect(placing!.kg).toBeCloseTo(12, 9)
    expect(placing!.now.momentNm).toBeCloseTo(25.889556, 6)
    expect(placing!.after.momentNm).toBeCloseTo(24.6691729, 5)
    expect(placing!.moved.map(movedName)).toEqual(['Dense'])
    expect(placing!.moved[0]).toMatchObject({ kg: 4, fromCm: 12, toCm: 8 })
  })

  it('is that of the heaviest moment with all the water wanted, as the need tells it', () => {
    const plan = smallPlan({
      stops: dryAfterSpring,
      water: { litresPerHour: 1, campLitres: 0, reserveLitres: 0 },
      gear: hungryAndDry,
      packs: [pack],
    })
    const reckoning = reckoned(plan)
    const { moments, need } = reckoning
    expect(need.peakFullWaterAt).not.toEqual(need.peakAt)
    const placing = placingOf(plan, reckoning, plan.packs[0]!)!
    expect(placing.moment).toBe(momentIndex(moments, need.peakFullWaterAt))
    const words = placingWords(placing, { plan, reckoning, formats: formatsIn('metric') })
    expect(words.now).toContain('when you leave Spring, day 2')
    expect(words.basis).toContain('water your bottles do not hold')
  })

  it('is moved by what is denser than the whole only, three things at most, the heaviest first', () => {
    const many = Array.from({ length: 5 }, (_, i) => ({
      id: `d${i}`,
      name: `D${i}`,
      massKg: 1 + i,
      litres: 1,
    }))
    expect(placed([gear[0]!, ...many]).placing!.moved.map(movedName)).toEqual(['D4', 'D3', 'D2'])
    expect(placed([gear[0]!]).placing!.moved).toEqual([])
    expect(placed([{ ...gear[0]!, stow: 'outside-pocket' }]).placing).toBeNull()
  })

  it('is taken in a body of usual proportions where the pack does not say its sizes', () => {
    const { innerDepthCm: _d, innerHeightCm: _h, ...unknown } = pack
    const plan = smallPlan({ gear, packs: [{ ...unknown, bodyLitres: 36.191 }], water: noWater })
    const placing = placingOf(plan, reckoned(plan), plan.packs[0]!)!
    expect([placing.depthCm, placing.heightCm]).toEqual([expect.closeTo(24, 2), expect.closeTo(60, 2)])
    expect(placing.isMeasured).toBe(false)
  })

  it('never pulls harder once dense things are close, weighs what the moment says, and stays inside the pack', () => {
    fc.assert(
      fc.property(documents({ ration: 'fixed', litresPerHour: 'number' }), document => {
        const plan = planOf(document)
        const result = reckon(plan)
        if (!result.ok) return
        for (const one of plan.packs) {
          const placing = placingOf(plan, result.reckoning, one)
          if (!placing) continue
          const { now, after, moved, kg, depthCm, moment } = placing
          expect(kg).toBeCloseTo(result.reckoning.moments[moment]!.bodyKg, 6)
          expect(now.momentNm).toBeCloseTo(g * kg * now.behindM, 6)
          expect(after.momentNm).toBeLessThanOrEqual(now.momentNm * (1 + 1e-9))
          if (moved.length === 0) expect(after.momentNm).toBeCloseTo(now.momentNm, 9)
          for (const { toCm } of moved) expect(toCm).toBeLessThan(depthCm / 2)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('is told in words with both moments, as advice with a caution', () => {
    const { plan, reckoning, placing } = placed(gear)
    const words = placingWords(placing!, { plan, reckoning, formats: formatsIn('metric') })
    expect(words.now).toMatch(/22\scm behind the hips: 26\sN·m about them/)
    expect(words.after).toMatch(
      /^With Dense against the back and the rest outside it: 21\scm and 25\sN·m, 5\s%\sless\./,
    )
    expect(COMFORT.text).toMatch(/Comfort is personal.*stop/)
  })

  it('is explained with the balance of moments and its sources', () => {
    const { plan } = placed(gear)
    const [why] = explain({ kind: 'placing', pack: 0 }, contextOf(plan))
    expect(why!.result.value).toBeCloseTo(25.889556, 6)
    expect(why!.sourceKeys).toEqual(
      expect.arrayContaining(['static-balance', 'winter-2009', 'stuempfle-2004']),
    )
  })
})

describe('what is said of studies', () => {
  it('rests on entries of the register of which the abstract was read, as the words say', () => {
    const register: Record<string, { standing: string }> = sources
    for (const { text, sourceKeys } of STUDIES) {
      const read = sourceKeys.filter(key => key !== 'static-balance')
      expect(read.length).toBeGreaterThan(0)
      for (const key of read) expect(register[key]!.standing, text).toBe('abstract read')
    }
  })
})
