// The shipped table of generic kinds of gear, with what each of its words means for an item.
// Source and standing: data/item-kinds.json states them row by row; most of it is from memory.

import table from '../../../data/item-kinds.json'
import type { Build, LitresRange, Stow } from '../types'

export interface Kind {
  /** Its name, which is also its key: `rain jacket`. */
  kind: string
  /** Other names it goes by. */
  also?: string[]
  group: string
  massG: number
  massLowG: number
  massHighG: number
  /** Of one piece, or of the whole set, L. */
  litres: LitresRange
  /** What is mostly soft: L for each kg, and which of `litresPerKgFrom` of the table they are from. */
  litresPerKg?: LitresRange & { from: string }
  /** 0 rigid to 1 soft. */
  softShare: number
  place: string
  origin: string
  /** How many pieces the row's mass and litres are for, where it is a set. */
  pieces?: number
  holdsWaterLitres?: number
  /** The inner room of a hard container, L. */
  holdsLitres?: number
  use?: string
  /** Why it is not offered. */
  apart?: string
}

export const kinds: readonly Kind[] = (table.kinds as Kind[]).filter(kind => !kind.apart)

export const kindNamed = (name: string): Kind | undefined => kinds.find(({ kind }) => kind === name)

/** Whether a text is the very name of a kind, or another that it goes by. */
export const isNameOfKind = (text: string): boolean => NAMES.has(text.trim().toLowerCase())

const NAMES = new Set(kinds.flatMap(({ kind, also = [] }) => [kind, ...also]))

/** Where its figures come from, in words: "typical, from memory, not measured"; of its litres by a mass if asked so. */
export function originText({ origin, litresPerKg }: Kind, byMass = false): string {
  if (!byMass || !litresPerKg) return table.origins[origin as keyof typeof table.origins].says
  return `typical for its mass, ${table.litresPerKgFrom[litresPerKg.from as keyof typeof table.litresPerKgFrom].says}`
}

/** The same in short, where "typical, not measured" is said once for all: "from memory". */
export const originInShort = (kind: Kind, byMass = false): string =>
  originText(kind, byMass).replace(/^typical(?: for its mass)?, |, not measured$/g, '')

/** Rigid pieces leave gaps; what is at least half soft counts as soft: a judgement of ours. */
export const buildOf = ({ softShare }: Kind): Build => (softShare >= 0.5 ? 'soft' : 'rigid')

/** Where it usually rides. What may ride either way is counted inside, the careful side. */
export function placeOf({ place }: Kind): { stow: Stow; mayRideOutside?: true } {
  if (place === 'pocket') return { stow: 'outside-pocket' }
  if (place === 'outside') return { stow: 'strapped-on' }
  return place === 'main or outside' ? { stow: 'main-body', mayRideOutside: true } : { stow: 'main-body' }
}
