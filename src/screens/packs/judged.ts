// The packs judged, for the open trip or apart from any.

import { useMemo } from 'preact/hooks'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { type Comparison, comparisonOf, measureIn } from '../../report/compare-packs'
import { reckoned, reckonedApart, shelf } from '../../store'

export interface Judgement {
  plan: Plan
  packIds: string[]
  reckoning: Reckoning
}

export interface Judged {
  /** Null while nothing is reckoned. */
  settled: Judgement | null
  comparisons: Comparison[]
  /** The trip's food does not settle. */
  isRefused: boolean
}

/** What the packs are for the open trip, or apart from any, and how they compare. */
export function useJudged(isApart: boolean): Judged {
  const open = isApart ? reckonedApart.value : reckoned.value
  const { figures } = shelf.value
  return useMemo(() => {
    const none: Comparison[] = []
    if (!open?.reckoned.ok) return { settled: null, comparisons: none, isRefused: open !== null }
    const { plan, packIds } = open
    const { reckoning } = open.reckoned
    return {
      settled: { plan, packIds, reckoning },
      comparisons: comparisonOf(plan, reckoning, figures ? measureIn(figures) : null),
      isRefused: false,
    }
  }, [open, figures])
}
