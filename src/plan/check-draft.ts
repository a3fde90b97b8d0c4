// A draft from outside, of which only the structure is known: every value that the plan's schema does not know as one of
// its field's kind is taken out and named. Gaps and numbers outside their range stay, as they do while one types.

import type { z } from 'zod/mini'
import { badLogPaths } from './check-log'
import { badOwnFacts, isTakes } from './check-own-facts'
import { type Draft, emptyDraft, type OfTheTrip, type Typed, toPlanDocument } from './draft'
import { hasPlace, pathParts } from './field-path'
import { placeInWords } from './field-words'
import { planSchema } from './schema'

/** A longer text was typed by nobody. */
const MOST_CHARS = 1000

type Path = (string | number)[]
type Branch = Record<string | number, unknown>

export type CheckedDraft =
  | { ok: true; draft: Draft; leftOut: string[] }
  /** Too many of something. */
  | { ok: false; message: string }

/**
 * The draft without the values that no field of a plan can hold, and their places in words. Its lists must be
 * lists and their entries have ids; nothing else is trusted. Refused when it holds more of anything than a plan may.
 */
export function checkDraft(untrusted: Draft): CheckedDraft {
  const found = planSchema.safeParse(toPlanDocument(untrusted))
  let draft = untrusted
  const leftOut: string[] = []
  const takeOut = (path: Path) => {
    // Copied only once there is something to take out: most drafts are sound, and some are long.
    if (draft === untrusted) draft = structuredClone(untrusted)
    if (removeAt(draft, path)) leftOut.push(placeInWords(path))
  }
  for (const issue of found.success ? [] : found.error.issues) {
    const path = issue.path.filter(part => typeof part !== 'symbol')
    const value = valueAt(draft, path)
    if (Array.isArray(value) && issue.code === 'too_big') return { ok: false, message: issue.message }
    if (issue.code === 'unrecognized_keys') for (const key of issue.keys) takeOut([...path, key])
    else if (value !== undefined && !isOfItsKind(issue, value)) takeOut(path)
  }
  draft.gear.forEach((item, i) => {
    if ('shelf' in item && !isShelfLink(item.shelf)) takeOut(['gear', i, 'shelf'])
    // A plan says so where a figure is not known; a draft leaves it out.
    for (const field of ['massKg', 'litres'] as const) if (item[field] === null) takeOut(['gear', i, field])
    if ('litresPerKg' in item && !isRange(item.litresPerKg)) takeOut(['gear', i, 'litresPerKg'])
    if ('swaps' in item && !areSwaps(item.swaps)) takeOut(['gear', i, 'swaps'])
  })
  draft.packs.forEach((pack, i) => {
    for (const field of badOwnFacts(pack)) takeOut(['packs', i, field])
  })
  draft.people?.forEach((person, i) => {
    if ('takes' in person && !isTakes(person.takes)) takeOut(['people', i, 'takes'])
    // A document names it by its place; a draft by its id.
    if ('pack' in person) takeOut(['people', i, 'pack'])
  })
  for (const [item, who] of Object.entries(draft.shared ?? {}))
    if (typeof who !== 'string' || who.length > MOST_CHARS) takeOut(['shared', item])
  if ('takes' in draft && !isTakes(draft.takes)) takeOut(['takes'])
  if ('log' in draft) for (const path of badLogPaths(draft.log)) takeOut(['log', ...path])
  return { ok: true, draft, leftOut }
}

/** The texts that could not be read as numbers, as far as they stand at a field of this draft. */
export function checkTyped(draft: Draft, typed: Typed): Typed {
  const fields = new Set(['name', 'carrier', 'people', 'trip', 'gear', 'packs', 'settings', 'log'])
  const isField = (path: string) => {
    const parts = pathParts(path)
    return fields.has(parts[0] ?? '') && !parts.some(part => part in {}) && hasPlace(draft, path)
  }
  return Object.fromEntries(
    Object.entries(typed).filter(([path, text]) => isField(path) && text.length <= MOST_CHARS),
  )
}

/** A number past its range or a long text is one that somebody typed; anything else is no value of that field. */
function isOfItsKind({ code }: z.core.$ZodIssue, value: unknown): boolean {
  if (typeof value === 'string') return ['too_big', 'too_small'].includes(code) && value.length <= MOST_CHARS
  if (typeof value === 'number')
    return ['too_big', 'too_small', 'not_multiple_of', 'invalid_union'].includes(code)
  return Array.isArray(value) && code === 'too_small'
}

function isShelfLink(value: unknown): boolean {
  const { id, at, ...rest } = (value ?? {}) as Record<string, unknown>
  return typeof id === 'string' && Number.isFinite(at) && Object.keys(rest).length === 0
}

/** More alternatives to one item were chosen by nobody. */
const MOST_SWAPS = 50

function areSwaps(value: unknown): boolean {
  if (!Array.isArray(value) || value.length > MOST_SWAPS || !value.every(isSwap)) return false
  return new Set(value.map(({ id }) => id)).size === value.length
}

/** Facts of its own are checked as those of an item are. */
function isSwap(value: unknown): boolean {
  const { id, own, ...rest } = (value ?? {}) as Record<string, unknown>
  if (typeof id !== 'string' || Object.keys(rest).length > 0) return false
  if (own === undefined) return true
  const { at, item, ...others } = (own ?? {}) as { at?: unknown; item?: unknown }
  if (!Number.isFinite(at) || Object.keys(others).length > 0) return false
  if (typeof item !== 'object' || item === null || Array.isArray(item)) return false
  if (OF_THE_TRIP.some(field => Object.hasOwn(item, field))) return false
  const checked = checkDraft({ ...emptyDraft(), gear: [{ ...item, id }] })
  return checked.ok && checked.leftOut.length === 0
}

const OF_THE_TRIP: OfTheTrip[] = [
  'id',
  'inside',
  'shelf',
  'atHome',
  'swaps',
  'owner',
  'carriedBy',
  'shareable',
]

/** An ordered range of numbers, none below 0. */
function isRange(value: unknown): boolean {
  const { low, typical, high, ...rest } = (value ?? {}) as Record<string, unknown>
  const ends = [0, low, typical, high]
  const isOrdered = ends.every(
    (end, i) => Number.isFinite(end) && (i === 0 || (end as number) >= (ends[i - 1] as number)),
  )
  return isOrdered && Object.keys(rest).length === 0
}

const valueAt = (root: unknown, path: Path): unknown =>
  path.reduce<unknown>((at, part) => (at as Branch | null | undefined)?.[part], root)

function removeAt(root: unknown, path: Path): boolean {
  const parent = valueAt(root, path.slice(0, -1)) as Branch | undefined
  const key = path.at(-1)
  if (parent === undefined || key === undefined || !Object.hasOwn(parent, key)) return false
  return delete parent[key]
}
