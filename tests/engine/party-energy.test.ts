// A party whose rations follow each one's energy: what is carried of somebody's food follows the rations of its owner.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Item, PartyDocument } from '../../src/plan'
import { personAlone, reckonParty } from '../../src/reckon'
import { walkingHours } from './naive-energy'
import { happenings, leftOf, usedOf } from './naive-trip'
import { parties, partyPlanOf } from './party-plans'

const kind = { ration: 'energy', litresPerHour: 'number' } as const
const drawn = parties(kind, { people: 3, movable: 6 })

/** Food of the first person that the second carries. */
const withForeignFood = (document: PartyDocument): PartyDocument => ({
  ...document,
  gear: [
    ...document.gear!.filter(({ id }) => id !== 'food'),
    ...document.people.map(({ id }, i) => ({
      id: `food of ${id}`,
      owner: id,
      massKg: 0.6 + 0.1 * i,
      litres: 1.5,
      use: 'daily' as const,
      kcalPerKg: 4300,
      ...(i === 0 && { carriedBy: document.people[1]!.id }),
    })),
  ],
})

describe('rations by energy in a party', () => {
  it('follow the owner of the food, and its mass whoever carries it', () => {
    let shared = 0
    fc.assert(
      fc.property(drawn.map(withForeignFood), document => {
        const plan = partyPlanOf(document)
        const result = reckonParty(plan)
        fc.pre(result.ok)
        if (!result.ok) return
        const { party } = result
        const { stops, pace } = plan.trip
        const hours = stops.flatMap(({ leg }) => (leg ? [walkingHours(leg, pace)] : []))
        const rationsOf = (id: string) =>
          party.people.find(person => person.id === id)!.days.map(({ ration }) => ration)
        party.people.forEach(({ moments }, who) => {
          const alone = personAlone(plan, party, who).plan
          const daily = alone.gear.filter(item => item.use === 'daily')
          if (daily.some(({ owner }) => owner !== plan.people[who]!.id)) shared++
          const looks = (item: Item) => {
            const rations = rationsOf(item.owner!)
            const list = happenings(alone, hours, rations)
            return list.flatMap((it, now) =>
              it.what === 'look'
                ? [{ left: leftOf(item, now, list, alone, rations), used: usedOf(item, now, list) }]
                : [],
            )
          }
          const all = daily
            .filter(item => item.stow !== 'worn' || item.inside !== null)
            .map(item => ({ item, at: looks(item) }))
          const worn = (item: Item) =>
            item.inside !== null && alone.gear.find(({ id }) => id === item.inside)!.stow === 'worn'
          moments.forEach((moment, m) => {
            const kg = all
              .filter(({ item }) => !worn(item))
              .reduce((sum, { item, at }) => sum + item.massKg * item.count * at[m]!.left, 0)
            expect(moment.kg.daily).toBeCloseTo(kg, 9)
          })
        })
      }),
      { numRuns: 40 },
    )
    expect(shared).toBeGreaterThan(30)
  })

  it('answer each one’s own energy at what they carry, and a child under 14 eats whole rations', () => {
    fc.assert(
      fc.property(drawn.map(withForeignFood), document => {
        const plan = partyPlanOf(document)
        const result = reckonParty(plan)
        fc.pre(result.ok)
        if (!result.ok) return
        result.party.people.forEach(({ days }, who) => {
          const { id, ageYears } = plan.people[who]!
          const kcal = plan.gear
            .filter(item => item.owner === id && item.use === 'daily')
            .reduce((sum, item) => sum + item.massKg * item.count * (item.kcalPerKg ?? 0), 0)
          for (const { ration, kcalTotal } of days)
            if (ageYears !== null && ageYears < 14) expect(ration).toBe(1)
            // The rations are those of the round before the last, which moved no load by a gram.
            else expect(ration).toBeCloseTo((kcalTotal! * (1 - plan.trip.meals.deficit)) / kcal, 2)
        })
      }),
      { numRuns: 40 },
    )
  })
})
