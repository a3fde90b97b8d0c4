// What the tag of a pack says, as it is read in a shop: the main body out of a total, the rating out of a range, and
// the candidate that comes of it. Which end of a range counts is a judgement of ours: the lower, the careful one.

import { type Parsed, parseQuantity, type System } from '../units'
import { CAPS } from './caps'
import type { Draft } from './draft'
import { addPack } from './edits'
import { fieldPath, setField } from './field-path'
import type { Frame, RatingCovers } from './types'

/** The figures of a tag, as far as they are known. */
export interface Tag {
  name?: string | undefined
  bodyLitres?: number | undefined
  outsideLitres?: number | undefined
  massKg?: number | undefined
  ratedKg?: number | undefined
  frame: Frame
  ratingCovers?: RatingCovers | undefined
  sealed?: boolean | undefined
  price?: number | undefined
}

/** What was read of a rated load: kg, or nothing yet; `range` where the text gave one. */
export type Rating =
  | { ok: true; kg: number | undefined; echo: boolean; range: { lowKg: number; highKg: number } | null }
  | { ok: false; message: string }

const BETWEEN = /\bto\b|[-‐‑–—−~…]|\.\.+/giu

/** The two ends of a range: the first mark between two that both hold a digit parts them. */
function endsOf(text: string): { from: string; to: string } | null {
  const first = text.search(/\d/)
  for (const { index, 0: mark } of text.matchAll(BETWEEN)) {
    const to = text.slice(index + mark.length)
    if (first >= 0 && first < index && /\d/.test(to))
      return { from: text.slice(0, index).trim(), to: to.trim() }
  }
  return null
}

/** Reads a rated load in any unit of mass, alone ("12 kg") or as a range ("9–13 kg"), whose lower end counts. */
export function readRating(text: string, system: System): Rating {
  const ends = text.length <= CAPS.nameLength ? endsOf(text) : null
  if (!ends) return single(parseQuantity('mass', text, { system }))
  const { from, to } = ends
  const high = parseQuantity('mass', to, { system })
  // "20–30 lb": the unit stands once, behind the second number.
  const unit = /^[\d\s.,]+$/.test(from) ? to.replace(/^[\d\s.,]+/, '') : ''
  const low = parseQuantity('mass', `${from} ${unit}`, { system })
  if (!low.ok) return low
  if (!high.ok) return high
  if (low.empty || high.empty) return single(low.empty ? high : low)
  const range = { lowKg: Math.min(low.value, high.value), highKg: Math.max(low.value, high.value) }
  return { ok: true, kg: range.lowKg, echo: low.echo || high.echo, range }
}

function single(parsed: Parsed): Rating {
  return parsed.ok ? { ok: true, kg: parsed.value ?? undefined, echo: parsed.echo, range: null } : parsed
}

/** The draft with the tagged pack as one more candidate, at the end. What the tag does not say stays open. */
export function keepTag(draft: Draft, tag: Tag, newId: () => string): Draft {
  const { name, bodyLitres, outsideLitres, sealed, price } = tag
  const said = { name, bodyLitres, outsideLitres, sealed: sealed || undefined, price }
  const added = addPack(draft, newId, { with: withoutGaps(said) })
  const pack = added.packs.at(-1)!
  const at = (field: string) => fieldPath('packs', pack.id, 'setups', pack.setups[0]!.id, field)
  const figures = {
    massKg: tag.massKg,
    ratedKg: tag.ratedKg,
    frame: tag.frame,
    ratingCovers: tag.ratingCovers,
  }
  return Object.entries(figures).reduce((made, [field, value]) => setField(made, at(field), value), added)
}

function withoutGaps<T extends object>(figures: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}
