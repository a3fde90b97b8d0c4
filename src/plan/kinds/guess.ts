// What an item may be where the reader has not said: from its name, and from its mass where it has one.

import type { DraftItem } from '../draft'
import { type Known, litresOfKind } from './apply'
import { suggestKinds } from './match'
import type { Kind } from './table'

type Named = Known & Pick<DraftItem, 'name' | 'use'>

/** The kind that an item surely is, as far as its figures go; null where its name may mean several or none. */
export function kindOf({ name = '', massKg, use }: Named): Kind | null {
  const best = suggestKinds({ name, massKg, use })[0]
  return best?.sure ? best.kind : null
}

/** How much one of an item may take and weigh at most. */
export interface HighEnd {
  /** L; for its mass, where that is known and the kind is soft. */
  litres: number
  /** kg; what the heaviest of the kind usually weighs. */
  massKg: number
}

/**
 * The high end of the kind that the name means, each piece; of the largest of them where it may mean several, as "sleeping
 * bag" does. null where it means none. For the careful side, where nothing is known of an item but its name.
 */
export function highEndOf(item: Named): HighEnd | null {
  const { name = '', massKg, use, count = 1 } = item
  const likely = suggestKinds({ name, massKg, use }).filter(({ likely }) => likely)
  if (likely.length === 0) return null
  const pieces = (kind: Kind) => (massKg === undefined && count > 1 ? (kind.pieces ?? 1) : 1)
  return {
    litres: Math.max(...likely.map(({ kind }) => litresOfKind(kind, item).high)),
    massKg: Math.max(...likely.map(({ kind }) => kind.massHighG / 1000 / pieces(kind))),
  }
}

/** The typical litres of one of an item, L, to be offered; null where its name may mean several kinds or none. */
export function typicalLitresOf(item: Named): number | null {
  const kind = kindOf(item)
  return kind && litresOfKind(kind, item).typical
}
