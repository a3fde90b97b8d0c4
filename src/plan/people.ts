// Several people on one trip: adding and removing them, whose things are, and who carries what. Pure: draft in, draft out;
// ids come from the caller. A trip of one hiker has no people and is left as it is.

import type { Takes } from './app-fields'
import { CAPS } from './caps'
import type { Draft, DraftItem, DraftPerson } from './draft'
import { fieldPath } from './field-path'

/** The id of whoever was the only hiker before: in two tabs the same one. */
const FIRST_ID = 'first'

/** Whether several people are on the trip. */
const isOfSeveral = ({ people }: Pick<Draft, 'people'>): boolean => (people?.length ?? 0) > 0

export const canAddPerson = ({ people }: Draft): boolean => (people?.length ?? 0) < CAPS.people

/** What is worn, and what holds water, stays with its owner. */
export const staysWithOwner = ({
  stow,
  holdsWaterLitres = 0,
}: Pick<DraftItem, 'stow' | 'holdsWaterLitres'>) => stow === 'worn' || holdsWaterLitres > 0

/**
 * One more person, of whom nothing is said yet. The second one makes people of a hiker: what the hiker wears and drinks
 * from is then theirs, everything else is everybody's.
 */
export function addPerson(draft: Draft, id: string): Draft {
  if (!canAddPerson(draft) || draft.people?.some(person => person.id === id)) return draft
  if (isOfSeveral(draft)) return { ...draft, people: [...draft.people!, { id }] }
  const gear = draft.gear.map(item =>
    staysWithOwner(item) && item.inside === undefined ? { ...item, owner: FIRST_ID } : item,
  )
  return { ...draft, carrier: {}, people: [{ id: FIRST_ID, ...draft.carrier }, { id }], gear }
}

/**
 * The draft without a person. What they wear and drink from goes to the first who is left, everything else of theirs is
 * everybody's. Of two, the other is the only hiker again.
 */
export function removePerson(draft: Draft, id: string): Draft {
  const people = draft.people?.filter(person => person.id !== id) ?? []
  const [first] = people
  if (!first || people.length === draft.people?.length) return draft
  const { shared, split, takes, ...rest } = draft
  // The pack of the first is that of the trip.
  const { takes: ofFirst = takes, ...leader } = first
  const taken = draft.people![0]!.id === id ? first.takes : ofFirst
  const left = { ...rest, ...(taken && { takes: taken }) }
  if (people.length === 1) return asOneHiker(left, leader)
  const gear = draft.gear.map(item => withoutPerson(item, id, first.id))
  const kept = Object.entries(shared ?? {}).filter(([, carrier]) => carrier !== id)
  return {
    ...left,
    people: [leader, ...people.slice(1)],
    gear,
    ...(split && split.by !== id && { split }),
    ...(kept.length > 0 && { shared: Object.fromEntries(kept) }),
  }
}

function withoutPerson(item: DraftItem, id: string, heir: string): DraftItem {
  if (item.owner !== id && item.carriedBy !== id) return item
  const { owner, carriedBy, shareable, ...rest } = item
  const now = owner !== id ? owner : staysWithOwner(item) ? heir : undefined
  return {
    ...rest,
    ...(now !== undefined && { owner: now }),
    ...(now !== undefined && shareable !== undefined && { shareable }),
    ...(carriedBy !== undefined && carriedBy !== id && { carriedBy }),
  }
}

/** What a lone hiker is not asked goes with the step that undo takes back. */
function asOneHiker({ people: _people, ...draft }: Draft, person: DraftPerson): Draft {
  const { id: _id, name: _name, waterShare: _waterShare, takes: _takes, ...carrier } = person
  const gear = draft.gear.map(({ owner: _owner, carriedBy: _by, shareable: _shareable, ...item }) => item)
  return { ...draft, carrier, gear }
}

/** Says whose things are; null: everybody's. What is worn or holds water always is somebody's, and stays as it is then. */
export function setOwner(draft: Draft, ids: Iterable<string>, owner: string | null): Draft {
  const chosen = new Set(ids)
  const gear = draft.gear.map(item => {
    if (!chosen.has(item.id) || (owner === null && staysWithOwner(item))) return item
    const { owner: _owner, shareable, ...rest } = item
    return owner === null ? rest : { ...rest, owner, ...(shareable !== undefined && { shareable }) }
  })
  return { ...draft, gear }
}

/** One of each thing for each person, below one another: everybody's becomes the first one's. */
export function oneForEach(draft: Draft, ids: Iterable<string>, newId: () => string): Draft {
  const chosen = new Set(ids)
  const people = draft.people ?? []
  const gear = draft.gear.flatMap((item): DraftItem[] => {
    if (!chosen.has(item.id) || people.length === 0) return [item]
    const { carriedBy: _by, shareable: _shareable, ...rest } = item
    const own = { ...rest, owner: item.owner ?? people[0]!.id }
    const others = people.filter(({ id }) => id !== own.owner)
    return [own, ...others.map(({ id }) => ({ ...rest, id: newId(), owner: id }))]
  })
  return { ...draft, gear }
}

/** Says who is to carry a thing whatever is shared out; null: whoever it falls to. */
export function pinItem(draft: Draft, id: string, carrier: string | null): Draft {
  const gear = draft.gear.map(item => {
    if (item.id !== id) return item
    const { carriedBy: _by, ...rest } = item
    return carrier === null ? rest : { ...rest, carriedBy: carrier }
  })
  return { ...draft, gear }
}

/** Keeps who carries what, as it was shared out. */
export const withShared = (draft: Draft, shared: Record<string, string>): Draft => ({ ...draft, shared })

/** The field that holds the pack a person takes: that of the first, as of a lone hiker, is the trip's. */
export const takesPath = ({ people = [] }: Draft, person: string | null): string =>
  person === null || people[0]?.id === person || !people.some(({ id }) => id === person)
    ? 'takes'
    : fieldPath('people', person, 'takes')

/** The pack a person takes. */
export const takenBy = (draft: Draft, person: string | null): Takes | undefined =>
  takesPath(draft, person) === 'takes' ? draft.takes : draft.people?.find(({ id }) => id === person)?.takes
