// Mends one finding about a plan document at its path: a stand-in, the default, or the thing left out; and says so.

import type { Takes } from './app-fields'
import { CAPS } from './caps'
import { type Branch, copied, entries, isBranch, isCopyOf } from './copies'
import type { Draft, Typed } from './draft'
import { fieldPath } from './field-path'
import { fieldWord, nameOf } from './field-words'
import { staysWithOwner } from './people'
import type { Problem } from './problem'

export interface LeftOut {
  /** The field path, as `fieldPath` writes it. */
  path: string
  /** The thing it is about, by name. */
  what: string
  /** A whole sentence: what is missing or wrong, and what is done instead. */
  message: string
}

/** Assumed where the hiker has not said: a judgement of ours, the middle of what adults weigh. */
export const MASS_KG = 70

/** Lists whose parts are remembered from one keystroke to the next. */
type KeptList = 'gear' | 'packs'
const KEPT_LISTS: readonly KeptList[] = ['gear', 'packs']

/** A document being mended, and what has been said of it. */
export interface Work {
  draft: Draft
  typed: Typed
  document: Branch & Record<KeptList, Branch[]>
  /** The items and packs that were copied once more in this round, so that they may be mended. */
  own: WeakSet<object>
  /** The pack that each of several people takes. */
  taken: (Takes | null)[]
  /** The id under which the app knows a part of the document. */
  ids: WeakMap<object, string>
  said: Map<string, LeftOut>
  say: (path: string, rest: string) => void
  /** To be said in the end if the item then depends on it: its fuel, which made a mass needless, may be left out. */
  later: (() => void)[]
}

export const branch = (value: unknown): Branch => (isBranch(value) ? value : {})

/** A value that a plan cannot be without, what stands in for it, and what to say of it. */
const STAND_INS: Readonly<Record<string, { value: number | null; so: string }>> = {
  'carrier/massKg': { value: MASS_KG, so: `${MASS_KG} kg is assumed` },
  'people/massKg': { value: MASS_KG, so: 'what is shared out goes by mass alone' },
  'leg/km': { value: 0, so: 'it is counted as 0 km' },
  'gear/massKg': { value: null, so: 'it is counted as weighing nothing' },
  'gear/litres': { value: null, so: 'it is counted as taking no room' },
}

export function repair(work: Work, problem: Problem) {
  const { document } = work
  const { path, message: written, said: message = written } = problem
  if (path[0] === 'packings' && path.length > 1) return leaveOutPacking(work, problem)
  const spot = follow(work, path)
  if (!spot) return
  const { parent, kind, key, at } = spot
  const value = parent[key]
  const standIn = STAND_INS[`${kind}/${key}`]
  if (standIn) {
    parent[key] = needed(parent, key) ? standIn.value : 0
    const tell = () => {
      if (!needed(parent, key) || parent.atHome === true) return
      work.say(at, why(work, at, value === undefined ? null : message) + standIn.so)
    }
    tell()
    work.later.push(tell)
  } else if (key === 'owner' && staysWithOwner(parent)) {
    const [first] = entries(document.people)
    parent.owner = first?.id
    work.say(at, `nobody’s yet: until you say whose it is, it goes with ${nameOf(first, 'Person 1')}`)
  } else if (key === 'name' && kind !== 'gear' && kind !== 'people' && kind) {
    parent[key] = nameOf(null, kind === 'stops' ? 'Stop' : kind === 'packs' ? 'Pack' : 'Set-up')
    work.say(at, `${why(work, at, message)}a stand-in is used`)
  } else if (key === 'leg' && value === undefined) {
    parent[key] = {}
  } else if (key === 'meals' && isBranch(value)) {
    for (const share of ['breakfast', 'trail', 'supper']) delete value[share]
    work.say(at, `${message}; until then the usual shares are used`)
  } else if (Array.isArray(value) && value.length > capOf(key)) {
    value.length = capOf(key)
    work.say(at, `${message}; the rest is left out`)
  } else if (Object.hasOwn(parent, key) && key !== 'setups') {
    delete parent[key]
    work.say(at, why(work, at, message) + instead(kind, key))
  } else {
    spot.removeParent()
    work.say(at, `${why(work, at, null)}it is left out`)
  }
}

/** A packing tells nothing unless all of it is right. */
function leaveOutPacking({ document, say }: Work, { path, message }: Problem) {
  const packing = (document.packings as Branch[])[path[1] as number]!
  REMOVED.add(packing)
  const day = typeof packing.date === 'string' ? ` of ${packing.date}` : ''
  say(
    fieldPath('packings', String(path[1])),
    `the packing${day} is left out: ${path.slice(2).join(' ')} ${message}`,
  )
}

const capOf = (key: string) =>
  key === 'gear' ? CAPS.items : CAPS[key as 'stops' | 'packs' | 'setups' | 'packings' | 'people']

/** Whether anything depends on the value: fuel is weighed by what it must boil, and worn things take no room. */
const needed = (item: Branch, key: string) =>
  !(key === 'massKg' && isBranch(item.fuel)) && !(key === 'litres' && item.stow === 'worn')

/** The first half of a sentence; `message` null: the value is not there. */
export function why({ typed }: Work, at: string, message: string | null): string {
  const word = fieldWord(at)
  const text = Object.hasOwn(typed, at) ? typed[at] : undefined
  if (text !== undefined) return `“${text}” cannot stand for the ${word}, so `
  if (word === 'set-ups') return 'no set-up that can be judged, so '
  return message === null ? `no ${word} yet, so ` : `${word} – ${message}; until then `
}

/** The second half: what is done without an optional value. */
export function instead(kind: string, key: string): string {
  if (key === 'inside') return 'it is carried on its own'
  if (key === 'ascentM' || key === 'descentM') return 'it is counted as 0 m'
  if (key === 'carriedBy' || key === 'shareable') return 'that is not counted'
  if (key === 'owner') return 'it is everybody’s'
  if (key === 'by') return 'each carries the same share of their limit'
  if (key === 'waterShare') return 'as much as the others is counted'
  if (key === 'count') return 'it is counted once'
  // No air temperature is usual.
  if (key === 'airC') return 'it is left out'
  const habit =
    ['pace', 'water', 'meals', 'weather', 'settings', 'trip'].includes(kind) || key === 'loadShareLimit'
  return habit ? 'the usual value is used' : 'it is left out'
}

interface Spot {
  parent: Branch
  /** The name of what `parent` is or is listed in: gear, leg, water … */
  kind: string
  key: string
  /** The field path in the draft. */
  at: string
  removeParent: () => void
}

/** Finds the place of a finding in the document; null once something on the way is gone. */
function follow(work: Work, path: Problem['path']): Spot | null {
  const { document, ids } = work
  let parent: Branch = document
  let kind = ''
  let removeParent = () => {}
  const parts: string[] = []
  for (let i = 0; i < path.length - 1; i++) {
    const from = parent
    const key = path[i]!
    const kept = KEPT_LISTS.find(list => from === (document[list] as unknown))
    const child = kept ? ownPart(work, document[kept], key as number) : from[key]
    if (typeof key === 'string') kind = key
    if (Array.isArray(child)) {
      parts.push(String(key))
      parent = child as unknown as Branch
      continue
    }
    if (!isBranch(child)) return null
    parts.push(typeof key === 'number' ? (ids.get(child) ?? String(key)) : key)
    removeParent = () => {
      if (Array.isArray(from)) REMOVED.add(child)
      else delete from[key]
    }
    parent = child
  }
  const key = path.at(-1)
  if (typeof key !== 'string') return null
  return { parent, kind, key, at: fieldPath(...parts, key), removeParent }
}

/** An item or pack of the document as one that may be changed: the others are remembered for the next keystroke. */
function ownPart({ ids, own }: Work, list: Branch[], index: number): Branch | undefined {
  const part = list[index]
  if (!part || own.has(part)) return part
  const copy = copied(part, CAPS.depth) as Branch
  sameIds(ids, part, copy)
  own.add(copy)
  madeOf.set(copy, part)
  list[index] = copy
  return copy
}

/** Gives a copy, and the set-ups in it, the ids of what it is a copy of. */
function sameIds(ids: Work['ids'], from: Branch, to: Branch) {
  const id = ids.get(from)
  if (id !== undefined) ids.set(to, id)
  const setups = entries(to.setups)
  entries(from.setups).forEach((setup, i) => {
    const of = ids.get(setup)
    if (of !== undefined && setups[i]) ids.set(setups[i], of)
  })
}

const madeOf = new WeakMap<object, Branch>()
/** How each was mended last: items of a long list with the same gap are not checked anew at every keystroke. */
const mended = new WeakMap<Branch, Branch>()

/** Once a round is over: puts the very same object in for an item or pack that was mended the same way before. */
export function keepMended({ document, ids, own }: Work) {
  for (const list of KEPT_LISTS.map(name => document[name]))
    list.forEach((part, i) => {
      const source = own.has(part) && madeOf.get(part)
      if (!source) return
      const before = mended.get(source)
      if (!before || !isCopyOf(before, part, CAPS.depth)) {
        mended.set(source, part)
        return
      }
      sameIds(ids, part, before)
      list[i] = before
    })
}

/** List entries to be taken out once a round is over, so that the other findings' indices still hold. */
const REMOVED = new WeakSet<object>()

export function removeMarked(document: Work['document']) {
  const kept = (list: unknown) => (list as Branch[]).filter(entry => !REMOVED.has(entry))
  document.packs = kept(document.packs)
  if (document.packings) document.packings = kept(document.packings)
  // What was not copied to be mended holds nothing that was marked, and must stay as it is.
  for (const pack of document.packs)
    if (entries(pack.setups).some(setup => REMOVED.has(setup))) pack.setups = kept(pack.setups)
}
