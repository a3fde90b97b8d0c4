// How rigid things go into a pack, in words: the way, the number that decides, and that it agrees with the engine's codes.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, PackDocument } from '../../src/plan'
import { formatsIn, setupInWords } from '../../src/report'
import { fittingOf, fitWords, pairWords } from '../../src/report/fitting'
import { explain } from '../../src/report/why'
import { documents, planOf } from './plans'
import { noWater, reckoned, smallPlan } from './small-plans'
import { contextOf } from './why-context'

const metric = formatsIn('metric')
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

const pack: PackDocument = {
  name: 'Pack',
  bodyLitres: 40,
  innerHeightCm: 60,
  innerWidthCm: 32,
  innerDepthCm: 24,
  setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 30 }],
}
const thing = (sizes: Partial<ItemDocument>, more: Partial<ItemDocument> = {}): ItemDocument => ({
  id: 'thing',
  name: 'Item',
  massKg: 1,
  litres: 30,
  build: 'rigid',
  ...sizes,
  ...more,
})

function judged(gear: ItemDocument[], more: Partial<PackDocument> = {}) {
  const plan = smallPlan({ gear, packs: [{ ...pack, ...more }], water: noWater })
  const reckoning = reckoned(plan)
  const words = setupInWords(reckoning.packs[0]!, { plan, reckoning, formats: metric })
  const fitting = fittingOf(plan, plan.packs[0]!)
  const told = fitting.fitted.map(one => {
    const { way, because, change } = fitWords(one, metric)
    return plain(`${way}: ${because} ${change ?? ''}`)
  })
  const verdict = (code: string) => {
    const found = words.verdicts.find(one => one.code === code)
    return found ? plain(found.lead + found.rest) : null
  }
  return { plan, fitting, told: told[0], words, verdict, suffices: reckoning.packs[0]!.suffices }
}

describe('a rigid thing in a pack of 60 × 32 × 24 cm, oval', () => {
  it('fits upright, with its width and height against what there is', () => {
    const { told, verdict, words } = judged([thing({ diameterCm: 21, lengthCm: 27 })])
    expect(told).toMatch(/^fits upright: 21 cm across where there is room for 23 cm, 27 cm high .* 59 cm\./)
    expect(verdict('fitting')).toBeNull()
    expect(words.answer).not.toBe('does-not')
  })

  it('fits upright with less than 1 cm to spare, as the engine lets it pass', () => {
    const { told, suffices } = judged([thing({ diameterCm: 23.5, lengthCm: 59.5 })])
    expect(told).toMatch(/^fits upright: .*Less than 1 cm is to spare\./)
    expect(suffices).toBe(true)
  })

  it('fits only lying: said in the verdicts of a box, which has no code for it', () => {
    const sizes = { lengthCm: 27, widthCm: 29, depthCm: 4 }
    const { told, verdict, suffices } = judged([thing(sizes)], { innerHeightCm: 28.5 })
    expect(told).toMatch(
      /^fits only lying: 29 cm lie across where there is room for 30\.5 cm\. .*30 cm of height inside/,
    )
    expect(verdict('fitting')).toMatch(/^Fits only lying: Item, 29 cm lie across/)
    expect(suffices).toBe(true)
  })

  it('fits only aslant, and is counted as too long all the same', () => {
    const { told, verdict, suffices } = judged([thing({ diameterCm: 3, lengthCm: 62 })])
    expect(told).toMatch(
      /^fits only aslant: 62 cm in a height of 59 cm; leaning, up to \d+(\.\d)? cm .*counted as too long/,
    )
    expect(verdict('too-long')).toBe(
      'Something is too long: Item, 62 cm in a main body that is 60 cm high. It would go in only aslant, with nothing else in its way.',
    )
    expect(suffices).toBe(false)
  })

  it('will deform the back, and is counted as too wide', () => {
    const { told, verdict } = judged([thing({ diameterCm: 26, lengthCm: 30 })])
    expect(told).toMatch(
      /^bulges the pack’s back panel: 26 cm across where .* 23 cm\. 81\.7 cm around it .* 85\.\d cm/,
    )
    expect(told).toMatch(/It would stand with 27 cm of width and depth inside\. Or carry it outside\./)
    expect(verdict('too-wide')).toMatch(/26 cm across, where the main body gives 24 cm\. .*against your back/)
  })

  it('does not fit, by its girth or even aslant', () => {
    expect(judged([thing({ diameterCm: 31, lengthCm: 33 })]).told).toMatch(
      /^does not fit: 97\.4 cm around it, more than/,
    )
    expect(judged([thing({ diameterCm: 3, lengthCm: 90 })]).told).toMatch(
      /^does not fit: 90 cm long; even aslant/,
    )
    expect(judged([thing({ lengthCm: 40, widthCm: 30, depthCm: 22 })]).verdict('too-wide')).toMatch(
      /40 cm × 30 cm × 22 cm, in a section of 32 cm × 24 cm\. It goes in no other way either\./,
    )
  })

  it('is told by the side that is too long, whichever that is', () => {
    const box = thing({ lengthCm: 32, widthCm: 70, depthCm: 17 })
    const inside = { section: 'rectangle', innerHeightCm: 50, innerWidthCm: 30, innerDepthCm: 20 } as const
    const { told, verdict } = judged([box], inside)
    expect(verdict('too-long')).toBe(
      'Something is too long: Item, 70 cm in a main body that is 50 cm high. It goes in no other way either.',
    )
    expect(verdict('too-wide')).toBeNull()
    expect(told).toMatch(/^does not fit: 70 cm long; even aslant/)
  })

  it('is told twice where it is both too long and too wide', () => {
    const { verdict } = judged([thing({ diameterCm: 26, lengthCm: 62 })])
    expect(verdict('too-long')).toMatch(/Item, 62 cm in/)
    expect(verdict('too-wide')).toMatch(/Item, 26 cm across/)
  })

  it('is not judged while sizes are missing, of it or of the pack', () => {
    const { fitting } = judged([thing({ lengthCm: 20 })])
    expect(fitting.unjudged.map(({ missing }) => missing)).toEqual([['width across']])
    const { innerDepthCm: _depth, innerHeightCm: _height, ...half } = pack
    const plan = smallPlan({ gear: [thing({ lengthCm: 20, diameterCm: 9 })], packs: [half], water: noWater })
    expect(fittingOf(plan, plan.packs[0]!)).toMatchObject({
      missing: ['height', 'depth'],
      things: 1,
      fitted: [],
    })
  })
})

describe('two round things in a pack', () => {
  const pairs = (gear: ItemDocument[], more: Partial<PackDocument> = {}) =>
    judged(gear, more).fitting.pairs.map(pair => plain(pairWords(pair, metric)))

  it('stand side by side up to 15.4 cm each with the clearance taken off', () => {
    const two = (diameterCm: number, lengthCm: number) =>
      pairs([thing({ diameterCm, lengthCm }, { count: 2 })])
    expect(two(15.4, 40)).toEqual(['Two of Item stand side by side.'])
    expect(two(16.2, 28)[0]).toMatch(/only one above the other: side/)
    expect(two(22, 40)[0]).toMatch(/do not go in together/)
    expect(two(7, 20)).toEqual([])
  })

  it('stand side by side with less than 1 cm to spare, as a single thing is let pass', () => {
    const two = (lengthCm: number, innerHeightCm: number) =>
      pairs([thing({ diameterCm: 16, lengthCm }, { count: 2 })], { innerHeightCm })
    expect(two(14, 20)).toEqual(['Two of Item stand side by side, with less than 1 cm to spare.'])
    expect(pairs([thing({ diameterCm: 22, lengthCm: 29.8 }, { count: 2 })])).toEqual([
      'Two of Item go in only one above the other, with less than 1 cm to spare: side by side they are too wide.',
    ])
  })

  it('of different things are told only where they do not go in together, and then warn', () => {
    const gear = (lengthCm: number) => [
      thing({ diameterCm: 20, lengthCm }, { litres: 10 }),
      thing({ diameterCm: 18, lengthCm }, { id: 'other', name: 'Other', litres: 10 }),
    ]
    expect(pairs(gear(25))).toEqual([])
    const { verdict, words } = judged(gear(45))
    expect(verdict('fitting-pair')).toMatch(/^Not both: Item and Other do not go in together/)
    expect(words.verdicts.find(({ code }) => code === 'fitting-pair')!.weight).toBe('warns')
  })
})

describe('the fit of any plan', () => {
  it('agrees with the engine: what is counted is what its codes say, and nothing else is said not to go in', () => {
    fc.assert(
      fc.property(documents({ ration: 'fixed', litresPerHour: 'number' }), document => {
        const plan = planOf(document)
        const reckoning = reckoned(plan)
        for (const setup of reckoning.packs) {
          const { fitted, missing, unjudged } = fittingOf(plan, plan.packs[setup.pack]!)
          const { verdicts, answer } = setupInWords(setup, { plan, reckoning, formats: metric })
          expect(answer === 'does-not').toBe(!setup.suffices)
          expect(new Set(verdicts.map(({ code }) => code)).size).toBe(verdicts.length)
          if (missing.length > 0) continue
          if (unjudged.length === 0)
            for (const code of ['too-long', 'too-wide'] as const)
              expect(fitted.some(({ counted }) => counted.includes(code))).toBe(setup.verdicts.includes(code))
          for (const { counted, way } of fitted) {
            for (const code of counted) expect(setup.verdicts).toContain(code)
            if (counted.length === 0) expect(['upright', 'lying', 'aslant']).toContain(way)
          }
        }
      }),
      { numRuns: 60 },
    )
  })

  it('is explained with the rule, the sizes and where to change them', () => {
    const { plan } = judged([thing({ diameterCm: 26, lengthCm: 30 })])
    const context = { ...contextOf(plan), packIds: [{ id: 'p', setupIds: ['s'] }] }
    const [why] = explain({ kind: 'fit', pack: 0, item: 'thing' }, context)
    expect(why!.result.text).toBe('bulges the pack’s back panel')
    expect(why!.inputs.map(({ path }) => path)).toEqual([
      'gear/thing/lengthCm',
      'gear/thing/diameterCm',
      'packs/p/innerHeightCm',
      'packs/p/innerWidthCm',
      'packs/p/innerDepthCm',
      'packs/p/section',
      undefined,
    ])
    expect(why!.sourceKeys).toContain('elementary-geometry')
    expect(explain({ kind: 'fit', pack: 0, item: 'gone' }, context)).toEqual([])
    const { plan: tooLong } = judged([thing({ diameterCm: 3, lengthCm: 90 })])
    const [none] = explain({ kind: 'fit', pack: 0, item: 'thing' }, contextOf(tooLong))
    expect(plain(none!.inputs.at(-1)!.value)).toBe('0 cm: it goes in no way even so')
  })
})
