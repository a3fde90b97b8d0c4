// A party shared out anew: who carries what is searched for, and each one then reckoned as a hiker of their own with it.

import type { PartyPlan } from '../../plan/types'
import { takenAlong } from '../at-home'
import { type ReckonedParty, reckonCarried } from './people'
import { carriedBy, handingOf } from './pieces'
import { type Shared, shareOut } from './share-out'
import { sharersOf } from './sides'

/**
 * Reckons a complete plan of several people (see `completeParty`): shares out what may be handed on, then reckons each
 * person. Pure and deterministic: the search ends by the work done and never by the clock. Refused as `reckon` refuses.
 */
export function reckonParty(plan: PartyPlan): ReckonedParty {
  const party = takenAlong(plan)
  const { shared, moved } = splitOf(party)
  const carried = carriedBy(handingOf(party), shared.carriers)
  return reckonCarried(plan, carried, { moved, ...shared })
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
