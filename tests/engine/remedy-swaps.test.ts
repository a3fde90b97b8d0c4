// Other things in the places of items, as remedies: each against the plan that it makes, and against trying them all.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/plan'
import { applyRemedy, isMended, type Remedy, type Replacement, reckon, remediesBy } from '../../src/reckon'
import { formatsIn, remedyInWords } from '../../src/report'
import { remedyLabel } from '../../src/report/compare-packs'
import { documents, planOf } from './plans'
import { reckoned, smallPlan } from './small-plans'

const remediesOf = (plan: Plan, swaps: readonly Replacement[]) =>
  remediesBy(reckon, { plan, reckoning: reckoned(plan), setupIndex: 0, swaps })
const swapsIn = (remedies: Remedy[]) =>
  remedies.filter((remedy): remedy is Remedy & { kind: 'swap' } => remedy.kind === 'swap')

const plans = fc
  .record({
    document: documents({ ration: 'fixed', litresPerHour: 'number' }),
    sizes: fc.array(fc.tuple(fc.nat(7), fc.integer({ min: 0, max: 15 })), { minLength: 1, maxLength: 5 }),
    room: fc.integer({ min: 60, max: 110 }),
  })
  .map(({ document, sizes, room }) => {
    const bare = planOf(document)
    const bodyLitres = Math.max(1, (reckoned(bare).need.bodyLitres * room) / 100)
    const plan = planOf({
      ...document,
      packs: [{ name: 'The one', bodyLitres, setups: [{ name: 'as it is', massKg: 1, frame: 'framed' }] }],
    })
    const swaps = sizes.flatMap(([at, tenths], i): Replacement[] => {
      const item = plan.gear[at]
      if (!item) return []
      const { litres, massKg, holdsWaterLitres } = item
      const less = { litres: (litres * tenths) / 10, massKg: (massKg * tenths) / 10 }
      const other = {
        ...item,
        ...less,
        name: `Other ${i}`,
        holdsWaterLitres: (holdsWaterLitres * tenths) / 10,
      }
      return [{ item: item.id, thing: `thing ${i}`, with: other }]
    })
    return { plan, swaps }
  })

const mends = (plan: Plan, swaps: Replacement[]) => {
  const after = reckon(applyRemedy(plan, { kind: 'swap', swaps }))
  const { need } = reckoned(plan)
  if (!after.ok || after.reckoning.need.waterShortLitres > need.waterShortLitres + 1e-9) return false
  return isMended(after.reckoning.packs[0]!)
}

describe('another thing in an item’s place', () => {
  it('makes the set-up do with the figures it states, one where one is enough, else two of different items', {
    timeout: 60_000,
  }, () => {
    const seen = new Set<number>()
    fc.assert(
      fc.property(plans, ({ plan, swaps }) => {
        if (isMended(reckoned(plan).packs[0]!)) return
        const found = swapsIn(remediesOf(plan, swaps))
        const isOneEnough = swaps.some(swap => mends(plan, [swap]))
        for (const remedy of found) {
          const after = reckoned(applyRemedy(plan, remedy))
          expect(mends(plan, remedy.swaps)).toBe(true)
          expect(after.need.bodyLitres).toBe(remedy.after.bodyLitres)
          expect(remedy.swaps).toHaveLength(isOneEnough ? 1 : 2)
          expect(new Set(remedy.swaps.map(({ item }) => item)).size).toBe(remedy.swaps.length)
          seen.add(remedy.swaps.length)
        }
        if (isOneEnough) expect(found.length).toBeGreaterThan(0)
        const pairs = swaps.flatMap((one, i) => swaps.slice(i + 1).map(other => [one, other]))
        const isTwoEnough = pairs.some(
          ([one, other]) => one!.item !== other!.item && mends(plan, [one!, other!]),
        )
        expect(found.length > 0).toBe(isOneEnough || isTwoEnough)
      }),
      { numRuns: 80 },
    )
    expect(seen).toContain(1)
  })

  const plan = smallPlan({
    gear: [
      { id: 'bag', name: 'Winter bag', massKg: 1.5, litres: 14 },
      { id: 'tent', name: 'Tent', massKg: 2, litres: 10 },
    ],
    packs: [{ name: 'Small', bodyLitres: 26, setups: [{ name: 'as sold', massKg: 1, frame: 'framed' }] }],
  })
  const summer = { ...plan.gear[0]!, name: 'Summer bag', massKg: 0.7, litres: 5 }
  const swap = { item: 'bag', thing: 'summer', with: summer }

  it('is told with what no figure knows, and named as a step', () => {
    const [remedy] = swapsIn(remediesOf(plan, [swap]))
    const text = remedyInWords(remedy!, { plan, formats: formatsIn('metric') })
    expect(text).toMatch(
      /^Take Summer bag instead of Winter bag, if it is enough for this trip: then [\d.]+\sL are needed/,
    )
    expect(remedyLabel(remedy!, plan)).toBe('Take Summer bag instead of Winter bag')
  })

  it('goes together with another where neither is enough', () => {
    const small = { ...plan, packs: [{ ...plan.packs[0]!, bodyLitres: 14.5 }] }
    const tarp = { item: 'tent', thing: 'tarp', with: { ...plan.gear[1]!, name: 'Tarp', litres: 4 } }
    for (const one of [swap, tarp]) expect(mends(small, [one])).toBe(false)
    expect(swapsIn(remediesOf(small, [swap, tarp])).map(({ swaps }) => swaps)).toEqual([[swap, tarp]])
  })

  it('is offered of nothing where nothing else may be taken, and where the set-up does', () => {
    expect(swapsIn(remediesOf(plan, []))).toEqual([])
    const roomy = { ...plan, packs: [{ ...plan.packs[0]!, bodyLitres: 90 }] }
    expect(remediesOf(roomy, [swap])).toEqual([])
  })

  it('lets what rode in a container ride on its own where the other has no room inside, as a plan is mended', () => {
    const boxed = smallPlan({
      gear: [
        { id: 'box', name: 'Box', massKg: 1, litres: 12, holdsLitres: 10 },
        { id: 'food', name: 'Food', massKg: 1, litres: 3, inside: 'box' },
      ],
    })
    const [box] = boxed.gear
    const sack = { ...box!, name: 'Sack', holdsLitres: null, build: 'soft' as const, inside: null }
    const { gear } = applyRemedy(boxed, { kind: 'swap', swaps: [{ item: 'box', thing: 'sack', with: sack }] })
    expect(gear.map(({ name, inside }) => [name, inside])).toEqual([
      ['Sack', null],
      ['Food', null],
    ])
  })
})
