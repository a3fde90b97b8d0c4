// A plan document cut down: to some of its packs, or to one of several people as a hiker of their own. Pure.

import * as defaults from './defaults'
import type { ItemDocument, PlanDocument, WrittenPlan } from './fields'

/** The plan with only some of its packs, by their places; whoever takes another takes none. */
export function withPacksOnly<D extends WrittenPlan>(document: D, kept: readonly number[]): D {
  const { packs = [], people } = document
  const some = { ...document, packs: kept.map(at => packs[at]!) }
  if (!people) return some
  const mapped = people.map(({ pack, ...person }) => {
    const at = pack ? kept.indexOf(pack.pack) : -1
    return at < 0 ? person : { ...person, pack: { ...pack, pack: at } }
  })
  return { ...some, people: mapped }
}

/**
 * One of several people as a hiker of their own: with what they carry, and water habits of their own share. `carriers`:
 * who carries each item, by id.
 */
export function documentOfPerson(
  { people = [], split: _split, carrier: _carrier, ...document }: WrittenPlan,
  carriers: ReadonlyMap<string, string>,
  who: number,
): PlanDocument {
  const { id, name: _name, waterShare = defaults.PERSON.waterShare, pack: _pack, ...carrier } = people[who]!
  const { gear = [], packings = [], trip } = document
  return {
    ...document,
    carrier,
    trip: waterShare === 1 ? trip : { ...trip, water: waterOf(trip.water, waterShare) },
    gear: gear.filter(item => carriers.get(item.id) === id).map(asOwn),
    ...(packings.length > 0 && {
      packings: packings
        .filter(({ person }) => (person === undefined ? who === 0 : person === id))
        .map(({ person: _person, ...packing }) => packing),
    }),
  }
}

function asOwn({
  owner: _owner,
  carriedBy: _carriedBy,
  shareable: _shareable,
  ...item
}: ItemDocument): ItemDocument {
  return item
}

/** Worked out from heat the hourly rate is everybody's: too much water is the safe side. */
function waterOf(water: WrittenPlan['trip']['water'], share: number) {
  const { litresPerHour, campLitres, reserveLitres, ...rest } = { ...defaults.WATER, ...water }
  return {
    ...rest,
    litresPerHour: litresPerHour === 'from-heat' ? litresPerHour : litresPerHour * share,
    campLitres: campLitres * share,
    reserveLitres: reserveLitres * share,
  }
}
