// What a plan of several people must keep: who owns, who carries, and what moves with what.

import type { ItemDocument, WrittenPlan } from './fields'
import { type Problem, problem } from './problem'

/** Words of `split.by` that are nobody's id. */
const SHARED_OUT_BY = ['limit', 'mass'] as const

const quoted = (words: readonly string[]) => words.map(word => `"${word}"`).join(', ')

export function checkParty(plan: WrittenPlan): Problem[] {
  const { people, carrier } = plan
  if (!people) return marksWithoutPeople(plan)
  const both = problem(
    ['people'],
    'stands in for carrier, which is given as well: remove one of the two',
    'several people and a lone hiker are both given: take one of the two out',
  )
  return [
    ...(carrier ? [both] : []),
    ...checkPeople(plan),
    ...checkWish(plan),
    ...(plan.gear ?? []).flatMap((item, i) => checkItem(item, i, people)),
    ...checkPackers(plan),
    ...checkRations(plan),
  ]
}

const ONLY_OF_A_PARTY = 'belongs to a plan of several people: give people, or remove it'
const SAID_ONLY_OF_A_PARTY = 'only several people share out what they carry: remove it'

/** What only a party can say, in a plan of one hiker. */
function marksWithoutPeople({ split, gear = [], packings = [] }: WrittenPlan): Problem[] {
  const stray = (...path: Problem['path']) => problem(path, ONLY_OF_A_PARTY, SAID_ONLY_OF_A_PARTY)
  return [
    ...(split ? [stray('split')] : []),
    ...gear.flatMap((item, i) =>
      (['owner', 'carriedBy', 'shareable'] as const).flatMap(field =>
        // What says no more than its default is in nobody's way.
        item[field] === undefined || item[field] === false ? [] : [stray('gear', i, field)],
      ),
    ),
    ...packings.flatMap(({ person }, i) => (person === undefined ? [] : [stray('packings', i, 'person')])),
  ]
}

type People = NonNullable<WrittenPlan['people']>

function checkPeople({ people = [], packs = [] }: WrittenPlan): Problem[] {
  const seen = new Set<string>()
  return people.flatMap(({ id, pack }, i) => {
    const at = (...rest: string[]) => ['people', i, ...rest]
    const problems: Problem[] = []
    if (seen.has(id))
      problems.push(
        problem(
          at('id'),
          `"${id}" is used twice: give each person their own id`,
          'another person has the same one: give each their own',
        ),
      )
    seen.add(id)
    if ((SHARED_OUT_BY as readonly string[]).includes(id))
      problems.push(
        problem(
          at('id'),
          `"${id}" is a word of split.by: choose another id`,
          'is a word of its own: choose another',
        ),
      )
    if (pack) problems.push(...checkChoice(pack, packs, at))
    return problems
  })
}

function checkChoice(
  { pack: packIndex, setup: setupIndex = 0 }: NonNullable<People[number]['pack']>,
  packs: NonNullable<WrittenPlan['packs']>,
  at: (...rest: string[]) => Problem['path'],
): Problem[] {
  const pack = packs[packIndex]
  const upTo = (list: readonly unknown[]) =>
    list.length === 1 ? '0' : `an index from 0 to ${list.length - 1}`
  if (!pack) {
    const mend = packs.length > 0 ? `write ${upTo(packs)}, or null for none` : 'add the pack, or write null'
    return [
      problem(
        at('pack', 'pack'),
        `the plan has no pack ${packIndex}: ${mend}`,
        'there is no such pack: choose another',
      ),
    ]
  }
  if (pack.setups[setupIndex]) return []
  return [
    problem(
      at('pack', 'setup'),
      `"${pack.name}" has no set-up ${setupIndex}: write ${upTo(pack.setups)}`,
      'there is no such set-up: choose another',
    ),
  ]
}

/** Names everybody there is, so that a slip is mended without looking. */
const nobody = (path: Problem['path'], id: string, people: People): Problem =>
  problem(
    path,
    `there is nobody with the id "${id}": name one of ${quoted(people.map(person => person.id))}`,
    'there is no such person: choose another',
  )

const isIn = (people: People, id: string) => people.some(person => person.id === id)

function checkWish({ people = [], split }: WrittenPlan): Problem[] {
  const by = split?.by
  if (by === undefined || (SHARED_OUT_BY as readonly string[]).includes(by) || isIn(people, by)) return []
  const words = quoted([...SHARED_OUT_BY, ...people.map(person => person.id)])
  return [
    problem(
      ['split', 'by'],
      `"${by}" is neither a way to share out nor a person: write one of ${words}`,
      'there is no such person: choose another',
    ),
  ]
}

function checkItem(item: ItemDocument, i: number, people: People): Problem[] {
  const at = (field: string) => ['gear', i, field]
  const unknown = (['owner', 'carriedBy'] as const).flatMap(field => {
    const id = item[field]
    return id === undefined || isIn(people, id) ? [] : [nobody(at(field), id, people)]
  })
  const stays = staysBecause(item)
  if (!stays) return unknown
  const moved = (['carriedBy', 'shareable'] as const).flatMap(field =>
    item[field] ? [problem(at(field), `${stays.message}: ${stays.mend}`, stays.said)] : [],
  )
  const lacksOwner = stays.needsOwner && item.owner === undefined
  const owner = `is missing: ${stays.message}, so say whose it is`
  return [
    ...unknown,
    ...moved,
    ...(lacksOwner ? [problem(at('owner'), owner, 'nobody’s yet: say whose it is')] : []),
  ]
}

/** Why a thing is handed to nobody by itself; null where it may be. */
function staysBecause({ inside, stow, holdsWaterLitres = 0 }: ItemDocument) {
  if (inside !== undefined)
    return {
      needsOwner: false,
      message: `it rides in "${inside}" and goes where that goes`,
      mend: 'say it of the container, or take it out',
      said: 'it goes where its container goes: say it of that one',
    }
  const why =
    stow === 'worn'
      ? 'what is worn stays with its owner'
      : holdsWaterLitres > 0
        ? 'what holds water stays with its owner'
        : null
  return why === null
    ? null
    : { needsOwner: true, message: why, mend: 'remove it', said: `${why}: remove it` }
}

function checkPackers({ people = [], packings = [] }: WrittenPlan): Problem[] {
  return packings.flatMap(({ person }, i) =>
    person === undefined || isIn(people, person) ? [] : [nobody(['packings', i, 'person'], person, people)],
  )
}

/** By energy everybody eats their own: food of all has no one ration. */
function checkRations({ trip, gear = [], people = [] }: WrittenPlan): Problem[] {
  if (trip.meals?.ration !== 'energy') return []
  const at = ['trip', 'meals', 'ration']
  const shared = gear.findIndex(({ use, owner }) => use === 'daily' && owner === undefined)
  if (shared >= 0)
    return [
      problem(
        at,
        `"energy" needs each daily item to have an owner, and gear[${shared}] has none: give it one, or write "fixed"`,
        'food of all has no one’s ration: say whose each food is, or eat the same each day',
      ),
    ]
  // Where nobody's says any, that is said of the meals.
  if (!gear.some(givesEnergy)) return []
  return people.flatMap(({ id, ageYears = 14 }) => {
    const own = gear.filter(item => item.use === 'daily' && item.owner === id)
    if (ageYears < 14 || own.length === 0 || own.some(givesEnergy)) return []
    const said = 'some food says no energy: give it, or eat the same each day'
    return [
      problem(at, `"energy" needs a daily item of "${id}" with kcalPerKg: give one, or write "fixed"`, said),
    ]
  })
}

/** Food that says its energy. */
export const givesEnergy = ({ use, kcalPerKg, massKg, count = 1, atHome }: ItemDocument): boolean =>
  !atHome && use === 'daily' && (kcalPerKg ?? 0) * (massKg ?? 0) * count > 0
