// From a draft with gaps to a plan that can be reckoned, and the list of what had to be assumed or left out.
// The one schema and its rules find what is missing or wrong; each finding is mended at its path and said.

import type { Draft, Typed } from './draft'
import { fieldAt, fieldPath, hasPlace, pathParts } from './field-path'
import { stopStandIn, thingAt } from './field-words'
import { CAPS } from './limits'
import {
  type Branch,
  branch,
  instead,
  isBranch,
  type LeftOut,
  MASS_KG,
  mend,
  removeMarked,
  type Work,
  why,
} from './mend'
import { type Parsed, parsePlan } from './parse'
import { PLAN_FORMAT, PLAN_VERSION, type PlanDocument } from './schema'
import type { Plan } from './types'

export interface Settled {
  document: PlanDocument
  plan: Plan
  leftOut: LeftOut[]
  /** The draft's id of each pack of the plan: some of the draft's may be left out. */
  packIds: string[]
}

type Found = Extract<Parsed, { ok: true }>

/** Mending one finding can show another, as taking a container's room away shows what was inside; not for long. */
const MOST_ROUNDS = 10

/** The plan that stands for a draft. Never throws, whatever the draft holds; see {@link LeftOut} for what it says. */
export function settle(draft: Draft, typed: Typed = {}): Settled {
  const work = workingCopy(draft, typed)
  let parsed = parsePlan(work.document)
  for (let round = 0; !parsed.ok && round < MOST_ROUNDS; round++) {
    for (const problem of parsed.problems) mend(work, problem)
    removeMarked(work.document)
    parsed = parsePlan(work.document)
  }
  if (!parsed.ok) {
    work.say('', 'nothing of it could be read, so a bare trip stands in')
    parsed = parsePlan(bareDocument())
  }
  for (const tell of work.later) tell()
  sayTyped(work)
  const { document, plan } = parsed as Found
  const packIds = entries(work.document.packs).map(pack => work.ids.get(pack) ?? '')
  return { document, plan, leftOut: [...work.said.values()], packIds }
}

function bareDocument(): Branch {
  const stops = [{ name: 'Start' }, { name: 'End', leg: { km: 0 } }]
  return { format: PLAN_FORMAT, version: PLAN_VERSION, carrier: { massKg: MASS_KG }, trip: { stops } }
}

/** A copy that may be mended in place, its lists lists and its parts named. What is no part of a plan stays for the schema. */
function workingCopy(untrusted: Draft, typed: Typed): Work {
  const copy = branch(copied(untrusted, CAPS.depth - 1))
  const trip = branch(copy.trip)
  // Only what the words need: everything else is read through the document.
  const draft = { ...copy, trip: { ...trip, stops: entries(trip.stops) } } as unknown as Draft
  const ids = new WeakMap<object, string>()
  const said = new Map<string, LeftOut>()
  const say = (path: string, rest: string) => {
    const what = path ? thingAt(draft, path) : 'Trip'
    if (!said.has(path)) said.set(path, { path, what, message: `${what}: ${rest}.` })
  }

  const listOf = (value: unknown, path: string): Branch[] => {
    const list = entries(value)
    if (value !== undefined && list.length !== (Array.isArray(value) ? value.length : -1))
      say(path, 'a part could not be read, so it is left out')
    return list.map(({ id, ...part }) => {
      if (typeof id === 'string') ids.set(part, id)
      return part
    })
  }
  const stops = listOf(trip.stops, 'trip/stops')
  if (stops.length < 2) say('trip/stops', 'it has fewer than two stops, so a stand-in start and end are used')
  if (stops.length === 0) stops.push({})
  if (stops.length === 1) stops.push({ leg: { km: 0 } })
  stops.forEach((stop, i) => {
    stop.name = stop.name || stopStandIn(i, stops.length)
  })

  const packs = listOf(copy.packs, 'packs')
  packs.forEach((pack, i) => {
    pack.name = pack.name || `Pack ${i + 1}`
    const setups = listOf(pack.setups, fieldPath('packs', ids.get(pack) ?? '', 'setups'))
    setups.forEach((setup, j) => {
      setup.name = setup.name || (setups.length > 1 ? `Set-up ${j + 1}` : 'As it is')
    })
    pack.setups = setups
  })

  const gear = listOf(copy.gear, 'gear')
  const taken = new Set<unknown>()
  gear.forEach((item, i) => {
    let id = ids.get(item) || `item ${i + 1}`
    if (id.length > CAPS.nameLength || taken.has(id)) id = `item ${i + 1}`
    while (taken.has(id)) id += '′'
    taken.add(id)
    item.id = id
  })

  const document = {
    ...copy,
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    carrier: branch(copy.carrier),
    trip: { ...trip, stops },
    gear,
    packs,
  }
  return { draft, typed: isBranch(typed) ? typed : {}, document, ids, said, say, later: [] }
}

const entries = (value: unknown): Branch[] => (Array.isArray(value) ? value.filter(isBranch) : [])

function copied(value: unknown, depth: number): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (depth === 0) return undefined
  if (Array.isArray(value)) return value.map(entry => copied(entry, depth - 1))
  return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, copied(child, depth - 1)]))
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
