// The set-ups on show as lines: what the chart draws, and what is left in the table while an area of the chart is marked.

import { useMemo } from 'preact/hooks'
import { isInArea, linesOf, type PackLine } from '../../report/compare-packs'
import { area } from './chart'
import type { PackList } from './pack-list'

export interface Lines {
  /** All that the filter leaves. */
  passed: readonly PackLine[]
  inArea: readonly PackLine[]
}

const NONE: readonly PackLine[] = []

/** `isOn`: chart or table is seen; else none is made. */
export function useLines(
  { packs, judged, shows }: PackList,
  { isApart, isOn }: { isApart: boolean; isOn: boolean },
): Lines {
  const { settled, comparisons, packs: judgedPacks } = judged
  const lines = useMemo(() => {
    if (!settled || !isOn) return NONE
    const all = linesOf(packs, { ...settled, comparisons, judged: judgedPacks })
    // Apart from a trip there is nothing to be enough for.
    return isApart ? all.map(line => ({ ...line, answer: null })) : all
  }, [packs, judged, isApart, isOn])
  const passed = useMemo(() => lines.filter(shows), [lines, shows])
  const within = area.value
  const inArea = useMemo(
    () => (within ? passed.filter(line => isInArea(line, within)) : passed),
    [passed, within],
  )
  return { passed, inArea }
}
