// The open trip settled and reckoned: the engine, fetched once a trip is open, so that the first page need not wait for it.

import { signal } from '@preact/signals'
import {
  checkAhead,
  type Draft,
  fieldPath,
  isLongToSettle,
  isParty,
  type PartyPlan,
  type Plan,
  type Settled,
  type SettledAlone,
  settle,
  settleAny,
  type Typed,
  takenBy,
} from '../plan'
import {
  carriersOf,
  type OnTheWay,
  onTheWay,
  type PartyReckoning,
  placeOf,
  planOfPerson,
  type Reckoned,
  reckon,
  reckonAsShared,
  reckonPerson,
  takenAlong,
} from '../reckon'

/**
 * The open trip as a plan of what is taken along, what had to be left out of it, and what the engine makes of it. Of several
 * people it is the plan of one of them, with what they carry.
 */
export interface OpenReckoned extends Omit<Settled, 'plan'> {
  plan: Plan
  /** The plan with what stays at home. */
  listed: Plan
  reckoned: Reckoned
  /** The place of the pack that the trip takes in the plan; null where none is taken, or it is not judged. */
  taken: number | null
  /** Whose plan it is, of several; null: the lone hiker's. */
  person: string | null
  party: OpenParty | null
}

/** All of several people. */
export interface OpenParty {
  /** With what stays at home, and everything that nobody is said to carry still to be shared out. */
  plan: PartyPlan
  /** Who carries each item, by the ids of item and person. */
  carriers: ReadonlyMap<string, string>
  /** Ids of those whose body mass nobody has said: then nothing is known of their limit. */
  withoutMass: string[]
  /** What each carries as it was shared out last; null where it does not settle. Worked out when it is asked for. */
  readonly reckoning: PartyReckoning | null
}

export { describeField, fieldWord } from '../plan'
export { givenToList } from '../plan/shelf'
export { changeBetween, type LastChange } from './change-between'
export { openDryStretches } from './dry-stretches'
export { openEffects } from './open-effects'

/** Counts the portions in which very long lists were checked. */
const portions = signal(0)
let next: ReturnType<typeof setTimeout> | undefined

/** `person`: for whom, of several. Null while so many items are to be checked that the page must answer in between; whoever reads it then hears again. */
export function reckonOpen(draft: Draft, typed: Typed, person: string | null): OpenReckoned | null {
  clearTimeout(next)
  // Asked for again after each portion.
  void portions.value
  if (isLongToSettle(draft)) {
    next = setTimeout(() => {
      checkAhead(draft)
      portions.value += 1
    })
    return null
  }
  const settled = settleAny(draft, typed)
  const { plan } = settled
  return isParty(plan)
    ? reckonedOfOne({ ...settled, plan }, draft, placeOf(plan, person))
    : reckonedOf({ ...settled, plan }, draft.takes?.pack)
}

/** The packs judged apart from any trip. */
export const reckonApart = (draft: Draft, typed: Typed): OpenReckoned => reckonedOf(settle(draft, typed))

function reckonedOf(settled: Omit<Settled, 'plan'> & Pick<SettledAlone, 'plan'>, pack = ''): OpenReckoned {
  const { plan: listed } = settled
  return {
    ...settled,
    plan: takenAlong(listed),
    listed,
    reckoned: reckon(listed),
    taken: placeIn(settled.packIds, pack),
    person: null,
    party: null,
  }
}

function placeIn(packIds: string[], pack: string): number | null {
  const at = packIds.indexOf(pack)
  return at < 0 ? null : at
}

function reckonedOfOne(
  settled: Omit<Settled, 'plan'> & { plan: PartyPlan },
  draft: Draft,
  who: number,
): OpenReckoned {
  const { plan, shared, leftOut, packIds } = settled
  const listed = planOfPerson(plan, shared, who)
  const { id } = plan.people[who]!
  const withoutMass = plan.people.flatMap(person =>
    leftOut.some(({ path }) => path === fieldPath('people', person.id, 'massKg')) ? person.id : [],
  )
  // Of a limit that nobody knows no share can be told.
  const isByMass = withoutMass.length > 0 && plan.split.by === 'limit'
  const asked = isByMass ? { ...plan, split: { by: 'mass' } } : plan
  let party: PartyReckoning | null | undefined
  return {
    ...settled,
    plan: takenAlong(listed),
    listed,
    reckoned: reckonPerson(plan, shared, { who, own: listed }),
    taken: placeIn(packIds, takenBy(draft, id)?.pack ?? ''),
    person: id,
    party: {
      plan: asked,
      carriers: new Map(carriersOf(plan, shared).map((carrier, i) => [plan.gear[i]!.id, carrier])),
      withoutMass,
      get reckoning() {
        if (party !== undefined) return party
        const reckoned = reckonAsShared(asked, shared)
        party = reckoned.ok ? reckoned.party : null
        return party
      },
    },
  }
}

/** Resupplies whose missing is looked at: each is a reckoning, and the page waits. */
const MOST_SKIPPED = 8

/** What should be left on leaving a stop of the open trip; null for a trip that does not settle, and for no stop on the way. */
export function openOnTheWay({ plan, reckoned }: OpenReckoned, stop: number): OnTheWay | null {
  const isOnTheWay = stop > 0 && stop < plan.trip.stops.length - 1
  return reckoned.ok && isOnTheWay ? onTheWay(plan, reckoned.reckoning, stop, MOST_SKIPPED) : null
}
