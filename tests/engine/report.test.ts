// The words of a reckoning: verdicts, cautions and the readable report, for plans of every kind.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { textReport } from '../../src/cli/report'
import { type PackDocument, type Plan, parsePlan } from '../../src/plan'
import { type Reckoning, reckon } from '../../src/reckon'
import { cautionsOf, chanceText, formatsIn, GENERAL_LINE, setupInWords } from '../../src/report'
import workedPlan from './fixtures/worked-plan.json'
import { documents, planOf } from './plans'
import { noWater, reckoned, type Small, smallPlan } from './small-plans'

const metric = formatsIn('metric')
/** Numbers keep to their units by hard spaces; the tests do not mind which. */
const plainSpaces = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

function worked(): { plan: Plan; reckoning: Reckoning } {
  const parsed = parsePlan(workedPlan)
  if (!parsed.ok) throw new Error('the worked plan was refused')
  return { plan: parsed.plan, reckoning: reckoned(parsed.plan) }
}

const signalsOf = (small: Small) => {
  const plan = smallPlan(small)
  return cautionsOf(plan, reckoned(plan), metric)
}

const reportOf = (small: Small) => {
  const plan = smallPlan(small)
  return plainSpaces(textReport(plan, reckoned(plan)))
}

const packOf = (bodyLitres: number, more: Partial<PackDocument> = {}): PackDocument => ({
  name: 'Pack',
  bodyLitres,
  setups: [{ name: 'as sold', massKg: 1, frame: 'framed', ratedKg: 12 }],
  ...more,
})

const food = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 } as const
const restTrip = [
  { name: 'Start' },
  { name: 'Hut', nights: 3, leg: { km: 10 } },
  { name: 'End', leg: { km: 8 } },
]

describe('the readable report of the worked plan', () => {
  const { plan, reckoning } = worked()
  const text = plainSpaces(textReport(plan, reckoning))

  it('gives the need, the peak and where they are', () => {
    expect(text).toContain('Main body  49 L')
    expect(text).toContain('55 L is enough in about 9 of 10')
    expect(text).toMatch(/Load {7}16\.7\s*kg/)
    expect(text).toContain('when you leave Larch Spring, day 2')
  })

  it('gives every day and every set-up with its answer', () => {
    for (const { day } of reckoning.days) expect(text).toContain(`Day ${day}  `)
    expect(text).toContain('Pack B, 52 L with stays, stays out: ')
    expect(text.match(/^[●◐○×] .*: (DOES|CAN)/gm)).toHaveLength(reckoning.packs.length)
  })

  it('says each verdict in its own words, the deciding one first', () => {
    for (const setup of reckoning.packs) {
      const { verdicts, answer } = setupInWords(setup, { plan, reckoning, formats: metric })
      expect(setup.suffices).toBe(answer !== 'does-not')
      if (!setup.suffices) expect(verdicts[0].weight).toBe('fails')
      const codes = verdicts
        .map(verdict => verdict.code)
        .filter(code => code !== 'fits' && code !== 'bears-load')
      // The load is too much for this carrier without any pack: a caution says so once.
      const aboutIt = setup.verdicts.filter(code => code !== 'heavy-for-carrier')
      expect(codes.sort()).toEqual(aboutIt.sort())
    }
  })

  it('warns of the water that falls short, with where and how much', () => {
    expect(text.replace(/\s+/g, ' ')).toMatch(
      /WARNING: Your bottles hold 6\.0 ?L of 8\.0 ?L of water needed from Larch Spring to .*, and too little on 1 more stretch\. .* From Ferry Village to .*: 6\.0 ?L of 7\.7 ?L/,
    )
  })

  it('ends by saying what overrules it', () => {
    expect(text.replace(/\s+/g, ' ').trim().endsWith(GENERAL_LINE)).toBe(true)
  })

  it('keeps to 78 columns where names allow', () => {
    const wide = text.split('\n').filter(line => line.length > 78)
    expect(wide.filter(line => !line.startsWith('Day '))).toEqual([])
  })
})

describe('the readable report', () => {
  it('has a row for rest days beside rations that follow energy', () => {
    const text = reportOf({ stops: restTrip, gear: [food], meals: { ration: 'energy' } })
    expect(text).toMatch(/Day 2\s+rest/)
    expect(text).toMatch(/Day 4\s+Hut to End.*rations/)
  })

  it('has a row for rest days beside fixed rations, and for children without energy', () => {
    expect(reportOf({ stops: restTrip, gear: [food] })).toMatch(/Day 3\s+rest/)
    expect(reportOf({ stops: restTrip, gear: [food], carrier: { ageYears: 9 } })).not.toContain('kcal')
  })

  it('never says Infinity, NaN, undefined or null, whatever the plan', () => {
    const kinds = fc
      .constantFrom('fixed', 'energy')
      .chain(ration => documents({ ration, litresPerHour: 'number' }))
    const property = fc.property(kinds, fc.constantFrom('metric', 'us'), (document, system) => {
      const plan = planOf(document)
      const result = reckon(plan)
      if (!result.ok) return
      const text = textReport(plan, result.reckoning, system)
      expect(text).not.toMatch(/Infinity|NaN|undefined|null|∞/)
      expect(text).toContain('THE NEED')
    })
    fc.assert(property, { numRuns: 80 })
  })

  it('does not count how many times more than nothing a pack holds', () => {
    expect(reportOf({ water: noWater, packs: [packOf(30)], wet: false })).not.toContain('Infinity')
  })

  it('has none of the words that blame or plead', () => {
    const { plan, reckoning } = worked()
    const words = /\b(please|sorry|valid|invalid|oops|forbidden|required)\b/i
    expect(textReport(plan, reckoning)).not.toMatch(words)
  })
})

describe('cautions', () => {
  it('use the signal words in their standard sense: what can kill warns, what can hurt cautions', () => {
    const { plan, reckoning } = worked()
    for (const { signal, about } of cautionsOf(plan, reckoning, metric)) {
      if (signal === 'WARNING') expect(['water', 'heat', 'fuel']).toContain(about)
      if (about === 'load') expect(signal).toBe('CAUTION')
      if (about === 'model') expect(signal).toBe('NOTICE')
    }
  })

  it('warn of trusted doubtful sources by name, and only when they are trusted', () => {
    const stops = [
      { name: 'A' },
      { name: 'Dry Tarn', water: 'doubtful' as const, leg: { km: 3 } },
      { name: 'B', leg: { km: 3 } },
    ]
    const about = (trustDoubtful: boolean) =>
      signalsOf({ stops, water: { trustDoubtful } }).filter(caution => caution.text.includes('Dry Tarn'))
    expect(about(true)).toMatchObject([{ signal: 'WARNING', about: 'water' }])
    expect(about(false)).toEqual([])
  })

  it('warn of drinking more than a body should, and not at the limit', () => {
    const warned = (litresPerHour: number) =>
      signalsOf({ water: { litresPerHour } }).some(caution => caution.text.includes('overhydration'))
    expect([warned(1.42), warned(1.43)]).toEqual([false, true])
  })

  it('caution the young, and whoever carries more than they set out to', () => {
    const anvil = { id: 'anvil', massKg: 30, litres: 3 }
    expect(signalsOf({ carrier: { ageYears: 16 } })).toContainEqual(
      expect.objectContaining({ signal: 'CAUTION', text: expect.stringContaining('young people') }),
    )
    expect(signalsOf({ gear: [anvil] })).toContainEqual(
      expect.objectContaining({
        signal: 'CAUTION',
        about: 'load',
        text: expect.stringContaining('body mass'),
      }),
    )
    const always = signalsOf({ gear: [] }).filter(caution => caution.about === 'load')
    expect(always.map(({ text }) => text)).toEqual([expect.stringMatching(/^With any pack, stop at pain/)])
  })

  it('do not warn of a shortfall that is only rounding', () => {
    const short = signalsOf({
      stops: [{ name: 'A' }, { name: 'B', leg: { km: 1, hours: 7 } }],
      water: { litresPerHour: 0.1, reserveLitres: 0.5 },
      gear: [{ id: 'bottle', massKg: 0.1, litres: 1, stow: 'outside-pocket', holdsWaterLitres: 1.2 }],
    }).filter(caution => caution.text.includes('bottles hold'))
    expect(short).toEqual([])
  })
})

describe('food', () => {
  const noFood = (small: Small) => signalsOf(small).filter(({ text }) => text.startsWith('There is no food'))
  const trip = (meals: 'carried' | 'provided') => [
    { name: 'Start' },
    { name: 'Hut', nights: 1, meals, leg: { km: 10 } },
    { name: 'End', leg: { km: 8 } },
  ]

  it('that is missing is said over several days with a carried meal, and on paper too', () => {
    expect(noFood({ stops: trip('carried') })).toMatchObject([{ signal: 'NOTICE', about: 'food' }])
    expect(noFood({ stops: trip('provided') })).toHaveLength(1)
    expect(reportOf({ stops: trip('carried') })).toContain('NOTICE: There is no food in the gear')
  })

  it('is not missed where it is there, on a day’s walk, or where every meal is provided', () => {
    expect(noFood({ stops: trip('carried'), gear: [food] })).toEqual([])
    expect(noFood({})).toEqual([])
    const meals = { breakfast: 0.5, trail: 0, supper: 0.5 }
    expect(noFood({ stops: trip('provided'), meals })).toEqual([])
  })
})

describe('warnings of one cause', () => {
  const camps = ['Cairn', 'Pass', 'Ridge', 'End']
  const stops = [
    { name: 'Start', water: 'sure' as const },
    ...camps.map((name, i) => ({ name, water: 'sure' as const, leg: { km: 10, hours: 3 + i } })),
  ]
  const bottle = {
    id: 'bottle',
    massKg: 0.1,
    litres: 1,
    stow: 'outside-pocket' as const,
    holdsWaterLitres: 1,
  }

  it('are told once, worst first, each stretch with its own reason', () => {
    const small = { stops, water: { litresPerHour: 1, reserveLitres: 0 }, gear: [bottle] }
    const [warned, ...more] = signalsOf(small).filter(({ text }) => text.includes('bottles hold'))
    expect(more).toEqual([])
    expect(plainSpaces(warned!.text)).toMatch(
      /^Your bottles hold 1\.0 L of 6\.0 L of water needed from Ridge to End, and too little on 3 more stretches\./,
    )
    expect(warned!.more!.map(plainSpaces)[0]).toBe('From Pass to Ridge: 1.0 L of 5.0 L.')
    expect(warned!.asks!.map(({ about }) => about)).toEqual(
      [3, 2, 1, 0].map(stop => ({ kind: 'carry', stop })),
    )
  })

  it('name every leg whose water the body cannot take', () => {
    const notices = camps.map((name, i) => ({ code: 'water-cap-hour' as const, leg: i, name }))
    const { plan, reckoning } = worked()
    const told = cautionsOf(plan, { ...reckoning, notices }, metric).filter(({ text }) =>
      text.startsWith('On'),
    )
    expect(told).toHaveLength(1)
    expect(told[0]!.text).toContain('On the legs to Cairn, Pass, Ridge and End the body')
  })
})

describe('a chance in words', () => {
  it('is a count out of ten that never says certain', () => {
    const chances = Array.from({ length: 101 }, (_, percent) => chanceText(percent / 100))
    for (const text of chances)
      expect(text).toMatch(
        /^(about [1-9] chances? in 10|less than 1 chance in 20|more than 19 chances in 20)$/,
      )
    expect(chanceText(0.7)).toBe('about 7 chances in 10')
    expect(chanceText(1)).toBe('more than 19 chances in 20')
  })
})
