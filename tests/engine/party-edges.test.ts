// Where what two carry is no plain sum of their things: a collar, water from heat, somebody else's food.

import { describe, expect, it } from 'vitest'
import type { ItemDocument, PartyDocument } from '../../src/plan'
import { partyReckoned } from './party-plans'

const bottle = (owner: string): ItemDocument => ({
  id: `bottle of ${owner}`,
  owner,
  massKg: 0.1,
  litres: 1,
  stow: 'outside-pocket',
  holdsWaterLitres: 8,
})

const two = (it: Partial<PartyDocument>): PartyDocument => ({
  format: 'pack-reckoner/plan',
  version: 1,
  people: [
    { id: 'ada', massKg: 70, heightCm: 170, ageYears: 35 },
    { id: 'bo', massKg: 60, heightCm: 170, ageYears: 35 },
  ],
  trip: { stops: [{ name: 'Start' }, { name: 'End', leg: { km: 4, hours: 1 } }] },
  ...it,
})

const carriesOf = (document: PartyDocument, id: string) =>
  partyReckoned(document)
    .people.filter(({ carries }) => carries.includes(id))
    .map(person => person.id)

describe('sharing out', () => {
  it('counts on a collar where with it a pack fits nine times in ten', () => {
    const setups = [{ name: 'as it is', massKg: 1, frame: 'framed' as const, ratedKg: 20 }]
    const document = two({
      people: [
        { id: 'ada', massKg: 70, pack: { pack: 0 } },
        // The stronger one's pack is too small for it.
        { id: 'bo', massKg: 95, pack: { pack: 1 } },
      ],
      gear: [bottle('ada'), bottle('bo'), { id: 'quilts', massKg: 1, litres: 33, litresFrom: 'filled' }],
      packs: [
        { name: 'With a collar', bodyLitres: 32, collarLitres: 13, bodyFrom: 'measured', setups },
        { name: 'Small', bodyLitres: 20, setups },
      ],
      settings: { handSpread: 0.02, softPacking: 1 },
    })
    const { people, split } = partyReckoned(document)
    expect(people[0]!.carries).toContain('quilts')
    expect(people[0]!.pack?.verdicts).toEqual(expect.arrayContaining(['undersized', 'fits-with-collar']))
    expect(split).toMatchObject({ fails: 0, proven: true })
  })

  it('counts the water that a heavier load asks for in the heat', () => {
    const document = two({
      trip: {
        stops: [{ name: 'Start' }, { name: 'End', leg: { km: 18, hours: 4, airC: 30 } }],
        water: { litresPerHour: 'from-heat' },
      },
      gear: [
        bottle('ada'),
        bottle('bo'),
        { id: 'kit of ada', owner: 'ada', massKg: 8, litres: 20 },
        { id: 'kit of bo', owner: 'bo', massKg: 6.44, litres: 20 },
        { id: 'tent', massKg: 2, litres: 8 },
      ],
    })
    const waterOf = (who: number, by: PartyDocument) => partyReckoned(by).people[who]!.moments[0]!.kg.water
    const withAda = {
      ...document,
      gear: document.gear!.map(item => (item.id === 'tent' ? { ...item, carriedBy: 'ada' } : item)),
    }
    // With the tent Ada walks harder and drinks 0.9 L more; by the tent alone she would be the one to take it.
    expect(waterOf(0, withAda)).toBeGreaterThan(waterOf(0, document) + 0.9)
    const strains = partyReckoned(document).people.map(({ strain }) => strain)
    expect(strains[0]! + 2 / 14).toBeLessThan(strains[1]!)
    expect(partyReckoned(withAda).split.worstStrain).toBeGreaterThan(strains[1]!)
    expect(carriesOf(document, 'tent')).toEqual(['bo'])
  })
})

describe('what is carried of another’s food', () => {
  it('is as unsure as its mass is, by the rations of its owner', () => {
    const food = { massKg: 1, litres: 2, use: 'daily', kcalPerKg: 3000 } as const
    const document = two({
      trip: {
        stops: [
          { name: 'Start' },
          { name: 'Camp', nights: 1, water: 'sure', leg: { km: 20, ascentM: 900 } },
          { name: 'End', leg: { km: 12 } },
        ],
        meals: { ration: 'energy' },
      },
      gear: [
        bottle('ada'),
        bottle('bo'),
        { ...food, id: 'food of ada', owner: 'ada', carriedBy: 'bo' },
        { ...food, id: 'food of bo', owner: 'bo', carriedBy: 'ada' },
      ],
    })
    const { people } = partyReckoned(document)
    const rations = people.map(({ days }) => days[0]!.ration)
    expect(Math.abs(rations[0]! - rations[1]!)).toBeGreaterThan(0.05)
    for (const { need, moments } of people) {
      const heaviest = Math.max(...moments.map(({ kg }) => kg.total))
      const { kg } = moments.find(moment => moment.kg.total === heaviest)!
      // Both figures are stated: within 5 %, and one habit judged them.
      const [foodU, bottleU] = [kg.daily + kg.rubbish, 0.1].map(mass => (mass * 0.05) / Math.sqrt(3)) as [
        number,
        number,
      ]
      const variance = 0.5 * (foodU ** 2 + bottleU ** 2) + 0.5 * (foodU + bottleU) ** 2
      expect(need.sigmaM).toBeCloseTo(Math.sqrt(variance), 9)
    }
  })
})
