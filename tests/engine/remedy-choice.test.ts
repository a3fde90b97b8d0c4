// Long because one search is tried against every choice, with its generators.
// The choice of things to move outside or leave at home, against trying every choice there is.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Item, ItemDocument, Plan, PlanDocument } from '../../src/plan'
import { applyRemedy, leastChoice, type Reckoning, type Remedy, reckon, remediesFor } from '../../src/reckon'
import { documents, planOf } from './plans'

function reckoned(plan: Plan): Reckoning {
  const result = reckon(plan)
  if (!result.ok) throw new Error(result.problem.message)
  return result.reckoning
}

const remediesOf = (plan: Plan) => remediesFor(plan, reckoned(plan), 0)
const find = <K extends Remedy['kind']>(remedies: Remedy[], kind: K) =>
  remedies.find((remedy): remedy is Remedy & { kind: K } => remedy.kind === kind)

/** Random plans a test; more with PLANS=1000. */
const PLANS = Number(process.env.PLANS ?? 100)
const TIMEOUT = 1200 * Math.max(100, PLANS)

/** Trying every choice takes up to 3 to the number of things that may move or stay. */
const MOST_FLAGGED = 5

/** Numbers spread evenly; free doubles crowd around 0. */
const hundredths = (min: number, max: number) => fc.integer({ min, max }).map(n => n / 100)

/** Whether a thing may ride outside: no, nobody said, or yes. */
const saidOutside = (flag: number) => (flag === 1 ? {} : { mayRideOutside: flag > 1 })

/** A thing that no remedy moves or leaves unasked. */
const kept = (item: ItemDocument): ItemDocument => ({ ...item, name: 'Tent', mayRideOutside: false })

/** A plan whose things may move or stay as `flags` say, and whose one pack lies between their being there and not. */
const shortPlans = (collar: fc.Arbitrary<number>) =>
  fc
    .record({
      document: documents({ ration: 'fixed', litresPerHour: 'number' }),
      flags: fc.array(fc.nat(3), { minLength: 17, maxLength: 17 }),
      room: hundredths(-10, 100),
      load: hundredths(-10, 250),
      pockets: fc.option(hundredths(-50, 1200), { freq: 9 }),
      collar,
      inner: fc.oneof(
        { weight: 9, arbitrary: fc.constant(null) },
        { weight: 1, arbitrary: fc.integer({ min: 40, max: 90 }) },
      ),
    })
    .map(({ document, flags, room, load, pockets, collar, inner }) => {
      const gear = (document.gear ?? []).map((item, i) =>
        i < MOST_FLAGGED ? { ...item, optional: flags[i]! % 2 === 1, ...saidOutside(flags[i]!) } : kept(item),
      )
      const plan = planOf({ ...document, gear, packs: [] })
      const { need } = reckoned(plan)
      const held = (item: Item) => plan.gear.some(other => other.inside === item.id)
      const stays = (item: Item) => held(item) || item.holdsWaterLitres > 0
      const leastLoad = reckoned({ ...plan, gear: plan.gear.filter(it => stays(it) || !it.optional) }).need
      const bare = plan.gear.filter(it => stays(it) || !(it.optional || it.mayRideOutside !== false))
      const least = reckoned({ ...plan, gear: bare }).need
      const between = (from: number, to: number, share: number) => from + share * (to - from)
      const bodyLitres = between(least.bodyLitresSafe, need.bodyLitresSafe, room)
      const ratedKg = between(leastLoad.peakLoadKg, need.peakLoadKg, load) + 0.5
      return planOf({
        ...document,
        trip: { ...document.trip, wet: false },
        gear,
        packs: [
          {
            name: 'pack',
            bodyLitres: Math.min(300, Math.max(1, bodyLitres - collar)),
            collarLitres: collar,
            ...(pockets === null
              ? {}
              : { outsideLitres: Math.min(200, Math.max(0, need.outsideLitres + pockets)) }),
            ...(inner === null ? {} : { innerHeightCm: inner }),
            setups: [
              { name: 'it', massKg: 0.5, frame: 'framed', ratedKg: Math.min(200, Math.max(0.6, ratedKg)) },
            ],
          },
        ],
      })
    })

/** It does, and fits nine times in ten, if need be with the collar raised. */
function isMended({ packs: [pack] }: Reckoning): boolean {
  return pack!.suffices && pack!.fitChanceWithCollar >= 0.9
}

type Key = [items: number, gramsLeft: number, centilitresMoved: number]
const compare = (a: Key, b: Key) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2]

/** The least key over every choice of the allowed ways that makes the pack do, by reckoning each of them. */
function byTryingAll(plan: Plan, ways: { move: boolean; leave: 'none' | 'optional' | 'any' }): Key | null {
  const before = reckoned(plan)
  const { gear } = plan
  const inside = (item: Item) => gear.filter(other => other.inside === item.id)
  const holder = (item: Item) => gear.find(other => other.id === item.inside)
  const stow = (item: Item) => holder(item)?.stow ?? item.stow
  const wet = (item: Item) => item.count > 0 && item.holdsWaterLitres > 0
  const isSlim = ({ lengthCm, diameterCm, widthCm, depthCm }: Item) =>
    (lengthCm ?? 0) >= 30 && [diameterCm, widthCm, depthCm].every(cm => lengthCm! >= 3 * (cm ?? 0))
  const mayMove = (item: Item) =>
    ways.move &&
    (item.mayRideOutside ?? (item.inside === null && (item.build === 'soft' || isSlim(item)))) &&
    item.count > 0 &&
    stow(item) === 'main-body' &&
    plan.packs[0]!.outsideLitres !== null &&
    ![item, ...inside(item)].some(it => wet(it) && it.build === 'soft')
  const mayLeave = (item: Item) =>
    ways.leave !== 'none' &&
    (item.optional || (ways.leave === 'any' && item.use === 'kept' && item.name !== 'Tent')) &&
    item.count > 0 &&
    stow(item) !== 'worn' &&
    !wet(item) &&
    inside(item).length === 0

  const most = mostOf(plan)
  let best: Key | null = null
  const go = (i: number, move: string[], leave: string[]) => {
    const item = gear[i]
    if (item) {
      go(i + 1, move, leave)
      if (mayMove(item)) go(i + 1, [...move, item.id], leave)
      if (mayLeave(item)) go(i + 1, move, [...leave, item.id])
      return
    }
    const key = keyOf(most, { move, leave })
    if (best && compare(key, best) >= 0) return
    const after = reckoned(applyRemedy(plan, { kind: 'move-and-leave', move, leave, proven: true }))
    // A remedy fills no pocket beyond what it takes.
    if (after.need.outsideLitres > (plan.packs[0]!.outsideLitres ?? Number.POSITIVE_INFINITY) + 1e-9) return
    if (isMended(after) && after.need.waterShortLitres <= before.need.waterShortLitres + 1e-9) best = key
  }
  go(0, [], [])
  return best
}

/** For each thing, the grams and hundredths of a litre of it that are aboard at most. */
function mostOf(plan: Plan): Map<string, { grams: number; centilitres: number }> {
  return new Map(
    plan.gear.map(item => {
      const alone = { ...item, inside: null, stow: 'outside-pocket', holdsLitres: null } as const
      const { moments } = reckoned({ ...plan, gear: [alone], packs: [] })
      const grams = Math.round(1000 * Math.max(...moments.map(m => m.kg.total - m.kg.water)))
      return [
        item.id,
        { grams, centilitres: Math.round(100 * Math.max(...moments.map(m => m.outsideLitres))) },
      ]
    }),
  )
}

function keyOf(most: ReturnType<typeof mostOf>, { move, leave }: { move: string[]; leave: string[] }): Key {
  const grams = leave.reduce((sum, id) => sum + most.get(id)!.grams, 0)
  const centilitres = move.reduce((sum, id) => sum + most.get(id)!.centilitres, 0)
  return [move.length + leave.length, grams, centilitres]
}

const choiceIn = (remedy: Remedy) => ({
  move: 'move' in remedy ? remedy.move : [],
  leave: 'leave' in remedy ? remedy.leave : [],
})

describe('the choice of things to move or leave', () => {
  const check = (plan: Plan): 'none' | 'found' | 'unproven' => {
    let isUnproven = false
    const before = reckoned(plan)
    if (isMended(before)) return 'none'
    // What spills out of the pockets is counted inside, and nothing is proven of it.
    if (before.packs[0]!.bodyNeedLitres > before.need.bodyLitres) return 'none'
    const remedies = remediesOf(plan)
    const keyOfFound = (kind: 'move-outside' | 'leave' | 'move-and-leave') => {
      const remedy = find(remedies, kind)
      // Where too many choices lie by the curve the search says so, and nothing is claimed.
      if (remedy && !remedy.proven) isUnproven = true
      return remedy ? keyOf(mostOf(plan), choiceIn(remedy)) : null
    }
    const moved = byTryingAll(plan, { move: true, leave: 'none' })
    const keys = (['move-outside', 'leave', 'move-and-leave'] as const).map(keyOfFound)
    if (isUnproven) return 'unproven'
    expect(keys[0], 'move').toEqual(moved)
    // What is marked as optional first; the rest only where nothing of that would do.
    const marked = [
      byTryingAll(plan, { move: false, leave: 'optional' }),
      byTryingAll(plan, { move: true, leave: 'optional' }),
    ] as const
    const isMixed = marked[1] !== null && (moved === null || compare(marked[1], moved) < 0)
    const isMarked = marked[0] !== null || isMixed
    const [left, best] = isMarked
      ? marked
      : [byTryingAll(plan, { move: false, leave: 'any' }), byTryingAll(plan, { move: true, leave: 'any' })]
    expect(keys[1], 'leave').toEqual(left)
    const got = [moved, left, keys[2]].filter((key): key is Key => Boolean(key)).sort(compare)[0]
    expect(got ?? null, 'both').toEqual(best)
    return best ? 'found' : 'none'
  }

  it('is the least there is, by trying every choice on random plans', { timeout: TIMEOUT }, () => {
    const seen = { none: 0, found: 0, unproven: 0 }
    fc.assert(
      fc.property(shortPlans(fc.constant(0)), plan => {
        seen[check(plan)]++
      }),
      { numRuns: PLANS },
    )
    expect(seen.found).toBeGreaterThan(15)
    expect(seen.unproven).toBeLessThan(seen.found / 2)
  })

  it('is the least of any abstract problem too, by trying every choice', () => {
    const problem = fc
      .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 4 }))
      .chain(([count, rows]) =>
        fc.record({
          choices: fc.array(fc.record({ group: fc.nat(7), cost: fc.nat(40) }), {
            minLength: count,
            maxLength: count,
          }),
          rows: fc.array(
            fc.record({
              need: hundredths(-500, 1500),
              gives: fc.array(hundredths(-150, 500), { minLength: count, maxLength: count }),
            }),
            { minLength: rows, maxLength: rows },
          ),
        }),
      )
    let solvable = 0
    fc.assert(
      fc.property(problem, ({ choices, rows }) => {
        const all = choices.map((_, i) => i)
        const total = (chosen: number[], figure: (i: number) => number) =>
          chosen.reduce((sum, i) => sum + figure(i), 0)
        const every = Array.from({ length: 1 << choices.length }, (_, bits) =>
          all.filter(i => bits & (1 << i)),
        )
          .filter(chosen => new Set(chosen.map(i => choices[i]!.group)).size === chosen.length)
          .filter(chosen => rows.every(row => total(chosen, i => row.gives[i]!) >= row.need - 1e-9))
          .map(chosen => [chosen.length, total(chosen, i => choices[i]!.cost)] as const)
        if (every.length) solvable++
        const fewest = leastChoice({ choices, rows }, { fewestFirst: true })
        const cheapest = leastChoice({ choices, rows }, { fewestFirst: false })
        const costOf = (chosen: number[]) => total(chosen, i => choices[i]!.cost)
        expect(fewest.chosen && [fewest.chosen.length, costOf(fewest.chosen)]).toEqual(
          [...every].sort((a, b) => a[0] - b[0] || a[1] - b[1])[0] ?? null,
        )
        expect(cheapest.chosen && costOf(cheapest.chosen)).toEqual(
          every.length ? Math.min(...every.map(([, cost]) => cost)) : null,
        )
        expect([fewest.proven, cheapest.proven]).toEqual([true, true])
      }),
      { numRuns: 500 },
    )
    expect(solvable).toBeGreaterThan(100)
  })

  it('is the least there is also where a collar could be raised', { timeout: TIMEOUT }, () => {
    let collars = 0
    fc.assert(
      fc.property(shortPlans(hundredths(100, 1500)), plan => {
        if (isMended(reckoned(plan))) return
        const remedies = remediesOf(plan)
        const marked = byTryingAll(plan, { move: true, leave: 'optional' })
        const best = marked ?? byTryingAll(plan, { move: true, leave: 'any' })
        const items = remedies.filter(r => ['move-outside', 'leave', 'move-and-leave'].includes(r.kind))
        const keys = items.map(remedy => keyOf(mostOf(plan), choiceIn(remedy))).sort(compare)
        if (items.every(remedy => 'proven' in remedy && remedy.proven)) expect(keys[0] ?? null).toEqual(best)
        if (items.some(remedy => remedy.after.collarChance !== null)) collars++
      }),
      { numRuns: PLANS },
    )
    expect(collars).toBeGreaterThan(2)
  })

  /** A day's walk with these things and a pack that wants `litres` of its need gone to fit nine times in ten. */
  const wanting = (gear: ItemDocument[], litres: number, outsideLitres: number) => {
    const document: PlanDocument = {
      format: 'pack-reckoner/plan',
      version: 1,
      carrier: { massKg: 70 },
      trip: { stops: [{ name: 'A' }, { name: 'B', leg: { km: 5 } }] },
      gear: [kept({ id: 'rest', massKg: 4, litres: 30 }), ...gear],
    }
    const setups = [{ name: 'it', massKg: 1, frame: 'framed' as const }]
    const planWith = (bodyLitres: number) =>
      planOf({ ...document, packs: [{ name: 'P', bodyLitres, outsideLitres, setups }] })
    let [short, ample] = [1, 299]
    while (ample - short > 1e-6) {
      const middle = (short + ample) / 2
      if (isMended(reckoned(planWith(middle)))) ample = middle
      else short = middle
    }
    return planWith(ample - litres)
  }

  it('is found at once among many that the pockets do not hold', () => {
    const big = Array.from({ length: 20 }, (_, i) => ({ id: `big ${i}`, massKg: 0.1, litres: 5 + i / 10 }))
    const small = ['a', 'b'].map(id => ({ id, massKg: 0.1, litres: 1.9 }))
    const gear = [...big, ...small].map(item => ({ ...item, mayRideOutside: true }))
    expect(find(remediesOf(wanting(gear, 3.5, 4)), 'move-outside')).toMatchObject({
      move: ['a', 'b'],
      proven: true,
    })
  })

  it('leaves alone what rides in a container that is not full', () => {
    const inside = Array.from({ length: 20 }, (_, i) => ({
      ...{ id: `in ${i}`, massKg: 0.01, litres: 1, inside: 'box', optional: true, mayRideOutside: false },
    }))
    const gear = [
      { id: 'box', massKg: 1, litres: 32, holdsLitres: 30 },
      ...inside,
      { id: 'pan', massKg: 0.5, litres: 1, optional: true, mayRideOutside: false },
    ]
    expect(find(remediesOf(wanting(gear, 0.4, 0)), 'leave')).toMatchObject({ leave: ['pan'], proven: true })
  })
})
