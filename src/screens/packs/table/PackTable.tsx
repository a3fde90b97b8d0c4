// All packs as a table over the width of a desk: any column sorts, those that do stand first, and only the rows near the
// window are drawn. The arrow keys go from pack to pack.

import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Plan } from '../../../plan'
import type { Formats } from '../../../report'
import { columnsIn, inLineOrder, measureIn, type PackLine } from '../../../report/compare-packs'
import { library, shelf } from '../../../store'
import { order } from './order'
import { TableChoices } from './TableChoices'
import { TableHead } from './TableHead'
import { TableRow } from './TableRow'
import { useWindow } from './use-window'
import './table.css'

export interface PackTableProps {
  /** Those to show, in the order of the list. */
  lines: readonly PackLine[]
  plan: Plan
  formats: Formats
  /** The pack whose page is open. */
  chosen: string | null
  /** A page stands beside it: name, answer and the figure sorted by alone. */
  narrow?: boolean
  /** Apart from any trip there are no answers. */
  hasAnswers?: boolean
  onOpen: (packId: string) => void
}

export function PackTable(props: PackTableProps) {
  const { lines, formats, chosen, narrow = false, hasAnswers = true, onOpen } = props
  const box = useRef<HTMLDivElement>(null)
  const now = order.value
  const sorted = useMemo(() => inLineOrder(lines, now), [lines, now])
  const { columns, shown, ownName } = useColumns(narrow)
  const [stop, setStop] = useState<{ key: string; isAsked: boolean } | null>(null)
  const at = stop ? sorted.findIndex(({ key }) => key === stop.key) : -1
  const chosenAt = sorted.findIndex(({ packId }) => packId === chosen)
  const { drawn, afterPx, show, pageRows } = useWindow(box, sorted.length, at)
  // Where the keyboard enters: where it was, at the pack that is open, or at the first row there is.
  const enters =
    at >= 0 ? at : chosenAt >= 0 && drawn.some(({ index }) => index === chosenAt) ? chosenAt : drawn[0]?.index
  useLayoutEffect(() => {
    if (!stop?.isAsked || at < 0) return
    show(at)
    box.current?.querySelector<HTMLElement>(`[data-row="${at}"] th button`)?.focus({ preventScroll: true })
  }, [stop])
  const go = (index: number) => {
    const line = sorted[Math.max(0, Math.min(sorted.length - 1, index))]
    if (line) setStop({ key: line.key, isAsked: true })
  }
  const context = { ...props, columns: shown, hasAnswers, sorted: now.by }
  const width = 1 + Number(hasAnswers) + shown.length
  return (
    <section class="pack-table stack" aria-label="Packs as a table" data-figures="cited">
      {narrow ? null : <TableChoices {...{ columns, ownName, hasAnswers }} />}
      <div class="table-box" ref={box}>
        <table
          aria-rowcount={sorted.length + 1}
          class={narrow ? 'narrow' : undefined}
          onKeyDown={event => {
            const from = rowOf(event.target)
            const step = from === null ? undefined : STEPS[event.key]
            if (!step || event.altKey || event.ctrlKey || event.metaKey) return
            event.preventDefault()
            go(step(from!, { pageRows, last: sorted.length - 1 }))
          }}
          onFocusIn={event => {
            const index = rowOf(event.target)
            const line = index === null ? undefined : sorted[index]
            if (line && line.key !== stop?.key) setStop({ key: line.key, isAsked: false })
          }}
        >
          <TableHead columns={shown} ownName={ownName ?? ''} {...{ hasAnswers }} system={formats.system} />
          <tbody>
            {drawn.map(({ index, gapPx }) => {
              const line = sorted[index]!
              return [
                gapPx > 0 ? <Gap key={`before ${line.key}`} px={gapPx} width={width} /> : null,
                <TableRow
                  key={line.key}
                  {...context}
                  {...{ line, index, onOpen }}
                  isChosen={line.packId === chosen}
                  isStop={index === enters}
                />,
              ]
            })}
            {afterPx > 0 ? <Gap key="after" px={afterPx} width={width} /> : null}
          </tbody>
        </table>
      </div>
      <p class="hint">Open a pack to see how its figures are calculated.</p>
    </section>
  )
}

/** The row that something stands in; null outside of the rows. */
const rowOf = (target: EventTarget | null): number | null => {
  const row = (target as HTMLElement | null)?.closest<HTMLElement>('[data-row]')?.dataset.row
  return row === undefined ? null : Number(row)
}

const STEPS: Readonly<Record<string, (at: number, rows: { pageRows: number; last: number }) => number>> = {
  ArrowDown: at => at + 1,
  ArrowUp: at => at - 1,
  PageDown: (at, { pageRows }) => at + pageRows,
  PageUp: (at, { pageRows }) => at - pageRows,
  Home: () => 0,
  End: (_, { last }) => last,
}

const Gap = ({ px, width }: { px: number; width: number }) => (
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: the room of rows that are not drawn takes no focus
  <tr aria-hidden="true" class="gap" style={{ blockSize: `${px}px` }}>
    <td colSpan={width} />
  </tr>
)

/** The columns that were chosen, those of them that are shown, and what one's own figure is called; null: there is none. */
function useColumns(narrow: boolean) {
  const { packColumns } = library.value
  const { figures } = shelf.value
  const ownName = measureIn(figures ?? {}) ? figures?.measure?.name.trim() || 'Your figure' : null
  const { by } = order.value
  return useMemo(() => {
    const columns = columnsIn(packColumns).filter(name => name !== 'own' || ownName !== null)
    const only = by === 'name' || by === 'answer' ? [] : [by]
    return { columns, shown: narrow ? only : columns, ownName }
  }, [packColumns, ownName, narrow, by])
}
