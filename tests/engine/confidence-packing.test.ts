// One's own packings and the trial run, in words: what one packing says, what several come to, and how formula and
// trial compare.

import { describe, expect, it } from 'vitest'
import { emptyDraft, type ItemDocument, type Plan } from '../../src/plan'
import type { Packing } from '../../src/plan/shelf'
import { type Simulation, simulateNeed } from '../../src/reckon'
import { formatsIn } from '../../src/report'
import {
  effectText,
  isCounted,
  listOnShelf,
  oddText,
  ownPackings,
  packedSeen,
  reckonedList,
  reckonsWith,
  reckonWith,
  simulationInWords,
  withNewPacking,
} from '../../src/report/confidence'
import { noWater, reckoned, smallPlan } from './small-plans'

const formats = formatsIn('metric')
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
    expect(reckonedList(plan, 'start')!.W).toBeCloseTo(reckoned(plan).moments[0]!.bodyLitres, 9)
    expect(reckonedList(plan, 'start')!.W).toBeGreaterThan(24)
    expect(reckonedList(plan, 'bare')!.W).toBeCloseTo(21, 9)
  })

  it('notes the things that were along, and how sure each was', () => {
    const ids = (when: 'start' | 'bare') => reckonedList(trip(), when)!.things.map(({ id }) => id)
    expect(ids('start')).toEqual(['kit', 'bottle', 'food'])
    expect(ids('bare')).toEqual(['kit', 'bottle'])
    const { W, things } = reckonedList(trip(), 'bare')!
    expect(things[0]).toEqual({
      id: 'kit',
      litres: 20,
      litresFrom: 'guess',
      u: expect.closeTo((20 * 0.3) / Math.sqrt(3) / W, 12),
    })
  })

  it('is kept under the ids of the shelf, once each', () => {
    const thing = (id: string) => ({ id, litres: 1, litresFrom: 'guess' as const, u: 0.01 })
    const gear = [
      { id: 'a', shelf: { id: 'A', at: 1 } },
      { id: 'a2', shelf: { id: 'A', at: 1 } },
      { id: 'b' },
    ]
    const list = listOnShelf({ W: 3, d: 0.02, things: [thing('a'), thing('a2'), thing('b')] }, { gear })
    expect(list).toEqual({ d: 0.02, things: [thing('A'), thing('a2'), thing('b')] })
  })

  it('is held against the same litres whatever the trip reckons with so far', () => {
    const own = trip({ personalFactor: 1.3, personalFactorSpread: 0.06 })
    for (const when of ['start', 'bare'] as const)
      expect(reckonedList(own, when)).toEqual(reckonedList(trip(), when))
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
    expect(reckonedList(planFor(gear, { rigidPacking: 1 }), 'bare')!.W).toBeCloseTo(9, 9)
  })

  const seen = (said: Parameters<typeof packedSeen>[0]['said'], bodyLitres = 50, W = 40) =>
    packedSeen({ said, bodyLitres, W })

  it('observes the factor from how full, from what would not go in, and from a carton', () => {
    expect(seen({ how: 'full', fullness: 0.9 })).toMatchObject({ ok: true, factor: 1.125, bodyLitres: 50 })
    expect(seen({ how: 'over', overLitres: 3 })).toMatchObject({ ok: true, factor: 53 / 40 })
    expect(seen({ how: 'box', lengthCm: 40, widthCm: 30, heightCm: 35 })).toEqual({
      ok: true,
      factor: expect.closeTo(42 / 40, 12),
      bodyLitres: expect.closeTo(42, 12),
    })
  })

  it('is refused in words outside the limits', () => {
    for (const refused of [
      seen({ how: 'full', fullness: 1 }, 300, 20),
      seen({ how: 'full', fullness: 1 }, 50, 0),
      seen({ how: 'over', overLitres: 11 }, 20, 20),
      seen({ how: 'full', fullness: 0.2 }, 50, 20),
      seen({ how: 'box', lengthCm: 900, widthCm: 30, heightCm: 35 }),
    ]) {
      expect(refused.ok).toBe(false)
      if (!refused.ok) expect(refused.message).toMatch(/\d|litres/)
    }
  })

  it('tells its effect in words', () => {
    expect(plain(effectText(1.08))).toBe('8 % more than calculated')
    expect(plain(effectText(0.9))).toBe('10 % less than calculated')
    expect(effectText(1.004)).toBe('as much as calculated')
  })

  it('is said to be odd beyond 30 % of the others, or of the model where there are none, and never else', () => {
    expect(oddText(1.29, [])).toBeNull()
    expect(oddText(1.31, [])).toMatch(/^31.% more than by the general model/)
    expect(oddText(1.31, [1.2])).toBeNull()
    expect(oddText(0.7, [1.1, 1.1])).toMatch(/^36.% less than by your other packings/)
  })
})

describe('one’s own packings and a trip', () => {
  const kept = (id: string, more: Partial<Packing> = {}): Packing => ({
    id,
    at: new Date(2026, 4, 2).getTime(),
    gear: 'Ridge',
    pack: 'Grey pack',
    bodyLitres: 50,
    said: { how: 'full', fullness: 0.9 },
    reckonedLitresAtFactor1: 40,
    factor: 1.125,
    list: {
      packFrom: 'stated',
      d: 0.02,
      things: [{ id: 'kit', litres: 40, litresFrom: 'guess', u: 0.17 }],
    },
    ...more,
  })
  const { list: _list, ...older } = kept('older')

  it('are told to a plan with all that a reckoning needs', () => {
    expect(ownPackings([kept('a')])).toEqual({
      packings: [
        {
          date: '2026-05-02',
          p: 0.9,
          pack: 'Grey pack',
          packLitres: 50,
          packFrom: 'stated',
          W: 40,
          d: 0.02,
          things: [{ id: 'kit', litres: 40, litresFrom: 'guess', u: 0.17 }],
        },
      ],
      older: 0,
    })
    const over = ownPackings([kept('b', { said: { how: 'over', overLitres: 3 } })]).packings[0]!
    expect(over).toMatchObject({ overLitres: 3 })
    expect(over).not.toHaveProperty('p')
    const box = kept('c', { said: { how: 'box', lengthCm: 40, widthCm: 30, heightCm: 35 } })
    expect(ownPackings([box]).packings[0]).toMatchObject({ p: 1 })
    expect(ownPackings([box]).packings[0]).not.toHaveProperty('pack')
  })

  it('leave out those that do not say what was along, and those no packing can be', () => {
    expect(isCounted(older)).toBe(false)
    expect(ownPackings([older, kept('a')])).toMatchObject({ older: 1, packings: [{ W: 40 }] })
    expect(ownPackings([kept('odd', { factor: 4 })]).packings).toEqual([])
    const many = Array.from({ length: 60 }, (_, i) => kept(`${i}`, { reckonedLitresAtFactor1: 20 + i }))
    expect(ownPackings(many).packings.map(({ W }) => W)).toEqual(Array.from({ length: 50 }, (_, i) => 30 + i))
  })

  it('go together only once the trip was told so, and part again', () => {
    const own = ownPackings([kept('a'), kept('b')])
    const draft = { ...emptyDraft(), settings: { rigidPacking: 0.7 } }
    expect(reckonsWith(draft, own)).toBe(false)
    const together = reckonWith(draft, own)
    expect(together).toEqual({ ...draft, packings: own.packings })
    expect(reckonsWith(together, own)).toBe(true)
    expect(reckonsWith(together, ownPackings([kept('a')]))).toBe(false)
    expect(reckonWith(together, { packings: [] })).toEqual(draft)
    expect(reckonsWith(draft, ownPackings([]))).toBe(false)
  })

  it('take the place of a factor that the trip had before', () => {
    const settings = { rigidPacking: 0.7, personalFactor: 1.1, personalFactorSpread: 0.06 }
    expect(reckonWith({ ...emptyDraft(), settings }, ownPackings([kept('a')])).settings).toEqual({
      rigidPacking: 0.7,
    })
  })

  it('join those that a trip came with, and replace its own from here', () => {
    const [before, own] = [ownPackings([kept('a')]), ownPackings([kept('a'), kept('b', { factor: 1.2 })])]
    const fromElsewhere = ownPackings([kept('c', { bodyLitres: 33 })])
    const came = withNewPacking(reckonWith(emptyDraft(), fromElsewhere), before, own)
    expect(came.packings).toEqual([...fromElsewhere.packings, own.packings[1]])
    expect(withNewPacking(emptyDraft(), before, own).packings).toEqual(own.packings)
    expect(withNewPacking(reckonWith(emptyDraft(), before), before, own).packings).toEqual(own.packings)
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
    const plan = planFor(many, { personalFactorSpread: 0.05 })
    const words = simulationInWords(simulated(plan), plan, formats)
    expect(words.agrees).toBe(true)
    expect(words.verdict).toMatch(/^Formula and simulation agree/)
    expect(words.rows).toHaveLength(4)
    expect(words.reasons).toEqual([])
    expect(plain(words.shapes)).toMatch(/Your packing factor is drawn from a bell shape of ± 5 %/)
  })

  it('says plainly where they differ, by how much, and why', () => {
    // Rigid and soft so balanced that either term rules by chance: the formula follows one only.
    const gear = [thing('pots', 80, { build: 'rigid' }), thing('soft', 24)]
    const plan = planFor(gear)
    const simulation = simulated(plan)
    expect(simulation.otherTermShare).toBeGreaterThan(0.1)
    const words = simulationInWords(simulation, plan, formats)
    expect(words.agrees).toBe(false)
    expect(words.verdict).toMatch(/^Formula and simulation differ by more than chance makes/)
    expect(words.rows.some(({ said }) => said?.endsWith('further apart than chance makes'))).toBe(true)
    expect(words.reasons.join(' ')).toMatch(/other rule of the packing model/)
  })

  it('raises no alarm over what rounding hides, and still says that chance does not make it', () => {
    const gear = [thing('pots', 20, { build: 'rigid' }), thing('soft', 6)]
    const plan = planFor(gear)
    const words = simulationInWords(simulated(plan), plan, formats)
    expect(words.agrees).toBe(true)
    expect(words.verdict).toMatch(/^Formula and simulation agree to .*, less than the rounding\.$/)
    expect(words.reasons[0]).toMatch(/^It is more than chance makes in 20,?.?000 packings\.$/)
  })

  it('says what it draws, and that packings are left aside', () => {
    const shapes = (settings: object, packings: Plan['packings'] = []) => {
      const plan = { ...planFor([thing('a', 3)], settings), packings }
      return plain(simulationInWords(simulated(plan), plan, formats).shapes)
    }
    expect(shapes({})).toMatch(
      /bell shape of ± 8 %, how well soft items fill the gaps evenly from not at all/,
    )
    expect(shapes({ fillEfficiency: 0.8 })).toMatch(/gaps from not at all to wholly, 60 % on average/)
    const packed = { date: '2026-05-02', p: 1, pack: null, packLitres: 4, packFrom: 'stated' } as const
    expect(shapes({}, [{ ...packed, W: 3, d: 0, things: [] }])).toMatch(/leave your own packings aside/)
  })

  it('agrees where there is no doubt at all', () => {
    const plan = planFor([thing('nothing', 0)])
    expect(simulationInWords(simulated(plan), plan, formats).agrees).toBe(true)
  })

  it('hears how far it is', () => {
    const told: number[] = []
    simulateNeed(planFor([thing('a', 3)]), { runs: 3500, seed: 1, onTried: tried => told.push(tried) })
    expect(told).toEqual([0, 1000, 2000, 3000])
  })
})
