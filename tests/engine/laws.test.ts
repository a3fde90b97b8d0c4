// What must hold of every plan, whatever its numbers: laws between a plan's reckoning and that of a changed plan.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, PlanDocument } from '../../src/plan'
import { differences } from './agree'
import { documents, planOf } from './plans'
import { reckoned } from './small-plans'

const fixed = documents({ ration: 'fixed', litresPerHour: 'number' })
const reckonDocument = (document: PlanDocument) => reckoned(planOf(document))
const holds = (law: (document: PlanDocument) => void) => fc.assert(fc.property(fixed, law), { numRuns: 40 })

/** `a` is at most `b`, but for rounding. */
const atMost = (a: number, b: number) => expect(a).toBeLessThanOrEqual(b + 1e-9 * Math.max(1, Math.abs(b)))

const withGear = (
  document: PlanDocument,
  change: (gear: ItemDocument[]) => ItemDocument[],
): PlanDocument => ({
  ...document,
  gear: change(document.gear ?? []),
})

const withStops = (
  document: PlanDocument,
  change: (
    stop: PlanDocument['trip']['stops'][number],
    middle: boolean,
  ) => PlanDocument['trip']['stops'][number],
): PlanDocument => {
  const { stops } = document.trip
  const changed = stops.map((stop, i) => change(stop, i > 0 && i < stops.length - 1))
  return { ...document, trip: { ...document.trip, stops: changed } }
}

describe('food', () => {
  it('never lowers the load or the litres at any moment when there is more of it', () =>
    holds(document => {
      const more = withGear(document, gear => [...gear, { id: 'more', massKg: 0.5, litres: 1, use: 'daily' }])
      const before = reckonDocument(document)
      reckonDocument(more).moments.forEach((moment, i) => {
        atMost(before.moments[i]!.kg.total, moment.kg.total)
        atMost(before.moments[i]!.bodyLitres, moment.bodyLitres)
      })
    }))

  it('never makes a higher peak load by being bought more often', () =>
    holds(document => {
      const often = withStops(document, (stop, middle) => (middle ? { ...stop, resupply: true } : stop))
      atMost(reckonDocument(often).need.peakLoadKg, reckonDocument(document).need.peakLoadKg)
    }))

  it('never reaches further in a pack that bears less', () =>
    holds(document => {
      fc.pre((document.packs ?? []).length > 0)
      const weaker: PlanDocument = {
        ...document,
        packs: document.packs!.map(pack => ({ ...pack, bodyLitres: 1 + pack.bodyLitres! / 2 })),
      }
      const strong = reckonDocument(document).packs
      reckonDocument(weaker).packs.forEach((pack, i) => {
        if (strong[i]!.reachDays !== null)
          atMost(pack.reachDays ?? Number.POSITIVE_INFINITY, strong[i]!.reachDays)
      })
    }))
})

describe('a pack', () => {
  it('never becomes undersized, nor the chance of a fit smaller, by being bigger', () =>
    holds(document => {
      const bigger: PlanDocument = {
        ...document,
        packs: (document.packs ?? []).map(pack => ({ ...pack, bodyLitres: pack.bodyLitres! * 1.5 })),
      }
      const before = reckonDocument(document).packs
      reckonDocument(bigger).packs.forEach((pack, i) => {
        if (!before[i]!.verdicts.includes('undersized')) expect(pack.verdicts).not.toContain('undersized')
        // A pack in doubt is in more doubt when bigger, so only the side of one half is certain.
        if (before[i]!.fitChance >= 0.5) expect(pack.fitChance).toBeGreaterThanOrEqual(0.5)
      })
    }))

  it('gets the same verdicts whatever else is in the list', () =>
    holds(document => {
      const packs = document.packs ?? []
      const together = reckonDocument(document).packs
      const apart = packs.flatMap(pack => reckonDocument({ ...document, packs: [pack] }).packs)
      expect(apart.map(({ pack: _, ...rest }) => rest)).toEqual(together.map(({ pack: _, ...rest }) => rest))
    }))
})

describe('the gear list', () => {
  it('means the same in any order', () =>
    holds(document => {
      const backwards = withGear(document, gear => [...gear].reverse())
      const { need, moments } = reckonDocument(document)
      expect(differences(reckonDocument(backwards), { need, moments })).toEqual([])
    }))

  it('means the same litres and load when pieces of one item are listed apart', () =>
    holds(document => {
      const doubled = withGear(document, gear =>
        gear.map(item => (item.holdsLitres === undefined ? { ...item, count: 2 * (item.count ?? 1) } : item)),
      )
      const apart = withGear(doubled, gear =>
        gear.flatMap(item => {
          if (item.holdsLitres !== undefined) return [item]
          const half = { ...item, count: item.count! / 2 }
          return [half, { ...half, id: `${item.id} again` }]
        }),
      )
      const one = reckonDocument(doubled)
      const two = reckonDocument(apart)
      const { sigmaV, sigmaShare, sigmaM, bodyLitresSafe, peakLoadSafeKg, ...means } = one.need
      expect(differences(two, { need: means, moments: one.moments })).toEqual([])
      // Two items err at most together, as the pieces of one do.
      atMost(two.need.sigmaV, sigmaV)
      atMost(two.need.sigmaShare, sigmaShare)
      atMost(two.need.sigmaM, sigmaM)
    }))

  it('takes no more of the main body when a thing is added inside a container with room', () =>
    holds(document => {
      const room: ItemDocument = { id: 'room', massKg: 1, litres: 12, holdsLitres: 10, build: 'rigid' }
      const thing: ItemDocument = { id: 'in it', massKg: 1, litres: 9.9, inside: 'room' }
      const empty = reckonDocument(withGear(document, gear => [...gear, room]))
      const full = reckonDocument(withGear(document, gear => [...gear, room, thing]))
      expect(
        differences(
          full.moments.map(m => m.bodyLitres),
          empty.moments.map(m => m.bodyLitres),
        ),
      ).toEqual([])
      expect(full.need.peakLoadKg).toBeCloseTo(empty.need.peakLoadKg + 1, 9)
    }))

  it('counts the same for all but the pockets wherever outside a thing rides', () =>
    holds(document => {
      const at = (stow: 'outside-pocket' | 'strapped-on') =>
        reckonDocument(withGear(document, gear => [...gear, { id: 'mat', massKg: 0.4, litres: 9, stow }]))
      const { outsideLitres, ...need } = at('outside-pocket').need
      const strapped = at('strapped-on').need
      expect(differences(strapped, need)).toEqual([])
      expect(strapped.outsideLitres).toBeCloseTo(outsideLitres - 9, 9)
    }))
})

describe('water', () => {
  it('is never carried in larger amounts for trusting a doubtful source', () =>
    holds(document => {
      const trusting = (trustDoubtful: boolean) =>
        reckonDocument({
          ...document,
          trip: { ...document.trip, water: { ...document.trip.water, trustDoubtful } },
        }).need
      atMost(trusting(true).waterCarryLitres, trusting(false).waterCarryLitres)
      atMost(trusting(true).waterShortLitres, trusting(false).waterShortLitres)
    }))

  it('never exceeds what the containers hold, nor falls below nothing', () =>
    holds(document => {
      const { moments, need } = reckonDocument(document)
      for (const { kg } of moments) {
        expect(kg.water).toBeGreaterThanOrEqual(0)
        atMost(kg.water, need.waterCapacityLitres ?? Number.POSITIVE_INFINITY)
      }
    }))
})

describe('every moment', () => {
  it('weighs what its parts weigh, and takes at least the litres of its things', () =>
    holds(document => {
      const plan = planOf(document)
      for (const { kg, bodyLitres, litres, rigidLitres, softLitres } of reckoned(plan).moments) {
        const { total, ...parts } = kg
        expect(Object.values(parts).reduce((a, b) => a + b, 0)).toBeCloseTo(total, 9)
        expect(Object.values(litres).reduce((a, b) => a + b, 0)).toBeCloseTo(rigidLitres + softLitres, 9)
        for (const part of Object.values(parts)) expect(part).toBeGreaterThanOrEqual(0)
        if (plan.settings.personalFactor >= 1) atMost(Math.max(rigidLitres, softLitres), bodyLitres)
      }
    }))
})
