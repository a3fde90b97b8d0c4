// Two tabs' shelves joined thing by thing, over the state both were made from. What only one of them changed is taken
// from it; what both changed differently is kept twice; what one removed and the other changed stays. Pure.

import type { DraftPack } from '../draft'
import { fieldPath, pathParts } from '../field-path'
import { copyName } from '../lists'
import { joined } from './join'
import { mergedOrder, type Versions } from './order'
import { byId } from './plain'
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
  const packs = of<DraftPack>('packs', {
    second: pack => ({ ...renamed(pack), id: newId() }),
    asOne: onePack,
  })
  const lists = { things, bases, packings, packs }
  // Of a figure that both have changed ours stands: it is a choice that is seen and made anew in a moment.
  const versions = { base: base.figures, ours: ours.figures, theirs: theirs.figures }
  const figures = joined(versions, [], []) as Shelf['figures']
  const contents = {
    ...lists,
    typed: mergeTyped({ base, ours, theirs }, lists),
    ...(figures && { figures }),
  }
  const changedAt = Math.max(ours.changedAt, theirs.changedAt)
  const { figures: _figures, ...withoutFigures } = ours
  return {
    shelf: { ...withoutFigures, ...contents, changedAt, revision: Math.max(ours.revision, theirs.revision) },
    twice,
  }
}

interface Ways<T> {
  /** Makes their version of one that both have changed into another. */
  second: (theirs: T) => T
  /** Both as one; null where they hold different things. `base`: what both were made from, if it is known. */
  asOne: (ours: T, theirs: T, base: T | undefined) => T | null
}

const oneOrNone = <T>(ours: T, theirs: T): T | null => (same(ours, theirs) ? ours : null)

/** Field by field: only where both have changed the same field are there two. */
function onePack(ours: DraftPack, theirs: DraftPack, base: DraftPack | undefined): DraftPack | null {
  const clashes: string[] = []
  const one = joined({ base, ours, theirs }, [], clashes)
  return clashes.length > 0 ? null : (one as DraftPack)
}

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
      const one = isClash ? asOne(o, t, b) : null
      chosen.set(id, one ?? (oursIsNew ? o : t))
      if (isClash && !one) extra.set(id, second(t))
    } else if (o && oursIsNew) chosen.set(id, o)
    else if (t && !same(t, b)) chosen.set(id, t)
  }
  const order = mergedOrder({ base, ours, theirs })
  return order.flatMap(id => [chosen.get(id) ?? [], extra.get(id) ?? []].flat() as T[])
}

/** The thing or pack that a path of the shelf's unread texts leads into, as one text. */
export function ownerIn(path: string): string {
  const [first = '', second = ''] = pathParts(path)
  return first === 'packs' ? fieldPath(first, second) : first
}

/** The owners there are, as `ownerIn` tells them. */
export const ownersOf = ({ things, packs }: Pick<ShelfContents, 'things' | 'packs'>): Set<string> =>
  new Set([...things.map(({ id }) => id), ...packs.map(({ id }) => fieldPath('packs', id))])

function mergeTyped(
  { base, ours, theirs }: Versions<Shelf>,
  lists: Pick<ShelfContents, 'things' | 'packs'>,
): Shelf['typed'] {
  const held = ownersOf(lists)
  const pick = (path: string) => {
    const mine = ours.typed[path]
    return mine === base.typed[path] ? theirs.typed[path] : mine
  }
  const paths = new Set([...Object.keys(ours.typed), ...Object.keys(theirs.typed)])
  return Object.fromEntries(
    [...paths].flatMap(path => {
      const text = pick(path)
      return text !== undefined && held.has(ownerIn(path)) ? [[path, text] as const] : []
    }),
  )
}
