// The rows of a table as they would come in, what could not be read, and the one tap that adds what is ticked.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { Choice, useFormats } from '../../components/fields'
import {
  addTable,
  type GearLayout,
  type Grid,
  looksSame,
  readingRows,
  readRows,
  shelveTable,
  type TableRead,
  type Target,
} from '../../files/csv'
import { beginInPortions } from '../../files/portions'
import { CAPS, type DraftItem } from '../../plan'

import { actions, newId, openTrip, shelf } from '../../store'
import { counted } from '../../units'
import type { AddedNote } from './Added'
import { Problems } from './Problems'
import { TableRow } from './TableRow'
import { isTaken, kindFinder, MATCHED_ROWS } from './taking'

interface TableRowsProps {
  grid: Grid
  layout: GearLayout
  target: Target
  onAdded: (note: AddedNote) => void
}

const SHOWN_ROWS = 10
const MORE_ROWS = 100

const SAME = [
  { value: 'skip', label: 'Leave them' },
  { value: 'add', label: 'Add them too' },
] as const

/** Up to so many rows are read at once: some tens of milliseconds. */
const READ_AT_ONCE = 1000

/** The rows as they are read by the layout; null until a long table is read, while the page answers. */
function useRead(grid: Grid, layout: GearLayout, containers: () => string[]): TableRead | null {
  const isShort = grid.rows.length <= READ_AT_ONCE
  const atOnce = useMemo(() => (isShort ? readRows(grid, layout, containers()) : null), [grid, layout])
  const [inTime, setInTime] = useState<{ read: TableRead; grid: Grid; layout: GearLayout } | null>(null)
  useEffect(() => {
    if (isShort) return
    return beginInPortions(readingRows(grid, layout, containers()), read => setInTime({ read, grid, layout }))
  }, [grid, layout])
  return atOnce ?? (inTime?.grid === grid && inTime.layout === layout ? inTime.read : null)
}

export function TableRows(props: TableRowsProps) {
  const { grid, layout, target } = props
  const wishes = useWishes()
  const read = useRead(grid, layout, () =>
    target === 'trip' ? containersIn(openTrip.value?.draft.gear ?? []) : [],
  )
  if (!read)
    return (
      <p class="hint loading" role="status">
        Reading {counted(grid.rows.length, 'row')}…
      </p>
    )
  return <ReadRows {...props} read={read} wishes={wishes} />
}

/** What the reader has ticked: it stays when the table is read another way. */
const useWishes = () =>
  [useState<Record<number, boolean>>({}), useState(false), useState<boolean | null>(null)] as const

interface ReadRowsProps extends TableRowsProps {
  read: TableRead
  wishes: ReturnType<typeof useWishes>
}

function ReadRows({ layout, target, onAdded, read, wishes }: ReadRowsProps) {
  const formats = useFormats()
  const [[ticks, setTicks], [addSame, setAddSame], [kindsAsked, setKindsAsked]] = wishes
  const [most, setMost] = useState(SHOWN_ROWS)
  const finder = useRef(kindFinder())

  const gear = openTrip.value?.draft.gear ?? []
  const known: readonly Pick<DraftItem, 'id' | 'name' | 'massKg'>[] =
    target === 'trip' ? gear : shelf.value.things.map(({ id, item }) => ({ ...item, id }))
  const same = useMemo(() => looksSame(read.items, known), [read, known.length])
  const taking = { ticks, same, addSame }
  const taken = read.items.filter(item => isTaken(item, taking))
  const packs = read.items.filter(item => item.isPack && !taken.includes(item)).slice(0, 5)
  const hasLitres = layout.columns.some(({ field }) => field === 'litres' || field === 'least')
  const mayMatch = read.items.length <= MATCHED_ROWS
  const withKinds = mayMatch && (kindsAsked ?? !hasLitres)
  const kindOf = withKinds ? finder.current : undefined
  const room = target === 'trip' ? CAPS.items - gear.length : Number.POSITIVE_INFINITY

  function add() {
    const label = `Add ${counted(taken.length, 'item')}`
    const left = new Map([...same].flatMap(([row, i]) => (known[i] ? [[row, known[i].id] as const] : [])))
    const adopted = { rows: taken, same: left, ...(kindOf && { kindOf }) }
    if (target === 'trip') actions.edit(label, draft => addTable(draft, adopted, newId))
    else actions.editShelf(label, before => shelveTable(before, adopted, { newId, now: Date.now() }))
    onAdded({ label, target, problems: read.problems })
  }

  if (read.items.length === 0 && read.problems.length === 0)
    return <p class="hint">There are no rows below the names of the columns.</p>
  const kg = taken.reduce((sum, { item }) => sum + (item.massKg ?? 0) * (item.count ?? 1), 0)
  const open = taken.filter(
    ({ item }) => !(item.litres ?? item.litresRange ?? kindOf?.(item) ?? item.stow === 'worn'),
  )
  return (
    <>
      <p role="status">
        {counted(taken.length, 'item')} to add to the {target === 'trip' ? 'gear' : 'shelf'},{' '}
        {formats.gear(kg)} together.
        {packs.length > 0
          ? ` Left out as your pack: ${packs.map(({ row }) => `row ${row}`).join(', ')}.`
          : ''}
        {read.problems.length > 0 ? ` ${counted(rowsOf(read.problems), 'row')} not understood.` : ''}
        {open.length > 0
          ? ` ${open.length} without litres: they count as taking no room until you give them some.`
          : ''}
      </p>
      {same.size > 0 ? (
        <Choice
          label={`${counted(same.size, 'row')} like what is there`}
          options={SAME}
          chosen={addSame ? 'add' : 'skip'}
          onChoose={choice => setAddSame(choice === 'add')}
        />
      ) : null}
      {mayMatch ? (
        <label class="toggle">
          <input
            type="checkbox"
            checked={withKinds}
            onChange={event => setKindsAsked(event.currentTarget.checked)}
          />
          <span>Where the table gives no litres, take those typical of its kind (not measured)</span>
        </label>
      ) : null}
      {taken.length > room ? (
        <p class="problem">The gear has room for {room} more items: leave some out.</p>
      ) : (
        <button type="button" class="primary" disabled={taken.length === 0} onClick={add}>
          Add {counted(taken.length, 'item')}
        </button>
      )}
      <Problems problems={read.problems} />
      <ul class="rows" aria-label="Rows as they would come in">
        {read.items.slice(0, most).map(row => (
          <TableRow
            key={row.row}
            row={row}
            taken={isTaken(row, taking)}
            isSame={same.has(row.row)}
            kind={kindOf?.(row.item) ?? null}
            onTake={take => setTicks({ ...ticks, [row.row]: take })}
          />
        ))}
      </ul>
      {read.items.length > most ? (
        <button type="button" class="quiet" onClick={() => setMost(most + MORE_ROWS)}>
          Show {Math.min(MORE_ROWS, read.items.length - most)} more of {read.items.length} rows
        </button>
      ) : null}
    </>
  )
}

const rowsOf = (problems: readonly { row: number }[]) => new Set(problems.map(({ row }) => row)).size

const containersIn = (gear: readonly DraftItem[]) =>
  gear.flatMap(({ holdsLitres, name }) => (holdsLitres !== undefined && name ? [name] : []))
