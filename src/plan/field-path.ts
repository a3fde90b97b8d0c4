// Field paths: strings that name one value of a draft, lists entered by id: `trip/stops/<id>/leg/km`.
// A "/" or "~" inside an id is written "~1" or "~0", as RFC 6901 does.

import type { Draft, Typed } from './draft'

type Branch = Record<string, unknown>

/** The path of a field: `fieldPath('gear', item.id, 'massKg')`. */
export const fieldPath = (...parts: string[]): string =>
  parts.map(part => part.replaceAll('~', '~0').replaceAll('/', '~1')).join('/')

export const pathParts = (path: string): string[] =>
  path.split('/').map(part => part.replaceAll('~1', '/').replaceAll('~0', '~'))

/** The value at a path; undefined where there is none. */
export const fieldAt = (draft: object, path: string): unknown => pathParts(path).reduce<unknown>(step, draft)

/** Whether the stop, item, pack or set-up a path leads into is still there. */
export function hasPlace(draft: Draft, path: string): boolean {
  let at: unknown = draft
  for (const part of pathParts(path)) {
    const wasList = Array.isArray(at)
    at = step(at, part)
    if (at === undefined) return !wasList
  }
  return true
}

/** The typed texts that still belong somewhere: their thing is there, and no value has taken their place. */
export function stillTyped(draft: Draft, typed: Typed): Typed {
  const entries = Object.entries(typed)
  const kept = entries.filter(([path]) => hasPlace(draft, path) && fieldAt(draft, path) === undefined)
  return kept.length === entries.length ? typed : Object.fromEntries(kept)
}

/**
 * The draft with another value at the path; undefined removes it. What lies between is made where it is missing,
 * but no list entry is: a path to a thing that is gone changes nothing.
 */
export function setField<T extends object>(draft: T, path: string, value: unknown): T {
  return change(draft, pathParts(path), value) as T
}

function step(at: unknown, part: string): unknown {
  if (Array.isArray(at)) return at.find(entry => entry?.id === part)
  if (typeof at !== 'object' || at === null || !Object.hasOwn(at, part)) return undefined
  return (at as Branch)[part]
}

function change(at: unknown, [part, ...rest]: string[], value: unknown): unknown {
  if (part === undefined) return value
  if (Array.isArray(at)) {
    const index = at.findIndex(entry => entry?.id === part)
    if (index < 0 || rest.length === 0) return at
    const entry = change(at[index], rest, value)
    return entry === at[index] ? at : at.with(index, entry)
  }
  const branch: Branch = typeof at === 'object' && at !== null ? (at as Branch) : {}
  const old = step(branch, part)
  const next =
    rest.length === 0 ? value : old === undefined && value === undefined ? old : change(old, rest, value)
  if (next === old) return at
  const { [part]: _, ...others } = branch
  return next === undefined ? others : { ...branch, [part]: next }
}
