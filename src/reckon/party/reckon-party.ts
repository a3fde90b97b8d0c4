// A party: who carries what, and each one reckoned as a hiker of their own with it.

import type { PartyPlan } from '../../plan/types'
import { missingFigures } from '../answers'
import { takenAlong } from '../at-home'
import { type Refused, reckonTogether } from '../reckon'
import type { Reckoning } from '../types'
import { personPlan } from './person-plan'
import { carriedBy, handingOf } from './pieces'
import { SAME_STRAIN } from './problem'
import { type Shared, shareOut } from './share-out'
import { sharersOf } from './sides'
import type { PartyReckoning, PersonReckoning } from './types'

export type ReckonedParty = { ok: true; party: PartyReckoning } | Refused

/**
 * Reckons a complete plan of several people (see `completeParty`): shares out what may be handed on, then reckons each
 * person. Pure and deterministic: the search ends by the work done and never by the clock. Refused as `reckon` refuses.
 */
export function reckonParty(plan: PartyPlan): ReckonedParty {
  const party = takenAlong(plan)
  const handing = handingOf(party)
  const { shared, moved } = splitOf(party)
  const carried = carriedBy(handing, shared.carriers)
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
        moved,
        proven: shared.proven,
        boundStrain: shared.proven ? worstStrain : shared.bound,
      },
      // Paths tell places in the whole list.
      missing: missingFigures(plan),
    },
  }
}

/** The choice is made for rations of 1, whatever each one's energy asks for. */
function splitOf(plan: PartyPlan): { shared: Shared; moved: number } {
  const meals = { ...plan.trip.meals, ration: 'fixed' as const }
  const party: PartyPlan = { ...plan, trip: { ...plan.trip, meals } }
  const handing = handingOf(party)
  const owners = handing.pieces.map(({ owner }) => owner)
  const spared = party.people.findIndex(({ id }) => id === party.split.by)
  const shared = shareOut({
    sharers: sharersOf(party, handing),
    owners,
    spared: spared < 0 ? null : spared,
  })
  const handedOn = owners.filter((owner, i) => owner !== null && owner !== shared.carriers[i]).length
  return { shared, moved: handedOn + handing.movedByWord }
}

/** Those who carry each other's food are settled at once, whoever does not by themselves. */
function reckonPeople(party: PartyPlan, carried: number[][]) {
  const plans = carried.map((items, who) =>
    personPlan(
      party,
      who,
      items.map(i => party.gear[i]!),
    ),
  )
  const reckonings = new Array<Reckoning>(plans.length)
  for (const group of groupsOf(party, carried)) {
    const reckoned = reckonTogether(
      group.map(who => plans[who]!),
      group.map(who => party.people[who]!.id),
    )
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
