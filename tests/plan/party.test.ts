// A plan of several people: what it is refused for, by field, and what it means where it says nothing.

import { describe, expect, it } from 'vitest'
import {
  checkDraft,
  type Draft,
  emptyDraft,
  fromPlanDocument,
  isParty,
  type PartyPlan,
  parseAny,
  parsePlan,
  parsePlanText,
  pathText,
  problemInWords,
  setField,
  settleAny,
} from '../../src/plan'

const party = () => ({
  format: 'pack-reckoner/plan',
  version: 1,
  people: [
    { id: 'ada', massKg: 60, pack: { pack: 0 } },
    { id: 'cy', name: 'Cy', massKg: 34, ageYears: 10, waterShare: 0.5, pack: null },
  ] as Record<string, unknown>[],
  trip: { stops: [{ name: 'Start' }, { name: 'End', leg: { km: 5 } }] } as Record<string, unknown>,
  gear: [
    { id: 'tent', massKg: 2, litres: 6 },
    { id: 'box', massKg: 0.3, litres: 4, holdsLitres: 3, owner: 'ada', shareable: true },
    { id: 'map', massKg: 0.1, litres: 0.1, inside: 'box' },
    { id: 'coat', massKg: 0.5, litres: 2, stow: 'worn', owner: 'cy' },
    { id: 'bottle', massKg: 0.1, litres: 1, holdsWaterLitres: 1, owner: 'cy' },
    { id: 'food', massKg: 1, litres: 2, use: 'daily', kcalPerKg: 4000 },
  ] as Record<string, unknown>[],
  packs: [
    { name: 'P', bodyLitres: 40, setups: [{ name: 'as it is', massKg: 1, frame: 'framed' }] },
  ] as Record<string, unknown>[],
  packings: [] as Record<string, unknown>[],
})

type Party = ReturnType<typeof party> & Record<string, unknown>

/** The lines that the command line prints for a party that was changed. */
function problems(change: (document: Party) => void): string[] {
  const document = party() as Party
  change(document)
  const parsed = parseAny(document)
  return parsed.ok ? [] : parsed.problems.map(({ path, message }) => `${pathText(path)}: ${message}`)
}

const packing = { date: '2026-05-02', p: 1, packLitres: 40, W: 40, d: 0, things: [] }

describe('a plan of several people', () => {
  it('is complete with every default in place', () => {
    const parsed = parseAny(party())
    if (!parsed.ok || !isParty(parsed.plan)) throw new Error('refused')
    const { people, split, gear } = parsed.plan as PartyPlan
    expect(people).toEqual([
      {
        id: 'ada',
        name: '',
        massKg: 60,
        heightCm: null,
        ageYears: null,
        sex: null,
        loadShareLimit: 0.2,
        waterShare: 1,
        pack: { pack: 0, setup: 0 },
      },
      expect.objectContaining({ id: 'cy', loadShareLimit: 0.15, waterShare: 0.5, pack: null }),
    ])
    expect(split).toEqual({ by: 'limit' })
    expect(gear[0]).toMatchObject({ owner: null, carriedBy: null, shareable: false })
  })

  it.each<[what: string, change: (document: Party) => void, line: RegExp]>([
    [
      'with a carrier as well',
      it => Object.assign(it, { carrier: { massKg: 70 } }),
      /^people: stands in for carrier/,
    ],
    ['without anybody', it => (it.people = []), /^people: give 1 or more people/],
    [
      'of nine',
      it => (it.people = Array.from({ length: 9 }, (_, i) => ({ id: `p${i}`, massKg: 60 }))),
      /^people: holds too many people: 8 at most/,
    ],
    [
      'one without a mass',
      it => delete it.people[1]!.massKg,
      /^people\[1\]\.massKg: missing: write a number from 10 to 300 kg/,
    ],
    [
      'one of no age',
      it => (it.people[1]!.ageYears = 0),
      /^people\[1\]\.ageYears: write a number from 1 to 110/,
    ],
    ['two of one id', it => (it.people[1]!.id = 'ada'), /^people\[1\]\.id: "ada" is used twice/],
    ['a person called "mass"', it => (it.people[1]!.id = 'mass'), /^people\[1\]\.id: "mass" is a word of/],
    ['one without an id', it => delete it.people[0]!.id, /^people\[0\]\.id: /],
    ['an unknown field', it => (it.people[0]!.shoe = 42), /^people\[0\]\.shoe: is not a field of a plan/],
    [
      'no such pack',
      it => (it.people[1]!.pack = { pack: 1 }),
      /^people\[1\]\.pack\.pack: the plan has no pack 1: write 0, or null/,
    ],
    [
      'no such set-up',
      it => (it.people[0]!.pack = { pack: 0, setup: 2 }),
      /^people\[0\]\.pack\.setup: "P" has no set-up 2: write 0/,
    ],
    [
      'half a pack',
      it => (it.people[0]!.pack = { pack: 0.5 }),
      /^people\[0\]\.pack\.pack: write a whole number/,
    ],
    [
      'an owner who was removed',
      it => (it.gear[1]!.owner = 'bo'),
      /^gear\[1\]\.owner: there is nobody with the id "bo": name one of "ada", "cy"/,
    ],
    [
      'carried by nobody there is',
      it => (it.gear[0]!.carriedBy = 'bo'),
      /^gear\[0\]\.carriedBy: there is nobody/,
    ],
    [
      'what is worn and handed on',
      it => (it.gear[3]!.carriedBy = 'ada'),
      /^gear\[3\]\.carriedBy: what is worn stays with its owner: remove it/,
    ],
    ['what is worn by nobody', it => delete it.gear[3]!.owner, /^gear\[3\]\.owner: is missing: what is worn/],
    [
      'a bottle that may move',
      it => (it.gear[4]!.shareable = true),
      /^gear\[4\]\.shareable: what holds water stays with its owner: remove it/,
    ],
    ['a bottle of nobody', it => delete it.gear[4]!.owner, /^gear\[4\]\.owner: is missing: what holds water/],
    [
      'a container that goes another way than what is in it',
      it => (it.gear[2]!.carriedBy = 'cy'),
      /^gear\[2\]\.carriedBy: it rides in "box" and goes where that goes: say it of the container/,
    ],
    ['what is inside and may move', it => (it.gear[2]!.shareable = true), /^gear\[2\]\.shareable: it rides/],
    [
      'shared out by a stranger',
      it => Object.assign(it, { split: { by: 'bo' } }),
      /^split\.by: "bo" is neither .*: write one of "limit", "mass", "ada", "cy"/,
    ],
    [
      'a packing of a stranger',
      it => it.packings.push({ ...packing, person: 'bo' }),
      /^packings\[0\]\.person: there is nobody/,
    ],
    [
      'rations by energy for food of all',
      it => (it.trip.meals = { ration: 'energy' }),
      /^trip\.meals\.ration: "energy" needs each daily item to have an owner, and gear\[5\] has none/,
    ],
    [
      'rations by energy of food that says none',
      it => {
        it.trip.meals = { ration: 'energy' }
        it.people[1]!.ageYears = 14
        it.gear[5]!.owner = 'ada'
        it.gear.push({ id: 'milk', massKg: 1, litres: 1, use: 'daily', owner: 'cy' })
      },
      /^trip\.meals\.ration: "energy" needs a daily item of "cy" with kcalPerKg/,
    ],
  ])('is refused by field: %s', (_, change, line) => {
    const lines = problems(document => void change(document))
    expect(lines).toContainEqual(expect.stringMatching(line))
  })

  it('takes rations by energy where each food is somebody’s, and a child’s that says no energy', () => {
    const lines = problems(document => {
      document.trip.meals = { ration: 'energy' }
      document.gear[5]!.owner = 'ada'
      document.gear.push({ id: 'milk', massKg: 1, litres: 1, use: 'daily', owner: 'cy' })
    })
    expect(lines).toEqual([])
  })
})

describe('a plan of one hiker', () => {
  it.each([
    ['split', { split: { by: 'mass' } }],
    ['gear[0].owner', { gear: [{ id: 'a', massKg: 1, litres: 1, owner: 'ada' }] }],
    ['gear[0].carriedBy', { gear: [{ id: 'a', massKg: 1, litres: 1, carriedBy: 'ada' }] }],
    ['gear[0].shareable', { gear: [{ id: 'a', massKg: 1, litres: 1, shareable: true }] }],
    ['packings[0].person', { packings: [{ ...packing, person: 'ada' }] }],
  ])('is refused where it says what only a party can: %s', (path, part) => {
    const { people: _, ...rest } = party()
    const parsed = parseAny({ ...rest, gear: [], carrier: { massKg: 70 }, ...part })
    if (parsed.ok) throw new Error('taken')
    expect(parsed.problems.map(problem => pathText(problem.path))).toEqual([path])
    expect(parsed.problems[0].message).toMatch(/belongs to a plan of several people/)
  })
})

describe('what knows one hiker only', () => {
  it('refuses a plan of several people whole and in words', () => {
    for (const parsed of [parsePlan(party()), parsePlanText(JSON.stringify(party()))]) {
      if (parsed.ok) throw new Error('taken')
      expect(parsed.problems).toHaveLength(1)
      expect(problemInWords(parsed.problems[0])).toBe(
        'People: this is a plan of several people: choose a plan of one hiker',
      )
    }
  })
})

describe('a draft of several people', () => {
  const draft = (): Draft => {
    const parsed = parseAny(party())
    if (!parsed.ok) throw new Error('refused')
    let ids = 0
    return fromPlanDocument(parsed.document, () => `id${ids++}`)
  }
  const whatIs = (left: { message: string }[]) => left.map(({ message }) => message)

  it('comes from a plan file and gives the same plan again, with each one’s pack', () => {
    const settled = settleAny(draft())
    const parsed = parseAny(party())
    if (!parsed.ok) throw new Error('refused')
    expect(settled.leftOut).toEqual([])
    expect(settled.document.people).toEqual([
      { id: 'ada', massKg: 60, pack: { pack: 0, setup: 0 } },
      { id: 'cy', name: 'Cy', massKg: 34, ageYears: 10, waterShare: 0.5 },
    ])
    expect(settled.plan).toEqual(parsed.plan)
  })

  it('takes no pack where its pack is gone, and another one’s place where packs before it are left out', () => {
    const { packs, ...rest } = draft()
    expect(settleAny({ ...rest, packs: [] }).document.people![0]).not.toHaveProperty('pack')
    const bare = { id: 'bare', setups: [] }
    expect(settleAny({ ...rest, packs: [bare, ...packs] }).document.people![0]!.pack).toEqual({
      pack: 0,
      setup: 0,
    })
  })

  it('without a body mass is shared out by mass, and says so', () => {
    const made = setField(draft(), 'people/cy/massKg', undefined)
    expect(whatIs(settleAny(made).leftOut)).toEqual([
      'Cy: no mass yet, so what is shared out goes by mass alone.',
    ])
  })

  it('mends what names a person who is gone, and keeps it in the draft', () => {
    const { people, ...rest } = draft()
    const gear = rest.gear.map(item => (item.id === 'box' ? { ...item, carriedBy: 'nobody' } : item))
    const made = { ...rest, gear, people: people!.slice(0, 1), split: { by: 'cy' } }
    const before = structuredClone(made)
    const { leftOut, document } = settleAny(made)
    expect(whatIs(leftOut)).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^Sharing out: way to share out – there is no such person/),
        expect.stringMatching(/^Unnamed item: word on who carries it – there is no such person/),
        expect.stringMatching(
          /^Unnamed item: nobody’s yet: until you say whose it is, it goes with Person 1/,
        ),
      ]),
    )
    const items = new Map(document.gear!.map(item => [item.id, item]))
    expect(items.get('coat')!.owner).toBe('ada')
    expect(items.get('box')).not.toHaveProperty('carriedBy')
    expect(made).toEqual(before)
  })

  it('of more than eight people counts the first eight and says so', () => {
    const many = Array.from({ length: 10 }, (_, i) => ({ id: `p${i}`, massKg: 60 }))
    const { document, leftOut } = settleAny({ ...emptyDraft(), people: many })
    expect(document.people).toHaveLength(8)
    expect(whatIs(leftOut)).toContainEqual(expect.stringMatching(/holds too many people: 8 at most/))
  })

  it('keeps its people, owners and packs in a draft from outside, and takes out what is no value of theirs', () => {
    const sound = { ...draft(), shared: { tent: 'ada' }, split: { by: 'mass' } }
    expect(checkDraft(sound)).toEqual({ ok: true, draft: sound, leftOut: [] })
    const bad = {
      ...sound,
      people: [{ id: 'ada', massKg: 'much', takes: 7 }, ...sound.people!.slice(1)],
      shared: { tent: 7 },
    } as unknown as Draft
    expect(checkDraft(bad)).toMatchObject({
      draft: { people: [{ id: 'ada' }, { id: 'cy' }], shared: {} },
      leftOut: ['Person 1, mass', 'Person 1, pack taken', expect.any(String)],
    })
  })
})
