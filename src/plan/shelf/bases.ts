// Bases and packings: the lists one packs from again and again, and what one's own packings have shown. Pure.

import type { Draft } from '../draft'
import { copyName, insertAt, mapId, moveId, removeId } from '../lists'
import type { Base, BaseLine, Packing, Shelf } from './types'

const withBases = (shelf: Shelf, bases: Base[]): Shelf =>
  bases === shelf.bases ? shelf : { ...shelf, bases }

export const addBase = (shelf: Shelf, newId: () => string, base: Omit<Base, 'id'>): Shelf =>
  withBases(shelf, [...shelf.bases, { ...base, id: newId() }])

export function duplicateBase(shelf: Shelf, id: string, newId: () => string): Shelf {
  const index = shelf.bases.findIndex(base => base.id === id)
  const base = shelf.bases[index]
  if (!base) return shelf
  const name = copyName(base).name ?? base.name
  return withBases(shelf, insertAt(shelf.bases, { ...base, id: newId(), name }, index + 1))
}

export const renameBase = (shelf: Shelf, id: string, name: string): Shelf =>
  withBases(
    shelf,
    mapId(shelf.bases, id, base => (base.name === name ? base : { ...base, name })),
  )

export const setBaseLines = (shelf: Shelf, id: string, lines: BaseLine[]): Shelf =>
  withBases(
    shelf,
    mapId(shelf.bases, id, base => ({ ...base, lines })),
  )

export const removeBase = (shelf: Shelf, id: string): Shelf => withBases(shelf, removeId(shelf.bases, id))

export const moveBase = (shelf: Shelf, id: string, to: number): Shelf =>
  withBases(shelf, moveId(shelf.bases, id, to))

/** The lines of a base that packs as a trip does: every item that is linked to a thing on the shelf, once each. */
export function linesFrom(draft: Draft, shelf: Shelf): BaseLine[] {
  const known = new Set(shelf.things.map(({ id }) => id))
  const thingOf = new Map(
    draft.gear.flatMap(({ id, shelf: link }) => (link && known.has(link.id) ? [[id, link.id] as const] : [])),
  )
  const lines = new Map<string, BaseLine>()
  for (const item of draft.gear) {
    const thing = thingOf.get(item.id)
    if (!thing || lines.has(thing)) continue
    const inside = thingOf.get(item.inside ?? '')
    lines.set(thing, {
      thing,
      ...(item.count !== undefined && { count: item.count }),
      ...(item.stow && { stow: item.stow }),
      ...(inside && inside !== thing && { inside }),
      ...(item.atHome && { atHome: true }),
    })
  }
  return [...lines.values()]
}

export const addPacking = (shelf: Shelf, newId: () => string, packing: Omit<Packing, 'id'>): Shelf => ({
  ...shelf,
  packings: [...shelf.packings, { ...packing, id: newId() }],
})

export function withdrawPacking(shelf: Shelf, id: string): Shelf {
  const packings = removeId(shelf.packings, id)
  return packings === shelf.packings ? shelf : { ...shelf, packings }
}
