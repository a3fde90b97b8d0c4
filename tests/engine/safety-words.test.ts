// What could hurt somebody, in words: which cautions stand always, and what brings the others about.

import { describe, expect, it } from 'vitest'
import { textReport } from '../../src/cli/report'
import type { ItemDocument, PackDocument } from '../../src/plan'
import type { Notice } from '../../src/reckon'
import { belongsAtAnswer, cautionsOf, FIT_LINE, formatsIn } from '../../src/report'
import { explain } from '../../src/report/why'
import { reckoned, type Small, smallPlan } from './small-plans'
import { contextOf } from './why-context'

const formats = formatsIn('metric')
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

function told(small: Small, more: Notice[] = []) {
  const plan = smallPlan(small)
  const reckoning = reckoned(plan)
  const notices = [...reckoning.notices, ...more]
  return cautionsOf(plan, { ...reckoning, notices }, formats).map(caution => ({
    ...caution,
    text: plain(caution.text),
  }))
}
const having = (words: RegExp, small: Small, more: Notice[] = []) =>
  told(small, more).filter(({ text }) => words.test(text))

const leg = { km: 10 }
const overnight = [{ name: 'Start' }, { name: 'Camp', nights: 1, leg }, { name: 'End', leg }]
const food: ItemDocument = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 }
const fuel = (of: NonNullable<ItemDocument['fuel']>, more: Partial<ItemDocument> = {}): ItemDocument => ({
  ...{ id: 'fuel', name: 'Stove fuel', massKg: 0.1, litres: 0.2, use: 'nightly' },
  fuel: of,
  ...more,
})
const frameless = (ratedKg?: number): PackDocument => ({
  name: 'Sack',
  bodyLitres: 40,
  setups: [{ name: 'as it is', massKg: 0.5, frame: 'frameless', ...(ratedKg ? { ratedKg } : {}) }],
})
const heavy: ItemDocument = { id: 'stone', massKg: 18, litres: 10 }

describe('always', () => {
  it('treating water is a caution, also where none is carried', () => {
    const none = { litresPerHour: 0, campLitres: 0, reserveLitres: 0 }
    for (const small of [{}, { water: none }])
      expect(having(/treat all of it/, small)).toMatchObject([{ signal: 'CAUTION', about: 'water' }])
  })

  it('the symptoms that mean stop stand for every pack, once', () => {
    for (const packs of [[], [frameless()], [frameless(), frameless(30)]]) {
      const [stop, ...more] = having(/at pain in/, { packs, gear: [heavy] })
      expect(more).toEqual([])
      expect(stop).toMatchObject({ signal: 'CAUTION', about: 'load' })
      for (const word of ['back', 'hips', 'knees', 'arms', 'hands', 'stop'])
        expect(stop!.text).toContain(word)
    }
  })

  it('stands once above the packs of the readable report that none is judged by its fit', () => {
    const plan = smallPlan({ packs: [frameless(), frameless(30)] })
    const report = textReport(plan, reckoned(plan)).replace(/\s+/g, ' ')
    expect(report.split(FIT_LINE)).toHaveLength(2)
    expect(report).toContain(`PACKS ${FIT_LINE}`)
  })
})

describe('without a frame', () => {
  const about = (settings: NonNullable<Small['settings']>) =>
    having(/shoulders/, { packs: [frameless()], gear: [heavy], settings }).map(({ text }) => text)

  it('common practice is named as such, and the hiker’s own number as theirs', () => {
    expect(about({})).toEqual([expect.stringMatching(/Common practice, with no source .* 9\.1 kg/)])
    const [own] = about({ framelessCeilingKg: 12 })
    expect(own).toMatch(/Your own limit without a frame is 12\.0 kg/)
    expect(own).not.toMatch(/practice/)
  })
})

describe('heat', () => {
  // Without humidity WBGT is 0.567 T + 3.94 °C.
  const air = (airC: number) => ({ km: 5, airC, humidity: 0 })
  const stops = (...airs: number[]) => [
    { name: 'Start' },
    ...airs.map((airC, i) => ({ name: `Stop ${i + 1}`, leg: air(airC) })),
  ]
  const about = (small: Small) => having(/^Heat on/, { water: { litresPerHour: 1 }, ...small })

  it('is a caution from 25.6 °C WBGT and a warning from 29.4', () => {
    expect(about({ stops: stops(38.1) })).toEqual([])
    expect(about({ stops: stops(38.3) })).toMatchObject([{ signal: 'CAUTION' }])
    expect(about({ stops: stops(44.8) })).toMatchObject([{ signal: 'CAUTION' }])
    expect(about({ stops: stops(45) })).toMatchObject([{ signal: 'WARNING' }])
  })

  it('is told of the legs of each kind, with the hottest, and of the first hot days once', () => {
    const [warning, caution] = about({ stops: stops(50, 39, 46, 20, 41) })
    expect(warning!.text).toMatch(/^Heat on the way to Stop 1 and Stop 3: up to about 32 °C WBGT/)
    expect(caution!.text).toMatch(/^Heat on the way to Stop 2 and Stop 5: up to about 27 °C WBGT/)
    expect([warning, caution].map(it => /first hot days/.test(it!.text))).toEqual([true, false])
    expect(warning!.text).toMatch(/soldiers used to heat/)
    expect(warning!.at).toEqual([0, 2])
    expect(warning!.asks).toMatchObject([{ about: { kind: 'heat', leg: 0 } }])
    expect(caution!.asks).toMatchObject([{ about: { kind: 'heat', leg: 4 } }])
  })

  it('comes of the trip’s weather too, and never of air that nobody gave', () => {
    expect(about({ weather: { airC: 45, humidity: 0 } })).toHaveLength(1)
    expect(about({ weather: { humidity: 1 }, water: { litresPerHour: 'from-heat' } })).toEqual([])
  })
})

describe('a rate under the heat table’s', () => {
  it('is told once for all its legs, with the most that the table asks for and its reason', () => {
    const small = {
      stops: [
        { name: 'Start' },
        { name: 'Dune', leg: { km: 4, airC: 30 } },
        { name: 'Pan', leg: { km: 4, airC: 45 } },
      ],
      water: { litresPerHour: 0.4 },
    }
    const [only, ...more] = having(/heat table asks/, small)
    expect(more).toEqual([])
    expect(only!.text).toMatch(
      /^You plan on 0\.40 L\/h\. On the legs to Dune and Pan the heat table asks for up to 0\.95 L\/h/,
    )
    const context = contextOf(smallPlan(small))
    const [table] = explain({ kind: 'heat-table', leg: 1 }, context)
    expect(plain(table!.result.text)).toBe('0.95 L/h')
    expect(plain(JSON.stringify(table!.inputs))).toContain('0.40 L/h')
  })
})

describe('drinking too much', () => {
  it('names salty food, and that it does not undo it', () => {
    const [warned] = having(/overhydration/, { water: { litresPerHour: 1.6 } })
    expect(warned).toMatchObject({ signal: 'WARNING' })
    expect(warned!.text).toMatch(/eat salty food.* salt does not undo/)
  })
})

describe('food', () => {
  it('that is stored names animals that can hurt, and the law', () => {
    expect(having(/Food draws/, { stops: overnight, gear: [food] })).toMatchObject([
      { signal: 'CAUTION', text: expect.stringMatching(/animals that can hurt you.* is law in many places/) },
    ])
  })

  it('that leaves over a fifth of the energy wanting is a caution, and up to a fifth is none', () => {
    const about = (deficit: number, ration: 'energy' | 'fixed' = 'energy') =>
      having(/go without/, { stops: overnight, gear: [food], meals: { ration, deficit } })
    expect(about(0.2)).toEqual([])
    expect(about(0.25)).toMatchObject([
      { signal: 'CAUTION', about: 'energy', text: expect.stringMatching(/go without 25 %/) },
    ])
    expect(about(0.25, 'fixed')).toEqual([])
  })
})

describe('fuel', () => {
  it('of methanol is called poisonous, by its name in the gear', () => {
    const methanol = fuel({ kind: 'methanol', boilLitres: 1 })
    expect(having(/poisonous/, { stops: overnight, gear: [methanol] })).toMatchObject([
      { signal: 'WARNING', about: 'fuel', text: expect.stringMatching(/^Stove fuel: methanol is poisonous/) },
    ])
    const ethanol = fuel({ kind: 'ethanol', boilLitres: 1 })
    expect(
      having(/poisonous/, { stops: overnight, gear: [ethanol, { ...methanol, id: 'no', count: 0 }] }),
    ).toEqual([])
  })

  it('that melts snow is named where snow is the only water', () => {
    const melting = fuel({ kind: 'gas', meltLitres: 3 })
    expect(having(/melt snow/, { stops: overnight, gear: [melting] })).toMatchObject([
      { signal: 'WARNING', text: expect.stringMatching(/no fuel means no water/) },
    ])
    expect(having(/melt snow/, { stops: overnight, gear: [fuel({ kind: 'gas', boilLitres: 3 })] })).toEqual(
      [],
    )
  })
})

describe('the young', () => {
  it('from 14 to 17 years are told that the equations are for adults', () => {
    const at = (ageYears: number) =>
      having(/are for adults\. From 14 to 17/, { carrier: { ageYears } }).length
    expect([13, 14, 17, 18].map(at)).toEqual([0, 1, 1, 0])
    expect(having(/No energy figures under 14/, { carrier: { ageYears: 13 } })).toHaveLength(1)
  })
})

describe('beside the answer itself', () => {
  it('stand the warnings, the young and a load over common practice; the rest waits', () => {
    const over = { code: 'load-over-common-practice', share: 0.3, limit: 0.2 } as const
    const small = {
      carrier: { ageYears: 15 },
      gear: [heavy],
      weather: { airC: 45 },
      water: { litresPerHour: 1 },
    }
    const beside = told(small, [over]).filter(belongsAtAnswer)
    expect(beside.map(({ signal, about }) => `${signal} ${about}`)).toEqual([
      'CAUTION load',
      'WARNING heat',
      'CAUTION load',
    ])
    expect(beside[0]!.text).toMatch(/^Children and young people/)
  })
})

describe('a load over common practice', () => {
  const over = { code: 'load-over-common-practice', share: 0.342, limit: 0.3 } as const

  it('is told with both shares instead of the hiker’s own limit, and asks for the lightest set-up', () => {
    const small = { gear: [heavy], packs: [{ ...frameless(), name: 'Other' }, frameless(30)] }
    const [caution, ...more] = having(/of your body mass/, small, [over])
    expect(more).toEqual([])
    expect(caution).toMatchObject({ signal: 'CAUTION', about: 'load' })
    expect(caution!.text).toMatch(
      /^With the lightest pack the load is 34 % of .*; common practice, with no source behind it, stops at 30 %\./,
    )
    expect(caution!.asks).toMatchObject([{ about: { kind: 'load-share', setup: 0 } }])
    expect(having(/of your body mass/, small)[0]!.text).toMatch(/over your limit of/)
  })

  it('without packs is that of the contents, and its reason names the share it stops at', () => {
    const [caution] = having(/of your body mass/, { gear: [heavy] }, [{ ...over, share: 0.2002, limit: 0.2 }])
    expect(caution!.text).toMatch(/^Without a pack the load is 20\.0 % of .* stops at 20 %\./)
    const context = contextOf(smallPlan({ gear: [heavy] }))
    const notices = [...context.reckoning.notices, over]
    const [why] = explain(
      { kind: 'load-share' },
      { ...context, reckoning: { ...context.reckoning, notices } },
    )
    expect(plain(JSON.stringify(why!.inputs))).toContain('30 %; with the lightest pack it is 34 %')
  })
})
