// The packs seen at once: their chart, and at a desk under it their table, which then stands for the rows.

import { area, markArea, PackChart } from './chart'
import type { Lines } from './lines'
import type { PackList } from './pack-list'
import { PackTable } from './table'

interface ChartAndTableProps {
  list: PackList
  lines: Lines
  /** The pack whose page stands beside. */
  chosen: string | null
  isApart: boolean
  hasChart: boolean
  hasTable: boolean
  onOpen: (packId: string) => void
}

export function ChartAndTable(props: ChartAndTableProps) {
  const { list, lines, chosen, isApart, hasChart, hasTable, onOpen } = props
  const { settled } = list.judged
  if (!settled || !list.isSortable) return null
  const { plan, reckoning } = settled
  const shown = { formats: list.formats, chosen, onOpen, plan, hasAnswers: !isApart }
  return (
    <>
      {hasChart ? (
        <PackChart
          {...{ ...shown, reckoning, hasTable }}
          lines={lines.passed}
          area={area.value}
          onArea={markArea}
        />
      ) : null}
      {hasTable ? <PackTable {...shown} lines={lines.inArea} narrow={chosen !== null} /> : null}
    </>
  )
}
