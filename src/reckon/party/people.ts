// Each one of a party reckoned with what they carry.

import type { PartyPlan, Plan } from '../../plan/types'
import { missingFigures } from '../answers'
import { takenAlong } from '../at-home'
import { type Reckoned, type ReckonedTogether, type Refused, reckonTogether } from '../reckon'
import type { Reckoning } from '../types'
import { carriersOf, type SharedOut } from './carriers'
import { personPlan } from './person-plan'
import { SAME_STRAIN } from './problem'
import type { PartyReckoning, PersonReckoning, SplitReckoning } from './types'

export type ReckonedParty = { ok: true; party: PartyReckoning } | Refused

/** What the search says of its choice. */
type Proof = Pick<SplitReckoning, 'moved' | 'proven'> & { bound: number }

/** The party with what each carries, by places in the gear of what is taken along. `plan` has what stays at home too. */
export function reckonCarried(plan: PartyPlan, carried: number[][], proof: Proof): ReckonedParty {
  const party = takenAlong(plan)
  const reckoned = reckonPeople(party, carried)
  if (!reckoned.ok) return reckoned
  const people = reckoned.reckonings.map((reckoning, who) =>
    personOf(party, who, { reckoning, items: carried[who]! }),
  )
  const isOver = ({ limitShare }: PersonReckoning, who: number) =>
    (party.people[who]!.ageYears ?? 18) < 18 && limitShare > 1 + SAME_STRAIN
  const worstStrain = Math.max(...people.map(({ strain }) => strain))
  return {
    ok: true,
    party: {
      people,
      split: {
        youngOver: people.filter(isOver).length,
        fails: people.filter(({ pack }) => pack !== null && !pack.suffices).length,
        worstStrain,
        moved: proof.moved,
        proven: proof.proven,
        boundStrain: proof.proven ? worstStrain : proof.bound,
      },
      // Paths tell places in the whole list.
      missing: missingFigures(plan),
    },
  }
}

/** The party as it was shared out before. Nothing is searched, so nothing is proven: `boundStrain` is 0. */
export function reckonAsShared(plan: PartyPlan, shared: SharedOut): ReckonedParty {
  const party = takenAlong(plan)
  const carriers = carriersOf(party, shared)
  const carried = carriedAs(party, carriers)
  const moved = party.gear.filter(
    ({ owner, inside }, i) => inside === null && owner !== null && owner !== carriers[i],
  ).length
  return reckonCarried(plan, carried, { moved, proven: false, bound: 0 })
}

/**
 * One of a party as a hiker of their own, with what they carry as it was shared out. `packs`: all of the plan are judged for
 * them, and not only the one they take.
 */
export function planOfPerson(plan: PartyPlan, shared: SharedOut, who: number): Plan {
  const { id } = plan.people[who]!
  const carriers = carriersOf(plan, shared)
  const own = personPlan(
    plan,
    who,
    plan.gear.filter((_, i) => carriers[i] === id),
  )
  return { ...own, packs: plan.packs }
}

/** The plan of a lone hiker, or of one of several people: the one of that id, else the first. */
export function planOfOne(plan: Plan | PartyPlan, shared: SharedOut, id: string | null = null): Plan {
  return 'people' in plan ? planOfPerson(plan, shared, placeOf(plan, id)) : plan
}

/** A person's place by id; the first where there is no such person. */
export const placeOf = ({ people }: PartyPlan, id: string | null): number =>
  Math.max(
    0,
    people.findIndex(person => person.id === id),
  )

/** As `reckon(own)`, for the plan that `planOfPerson` gives: what they eat may ride with somebody else. */
export function reckonPerson(
  plan: PartyPlan,
  shared: SharedOut,
  { who, own }: { who: number; own: Plan },
): Reckoned {
  const party = takenAlong(plan)
  const carried = carriedAs(party, carriersOf(party, shared))
  const group = groupsOf(party, carried).find(people => people.includes(who))!
  const along = takenAlong(own)
  const reckoned = reckonGroup(party, carried, { group, plans: { [who]: along } })
  if (!reckoned.ok) return reckoned
  const answered = reckoned.answers[group.indexOf(who)]!
  answered.reckoning.missing = missingFigures(own)
  return { ok: true, ...answered }
}

const carriedAs = ({ people }: PartyPlan, carriers: readonly string[]): number[][] =>
  people.map(({ id }) => carriers.flatMap((carrier, i) => (carrier === id ? [i] : [])))

interface Group {
  group: readonly number[]
  /** Plans to be reckoned in place of their own, by person. */
  plans?: Readonly<Record<number, Plan>>
}

function reckonGroup(party: PartyPlan, carried: number[][], { group, plans = {} }: Group): ReckonedTogether {
  const planOf = (who: number) =>
    personPlan(
      party,
      who,
      carried[who]!.map(i => party.gear[i]!),
    )
  return reckonTogether(
    group.map(who => plans[who] ?? planOf(who)),
    group.map(who => party.people[who]!.id),
  )
}

/** Those who carry each other's food are settled at once, whoever does not by themselves. */
function reckonPeople(party: PartyPlan, carried: number[][]) {
  const reckonings = new Array<Reckoning>(carried.length)
  for (const group of groupsOf(party, carried)) {
    const reckoned = reckonGroup(party, carried, { group })
    if (!reckoned.ok) return reckoned
    group.forEach((who, i) => {
      reckonings[who] = reckoned.answers[i]!.reckoning
    })
  }
  return { ok: true as const, reckonings }
}

/** People by whose food they carry: with rations of 1 nobody's figures hang on anybody else's. */
function groupsOf({ people, gear, trip }: PartyPlan, carried: number[][]): number[][] {
  const group = people.map((_, who) => who)
  if (trip.meals.ration === 'energy')
    carried.forEach((items, who) => {
      for (const i of items) {
        const { use, owner } = gear[i]!
        if (use !== 'daily' || owner === null) continue
        const [one, other] = [group[who]!, group[people.findIndex(({ id }) => id === owner)]!]
        group.forEach((each, at) => {
          if (each === other) group[at] = one
        })
      }
    })
  return [...new Set(group)].map(each => people.flatMap((_, who) => (group[who] === each ? [who] : [])))
}

/** One person's entry: the place for whatever else is told of a person. */
function personOf(
  party: PartyPlan,
  who: number,
  { reckoning, items }: { reckoning: Reckoning; items: number[] },
): PersonReckoning {
  const { id, name, massKg, loadShareLimit, pack: choice } = party.people[who]!
  const { need, moments, packs, legs, days, rationRounds, carries, notices } = reckoning
  const [setup] = packs
  const carriedKg = setup?.carriedKg ?? need.peakLoadFullWaterKg
  const limitShare = carriedKg / (loadShareLimit * massKg)
  return {
    id,
    name,
    carries: items.map(i => party.gear[i]!.id),
    need,
    moments,
    carriedKg,
    strain: party.split.by === 'mass' ? carriedKg : limitShare,
    limitShare,
    pack: setup && choice ? { ...setup, pack: choice.pack, index: choice.setup } : null,
    legs,
    days,
    rationRounds,
    waterCarries: carries,
    notices,
  }
}
