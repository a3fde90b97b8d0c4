// Long because the brute-force search it is held against stands beside the cases.
// What would make a set-up do: every remedy against the plan that it makes, reckoned anew.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, PackDocument, Plan, PlanDocument } from '../../src/plan'
import {
  applyRemedy,
  type Change,
  isMended,
  type Reckoning,
  type Remedy,
  reckon,
  remediesFor,
  shortfallOf,
} from '../../src/reckon'
import { formatsIn, remedyInWords, shortfallInWords } from '../../src/report'
import { remedyLabel } from '../../src/report/compare-packs'
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
    'makes its set-up do and fit nine times in ten, with the figures it states: ration $ration, own packings $packed',
    { timeout: 60_000 },
    kind => {
      const seen = new Set<string>()
      const flagged = fc.tuple(documents(kind), fc.nat(3)).map(([document, flag]) => ({
        ...document,
        gear: (document.gear ?? []).map((item, i) => ({
          ...item,
          optional: (i + flag) % 2 === 0,
          ...((i + flag) % 3 === 2 ? {} : { mayRideOutside: (i + flag) % 3 === 0 }),
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
            if (isMended(before)) expect(remedies).toEqual([])
            for (const remedy of remedies) {
              seen.add(remedy.kind)
              // Fewer things make another factor, so that nothing is proven.
              if (kind.packed && 'proven' in remedy) expect(remedy.proven).toBe(plan.packings.length === 0)
              const after = reckoned(applyRemedy(plan, remedy))
              const setup = after.packs[remedy.kind === 'other-setup' ? remedy.setup : setupIndex]!
              // Another set-up of the same pack has the same main body: it is named as soon as it does.
              expect(remedy.kind === 'other-setup' ? setup.suffices : isMended(setup), remedy.kind).toBe(true)
              expect(setup.name).toBe(before.name)
              expect(after.need.waterShortLitres).toBeLessThanOrEqual(reckoning.need.waterShortLitres + 1e-9)
              expect(remedy.after).toMatchObject({
                bodyLitres: after.need.bodyLitres,
                peakLoadKg: after.need.peakLoadFullWaterKg,
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
    { id: 'all', name: 'Tent', massKg: 6, litres: 24, litresFrom: 'filled', mayRideOutside: false },
    { id: 'food', massKg: 0.8, litres: 1.6, use: 'daily', mayRideOutside: false },
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
      {
        name: 'P',
        bodyLitres,
        outsideLitres,
        bodyFrom: 'test-method',
        setups: [{ name: 'it', massKg: 1, frame: 'framed', ratedKg }],
      },
    ],
  })
}

const need = reckoned(walkWith(80)).need

/** The least main body that fits nine times in ten, L. */
function enoughFor(planWith: (bodyLitres: number) => Plan): number {
  let [short, ample] = [1, 200]
  while (ample - short > 1e-6) {
    const middle = (short + ample) / 2
    if (isMended(reckoned(planWith(middle)).packs[0]!)) ample = middle
    else short = middle
  }
  return ample
}

const enough = enoughFor(walkWith)

describe('the remedies of a walk with a dry camp', () => {
  it('move a coat outside when that is all it takes', () => {
    const [first] = remediesOf(walkWith(enough - 1.5))
    expect(first).toMatchObject({ kind: 'move-outside', move: ['coat'], proven: true })
    expect(first!.after.mends).toEqual(['room'])
  })

  it('move nothing outside where the pockets are too small or not known', () => {
    expect(kindsOf(remediesOf(walkWith(enough - 1.5, 30, { outsideLitres: 1 })))).not.toContain(
      'move-outside',
    )
    const plan = walkWith(enough - 1.5)
    const unknown = { ...plan, packs: [{ ...plan.packs[0]!, outsideLitres: null }] }
    expect(kindsOf(remediesOf(unknown))).not.toContain('move-outside')
  })

  it('never leave what holds water, nor hang a soft water bag outside', () => {
    const remedies = [1, 3, 5, 8].flatMap(less => remediesOf(walkWith(enough - less)))
    expect(remedies.length).toBeGreaterThan(4)
    expect(JSON.stringify(remedies)).not.toContain('"bag"')
  })

  it('camp at the source before the dry stop, and say how long the longest day becomes', () => {
    const camp = find(remediesOf(walkWith(enough - 2.5)), 'camp-at-water')!
    expect(camp).toMatchObject({ from: 2, to: 1, nights: 1, longestDayHours: 9 })
    const { stops } = applyRemedy(walkWith(40), camp).trip
    expect(stops.map(stop => stop.nights)).toEqual([0, 1, 0, 0, 1, 0])
  })

  it('trust a doubtful source only with its caution', () => {
    const trust = find(remediesOf(walkWith(80, need.peakLoadKg + 0.5)), 'trust-doubtful')!
    expect(trust).toMatchObject({ stops: [3], caution: 'confirm-sources' })
    expect(remedyInWords(trust, { plan: walkWith(80), formats: formatsIn('metric') })).toContain(
      'Confirm it before you leave',
    )
  })

  it('resupply between the heaviest moment and the end', () => {
    const resupply = find(remediesOf(walkWith(80, need.peakLoadKg + 0.5)), 'resupply')!
    expect(applyRemedy(walkWith(80), resupply).trip.stops[resupply.stop]!.resupply).toBe(true)
    expect(resupply.stop).toBeGreaterThan(need.peakAt.stop)
  })

  it('resupply where the hiker says that there is a shop; elsewhere only if there is one', () => {
    const plan = walkWith(80, need.peakLoadKg + 0.5)
    const { stops } = plan.trip
    const said = (marked: Plan) =>
      remediesOf(marked)
        .filter(({ kind }) => kind === 'resupply')
        .map(remedy => remedyInWords(remedy, { plan: marked, formats: formatsIn('metric') }))
    const unsaid = said(plan)
    expect(unsaid.length).toBeGreaterThan(1)
    for (const words of unsaid) expect(words).toMatch(/^Resupply at .* as well, if there is a shop: then /)
    const shop = stops.map((stop, i) => ({ ...stop, shop: i === 3 }))
    const marked = said({ ...plan, trip: { ...plan.trip, stops: shop } })
    expect(marked).toEqual([expect.stringMatching(/^Resupply at Seep as well: then /)])
  })

  it('carry as many spare rations as will do: a tenth more would be too much', () => {
    const plan = walkWith(80, need.peakLoadKg + 0.8)
    const spare = find(remediesOf(plan), 'fewer-spare-rations')!
    expect(spare.lessDays).toBeCloseTo(1 - spare.spareDays)
    const more: Change = { ...spare, spareDays: spare.spareDays + 0.1 }
    expect(spare.spareDays).toBeLessThan(0.95)
    expect(reckoned(applyRemedy(plan, spare)).packs[0]!.suffices).toBe(true)
    expect(reckoned(applyRemedy(plan, more)).packs[0]!.suffices).toBe(false)
    expect(remedyInWords(spare, { plan, formats: formatsIn('metric') })).toMatch(
      /You then have less to eat if a day goes wrong\.$/,
    )
  })

  it('stand in the order of least inconvenience', () => {
    const kinds = kindsOf(remediesOf(walkWith(enough - 0.6)))
    expect(kinds).toEqual([
      'move-outside',
      'fewer-spare-rations',
      'trust-doubtful',
      'camp-at-water',
      'resupply',
      'resupply',
      'resupply',
      'leave',
    ])
  })

  it('put a change of the trip and a choice of things together only where neither helps alone', () => {
    const single = remediesOf(walkWith(enough - 2))
    expect(kindsOf(single)).not.toContain('combined')
    const tried = Array.from({ length: 40 }, (_, i) => remediesOf(walkWith(enough - 2 - i / 4)))
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
    expect(remedyInWords(first!, { plan: both, formats: formatsIn('metric') })).toMatch(
      /^Use its set-up “frame in”/,
    )
  })
})

describe('a set-up that does but may not fit', () => {
  const tight = walkWith(enough - 1.5)

  it('is mended like one that fails', () => {
    expect(reckoned(tight).packs[0]).toMatchObject({
      suffices: true,
      verdicts: expect.arrayContaining(['tight']),
    })
    const remedies = remediesOf(tight)
    expect(kindsOf(remedies)[0]).toBe('move-outside')
    for (const { after } of remedies) expect(after.fitChance).toBeGreaterThanOrEqual(0.9)
  })

  it('has a shortfall that names what would fit for sure, and none once it fits nine times in ten', () => {
    expect(shortfallOf(tight, reckoned(tight), 0)).toMatchObject({ litres: 0, kg: 0 })
    const ample = walkWith(enough + 0.01)
    expect([remediesOf(ample), shortfallOf(ample, reckoned(ample), 0)]).toEqual([[], null])
  })
})

/** A night out with these things, 20 L of tent besides, and a pack that wants `litres` less to fit for sure. */
function nightWith(gear: ItemDocument[], litres: number, more: Partial<PackDocument> = {}): Plan {
  const planWith = (bodyLitres: number) =>
    planOf({
      format: 'pack-reckoner/plan',
      version: 1,
      carrier: { massKg: 80 },
      trip: {
        stops: [
          { name: 'Gate' },
          { name: 'Hut', nights: 1, water: 'sure', leg: { km: 8 } },
          { name: 'Road', leg: { km: 8 } },
        ],
        meals: { spareDays: 0 },
      },
      gear: [
        { id: 'tent', name: 'Tent', massKg: 2, litres: 20, mayRideOutside: false },
        { id: 'bottle', massKg: 0.1, litres: 1, holdsWaterLitres: 4, stow: 'worn' },
        ...gear,
      ],
      packs: [
        {
          name: 'P',
          bodyLitres,
          outsideLitres: 6,
          setups: [{ name: 'it', massKg: 1, frame: 'framed' }],
          ...more,
        },
      ],
    })
  return planWith(enoughFor(planWith) - litres)
}

const wordsOf = (plan: Plan) =>
  remediesOf(plan).map(remedy =>
    remedyInWords(remedy, { plan, formats: formatsIn('metric') }).replaceAll('\u00a0', ' '),
  )

describe('what may ride outside', () => {
  const shirt: ItemDocument = { id: 'shirt', name: 'Shirt', massKg: 0.2, litres: 1.5 }
  const moved = (item: ItemDocument) => find(remediesOf(nightWith([item], 0.5)), 'move-outside')?.move

  it('is every soft thing unless the hiker has said otherwise', () => {
    expect(moved(shirt)).toEqual(['shirt'])
    expect(moved({ ...shirt, mayRideOutside: true })).toEqual(['shirt'])
    expect(moved({ ...shirt, mayRideOutside: false })).toBeUndefined()
  })

  it('is a rigid thing that is long and slim, or that the hiker says may', () => {
    const rigid: ItemDocument = { ...shirt, build: 'rigid' }
    expect(moved(rigid)).toBeUndefined()
    expect(moved({ ...rigid, mayRideOutside: true })).toEqual(['shirt'])
    expect(moved({ ...rigid, lengthCm: 45, diameterCm: 6 })).toEqual(['shirt'])
    expect(moved({ ...rigid, lengthCm: 45, diameterCm: 20 })).toBeUndefined()
    expect(moved({ ...rigid, lengthCm: 20, diameterCm: 3 })).toBeUndefined()
  })

  it('is nothing that was put into a container, unless the hiker says so', () => {
    const box: ItemDocument = { id: 'box', name: 'Tool box', massKg: 0.5, litres: 2, holdsLitres: 0.5 }
    const inside = (item: ItemDocument) =>
      find(remediesOf(nightWith([box, { ...item, inside: 'box' }], 0.5)), 'move-outside')?.move
    expect(inside(shirt)).toBeUndefined()
    expect(inside({ ...shirt, mayRideOutside: true })).toEqual(['shirt'])
  })

  it('is said with what rain and branches do to food and to the night’s sleep', () => {
    expect(wordsOf(nightWith([{ ...shirt, name: 'Sleeping bag' }], 0.5))[0]).toMatch(
      /^Move Sleeping bag to a pocket: .*\. Wrap Sleeping bag well: rain and branches reach what is outside\.$/,
    )
    expect(wordsOf(nightWith([{ ...shirt, name: 'Rice', use: 'daily' }], 0.5))[0]).toMatch(
      /Wrap Rice well: rain and branches reach what is outside\.$/,
    )
    expect(wordsOf(nightWith([shirt], 0.5))[0]).not.toContain('Wrap')
  })
})

describe('leaving things at home', () => {
  const chair: ItemDocument = { id: 'chair', name: 'Chair', massKg: 0.9, litres: 3, mayRideOutside: false }

  it('needs no mark, comes last and names the thing, with the question whether one can do without', () => {
    const shirt: ItemDocument = { id: 'shirt', name: 'Shirt', massKg: 0.2, litres: 1.5 }
    const words = wordsOf(nightWith([chair, shirt], 0.5))
    expect(words).toHaveLength(2)
    expect(words[0]).toMatch(/^Move Shirt to a pocket: /)
    expect(words[1]).toMatch(/^Leave (Shirt|Chair) at home, if you can do without it: then /)
  })

  it('names what is marked first, and asks nothing about it', () => {
    const camera: ItemDocument = { ...chair, id: 'camera', name: 'Camera', massKg: 2, optional: true }
    expect(wordsOf(nightWith([chair, camera], 0.5))).toEqual([
      expect.stringMatching(/^Leave Camera at home: then /),
    ])
  })

  it.each([
    ...['Tent', 'Sleeping bag', 'Foam mat', 'Rain jacket', 'First-aid kit', 'Insulin', 'Stove', 'Map'],
    ...['Headlamp', 'Water filter', 'Gloves', 'Ice axe'],
  ])('is not offered of %s, unless it is marked', name => {
    const left = (item: ItemDocument) => find(remediesOf(nightWith([item], 0.5)), 'leave')
    expect(left({ ...chair, name })).toBeUndefined()
    expect(left({ ...chair, group: name })).toBeUndefined()
    expect(left({ ...chair, name, optional: true })?.leave).toEqual(['chair'])
  })

  it.each<Partial<ItemDocument>>([
    { use: 'daily' },
    { use: 'nightly' },
    { use: 'spread' },
    { holdsWaterLitres: 1 },
    { stow: 'worn' },
  ])('is not offered of what is used up, holds water or is worn: %o', more => {
    const plan = nightWith(
      [
        { ...chair, ...more },
        { ...chair, id: 'b', name: 'Tent bag' },
      ],
      0.5,
    )
    expect(find(remediesOf(plan), 'leave')).toBeUndefined()
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
    expect(shortfallInWords(short, { plan, reckoning, formats: formatsIn('metric') })).toContain('a frame')
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
    const plan = walkWith(enough - 2)
    const [first] = remediesOf(plan)
    const { bodyLitres } = first!.after
    expect(remedyInWords(first!, { plan, formats: formatsIn('metric') }).replace(/\u00a0/g, ' ')).toBe(
      `Move Rain coat to a pocket: then ${bodyLitres.toFixed(1)} L are needed, and about 9 chances in 10 that it fits.`,
    )
  })

  it('calls a thing without a name what the lists call it, and never by its id', () => {
    const plan = walkWith(enough - 2)
    const gear = plan.gear.map(item => (item.name === 'Rain coat' ? { ...item, name: '' } : item))
    const [first] = remediesOf({ ...plan, gear })
    expect(remedyInWords(first!, { plan: { ...plan, gear }, formats: formatsIn('metric') })).toMatch(
      /^Move Unnamed item to a pocket: /,
    )
    expect(remedyLabel(first!, { ...plan, gear })).toBe('Move Unnamed item outside')
  })
})
