// From a draft with gaps to a plan that can be reckoned, and the list of what had to be assumed or left out.
// The one schema and its rules find what is missing or wrong; each finding is mended at its path and said.

import { CAPS } from './caps'
import { type Branch, copied, entries, freshItem, isBranch, knownItem } from './copies'
import type { Draft, Typed } from './draft'
import { fieldAt, fieldPath, hasPlace, pathParts } from './field-path'
import { nameOf, stopStandIn, thingAt } from './field-words'
import type { PlanDocument, WrittenPlan } from './fields'
import { PLAN_FORMAT, PLAN_VERSION } from './format'
import { withKindsEnds } from './kinds'
import { parseWithKnown } from './known-parts'
import { packPart } from './pack-parts'
import { withItemIds } from './packed-ids'
import { type ParsedAny, parseAny } from './parse'
import { peoplePart, placePacks } from './people-part'
import {
  branch,
  instead,
  keepMended,
  type LeftOut,
  MASS_KG,
  removeMarked,
  repair,
  type Work,
  why,
} from './repair'
import { withoutLogTexts } from './trip-marks'
import type { PartyPlan, Plan } from './types'

/** A draft of one hiker, or of several people. */
export interface Settled {
  document: WrittenPlan
  plan: Plan | PartyPlan
  leftOut: LeftOut[]
  /** The draft's id of each pack of the plan: some of the draft's may be left out. */
  packIds: string[]
  /** Who carries what, as several people have shared it out last, by the ids of item and person. */
  shared: Readonly<Record<string, string>>
}

export type SettledAlone = Settled & { document: PlanDocument; plan: Plan }

type Found = Extract<ParsedAny, { ok: true }>

/** Mending one finding can show another, as taking a container's room away shows what was inside; not for long. */
const MOST_ROUNDS = 10

/** The plan that stands for a draft. Never throws, whatever the draft holds; see {@link LeftOut} for what it says. */
export const settleAny = (draft: Draft, typed: Typed = {}): Settled => settleBy(parseWithKnown, draft, typed)

/** As {@link settleAny}, for one hiker: of several people nothing is looked at. */
export function settle(draft: Draft, typed: Typed = {}): SettledAlone {
  const { people: _people, split: _split, shared: _shared, ...alone } = branch(draft)
  return settleAny(alone as unknown as Draft, typed) as SettledAlone
}

/** As {@link settleAny}, with another way to check the document: any gives the same. */
export function settleBy(check: typeof parseWithKnown, draft: Draft, typed: Typed): Settled {
  const work = workingCopy(draft, typed)
  placePacks(work)
  let parsed = check(work.document)
  for (let round = 0; !parsed.ok && round < MOST_ROUNDS; round++) {
    // What was checked must not change any more, so each round copies the items it mends.
    work.own = new WeakSet()
    for (const problem of parsed.problems) repair(work, problem)
    removeMarked(work.document)
    keepMended(work)
    placePacks(work)
    parsed = check(work.document)
  }
  if (!parsed.ok) {
    work.say('', 'nothing of it could be read, so a bare trip stands in')
    parsed = parseAny(bareDocument())
  }
  for (const tell of work.later) tell()
  sayTyped(work)
  const { document, plan } = parsed as Found
  const packIds = entries(work.document.packs).map(pack => work.ids.get(pack) ?? '')
  const shared = branch(draft.shared) as Record<string, string>
  return { document, plan: withKindsEnds(plan), leftOut: [...work.said.values()], packIds, shared }
}

function bareDocument(): Branch {
  const stops = [{ name: 'Start' }, { name: 'End', leg: { km: 0 } }]
  return { format: PLAN_FORMAT, version: PLAN_VERSION, carrier: { massKg: MASS_KG }, trip: { stops } }
}

/** A copy that may be mended in place, its lists lists and its parts named. What is no part of a plan stays for the schema. */
function workingCopy(untrusted: Draft, typed: Typed): Work {
  const {
    gear: gearGiven,
    packs: packsGiven,
    people: peopleGiven,
    takes,
    log: _log,
    shared: _shared,
    ...others
  } = branch(untrusted)
  const copy = branch(copied(others, CAPS.depth - 1))
  const trip = branch(copy.trip)
  const given = entries(gearGiven)
  // Only what the words need: everything else is read through the document.
  const draft = {
    ...copy,
    gear: given,
    people: entries(peopleGiven),
    packs: entries(packsGiven),
    trip: { ...trip, stops: entries(trip.stops) },
  } as unknown as Draft
  const named = itemNames(given)
  const ids = new WeakMap<object, string>()
  const said = new Map<string, LeftOut>()
  const say = (path: string, rest: string) => {
    const what = named(path) ?? (path ? thingAt(draft, path) : 'Trip')
    if (!said.has(path)) said.set(path, { path, what, message: `${what}: ${rest}.` })
  }

  const listOf = (value: unknown, path: string): Branch[] => {
    const list = entries(value)
    if (value !== undefined && list.length !== (Array.isArray(value) ? value.length : -1)) say(path, PARTLY)
    return list
  }
  const withoutIds = (list: Branch[]): Branch[] =>
    list.map(({ id, ...part }) => {
      if (typeof id === 'string') ids.set(part, id)
      return part
    })
  const stops = withoutIds(listOf(trip.stops, 'trip/stops'))
  if (stops.length < 2) say('trip/stops', 'it has fewer than two stops, so a stand-in start and end are used')
  if (stops.length === 0) stops.push({})
  if (stops.length === 1) stops.push({ leg: { km: 0 } })
  stops.forEach((stop, i) => {
    stop.name = stop.name || stopStandIn(i, stops.length)
  })

  const packs = listOf(packsGiven, 'packs').map((pack, i) => {
    const { part, ids: own, isPartly } = packPart(pack, i)
    for (const [of, id] of own) ids.set(of, id)
    if (isPartly) say(fieldPath('packs', ids.get(part) ?? '', 'setups'), PARTLY)
    return part
  })

  const people = listOf(peopleGiven, 'people').map((person, i, all) => {
    const part = peoplePart(person, i, { all, takes, carrier: copy.carrier })
    ids.set(part.person, part.id)
    return part
  })

  const known = new Set<string>()
  const gear = listOf(gearGiven, 'gear').map((item, i) => {
    let id = typeof item.id === 'string' && item.id ? item.id : `item ${i + 1}`
    if (id.length > CAPS.nameLength || known.has(id)) id = `item ${i + 1}`
    while (known.has(id)) id += '′'
    known.add(id)
    const part = id === item.id ? knownItem(item) : freshItem(item, id)
    if (typeof item.id === 'string') ids.set(part, item.id)
    return part
  })

  const { carrier, ...parts } = copy
  const document = {
    ...parts,
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    ...(people.length > 0 ? { people: people.map(({ person }) => person) } : { carrier: branch(carrier) }),
    trip: { ...trip, stops },
    gear,
    packs,
    ...(copy.packings !== undefined && {
      packings: withItemIds(listOf(copy.packings, 'packings'), given as unknown as Draft['gear']),
    }),
  }
  const own = new WeakSet()
  return {
    draft,
    // What is noted of a trip is no part of its plan, so of its unread texts nothing is said.
    typed: isBranch(typed) ? withoutLogTexts(typed) : {},
    document,
    ids,
    own,
    taken: people.map(({ takes: pack }) => pack),
    said,
    say,
    later: [],
  }
}

const PARTLY = 'a part could not be read, so it is left out'

/** The name of the item that a field path leads into; a list is searched once and not for each of its items. */
function itemNames(gear: Branch[]): (path: string) => string | null {
  let byId: Map<unknown, Branch> | null = null
  return path => {
    const [area, id] = pathParts(path)
    if (area !== 'gear' || !id) return null
    // Of two with one id the first counts, as it does where fields are looked up.
    byId ??= new Map(gear.map(item => [item.id, item] as const).reverse())
    return nameOf(byId.get(id), 'Unnamed item')
  }
}

/** Says every typed text that no finding has said: the ones at optional fields, which the schema does not miss. */
function sayTyped(work: Work) {
  for (const [path, text] of Object.entries(work.typed)) {
    if (typeof text !== 'string' || fieldAt(work.draft, path) !== undefined) continue
    if (!hasPlace(work.draft, path)) continue
    const parts = pathParts(path)
    const kind = parts[0] === 'trip' ? parts[1] : parts[0]
    work.say(path, why(work, path, null) + instead(kind ?? '', parts.at(-1) ?? ''))
  }
}
