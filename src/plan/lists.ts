// Lists of things with an id: put in, take out, move, change one. The same list comes back where nothing changes.

import { CAPS } from './caps'

interface Thing {
  id: string
  name?: string
}

/** Puts a thing at an index, or at the end. */
export function insertAt<T>(list: T[], thing: T, at = list.length): T[] {
  return list.toSpliced(Math.max(0, at), 0, thing)
}

export function removeId<T extends Thing>(list: T[], id: string): T[] {
  return list.some(thing => thing.id === id) ? list.filter(thing => thing.id !== id) : list
}

/** Moves a thing so that it stands at index `to`; past either end it stops there. */
export function moveId<T extends Thing>(list: T[], id: string, to: number): T[] {
  const from = list.findIndex(thing => thing.id === id)
  const thing = list[from]
  const target = Math.min(Math.max(0, to), list.length - 1)
  return !thing || from === target ? list : insertAt(list.toSpliced(from, 1), thing, target)
}

export function mapId<T extends Thing>(list: T[], id: string, change: (thing: T) => T): T[] {
  const index = list.findIndex(thing => thing.id === id)
  const thing = list[index]
  if (!thing) return list
  const next = change(thing)
  return next === thing ? list : list.with(index, next)
}

/** The name of a copy; a nameless thing stays nameless. */
export function copyName({ name }: { name?: string }, suffix = 'copy'): { name?: string } {
  if (!name) return {}
  const tail = ` (${suffix})`
  return { name: name.slice(0, CAPS.nameLength - tail.length) + tail }
}

/** Those of one key together, in the order in which each key comes first. */
export function groupedBy<T>(all: readonly T[], keyOf: (each: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const each of all) {
    const key = keyOf(each)
    const others = groups.get(key)
    if (others) others.push(each)
    else groups.set(key, [each])
  }
  return groups
}
