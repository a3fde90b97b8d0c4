// The shipped table of generic kinds of gear, with what each of its words means for an item.
// Source and standing: data/item-kinds.json states them row by row; most of it is from memory.

import table from '../../../data/item-kinds.json'
import type { Build, Stow } from '../types'

export interface Kind {
  /** Its name, which is also its key: `rain jacket`. */
  kind: string
  /** Other names it goes by. */
  also?: string[]
  group: string
  massG: number
  massLowG: number
  massHighG: number
  litres: { low: number; typical: number; high: number }
  /** 0 rigid to 1 soft. */
  softShare: number
  place: string
  origin: string
  /** How many pieces the row's mass and litres are for, where it is a set. */
  pieces?: number
  holdsWaterLitres?: number
  use?: string
  /** Why it is not offered. */
  apart?: string
}

export const kinds: readonly Kind[] = (table.kinds as Kind[]).filter(kind => !kind.apart)

export const kindNamed = (name: string): Kind | undefined => kinds.find(({ kind }) => kind === name)

/** Where its figures come from, in words: "typical, computed from usual dimensions, not measured". */
export const originText = ({ origin }: Kind): string =>
  table.origins[origin as keyof typeof table.origins].says

/** The same in short, where "typical, not measured" is said once for all: "computed from usual dimensions". */
export const originInShort = (kind: Kind): string =>
  originText(kind).replace(/^typical, |, not measured$/g, '')

/** Rigid pieces leave gaps; what is at least half soft counts as soft: a judgement of ours. */
export const buildOf = ({ softShare }: Kind): Build => (softShare >= 0.5 ? 'soft' : 'rigid')

/** Where it usually rides. What may ride either way is counted inside, the careful side. */
export function placeOf({ place }: Kind): { stow: Stow; mayRideOutside?: true } {
  if (place === 'pocket') return { stow: 'outside-pocket' }
  if (place === 'outside') return { stow: 'strapped-on' }
  return place === 'main or outside' ? { stow: 'main-body', mayRideOutside: true } : { stow: 'main-body' }
}
