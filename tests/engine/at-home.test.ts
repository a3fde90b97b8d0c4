// What is left at home counts nowhere: the plan is the one without it, whatever it is and whatever is asked of it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ItemDocument, type PlanDocument, parsePlan, settle } from '../../src/plan'
import { reckon, remediesFor, takenAlong } from '../../src/reckon'
import { differences } from './agree'
import { documents, planOf } from './plans'
import { documentOf, hungryAndDry, reckoned } from './small-plans'

const fixed = documents({ ration: 'fixed', litresPerHour: 'number', packed: true })
const byEnergy = documents({ ration: 'energy', litresPerHour: 'from-heat', packed: true })
const chosen = fc.array(fc.boolean(), { minLength: 20, maxLength: 20 })

/** The document with some of its things at home; the food that an energy ration needs stays. */
const atHome = (document: PlanDocument, home: boolean[]): PlanDocument => ({
  ...document,
  gear: document.gear!.map((item, i) => (home[i] && item.id !== 'food' ? { ...item, atHome: true } : item)),
})

/** The document written without them: what was inside one of them says nothing of a container. */
function withoutThem(document: PlanDocument): PlanDocument {
  const gone = new Set(document.gear!.flatMap(({ id, atHome }) => (atHome ? [id] : [])))
  const gear = document.gear!.flatMap((item): ItemDocument[] => {
    if (gone.has(item.id)) return []
    const { inside, ...rest } = item
    return [inside !== undefined && !gone.has(inside) ? { ...rest, inside } : rest]
  })
  return { ...document, gear }
}

describe('a plan with things left at home', () => {
  it('is, as it is taken along, the plan without them', () => {
    fc.assert(
      fc.property(fc.oneof(fixed, byEnergy), chosen, (document, home) => {
        const listed = atHome(document, home)
        expect(takenAlong(planOf(listed))).toEqual(planOf(withoutThem(listed)))
      }),
      { numRuns: 100 },
    )
  })

  it('comes to the same in every figure, answer and notice; what is missing keeps its place in the list', () => {
    fc.assert(
      fc.property(fc.oneof(fixed, byEnergy), chosen, (document, home) => {
        const listed = atHome(document, home)
        const [with_, without] = [reckon(planOf(listed)), reckon(planOf(withoutThem(listed)))]
        expect(with_.ok).toBe(without.ok)
        if (!with_.ok || !without.ok) return
        const { missing, ...rest } = with_.reckoning
        const { missing: shorter, ...others } = without.reckoning
        expect(differences(rest, others, { relative: 0 })).toEqual([])
        const places = listed.gear!.flatMap(({ atHome }, i) => (atHome ? [] : [i]))
        const placed = shorter.map(path =>
          path.replace(/\[(\d+)\]/, (_, index: string) => `[${places[Number(index)]}]`),
        )
        expect(missing).toEqual(placed)
      }),
      { numRuns: 100 },
    )
  })

  it('lets what was in a container at home ride where its own place is', () => {
    const box: ItemDocument = { id: 'box', massKg: 1, litres: 10, holdsLitres: 9, stow: 'strapped-on' }
    const gear = (boxAtHome: boolean): ItemDocument[] => [
      { ...box, ...(boxAtHome && { atHome: true }) },
      { id: 'fleece', massKg: 0.5, litres: 4, inside: 'box' },
      { id: 'snack', massKg: 0.2, litres: 1, inside: 'box', stow: 'outside-pocket' },
    ]
    const needOf = (boxAtHome: boolean) => {
      const { need, moments } = reckoned(planOf(documentOf({ gear: gear(boxAtHome) })))
      return [moments[0]!.softLitres - moments[0]!.litres.water, need.outsideLitres, need.baseKg]
    }
    expect(needOf(false)).toEqual([0, 0, 1.7])
    expect(needOf(true)).toEqual([4, 1, 0.7])
  })

  it('cannot tell of a pack where everything stays at home', () => {
    const packs = [
      {
        name: 'Pack',
        bodyLitres: 40,
        setups: [{ name: 'it', massKg: 1, frame: 'framed' as const, ratedKg: 12 }],
      },
    ]
    const gear = hungryAndDry.map(item => ({ ...item, atHome: true }))
    expect(reckoned(planOf(documentOf({ gear, packs }))).packs[0]!.answer).toBe('cannot-tell')
    expect(reckoned(planOf(documentOf({ gear: hungryAndDry, packs }))).packs[0]!.answer).not.toBe(
      'cannot-tell',
    )
  })

  it('is refused where the only food that says its energy stays at home, as it is without it', () => {
    const food: ItemDocument = { id: 'food', massKg: 0.7, litres: 1.7, use: 'daily', kcalPerKg: 4300 }
    const document = documentOf({ meals: { ration: 'energy' }, gear: [food] })
    expect(parsePlan(document).ok).toBe(true)
    const [home, gone] = [atHome, withoutThem].map((_, i) =>
      parsePlan({ ...document, gear: i === 0 ? [{ ...food, atHome: true }] : [] }),
    )
    expect(home).toMatchObject({ ok: false })
    expect(home).toEqual(gone)
  })
})

it('what asks further about a plan is asked of what is taken along', () => {
  const gear = [...hungryAndDry, { id: 'chair', name: 'Chair', massKg: 3, litres: 30, atHome: true }]
  const packs = [
    {
      name: 'Small',
      bodyLitres: 8,
      setups: [{ name: 'it', massKg: 0.5, frame: 'framed' as const, ratedKg: 10 }],
    },
  ]
  const plan = planOf(documentOf({ gear, packs }))
  const found = remediesFor(takenAlong(plan), reckoned(plan), 0)
  expect(JSON.stringify(found)).not.toContain('chair')
})

it('a draft is not asked for the figures of what stays at home', () => {
  const item = { id: 'chair', name: 'Chair' }
  const stops = [
    { id: 'a', name: 'Start' },
    { id: 'b', name: 'End', leg: { km: 5 } },
  ]
  const draft = (more: object) => ({
    carrier: { massKg: 70 },
    trip: { stops },
    gear: [{ ...item, ...more }],
    packs: [],
  })
  expect(settle(draft({})).leftOut).toHaveLength(2)
  const settled = settle(draft({ atHome: true }))
  expect(settled.leftOut).toEqual([])
  expect(settled.document.gear).toEqual([{ ...item, massKg: null, litres: null, atHome: true }])
})
