// What a party carries, in words: each one's load on their own scale, and how fair the choice is.

import { defaults, itemName, type PartyPlan } from '../../plan'
import type { PartyReckoning, PersonReckoning } from '../../reckon'
import { counted, listText } from '../../units'

import { type Formats, percentOver } from '../formats'

/** Strains that differ by no more are the same. */
const SAME = 1e-9

/** A person by name, or by place while they have none. */
export function nameIn({ people }: Pick<PartyPlan, 'people'>, who: number): string {
  return people[who]?.name.trim() || `Person ${who + 1}`
}

/** "12.4 kg with the pack, 18 % of body mass, limit 20 %". */
export function loadLine(
  { people }: PartyPlan,
  { id, carriedKg, pack }: PersonReckoning,
  formats: Formats,
): string {
  const { massKg, loadShareLimit } = people.find(person => person.id === id)!
  const share = carriedKg / massKg
  const with_ = pack ? 'with the pack' : 'without a pack'
  const of = percentOver(share, loadShareLimit, formats)
  return `${formats.kg(carriedKg)} ${with_}, ${of} of body mass, limit ${formats.percent(loadShareLimit)}`
}

/**
 * Those under 18 years: whether their limit is kept comes before anything else. `isSearched`: the choice is the best that was
 * found, and not one that was made by hand.
 */
export function childrenFirst(
  plan: PartyPlan,
  party: PartyReckoning,
  formats: Formats,
  isSearched = true,
): string[] {
  return plan.people.flatMap(({ ageYears, massKg, loadShareLimit }, who) => {
    if (!defaults.isYoung(ageYears)) return []
    const { limitShare, carriedKg } = party.people[who]!
    const name = nameIn(plan, who)
    const load = `${formats.kg(carriedKg)} of at most ${formats.kg(loadShareLimit * massKg)}`
    if (limitShare <= 1 + SAME) return [`${name} stays within the limit: ${load}.`]
    const none = isProven(plan, party)
      ? 'No share keeps everybody young within their limit'
      : 'No share that does was found'
    const told = `${formats.kg(carriedKg)} where ${formats.kg(loadShareLimit * massKg)} is the most`
    if (!isSearched) return [`${name} carries too much: ${told}. Share out again.`]
    return [
      `${name} carries too much: ${told}. ${none}: leave something at home, walk shorter stretches, or let an adult carry twice.`,
    ]
  })
}

/** How fair it is, which packs do not do, and what is carried by another than its owner. */
export function fairnessLines(plan: PartyPlan, party: PartyReckoning, formats: Formats): string[] {
  const { people } = party
  if (people.length < 2) return []
  const failing = people.flatMap(({ pack }, who) =>
    pack && !pack.suffices ? [`${nameIn(plan, who)}’s`] : [],
  )
  const packs = isProven(plan, party)
    ? `No share suits every pack${putFirst([youngIn(plan)])}`
    : 'No share that suits every pack was found'
  return [
    fairness(plan, party, formats),
    ...(failing.length > 0
      ? [`${packs}: ${listText(failing)} ${failing.length > 1 ? 'do' : 'does'} not.`]
      : []),
    ...handedOn(plan, people),
    ...(isByEnergy(plan) ? ['Shared out for rations of 1; the figures are for each one’s own rations.'] : []),
  ]
}

/** Of what is told of each one's own rations: the search goes by rations of 1 where energy decides them. */
const isProven = (plan: PartyPlan, { split }: PartyReckoning) => split.proven && !isByEnergy(plan)

const isByEnergy = ({ trip }: PartyPlan) => trip.meals.ration === 'energy'

/** Those whose limits come first, where there are any. */
const youngIn = ({ people }: PartyPlan) =>
  people.some(({ ageYears }) => defaults.isYoung(ageYears)) && 'those under 18'

/** What the search puts before the aim that is told of: ", with those under 18 and suitable packs put first". */
function putFirst(first: (string | false)[]): string {
  const names = first.filter(name => name !== false)
  return names.length > 0 ? `, with ${listText(names)} put first` : ''
}

function fairness(plan: PartyPlan, { people, split }: PartyReckoning, { percent }: Formats): string {
  const spared = plan.people.findIndex(({ id }) => id === plan.split.by)
  const [best, than] =
    spared >= 0
      ? [`Nothing better can be done for ${nameIn(plan, spared)}`, 'the best there can be']
      : plan.split.by === 'mass'
        ? ['No share is more even', 'the most even']
        : ['No fairer share exists', 'the fairest']
  if (split.proven)
    return `${best}${putFirst([youngIn(plan), people.some(({ pack }) => pack !== null) && 'suitable packs'])}.`
  // Where each one's energy decides the rations, the bound is that of other loads; of one who is spared it is not theirs.
  const isBound = split.boundStrain > 0 && !isByEnergy(plan) && spared < 0
  if (!isBound) return `The best that was found; it may not be ${than}.`
  const gap = split.worstStrain / split.boundStrain - 1
  return `At most ${gap < 0.001 ? percent(0.001, 1) : percent(gap, 1)} from ${than}.`
}

function handedOn({ people, gear }: PartyPlan, carried: PersonReckoning[]): string[] {
  const named = (id: string) =>
    nameIn(
      { people },
      people.findIndex(person => person.id === id),
    )
  const things = gear.flatMap(item => {
    const carrier = carried.find(({ carries }) => carries.includes(item.id))!
    const isHandedOn = item.inside === null && item.owner !== null && item.owner !== carrier.id
    return isHandedOn ? [`${itemName(item)} (${named(item.owner!)}’s, with ${named(carrier.id)})`] : []
  })
  if (things.length === 0) return []
  return [`Carried by another than its owner: ${counted(things.length, 'thing')}: ${listText(things)}.`]
}
