// Where a row goes when it is dragged or moved by keys: between which rows, and under which heading. Pure.

import type { Entry } from './slots'

/** A place for a row: after or before a row under the same heading, null where there is none. */
export interface Spot {
  prev: string | null
  next: string | null
  /** The group of the heading it lies under; null above all headings. */
  under: string | null
}

/** The place before entry `before` of a list (its length: at the end); null where the row already lies there. */
export function spotBefore(entries: readonly Entry[], key: string, before: number): Spot | null {
  const from = entries.findIndex(entry => entry.key === key)
  if (from < 0) return null
  const rest = entries.toSpliced(from, 1)
  let at = Math.min(Math.max(0, before > from ? before - 1 : before), rest.length)
  // What a first heading names begins below it.
  if (at === 0 && rest[0]?.heading !== undefined) at = 1
  if (at === from) return null
  const rowAt = (index: number) => {
    const entry = rest[index]
    return entry && entry.heading === undefined ? entry.key : null
  }
  const heading = rest.slice(0, at).findLast(entry => entry.heading !== undefined)
  return { prev: rowAt(at - 1), next: rowAt(at), under: heading?.heading ?? null }
}

const MOVES: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowUp: at => at - 1,
  ArrowDown: at => at + 2,
  Home: () => 0,
  End: (_, count) => count,
}

/** The place a key moves a row to: one up or down, past a heading into the next group, to either end. */
export function spotByKey(entries: readonly Entry[], key: string, pressed: string): Spot | null {
  const at = entries.findIndex(entry => entry.key === key)
  const move = Object.hasOwn(MOVES, pressed) ? MOVES[pressed] : undefined
  const before = move?.(at, entries.length) ?? -1
  if (at < 0 || before < 0 || before > entries.length) return null
  return spotBefore(entries, key, before)
}

/** The list with a thing taken to a place; the same list where the place is not in it. */
export function movedTo<T extends { id: string }>(list: T[], moved: T, spot: Spot): T[] {
  const rest = list.filter(({ id }) => id !== moved.id)
  const after = rest.findIndex(({ id }) => id === spot.prev)
  const at = after >= 0 ? after + 1 : rest.findIndex(({ id }) => id === spot.next)
  return at < 0 ? list : rest.toSpliced(at, 0, moved)
}
