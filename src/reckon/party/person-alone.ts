// A person of a party that was reckoned, as a hiker of their own: for those who tell or ask more of one of them.

import type { PartyPlan, Plan } from '../../plan/types'
import { missingFigures } from '../answers'
import type { Reckoning } from '../types'
import { personPlan } from './person-plan'
import type { PartyReckoning } from './types'

/** `party` must be what `reckonParty(plan)` gave; `who` a place among its people. */
export function personAlone(
  plan: PartyPlan,
  { people }: PartyReckoning,
  who: number,
): { plan: Plan; reckoning: Reckoning } {
  const { carries, pack, waterCarries, ...rest } = people[who]!
  const { need, moments, legs, days, rationRounds, notices } = rest
  const carried = new Set(carries)
  const own = personPlan(
    plan,
    who,
    plan.gear.filter(({ id }) => carried.has(id)),
  )
  return {
    plan: own,
    reckoning: {
      need,
      moments,
      legs,
      days,
      rationRounds,
      carries: waterCarries,
      packs: pack ? [{ ...pack, pack: 0, index: 0 }] : [],
      missing: missingFigures(own),
      notices,
    },
  }
}
