// The packs seen at once: their chart, and at a desk under it their table, which then stands for the rows.

import { useMemo } from 'preact/hooks'
import { isInArea, linesOf } from '../../report/compare-packs'
import { area, markArea, PackChart } from './chart'
import type { PackList } from './pack-list'
import { PackTable } from './table'

interface ChartAndTableProps {
  list: PackList
  /** The pack whose page stands beside. */
  chosen: string | null
  isApart: boolean
  hasChart: boolean
  hasTable: boolean
  onOpen: (packId: string) => void
}

export function ChartAndTable({ hasChart, hasTable, ...rest }: ChartAndTableProps) {
  return rest.list.isSortable && (hasChart || hasTable) ? <Seen {...{ hasChart, hasTable, ...rest }} /> : null
}

function Seen({ list, chosen, isApart, hasChart, hasTable, onOpen }: ChartAndTableProps) {
  const { packs, rows, judged, formats } = list
  const { settled, comparisons } = judged
  const { answer } = list.chosen
  const lines = useMemo(
    () => (settled ? linesOf(packs, { ...settled, comparisons }) : []),
    [packs, settled, comparisons],
  )
  const passed = useMemo(() => {
    const shown = new Set(rows.map(({ id }) => id))
    return lines.filter(line => shown.has(line.packId) && (answer === null || line.answer === answer))
  }, [lines, list.entries, answer])
  const within = area.value
  const inArea = useMemo(
    () => (within ? passed.filter(line => isInArea(line, within)) : passed),
    [passed, within],
  )
  if (!settled) return null
  const shown = { formats, chosen, onOpen, plan: settled.plan, reckoning: settled.reckoning }
  return (
    <>
      {hasChart ? (
        <PackChart {...shown} lines={passed} hasTable={hasTable} area={within} onArea={markArea} />
      ) : null}
      {hasTable ? (
        <PackTable {...shown} lines={inArea} narrow={chosen !== null} hasAnswers={!isApart} />
      ) : null}
    </>
  )
}
