// What each thing costs, against the engine asked again with a plan written with or without it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ItemDocument, type PlanDocument, parsePlan } from '../../src/plan'
import { effectsOf, type Need, reckon } from '../../src/reckon'
import { differences } from './agree'
import { documents, planOf } from './plans'
import { documentOf, dryAfterSpring, hungryAndDry, noWater, reckoned } from './small-plans'

const effectsIn = (document: PlanDocument) => {
  const plan = planOf(document)
  return effectsOf(plan, reckoned(plan))
}

/** A list written as if these were never on it. */
function without(gear: ItemDocument[], gone: (item: ItemDocument) => boolean): ItemDocument[] {
  const ids = new Set(gear.filter(gone).map(({ id }) => id))
  return gear
    .filter(({ id }) => !ids.has(id))
    .map(({ inside, ...rest }) => (inside === undefined || ids.has(inside) ? rest : { ...rest, inside }))
}

/** The need of a document without its packings, with a factor; null where it is refused. */
function needOf(document: PlanDocument, factor: number, gear: ItemDocument[]): Need | null {
  const { packings: _packings, ...rest } = document
  const parsed = parsePlan({
    ...rest,
    packs: [],
    gear,
    settings: { ...rest.settings, personalFactor: factor },
  })
  const found = parsed.ok ? reckon(parsed.plan) : null
  return found?.ok ? found.reckoning.need : null
}

function expected(document: PlanDocument) {
  const { factor } = reckoned(planOf(document)).need
  const gear = document.gear!
  return gear.map(({ id, atHome = false }) => {
    const other = gear.map(item => (item.id === id ? { ...item, atHome: !atHome } : item))
    const [now, changed] = [gear, other].map(list =>
      needOf(
        document,
        factor,
        without(list, item => item.atHome === true),
      ),
    )
    const less = (figure: 'bodyLitres' | 'bodyLitresSafe' | 'peakLoadKg' | 'peakLoadFullWaterKg') =>
      now && changed ? changed[figure] - now[figure] : null
    return {
      id,
      atHome,
      bodyLitres: less('bodyLitres'),
      bodyLitresSafe: less('bodyLitresSafe'),
      peakLoadKg: less('peakLoadKg'),
      peakLoadFullWaterKg: less('peakLoadFullWaterKg'),
    }
  })
}

const kinds = [
  { ration: 'fixed', litresPerHour: 'number', packed: true },
  { ration: 'energy', litresPerHour: 'from-heat', packed: true },
] as const

describe('what each thing costs', () => {
  it.each(kinds)('is what the plan written without it comes to, less the plan with it: $ration', kind => {
    fc.assert(
      fc.property(
        documents(kind),
        fc.array(fc.nat(5), { minLength: 20, maxLength: 20 }),
        (document, draw) => {
          const gear = document.gear!.map((item, i) =>
            draw[i] === 0 && item.id !== 'food' ? { ...item, atHome: true } : item,
          )
          const listed = { ...document, gear }
          if (!reckon(planOf(listed)).ok) return
          expect(differences(effectsIn(listed), expected(listed))).toEqual([])
        },
      ),
      { numRuns: 25 },
    )
  })

  it('is nothing known of the food without which an energy ration has no answer', () => {
    const food: ItemDocument = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 }
    const kit: ItemDocument = { id: 'kit', massKg: 1, litres: 4 }
    const [ofFood, ofKit] = effectsIn(documentOf({ meals: { ration: 'energy' }, gear: [food, kit] }))
    const figures = ['bodyLitres', 'bodyLitresSafe', 'peakLoadKg', 'peakLoadFullWaterKg']
    expect(ofFood).toEqual({ id: 'food', atHome: false, ...Object.fromEntries(figures.map(f => [f, null])) })
    expect(ofKit!.peakLoadKg).toBeLessThan(-1)
  })

  it('shows no saving where a bottle stays home: the water is wanted all the same', () => {
    const [, bottle] = effectsIn(documentOf({ stops: dryAfterSpring, gear: hungryAndDry }))
    // Without any bottle the water rides in the main body, as much as is wanted.
    expect(bottle!.peakLoadFullWaterKg).toBeCloseTo(-0.1, 9)
    expect(bottle!.peakLoadKg).toBeGreaterThan(0)
  })

  it('counts what spills where its box stays home, for a thing at home what it would add', () => {
    const box: ItemDocument = { id: 'box', massKg: 1, litres: 5, holdsLitres: 5 }
    const bag: ItemDocument = { id: 'bag', massKg: 1, litres: 9.5, inside: 'box' }
    const tarp: ItemDocument = { id: 'tarp', massKg: 2, litres: 1.9, atHome: true }
    const [ofBox, ofBag, ofTarp] = effectsIn(
      documentOf({
        water: noWater,
        gear: [box, bag, tarp],
        settings: { fillEfficiency: 0, rigidPacking: 1, softPacking: 0.95 },
      }),
    )
    // Both e terms: the mean of 0, the setting and 1 is one third; V = R + S / Ps with no gaps in the rigid.
    expect(ofBox!.bodyLitres).toBeCloseTo(9.5 / 0.95 - (5 + 4.5 / 0.95), 9)
    expect(ofBag!.bodyLitres).toBeCloseTo(-4.5 / 0.95, 9)
    expect(ofTarp).toMatchObject({ atHome: true, peakLoadKg: 2, bodyLitres: expect.closeTo(2, 9) })
  })
})
