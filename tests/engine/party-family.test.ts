// An invented family worked by hand: two adults and a child of ten on a day's walk.

import { describe, expect, it } from 'vitest'
import type { ItemDocument, PartyDocument } from '../../src/plan'
import { family } from './family'
import { partyReckoned } from './party-plans'

const carried = (document: PartyDocument) =>
  partyReckoned(document).people.map(({ carries }) =>
    carries.filter(id => !id.startsWith('kit') && !id.startsWith('bottle')),
  )
const withGear = (changed: Record<string, Partial<ItemDocument>>): PartyDocument => ({
  ...family,
  gear: family.gear!.map(item => ({ ...item, ...changed[item.id] })),
})

describe('a family of three', () => {
  it('shares out so that the largest share of one’s own limit is least, ties by the order of the list', () => {
    const { people, split } = partyReckoned(family)
    // Tent and food with Bo, 10.6 kg of 16; stove and rope one each with Ada and Cy, the stove, listed first, with Ada.
    expect(carried(family)).toEqual([['stove'], ['tent', 'food'], ['rope']])
    expect(people.map(({ strain }) => strain)).toEqual([
      expect.closeTo(7.4 / 12, 12),
      expect.closeTo(10.6 / 16, 12),
      expect.closeTo(3.35 / 5.1, 12),
    ])
    expect(split).toEqual({
      youngOver: 0,
      fails: 0,
      worstStrain: people[1]!.strain,
      moved: 0,
      proven: true,
      boundStrain: people[1]!.strain,
    })
  })

  it('shares out mass where that is asked for', () => {
    // Cy may carry 2.75 kg more, so the tent and nothing with it; of the rest two things make 8.4 kg for Ada or one for Bo.
    const { split, people } = partyReckoned({ ...family, split: { by: 'mass' } })
    expect(split.youngOver).toBe(0)
    expect(split.worstStrain).toBeCloseTo(8.4, 12)
    expect(people[0]!.limitShare).toBeCloseTo(people[0]!.carriedKg / 12, 12)
  })

  it('spares one person first, and is fair to the others after that', () => {
    const { people } = partyReckoned({ ...family, split: { by: 'bo' } })
    // All of it with Ada and Cy; Cy's limit, 5.1 kg, holds 2.75 kg more and is kept.
    expect(people[1]!.strain).toBeCloseTo(7.6 / 16, 12)
    expect(people[2]!.strain).toBeLessThanOrEqual(1)
  })

  it('never trades away the limit of a child, not even for packs that do', () => {
    const small = withGear({ tent: { massKg: 6 } })
    const document: PartyDocument = {
      ...small,
      people: family.people.map((person, i) => (i < 2 ? { ...person, pack: { pack: 0 } } : person)),
      packs: [
        {
          name: 'Small',
          bodyLitres: 60,
          setups: [{ name: 'as it is', massKg: 1, frame: 'framed', ratedKg: 9 }],
        },
      ],
    }
    const { split, people } = partyReckoned(document)
    expect(split).toMatchObject({ youngOver: 0, fails: 1, proven: true })
    expect(people[2]!.limitShare).toBeLessThanOrEqual(1)
  })

  it('says so where no share keeps the limit of a child', () => {
    const { split } = partyReckoned(withGear({ 'kit of cy': { massKg: 6 } }))
    expect(split).toMatchObject({ youngOver: 1, proven: true })
  })

  it('leaves things with their owner where that is as fair, and counts those that are not', () => {
    const theirs = withGear({
      rope: { owner: 'cy', shareable: true },
      stove: { owner: 'cy', shareable: true },
    })
    expect(partyReckoned(theirs).split.moved).toBe(1)
    expect(carried(theirs)).toEqual([['stove'], ['tent', 'food'], ['rope']])
    const told = withGear({ rope: { owner: 'cy', carriedBy: 'bo' } })
    expect(partyReckoned(told).split.moved).toBe(1)
  })
})
