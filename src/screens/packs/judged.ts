// The packs of the open trip, judged.

import { useMemo } from 'preact/hooks'
import type { Plan } from '../../plan'
import type { Reckoning } from '../../reckon'
import { type Comparison, comparisonOf } from '../../report/compare-packs'
import { reckoned } from '../../store'

export interface Judgement {
  plan: Plan
  packIds: string[]
  reckoning: Reckoning
}

/** What the open trip's packs are, and how they compare; null while it is not reckoned. */
export function useJudged(): { settled: Judgement | null; comparisons: Comparison[] } {
  const open = reckoned.value
  return useMemo(() => {
    const none: Comparison[] = []
    if (!open?.reckoned.ok) return { settled: null, comparisons: none }
    const { plan, packIds } = open
    const { reckoning } = open.reckoned
    return { settled: { plan, packIds, reckoning }, comparisons: comparisonOf(plan, reckoning) }
  }, [open])
}
