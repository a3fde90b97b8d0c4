// What must hold of every party: laws between the sharing out of one and of a changed one.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ItemDocument, PartyDocument } from '../../src/plan'
import { personAlone, reckon } from '../../src/reckon'
import { aloneWith } from './party-naive'
import { parties, partyPlanOf, partyReckoned } from './party-plans'
import { planOf } from './plans'

const fixed = { ration: 'fixed', litresPerHour: 'number' } as const
const holds = (law: (document: PartyDocument, at: number) => void, size = { people: 3, movable: 5 }) =>
  fc.assert(fc.property(parties(fixed, size), fc.nat(1000), law), { numRuns: 40, endOnFailure: true })

/** What the aims make of a party, in their order. */
function aims(document: PartyDocument): number[] {
  const { people, split } = partyReckoned(document)
  const spared = people.find(({ id }) => id === document.split?.by)
  return [split.youngOver, split.fails, ...(spared ? [spared.strain] : []), split.worstStrain, split.moved]
}

/** Below 0: `a` is better. Strains that differ by rounding are the same. */
function compared(a: number[], b: number[]): number {
  const at = a.findIndex((aim, i) => Math.abs(aim - b[i]!) > 1e-9 * Math.max(1, aim))
  return at < 0 ? 0 : a[at]! - b[at]!
}

const mayMove = ({ inside, stow, holdsWaterLitres = 0, owner, carriedBy, shareable }: ItemDocument) =>
  inside === undefined &&
  stow !== 'worn' &&
  holdsWaterLitres === 0 &&
  carriedBy === undefined &&
  (owner === undefined || shareable === true)

describe('the sharing out', () => {
  it('is never worse with another person who owns nothing, drinks nothing and has no pack', () =>
    holds(document => {
      const more = [...document.people, { id: 'helper', massKg: 60, waterShare: 0 }]
      expect(compared(aims({ ...document, people: more }), aims(document))).toBeLessThanOrEqual(0)
    }))

  it('is never better with one thing given to one person', () =>
    holds((document, at) => {
      const movable = document.gear!.filter(mayMove)
      fc.pre(movable.length > 0)
      const pinned = movable[at % movable.length]!
      const { id } = document.people[at % document.people.length]!
      const gear = document.gear!.map(item => (item === pinned ? { ...item, carriedBy: id } : item))
      expect(compared(aims({ ...document, gear }), aims(document))).toBeGreaterThanOrEqual(0)
    }))

  it('is as good whatever people are called, and in whatever order they are listed', () =>
    holds(document => {
      const renamed = (id: string) => `${id} by another name`
      const ids = new Set(document.people.map(({ id }) => id))
      const by = document.split?.by ?? 'limit'
      const other: PartyDocument = {
        ...document,
        people: document.people.map(person => ({ ...person, id: renamed(person.id) })).reverse(),
        gear: document.gear!.map(item => ({
          ...item,
          ...(item.owner !== undefined && { owner: renamed(item.owner) }),
          ...(item.carriedBy !== undefined && { carriedBy: renamed(item.carriedBy) }),
        })),
        split: { by: ids.has(by) ? renamed(by) : by },
      }
      expect(compared(aims(other), aims(document))).toBe(0)
    }))

  it('lets each thing be carried by exactly one person, and what is in a container with it', () =>
    holds(document => {
      const { people } = partyReckoned(document)
      const carrierOf = (id: string) => people.filter(({ carries }) => carries.includes(id)).map(p => p.id)
      for (const { id, inside, carriedBy } of document.gear!) {
        expect(carrierOf(id)).toHaveLength(1)
        if (inside !== undefined) expect(carrierOf(id)).toEqual(carrierOf(inside))
        if (carriedBy !== undefined) expect(carrierOf(id)).toEqual([carriedBy])
      }
    }))
})

describe('each person', () => {
  it('is reckoned as a hiker of their own with what they carry, to the last bit', () =>
    holds(document => {
      const plan = partyPlanOf(document)
      const party = partyReckoned(document)
      party.people.forEach(({ need, moments, pack, carries }, who) => {
        const gear = document.gear!.filter(({ id }) => carries.includes(id))
        const alone = reckon(planOf(aloneWith(document, document.people[who]!, gear)))
        if (!alone.ok) throw new Error(alone.problem.message)
        const { reckoning } = personAlone(plan, party, who)
        expect(reckoning).toEqual(alone.reckoning)
        expect({ need, moments }).toEqual({ need: alone.reckoning.need, moments: alone.reckoning.moments })
        expect(pack?.verdicts).toEqual(alone.reckoning.packs[0]?.verdicts)
      })
    }))
})

describe('a party of one', () => {
  it.each([
    { ration: 'fixed', litresPerHour: 'number', packed: true },
    { ration: 'energy', litresPerHour: 'number' },
    { ration: 'energy', litresPerHour: 'from-heat' },
  ] as const)('comes to what a plan of one hiker does, to the last bit: %j', kind => {
    const one = parties(kind, { people: 1, movable: 20 })
    fc.assert(
      fc.property(one, drawn => {
        const document = { ...drawn, people: drawn.people.map(({ waterShare: _, ...person }) => person) }
        const alone = reckon(planOf(aloneWith(document, document.people[0]!, document.gear!)))
        fc.pre(alone.ok)
        const party = partyReckoned(document)
        expect(personAlone(partyPlanOf(document), party, 0).reckoning).toEqual(alone.ok && alone.reckoning)
        expect(party.split).toMatchObject({ proven: true, moved: 0 })
      }),
      { numRuns: 25, endOnFailure: true },
    )
  })
})
