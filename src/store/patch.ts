// The difference between two states of a record, small enough to keep one for every undo step: it goes both ways, and
// is refused where what it would replace is no longer what it was made for, as after another tab's edit. Pure.

import { byId, isBranch, isThings, own, same, type WithId as Thing } from '../plan/shelf'

/** What a list of things lost and gained, each with its index, and the order of what stayed where that changed. */
interface ListPatch {
  gone: [number, Thing][]
  came: [number, Thing][]
  kept: [string, Patch][]
  order?: { from: string[]; to: string[] }
}

/** `keys`: parts of an object; `list`: a list of things with ids; else one value instead of another. */
export type Patch = { keys: [string, Patch][] } | { list: ListPatch } | { from?: unknown; to?: unknown }

export type Way = 'forth' | 'back'

/** What leads from one state to another; null where they are the same. */
export function difference(from: unknown, to: unknown): Patch | null {
  if (from === to) return null
  if (isBranch(from) && isBranch(to)) {
    const names = new Set([...Object.keys(from), ...Object.keys(to)])
    const keys = [...names].flatMap((name): [string, Patch][] => {
      const patch = difference(own(from, name), own(to, name))
      return patch ? [[name, patch]] : []
    })
    return keys.length ? { keys } : null
  }
  if (isThings(from) && isThings(to)) return listDifference(from, to)
  return same(from, to) ? null : { from, to }
}

function listDifference(from: Thing[], to: Thing[]): Patch | null {
  // Typing in one of thousands of things: nothing else is looked at.
  if (from.length === to.length && from.every(({ id }, i) => id === to[i]!.id)) {
    const kept = keptIn(to, i => from[i])
    if (kept.length === 0) return null
    if (new Set(from.map(({ id }) => id)).size === from.length) return { list: { gone: [], came: [], kept } }
  }
  const [was, is] = [byId(from), byId(to)]
  // A file may hold one id twice.
  if (was.size < from.length || is.size < to.length) return same(from, to) ? null : { from, to }
  const gone = from.flatMap((thing, i): [number, Thing][] => (is.has(thing.id) ? [] : [[i, thing]]))
  const came = to.flatMap((thing, i): [number, Thing][] => (was.has(thing.id) ? [] : [[i, thing]]))
  const kept = keptIn(to, i => was.get(to[i]!.id))
  const order = { from: idsIn(from, is), to: idsIn(to, was) }
  const isMoved = order.from.some((id, i) => id !== order.to[i])
  if (!isMoved && gone.length + came.length + kept.length === 0) return null
  return { list: { gone, came, kept, ...(isMoved && { order: trimmed(order) }) } }
}

function keptIn(to: Thing[], before: (i: number) => Thing | undefined): ListPatch['kept'] {
  return to.flatMap((thing, i): [string, Patch][] => {
    const was = before(i)
    const patch = was && difference(was, thing)
    return patch ? [[thing.id, patch]] : []
  })
}

/** Without what stands alike at both ends. */
function trimmed({ from, to }: { from: string[]; to: string[] }) {
  let [start, end] = [0, from.length]
  while (from[start] === to[start]) start++
  while (from[end - 1] === to[end - 1]) end--
  return { from: from.slice(start, end), to: to.slice(start, end) }
}

/** The other state, or `REFUSED` where the value is not the one the patch was made for. May throw on a foreign patch. */
export function patched(value: unknown, patch: Patch, way: Way): unknown {
  if ('keys' in patch) {
    if (!isBranch(value)) return REFUSED
    const next = { ...value }
    for (const [name, part] of patch.keys) {
      const made = patched(own(next, name), part, way)
      if (made === REFUSED) return REFUSED
      if (made === undefined) delete next[name]
      else
        Object.defineProperty(next, name, {
          value: made,
          enumerable: true,
          writable: true,
          configurable: true,
        })
    }
    return next
  }
  if ('list' in patch) return isThings(value) ? patchedList(value, patch.list, way) : REFUSED
  const [before, after] = way === 'forth' ? [patch.from, patch.to] : [patch.to, patch.from]
  return same(value, before) ? after : REFUSED
}

export const REFUSED = Symbol('refused')

function patchedList(list: Thing[], { gone, came, kept, order }: ListPatch, way: Way): unknown {
  const [out, into] = way === 'forth' ? [gone, came] : [came, gone]
  const held = byId(list)
  if (out.some(([, thing]) => !same(held.get(thing.id), thing))) return REFUSED
  if (into.some(([, { id }]) => held.has(id))) return REFUSED
  const leaving = new Set(out.map(([, { id }]) => id))
  let next = leaving.size ? list.filter(({ id }) => !leaving.has(id)) : [...list]
  for (const [id, part] of kept) {
    const thing = held.get(id)
    const made = thing ? patched(thing, part, way) : REFUSED
    if (made === REFUSED) return REFUSED
    held.set(id, made as Thing)
  }
  if (kept.length) next = next.map(({ id }) => held.get(id)!)
  if (order) next = reordered(next, way === 'forth' ? order.to : order.from)
  return into.length ? inserted(next, into) : next
}

/** The named things in this order, in the places they hold between them. */
function reordered(list: Thing[], order: string[]): Thing[] {
  const held = byId(list)
  const named = new Set(order)
  const queue = order.flatMap(id => held.get(id) ?? [])
  let next = 0
  return list.map(thing => (named.has(thing.id) ? queue[next++]! : thing))
}

/** All at once, since a thousand splices of a long list would be slow. The indices ascend. */
function inserted(list: Thing[], into: [number, Thing][]): Thing[] {
  const made: Thing[] = []
  let taken = 0
  for (const [at, thing] of into) {
    while (made.length < at && taken < list.length) made.push(list[taken++]!)
    made.push(thing)
  }
  return [...made, ...list.slice(taken)]
}

const idsIn = (list: Thing[], held: Map<string, Thing>) => list.flatMap(({ id }) => (held.has(id) ? id : []))
