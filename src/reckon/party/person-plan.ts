// The plan of one person of a party: a hiker's plan, with what this person carries, drinks and knows of packing.

import type { Item, PartyPlan, Plan } from '../../plan/types'

/** `gear`: what they carry, in the order of the plan. */
export function personPlan(party: PartyPlan, who: number, gear: Item[]): Plan {
  const { people, split: _split, packs, packings, trip, ...rest } = party
  const { id, name: _name, waterShare, pack: choice, ...carrier } = people[who]!
  const { litresPerHour, campLitres, reserveLitres } = trip.water
  const water = {
    ...trip.water,
    litresPerHour: litresPerHour === 'from-heat' ? litresPerHour : litresPerHour * waterShare,
    campLitres: campLitres * waterShare,
    reserveLitres: reserveLitres * waterShare,
    heatShare: waterShare,
  }
  const pack = choice && packs[choice.pack]!
  return {
    ...rest,
    carrier,
    trip: { ...trip, water },
    gear,
    packs: pack ? [{ ...pack, setups: [pack.setups[choice.setup]!] }] : [],
    packings: packings.filter(({ person }) => (person === undefined ? who === 0 : person === id)),
  }
}
