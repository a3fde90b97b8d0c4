// What a shared plan says of people: all that the plan holds, or no more than the load they want to carry at most.

import {
  completeAny,
  defaults,
  isParty,
  type PersonDocument,
  STAND_IN_MASS_KG,
  type WrittenPlan,
} from '../../plan'

/**
 * The plan without age, height and sex, and with a stand-in for the body mass. The limit stays and is written out:
 * its default depends on the age that is left out, and would rise for a child.
 */
export function withoutBodies<D extends WrittenPlan>(document: D): D {
  const plan = completeAny(document)
  const bare = (loadShareLimit: number) => ({ massKg: STAND_IN_MASS_KG, loadShareLimit })
  const ages = isParty(plan) ? plan.people.map(({ ageYears }) => ageYears) : [plan.carrier.ageYears]
  const shared = isParty(plan)
    ? {
        ...document,
        people: document.people!.map(({ id, name, waterShare, pack }, who) => ({
          id,
          ...(name !== undefined && { name }),
          ...(waterShare !== undefined && { waterShare }),
          ...(pack !== undefined && { pack }),
          ...bare(plan.people[who]!.loadShareLimit),
        })),
      }
    : { ...document, carrier: bare(plan.carrier.loadShareLimit) }
  // Under 14 years no ration follows energy, whatever the plan says; without the age it would.
  if (plan.trip.meals.ration !== 'energy' || ages.every(age => age === null || age >= 14)) return shared
  return { ...shared, trip: { ...document.trip, meals: { ...document.trip.meals, ration: 'fixed' } } }
}

/** The plan without the names of its people. */
export function withoutNames<D extends WrittenPlan>(document: D): D {
  if (!document.people) return document
  const people = document.people.map(({ name: _name, ...person }: PersonDocument) => person)
  return { ...document, people }
}

/** The plan with who carries what written down, so that whoever opens it finds the things shared out as they are here. */
export function asSharedOut<D extends WrittenPlan>(document: D, carriers: ReadonlyMap<string, string>): D {
  if (!document.people || !document.gear) return document
  const gear = document.gear.map(item => {
    const { inside, stow, holdsWaterLitres = defaults.ITEM.holdsWaterLitres } = item
    const stays = inside !== undefined || stow === 'worn' || holdsWaterLitres > 0
    const carriedBy = stays ? undefined : carriers.get(item.id)
    return carriedBy === undefined ? item : { ...item, carriedBy }
  })
  return { ...document, gear }
}
