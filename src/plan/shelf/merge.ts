// Two tabs' shelves joined thing by thing, over the state both were made from. What only one of them changed is taken
// from it; what both changed differently is kept twice; what one removed and the other changed stays. Pure.

import { pathParts } from '../field-path'
import { copyName } from '../lists'
import { mergedOrder, type Versions } from './order'
import { same } from './same'
import type { Base, Packing, Shelf, ShelfContents, Thing } from './types'

export interface MergedShelf {
  shelf: Shelf
  /** The names of things and bases that are now there twice. */
  twice: string[]
}

const OTHER_TAB = 'other tab'

/** Ours joined with theirs. `changedAt` and `revision` are the later ones of the two. */
export function mergeShelves({ base, ours, theirs }: Versions<Shelf>, newId: () => string): MergedShelf {
  const twice: string[] = []
  const renamed = <T extends { name?: string }>(thing: T): T => {
    twice.push(thing.name ?? 'Unnamed item')
    return { ...thing, ...copyName(thing, OTHER_TAB) }
  }
  const of = <T extends { id: string }>(key: keyof ShelfContents, ways: Ways<T>) =>
    mergeLists({ base: base[key], ours: ours[key], theirs: theirs[key] } as unknown as Versions<T[]>, ways)
  const things = of<Thing>('things', {
    second: thing => ({ ...thing, id: newId(), item: renamed(thing.item) }),
    asOne: oneThing,
  })
  const bases = of<Base>('bases', { second: base => ({ ...renamed(base), id: newId() }), asOne: oneOrNone })
  const packings = of<Packing>('packings', {
    second: packing => ({ ...packing, id: newId() }),
    asOne: oneOrNone,
  })
  const contents = { things, bases, packings, typed: mergeTyped({ base, ours, theirs }, things) }
  const changedAt = Math.max(ours.changedAt, theirs.changedAt)
  return {
    shelf: { ...ours, ...contents, changedAt, revision: Math.max(ours.revision, theirs.revision) },
    twice,
  }
}

interface Ways<T> {
  /** Makes their version of one that both have changed into another. */
  second: (theirs: T) => T
  /** Both as one; null where they hold different things. */
  asOne: (ours: T, theirs: T) => T | null
}

const oneOrNone = <T>(ours: T, theirs: T): T | null => (same(ours, theirs) ? ours : null)

/** The same edit made in two tabs has two times, and is one edit all the same: the later times count. */
function oneThing(ours: Thing, theirs: Thing): Thing | null {
  const changed = { ...ours.changed }
  for (const [fact, at] of Object.entries(theirs.changed) as [keyof Thing['changed'], number][])
    changed[fact] = Math.max(at, changed[fact] ?? at)
  if (!same({ ...ours, changed }, { ...theirs, changed })) return null
  return same(ours.changed, changed) ? ours : { ...ours, changed }
}

/** A list of things joined thing by thing. */
function mergeLists<T extends { id: string }>(versions: Versions<T[]>, { second, asOne }: Ways<T>): T[] {
  const { base, ours, theirs } = versions
  if (ours === base || ours === theirs) return theirs
  if (theirs === base) return ours
  const [was, mine, other] = [byId(base), byId(ours), byId(theirs)]
  const extra = new Map<string, T>()
  const chosen = new Map<string, T>()
  for (const id of new Set([...mine.keys(), ...other.keys()])) {
    const [b, o, t] = [was.get(id), mine.get(id), other.get(id)]
    const oursIsNew = !same(o, b)
    if (o && t) {
      const isClash = oursIsNew && !same(t, b)
      const one = isClash ? asOne(o, t) : null
      chosen.set(id, one ?? (oursIsNew ? o : t))
      if (isClash && !one) extra.set(id, second(t))
    } else if (o && oursIsNew) chosen.set(id, o)
    else if (t && !same(t, b)) chosen.set(id, t)
  }
  const order = mergedOrder({ base, ours, theirs })
  return order.flatMap(id => [chosen.get(id) ?? [], extra.get(id) ?? []].flat() as T[])
}

const byId = <T extends { id: string }>(list: T[]) => new Map(list.map(thing => [thing.id, thing]))

function mergeTyped({ base, ours, theirs }: Versions<Shelf>, things: Thing[]): Shelf['typed'] {
  const held = new Set(things.map(({ id }) => id))
  const pick = (path: string) => {
    const mine = ours.typed[path]
    return mine === base.typed[path] ? theirs.typed[path] : mine
  }
  const paths = new Set([...Object.keys(ours.typed), ...Object.keys(theirs.typed)])
  return Object.fromEntries(
    [...paths].flatMap(path => {
      const text = pick(path)
      return text !== undefined && held.has(pathParts(path)[0] ?? '') ? [[path, text] as const] : []
    }),
  )
}
