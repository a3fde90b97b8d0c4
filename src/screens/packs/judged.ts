// The packs judged, for the open trip or apart from any.

import type { Plan } from '../../plan'
import type { OwnFigures } from '../../plan/shelf'
import type { Reckoning } from '../../reckon'
import {
  type Comparison,
  comparisonOf,
  type JudgedPack,
  judgedPacks,
  measureIn,
} from '../../report/compare-packs'
import { apart, edited, type OpenReckoned, reckoned, reckonedApart, shelf } from '../../store'

export interface Judgement {
  plan: Plan
  packIds: string[]
  reckoning: Reckoning
}

export interface Judged {
  /** Null while nothing is reckoned. */
  settled: Judgement | null
  comparisons: Comparison[]
  /** By the ids of the packs. */
  packs: ReadonlyMap<string, JudgedPack>
  /** The trip's food does not settle. */
  isRefused: boolean
}

const NONE: Pick<Judged, 'settled' | 'comparisons' | 'packs'> = {
  settled: null,
  comparisons: [],
  packs: new Map(),
}

// Kept with what it is made of, so that coming back to the packs costs nothing.
const KNOWN = new WeakMap<OpenReckoned, { figures: OwnFigures | undefined; judged: Judged }>()

/** What the packs are for the open trip, or apart from any, and how they compare. */
export function useJudged(isApart: boolean): Judged {
  const open = isApart ? reckonedApart.value : reckoned.value
  const { figures } = shelf.value
  if (!open?.reckoned.ok) return { ...NONE, isRefused: open !== null }
  const known = KNOWN.get(open)
  if (known && known.figures === figures) return known.judged
  const { plan, packIds } = open
  const { reckoning } = open.reckoned
  const comparisons = comparisonOf(plan, reckoning, figures ? measureIn(figures) : null)
  const settled = { plan, packIds, reckoning }
  const drafts = (isApart ? apart : edited).value.draft.packs
  const packs = judgedPacks(drafts, { ...settled, comparisons })
  const judged = { settled, comparisons, packs, isRefused: false }
  KNOWN.set(open, { figures, judged })
  return judged
}
