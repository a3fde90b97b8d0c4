// Random parties over everything a party can say, made of the random plans of one hiker.

import fc from 'fast-check'
import {
  type ItemDocument,
  type PartyDocument,
  type PartyPlan,
  type PlanDocument,
  parseAny,
  pathText,
} from '../../src/plan'
import { type PartyReckoning, reckonParty } from '../../src/reckon'
import { documents, type Kind } from './plans'

export type PersonDocument = PartyDocument['people'][number]

const share = fc.double({ min: 0, max: 1, noNaN: true })
const some = <T extends Record<string, fc.Arbitrary<unknown>>>(fields: T) =>
  fc.record(fields, { requiredKeys: [] })

const person = fc
  .tuple(
    fc.double({ min: 20, max: 110, noNaN: true }),
    some({
      heightCm: fc.double({ min: 110, max: 200, noNaN: true }),
      ageYears: fc.constantFrom(8, 12, 13, 14, 16, 17, 18, 30, 45, 70),
      sex: fc.constantFrom('female', 'male'),
      loadShareLimit: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      waterShare: fc.constantFrom(0, 0.5, 0.7, 1, 1.3),
    }),
    fc.constantFrom(true, true, false),
    share,
    share,
  )
  .map(([massKg, more, hasPack, pack, setup]) => ({ massKg, more, hasPack, pack, setup }))

/** Of a thing: whose it is, whether others may carry it, and whether somebody is told to. */
const marks = fc.record({
  whose: fc.constantFrom('party', 'party', 'own', 'own', 'shared', 'shared', 'told'),
  owner: share,
  teller: share,
})

export interface Size {
  people: number
  /** Pieces that may move, at most: the others are somebody's. */
  movable: number
}

/** Parties of so many people, of which at most so many pieces may move. */
export function parties(kind: Kind, { people, movable }: Size): fc.Arbitrary<PartyDocument> {
  return fc
    .tuple(
      documents(kind),
      fc.array(person, { minLength: people, maxLength: people }),
      fc.array(marks, { minLength: 20, maxLength: 20 }),
      fc.constantFrom('limit', 'limit', 'limit', 'mass', 'person'),
      share,
    )
    .map(([document, drawn, marked, by, spared]) =>
      partyOf(document, { drawn, marked, by, spared, movable, isByEnergy: kind.ration === 'energy' }),
    )
}

type Drawn = {
  drawn: (typeof person extends fc.Arbitrary<infer T> ? T : never)[]
  marked: (typeof marks extends fc.Arbitrary<infer T> ? T : never)[]
  by: string
  spared: number
  movable: number
  isByEnergy: boolean
}

const pick = (count: number, at: number) => Math.min(count - 1, Math.floor(at * count))

function partyOf(document: PlanDocument, it: Drawn): PartyDocument {
  const { carrier: _, ...rest } = document
  const { packs = [], packings = [] } = document
  const people = it.drawn.map(({ massKg, more, hasPack, pack, setup }, i): PersonDocument => {
    const index = pick(packs.length, pack)
    const choice = { pack: index, setup: packs.length ? pick(packs[index]!.setups.length, setup) : 0 }
    return {
      id: `p${i}`,
      name: `Person ${i}`,
      massKg,
      ...(more as Partial<PersonDocument>),
      ...(hasPack && packs.length > 0 ? { pack: choice } : {}),
    }
  })
  const idAt = (at: number) => people[pick(people.length, at)]!.id
  let moving = 0
  const gear = (document.gear ?? []).map((item, i): ItemDocument => {
    const { whose, owner, teller } = it.marked[i % it.marked.length]!
    const own = { owner: idAt(owner) }
    if (item.inside !== undefined) return whose === 'party' && !it.isByEnergy ? item : { ...item, ...own }
    if (item.stow === 'worn' || (item.holdsWaterLitres ?? 0) > 0) return { ...item, ...own }
    if (whose === 'told') return { ...item, ...own, carriedBy: idAt(teller) }
    if (whose === 'own' || moving === it.movable) return { ...item, ...own }
    moving++
    const isPartys = whose === 'party' && !(it.isByEnergy && item.use === 'daily')
    return isPartys ? item : { ...item, ...own, shareable: true }
  })
  return {
    ...rest,
    people,
    gear,
    packings: packings.map((packing, i) => (i % 2 ? { ...packing, person: idAt(i / 4) } : packing)),
    split: { by: it.by === 'person' ? idAt(it.spared) : it.by },
  }
}

/** The plan that a document of a party means; a refusal is a fault of the test. */
export function partyPlanOf(document: PartyDocument): PartyPlan {
  const parsed = parseAny(document)
  if (!parsed.ok) throw new Error(parsed.problems.map(p => `${pathText(p.path)}: ${p.message}`).join('\n'))
  return parsed.plan as PartyPlan
}

/** What a party comes to that is known to settle. */
export function partyReckoned(document: PartyDocument): PartyReckoning {
  const result = reckonParty(partyPlanOf(document))
  if (!result.ok) throw new Error(result.problem.message)
  return result.party
}
