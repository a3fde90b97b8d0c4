// The command line and a plan of several people: its JSON, its report, and how it is refused.

import { describe, expect, it } from 'vitest'
import { run as runHere } from '../../src/cli/run'
import type { ItemDocument, PartyDocument } from '../../src/plan'
import { family } from '../engine/family'
import { partyReckoned } from '../engine/party-plans'

function run(args: string[], document: object) {
  const printed = { 1: '', 2: '' }
  const status = runHere([...args, '-'], {
    input: () => JSON.stringify(document),
    print: (descriptor, text) => {
      printed[descriptor] += text
    },
  })
  return { status, stdout: printed[1], stderr: printed[2], plain: plain(printed[1]) }
}

/** As one line, whatever blanks it has. */
const plain = (text: string) => text.replace(/[\s\u00a0\u202f]+/g, ' ')
const report = (document: object) => run([], document).plain

const changed = (things: Record<string, Partial<ItemDocument>>): PartyDocument => ({
  ...family,
  gear: family.gear!.map(item => ({ ...item, ...things[item.id] })),
})

describe('a party as JSON', () => {
  it('has each person’s figures and the split, and need and packs of nobody', () => {
    const { status, stdout, stderr } = run(['--json'], family)
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    const told = JSON.parse(stdout)
    const { people, split, missing } = partyReckoned(family)
    expect(told).toEqual(JSON.parse(JSON.stringify({ need: null, packs: null, people, split, missing })))
    expect(Object.keys(told.people[0])).toEqual(
      expect.arrayContaining(['id', 'name', 'carries', 'need', 'moments', 'carriedKg', 'strain', 'pack']),
    )
    expect(told.people[0].pack).toBeNull()
  })

  it('tells of a set-up where the plan has it', () => {
    const setups = [
      { name: 'bare', massKg: 0.8, frame: 'frameless' as const },
      { name: 'framed', massKg: 1.4, frame: 'framed' as const, ratedKg: 15 },
    ]
    const document: PartyDocument = {
      ...family,
      packs: [
        { name: 'Other', bodyLitres: 30, setups: setups.slice(0, 1) },
        { name: 'Large', bodyLitres: 60, setups },
      ],
      people: family.people.map((person, i) =>
        i === 0 ? { ...person, pack: { pack: 1, setup: 1 } } : person,
      ),
    }
    const { people } = JSON.parse(run(['--json'], document).stdout)
    expect(people[0].pack).toMatchObject({
      name: 'Large',
      setup: 'framed',
      pack: 1,
      index: 1,
      suffices: true,
    })
    expect(people[0].carriedKg).toBe(people[0].pack.carriedKg)
  })

  it('is refused with one line a problem and nothing on standard output', () => {
    const document = changed({ tent: { owner: 'dee' }, rope: { carriedBy: 'eve' } })
    const { status, stdout, stderr } = run(['--json'], document)
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(stderr.split('\n').filter(Boolean)).toEqual([
      'gear[6].owner: there is nobody with the id "dee": name one of "ada", "bo", "cy"',
      'gear[8].carriedBy: there is nobody with the id "eve": name one of "ada", "bo", "cy"',
    ])
  })

  it('judges no table of packs', () => {
    const { status, stderr } = run(['--packs', 'data/invented-packs.csv'], family)
    expect(status).toBe(2)
    expect(stderr).toMatch(/^people: a table of packs is judged by the load of one/)
  })
})

describe('a party in words', () => {
  it('tells the child’s limit first, how fair it is, and each one’s load on their own scale', () => {
    const told = report(family)
    expect(told).toMatch(
      /SHARED OUT Cy stays within the limit: 3\.4 kg of at most 5\.1 kg\. No fairer share exists, with those under 18 put first\. Ada: 7\.4 kg without a pack, 12 % of body mass, limit 20 % Bo: 10\.6 kg without a pack, 13 % of body mass, limit 20 % Cy: 3\.4 kg without a pack, 10 % of body mass, limit 15 %/,
    )
    expect(told).toContain('BO Carries Bottle, Kit, Tent, Food Load 10.6 kg')
  })

  it('says where no share keeps the child’s limit, and what would', () => {
    const told = report(changed({ 'kit of cy': { massKg: 6 } }))
    expect(told).toMatch(
      /SHARED OUT Cy carries too much: 6\.8 kg where 5\.1 kg is the most\. No share keeps everybody young within their limit: leave something at home/,
    )
  })

  it('says whose things others carry, and which packs do not do', () => {
    const document: PartyDocument = {
      ...changed({ rope: { owner: 'cy', carriedBy: 'ada' } }),
      packs: [
        {
          name: 'Tiny',
          bodyLitres: 10,
          setups: [{ name: 'as it is', massKg: 0.5, frame: 'framed', ratedKg: 4 }],
        },
      ],
      people: family.people.map((person, i) => (i < 2 ? { ...person, pack: { pack: 0 } } : person)),
    }
    const told = report(document)
    expect(told).toContain('No share suits every pack, with those under 18 put first: Ada’s and Bo’s do not.')
    expect(told).toContain('No fairer share exists, with those under 18 and suitable packs put first.')
    const byEnergy = report({
      ...document,
      trip: { ...family.trip, meals: { ...family.trip.meals, ration: 'energy' } },
      gear: document.gear!.map(item =>
        item.use === 'daily' ? { ...item, owner: 'bo', kcalPerKg: 4300 } : item,
      ),
      people: document.people.map(person => ({ ageYears: 40, ...person, heightCm: 170 })),
    })
    expect(byEnergy).toContain('No share that suits every pack was found: Ada’s and Bo’s do not.')
    expect(told).toContain('Carried by another than its owner: 1 thing: Rope (Cy’s, with Ada).')
    expect(told).toContain('Tiny, as it is: DOES NOT')
  })

  it('says that the others have none where one carries all of the shelter or of the water', () => {
    const told = report(family)
    expect(told).toContain('CAUTION: Bo carries all the shelter: if one of you turns back')
    expect(told).not.toContain('carries all the water')
    const gear = family.gear!.filter(({ id }) => !['bottle of bo', 'bottle of cy'].includes(id))
    expect(report({ ...family, gear })).toContain('Ada carries all the water')
    const tents = [...family.gear!, { id: 'tarp', name: 'Tarp', owner: 'ada', massKg: 0.5, litres: 1 }]
    expect(report({ ...family, gear: tents })).not.toContain('carries all the shelter')
  })

  it('says how far it may be from the fairest where that is not proven', () => {
    const things = Array.from({ length: 40 }, (_, i) => ({
      id: `thing ${i}`,
      massKg: 0.2 + ((i * 7919) % 97) / 101,
      litres: 1,
    }))
    const people = ['a', 'b', 'c', 'd'].map((id, i) => ({ id, massKg: 60 + 7 * i }))
    const document: PartyDocument = { ...family, people, gear: things }
    const { split } = partyReckoned(document)
    expect(split.proven).toBe(false)
    expect(split.worstStrain / split.boundStrain).toBeLessThan(1.01)
    expect(report(document)).toMatch(/At most 0\.\d % from the fairest\./)
  })

  it('tells of nobody that they carry what stays at home', () => {
    const home: ItemDocument = {
      id: 'lamp',
      name: 'Lamp',
      owner: 'bo',
      massKg: 0.2,
      litres: 0.3,
      atHome: true,
    }
    expect(report({ ...family, gear: [...family.gear!, home] })).toBe(report(family))
  })

  it('speaks of what it was shared out by', () => {
    expect(report({ ...family, split: { by: 'mass' } })).toContain('No share is more even, with those')
    expect(report({ ...family, split: { by: 'bo' } })).toContain(
      'Nothing better can be done for Bo, with those',
    )
    const people = family.people.map(person => ({ ...person, ageYears: 40 }))
    expect(report({ ...family, people })).toContain('No fairer share exists.')
  })
})
