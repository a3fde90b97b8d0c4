// One's own packings and the trial run, in words: what one packing says, what several come to, and how formula and
// trial compare.

import { describe, expect, it } from 'vitest'
import { emptyDraft, type ItemDocument, type Plan } from '../../src/plan'
import { type Simulation, simulateNeed } from '../../src/reckon'
import { shownIn } from '../../src/report'
import {
  effectText,
  litresAtFactor1,
  oddText,
  ownPacking,
  packedSeen,
  reckonsWith,
  reckonWith,
  trialInWords,
} from '../../src/report/trust'
import { noWater, reckoned, smallPlan } from './small-plans'

const shown = shownIn('metric')
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
const thing = (id: string, litres: number, more: Partial<ItemDocument> = {}): ItemDocument => ({
  id,
  name: id,
  massKg: 1,
  litres,
  ...more,
})
const planFor = (gear: ItemDocument[], settings: object = {}) => smallPlan({ gear, water: noWater, settings })

describe('one packing', () => {
  const food = thing('food', 2, { use: 'daily', kcalPerKg: 4000 })
  const bottle = thing('bottle', 1, { build: 'rigid', holdsWaterLitres: 1 })
  const trip = (settings: object = {}) =>
    smallPlan({
      stops: [
        { name: 'Start' },
        { name: 'Camp', nights: 1, leg: { km: 12 } },
        { name: 'End', leg: { km: 12 } },
      ],
      gear: [thing('kit', 20), thing('soft bottle', 0, { holdsWaterLitres: 6 }), bottle, food],
      meals: { ration: 'energy' },
      settings: { softPacking: 1, rigidPacking: 1, ...settings },
    })

  it('is held against the first moment with food and water, or against the things alone', () => {
    const plan = trip()
    expect(litresAtFactor1(plan, 'start')).toBeCloseTo(reckoned(plan).moments[0]!.bodyLitres, 9)
    expect(litresAtFactor1(plan, 'start')).toBeGreaterThan(24)
    expect(litresAtFactor1(plan, 'bare')).toBeCloseTo(21, 9)
  })

  it('is held against the same litres whatever the trip reckons with so far', () => {
    const own = trip({ personalFactor: 1.3, personalFactorSpread: 0.06 })
    for (const when of ['start', 'bare'] as const)
      expect(litresAtFactor1(own, when)).toBeCloseTo(litresAtFactor1(trip(), when)!, 9)
  })

  it('leaves out food told as the range of a kind, and keeps the box it rode in', () => {
    const range = { low: 1, typical: 2, high: 3 }
    const gear = [
      thing('canister', 9, { build: 'rigid', holdsLitres: 8 }),
      {
        ...thing('food', 2, { use: 'daily', inside: 'canister' }),
        litresFrom: 'kind' as const,
        litresRange: range,
      },
    ]
    expect(litresAtFactor1(planFor(gear, { rigidPacking: 1 }), 'bare')).toBeCloseTo(9, 9)
  })

  const seen = (
    said: Parameters<typeof packedSeen>[0]['said'],
    bodyLitres = 50,
    reckonedLitresAtFactor1 = 40,
  ) => packedSeen({ said, bodyLitres, reckonedLitresAtFactor1 })

  it('observes the factor from how full, from what would not go in, and from a carton', () => {
    expect(seen({ how: 'full', fullness: 0.9 })).toMatchObject({ ok: true, factor: 1.125, bodyLitres: 50 })
    expect(seen({ how: 'over', overLitres: 3 })).toMatchObject({ ok: true, factor: 53 / 40 })
    expect(seen({ how: 'box', lengthCm: 40, widthCm: 30, heightCm: 35 })).toEqual({
      ok: true,
      factor: expect.closeTo(42 / 40, 12),
      bodyLitres: expect.closeTo(42, 12),
      reckonedLitresAtFactor1: 40,
    })
  })

  it('is refused in words outside the limits', () => {
    for (const refused of [
      seen({ how: 'full', fullness: 1 }, 300, 20),
      seen({ how: 'full', fullness: 1 }, 50, 0),
      seen({ how: 'over', overLitres: 90 }, 20, 40),
      seen({ how: 'box', lengthCm: 900, widthCm: 30, heightCm: 35 }),
    ]) {
      expect(refused.ok).toBe(false)
      if (!refused.ok) expect(refused.message).toMatch(/\d|litres/)
    }
  })

  it('tells its effect in words', () => {
    expect(plain(effectText(1.08))).toBe('8 % more than reckoned')
    expect(plain(effectText(0.9))).toBe('10 % less than reckoned')
    expect(effectText(1.004)).toBe('as much as reckoned')
  })

  it('is said to be odd beyond 30 % of the others, or of the model where there are none, and never else', () => {
    expect(oddText(1.29, [])).toBeNull()
    expect(oddText(1.31, [])).toMatch(/^31.% more than by the general model/)
    expect(oddText(1.31, [1.2])).toBeNull()
    expect(oddText(0.7, [1.1, 1.1])).toMatch(/^36.% less than by your other packings/)
  })
})

describe('one’s own packings and a trip', () => {
  it('go together only once the trip was told so, and part again', () => {
    const own = ownPacking([{ factor: 1.04 }, { factor: 1.08 }])!
    expect(own).toEqual({ count: 2, factor: expect.closeTo(1.06, 12), spread: 0.03 })
    const general = { personalFactor: 1, personalFactorSpread: null }
    expect(reckonsWith(general, own)).toBe(false)
    const draft = { ...emptyDraft(), settings: { rigidPacking: 0.7 } }
    const with_ = reckonWith(draft, own)
    expect(with_.settings).toEqual({
      rigidPacking: 0.7,
      personalFactor: own.factor,
      personalFactorSpread: 0.03,
    })
    expect(reckonsWith({ ...general, ...with_.settings } as typeof general, own)).toBe(true)
    expect(reckonWith(with_, null)).toEqual(draft)
  })

  it('are none where nothing was packed, and never spread further than settings may hold', () => {
    expect(ownPacking([])).toBeNull()
    expect(ownPacking([{ factor: 0.2 }, { factor: 5 }])!.spread).toBe(1)
  })
})

describe('a trial in words', () => {
  const simulated = (plan: Plan): Simulation => {
    const result = simulateNeed(plan, { runs: 20_000, seed: 1 })
    if (!result.ok) throw new Error(result.problem.message)
    return result.simulation
  }

  it('agrees where the formula is exact but for the shape', () => {
    const many = Array.from({ length: 12 }, (_, i) => thing(`thing ${i}`, 3, { litresFrom: 'dimensions' }))
    const words = trialInWords(simulated(planFor(many, { personalFactorSpread: 0.05 })), true, shown)
    expect(words.agrees).toBe(true)
    expect(words.verdict).toMatch(/^Formula and trial agree/)
    expect(words.rows).toHaveLength(4)
    expect(words.reasons).toEqual([])
    expect(words.shapes).toMatch(/bell shape with its spread/)
  })

  it('says plainly where they differ, by how much, and why', () => {
    // Rigid and soft so balanced that either term rules by chance: the formula follows one only.
    const gear = [thing('pots', 80, { build: 'rigid' }), thing('soft', 24)]
    const simulation = simulated(planFor(gear))
    expect(simulation.otherTermShare).toBeGreaterThan(0.1)
    const words = trialInWords(simulation, false, shown)
    expect(words.agrees).toBe(false)
    expect(words.verdict).toMatch(/^Formula and trial differ by more than chance makes/)
    expect(words.rows.some(({ said }) => said?.endsWith('further apart than chance makes'))).toBe(true)
    expect(words.reasons.join(' ')).toMatch(/other rule of the packing model/)
  })

  it('raises no alarm over what rounding hides, and still says that chance does not make it', () => {
    const gear = [thing('pots', 20, { build: 'rigid' }), thing('soft', 6)]
    const words = trialInWords(simulated(planFor(gear)), false, shown)
    expect(words.agrees).toBe(true)
    expect(words.verdict).toMatch(/^Formula and trial agree to .*, less than the rounding\.$/)
    expect(words.reasons[0]).toMatch(/^It is more than chance makes in 20,?.?000 packings\.$/)
  })

  it('agrees where there is no doubt at all', () => {
    const plan = planFor([thing('nothing', 0)])
    expect(trialInWords(simulated(plan), false, shown).agrees).toBe(true)
  })

  it('hears how far it is', () => {
    const told: number[] = []
    simulateNeed(planFor([thing('a', 3)]), { runs: 3500, seed: 1, onTried: tried => told.push(tried) })
    expect(told).toEqual([0, 1000, 2000, 3000])
  })
})
