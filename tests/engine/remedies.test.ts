// Long because the brute-force search it is held against stands beside the cases.
// What would make a set-up do: every remedy against the plan that it makes, reckoned anew.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan, PlanDocument } from '../../src/plan'
import {
  applyRemedy,
  type Change,
  type Reckoning,
  type Remedy,
  reckon,
  remediesFor,
  shortfallOf,
} from '../../src/reckon'
import { remedyInWords, shortfallInWords, shownIn } from '../../src/report'
import { documents, type Kind, planOf } from './plans'

function reckoned(plan: Plan): Reckoning {
  const result = reckon(plan)
  if (!result.ok) throw new Error(result.problem.message)
  return result.reckoning
}

const remediesOf = (plan: Plan, setupIndex = 0) => remediesFor(plan, reckoned(plan), setupIndex)
const kindsOf = (remedies: Remedy[]) => remedies.map(remedy => remedy.kind)
const find = <K extends Remedy['kind']>(remedies: Remedy[], kind: K) =>
  remedies.find((remedy): remedy is Remedy & { kind: K } => remedy.kind === kind)

describe('every remedy', () => {
  const kinds = [
    { ration: 'fixed', litresPerHour: 'number' },
    { ration: 'energy', litresPerHour: 'from-heat' },
    { ration: 'fixed', litresPerHour: 'number', packed: true },
  ] as const satisfies readonly Kind[]

  it.each<Kind>(kinds)(
    'makes its set-up do, with the figures it states: ration $ration, own packings $packed',
    { timeout: 60_000 },
    kind => {
      const seen = new Set<string>()
      const flagged = fc.tuple(documents(kind), fc.nat(3)).map(([document, flag]) => ({
        ...document,
        gear: (document.gear ?? []).map((item, i) => ({
          ...item,
          optional: (i + flag) % 2 === 0,
          mayRideOutside: (i + flag) % 3 === 0,
        })),
      }))
      fc.assert(
        fc.property(flagged, document => {
          const plan = planOf(document)
          const result = reckon(plan)
          if (!result.ok) return
          const { reckoning } = result
          reckoning.packs.forEach((before, setupIndex) => {
            const remedies = remediesFor(plan, reckoning, setupIndex)
            if (before.suffices) expect(remedies).toEqual([])
            for (const remedy of remedies) {
              seen.add(remedy.kind)
              // Fewer things make another factor, so that nothing is proven.
              if (kind.packed && 'proven' in remedy) expect(remedy.proven).toBe(plan.packings.length === 0)
              const after = reckoned(applyRemedy(plan, remedy))
              const setup = after.packs[remedy.kind === 'other-setup' ? remedy.setup : setupIndex]!
              expect(setup.suffices, remedy.kind).toBe(true)
              expect(setup.name).toBe(before.name)
              expect(after.need.waterShortLitres).toBeLessThanOrEqual(reckoning.need.waterShortLitres + 1e-9)
              expect(remedy.after).toMatchObject({
                bodyLitres: after.need.bodyLitres,
                peakLoadKg: after.need.peakLoadKg,
                carriedKg: setup.carriedKg,
                fitChance: setup.fitChance,
              })
              expect(structuredClone(remedy)).toEqual(remedy)
            }
          })
        }),
        { numRuns: kind.ration === 'energy' ? 90 : 60 },
      )
      expect(seen.size).toBeGreaterThan(3)
    },
  )
})

/** Two dry nights between sources, and a doubtful spring; 24 L of gear and 1.6 L of food a day. */
const walk: PlanDocument = {
  format: 'pack-reckoner/plan',
  version: 1,
  carrier: { massKg: 80 },
  trip: {
    stops: [
      { name: 'Gate' },
      { name: 'Well', water: 'sure', leg: { km: 10, hours: 4 } },
      { name: 'Ridge', nights: 1, leg: { km: 8, hours: 3 } },
      { name: 'Seep', water: 'doubtful', leg: { km: 6, hours: 2 } },
      { name: 'Ford', water: 'sure', nights: 1, leg: { km: 10, hours: 4 } },
      { name: 'Road', leg: { km: 10, hours: 4 } },
    ],
    water: { litresPerHour: 0.5, campLitres: 3, reserveLitres: 0 },
    meals: { spareDays: 1 },
    wet: false,
  },
  gear: [
    { id: 'all', massKg: 6, litres: 24, litresFrom: 'filled' },
    { id: 'food', massKg: 0.8, litres: 1.6, use: 'daily' },
    { id: 'coat', name: 'Rain coat', massKg: 0.4, litres: 2, mayRideOutside: true },
    { id: 'book', name: 'Book', massKg: 0.3, litres: 1, optional: true },
    {
      id: 'bag',
      name: 'Water bag',
      massKg: 0.1,
      litres: 0.2,
      holdsWaterLitres: 8,
      optional: true,
      mayRideOutside: true,
    },
  ],
  packs: [],
}

function walkWith(
  bodyLitres: number,
  ratedKg = 30,
  more: { spareDays?: number; outsideLitres?: number } = {},
) {
  const { spareDays = 1, outsideLitres = 3 } = more
  return planOf({
    ...walk,
    trip: { ...walk.trip, meals: { spareDays } },
    packs: [
      { name: 'P', bodyLitres, outsideLitres, setups: [{ name: 'it', massKg: 1, frame: 'framed', ratedKg }] },
    ],
  })
}

const need = reckoned(walkWith(80)).need

describe('the remedies of a walk with a dry camp', () => {
  it('move a coat outside when that is all it takes', () => {
    const [first] = remediesOf(walkWith(need.bodyLitres - 1.5))
    expect(first).toMatchObject({ kind: 'move-outside', move: ['coat'], proven: true })
    expect(first!.after.mends).toEqual(['room'])
  })

  it('move nothing outside where the pockets are too small or not known', () => {
    expect(kindsOf(remediesOf(walkWith(need.bodyLitres - 1.5, 30, { outsideLitres: 1 })))).not.toContain(
      'move-outside',
    )
    const plan = walkWith(need.bodyLitres - 1.5)
    const unknown = { ...plan, packs: [{ ...plan.packs[0]!, outsideLitres: null }] }
    expect(kindsOf(remediesOf(unknown))).not.toContain('move-outside')
  })

  it('never leave what holds water, nor hang a soft water bag outside', () => {
    const remedies = [1, 3, 5, 8].flatMap(less => remediesOf(walkWith(need.bodyLitres - less)))
    expect(remedies.length).toBeGreaterThan(4)
    expect(JSON.stringify(remedies)).not.toContain('"bag"')
  })

  it('camp at the source before the dry stop, and say how long the longest day becomes', () => {
    const camp = find(remediesOf(walkWith(need.bodyLitres - 2.5)), 'camp-at-water')!
    expect(camp).toMatchObject({ from: 2, to: 1, nights: 1, longestDayHours: 9 })
    const { stops } = applyRemedy(walkWith(40), camp).trip
    expect(stops.map(stop => stop.nights)).toEqual([0, 1, 0, 0, 1, 0])
  })

  it('trust a doubtful source only with its caution', () => {
    const trust = find(remediesOf(walkWith(80, need.peakLoadKg + 0.5)), 'trust-doubtful')!
    expect(trust).toMatchObject({ stops: [3], caution: 'confirm-sources' })
    expect(remedyInWords(trust, { plan: walkWith(80), shown: shownIn('metric') })).toContain(
      'Confirm it before you leave',
    )
  })

  it('resupply between the heaviest moment and the end', () => {
    const resupply = find(remediesOf(walkWith(80, need.peakLoadKg + 0.5)), 'resupply')!
    expect(applyRemedy(walkWith(80), resupply).trip.stops[resupply.stop]!.resupply).toBe(true)
    expect(resupply.stop).toBeGreaterThan(need.peakAt.stop)
  })

  it('carry as many spare rations as will do: a tenth more would be too much', () => {
    const plan = walkWith(80, need.peakLoadKg + 0.8)
    const spare = find(remediesOf(plan), 'fewer-spare-rations')!
    expect(spare.lessDays).toBeCloseTo(1 - spare.spareDays)
    const more: Change = { ...spare, spareDays: spare.spareDays + 0.1 }
    expect(spare.spareDays).toBeLessThan(0.95)
    expect(reckoned(applyRemedy(plan, spare)).packs[0]!.suffices).toBe(true)
    expect(reckoned(applyRemedy(plan, more)).packs[0]!.suffices).toBe(false)
  })

  it('stand in the order of least inconvenience', () => {
    const kinds = kindsOf(remediesOf(walkWith(need.bodyLitres - 0.6)))
    expect(kinds).toEqual([
      'move-outside',
      'fewer-spare-rations',
      'leave',
      'trust-doubtful',
      'camp-at-water',
      'resupply',
      'resupply',
      'resupply',
    ])
  })

  it('put a change of the trip and a choice of things together only where neither helps alone', () => {
    const single = remediesOf(walkWith(need.bodyLitres - 2))
    expect(kindsOf(single)).not.toContain('combined')
    const tried = Array.from({ length: 40 }, (_, i) => remediesOf(walkWith(need.bodyLitres - 2 - i / 4)))
    const pairs = tried.filter(remedies => remedies.some(remedy => remedy.kind === 'combined'))
    expect(pairs.length).toBeGreaterThan(2)
    for (const remedies of pairs) expect(new Set(kindsOf(remedies))).toEqual(new Set(['combined']))
  })

  it('name another set-up of the same pack first', () => {
    const plan = walkWith(80, 8)
    const [pack] = plan.packs
    const framed = { ...pack!.setups[0]!, name: 'frame in', ratedKg: 30 }
    const both = { ...plan, packs: [{ ...pack!, setups: [pack!.setups[0]!, framed] }] }
    const [first] = remediesOf(both)
    expect(first).toMatchObject({ kind: 'other-setup', setup: 1 })
    expect(remedyInWords(first!, { plan: both, shown: shownIn('metric') })).toMatch(
      /^Use its set-up “frame in”/,
    )
  })
})

describe('where nothing helps', () => {
  it('there are no remedies, and the shortfall says what pack would do', () => {
    const plan = walkWith(10, 4)
    const reckoning = reckoned(plan)
    expect(remediesFor(plan, reckoning, 0)).toEqual([])
    const short = shortfallOf(plan, reckoning, 0)!
    expect(short.litres).toBeCloseTo(need.bodyLitres - 10)
    expect(short.kg).toBeCloseTo(need.peakLoadKg + 1 - 4)
    expect(short.wanted).toMatchObject({
      bodyLitresSafe: need.bodyLitresSafe,
      frame: true,
      innerHeightCm: null,
    })
    expect(shortfallInWords(short, { shown: shownIn('metric') })).toContain('a frame')
  })

  it('a set-up that does has neither', () => {
    const plan = walkWith(80)
    expect(shortfallOf(plan, reckoned(plan), 0)).toBeNull()
    expect(remediesOf(plan)).toEqual([])
  })

  it('a set-up that is not there is a fault', () => {
    expect(() => remediesOf(walkWith(80), 1)).toThrow(RangeError)
  })
})

describe('a remedy in words', () => {
  it('is one sentence with what comes of it', () => {
    const plan = walkWith(need.bodyLitres - 1.5)
    const [first] = remediesOf(plan)
    const { bodyLitres } = first!.after
    expect(remedyInWords(first!, { plan, shown: shownIn('metric') }).replace(/\u00a0/g, ' ')).toBe(
      `Move Rain coat to a pocket: then ${bodyLitres.toFixed(1)} L are needed, and it fits in about 6 of 10 cases.`,
    )
  })
})
