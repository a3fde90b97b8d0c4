// The gear at a desk: a dense table, edited cell by cell with the keyboard or the mouse.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { useSystem } from '../../../components/fields'
import { type Entry, LongList, type Mover, MoveWords } from '../../../components/long-list'
import type { DraftItem, Typed } from '../../../plan'
import { pathParts, removeItem } from '../../../plan'
import { actions, openTrip } from '../../../store'
import { HomeButton, toggleHome } from '../AtHome'
import { addBelow } from '../item-edits'
import { gearOrder } from '../order'
import type { Costs } from '../use-costs'
import { cellText } from './cells'
import { type CellField, columnsFor, widthsOf } from './columns'
import { Head } from './Head'
import { Keys } from './Keys'
import { type At, itemBeside, type Sheet } from './moves'
import { afterPress, keptOrder, type Sort, sortedBy } from './sorting'
import { TableRow, type Unread } from './TableRow'
import './table.css'
import { ROLES } from './roles'
import { type Doing, HEAD, useCursor } from './use-cursor'

export interface TableProps {
  gear: readonly DraftItem[]
  /** In the order of the list, with its headings. */
  entries: readonly Entry[]
  groups: ReadonlyMap<string, DraftItem[]>
  costs: Costs | null
  widthRem: number
  opened: string | null
  /** Null: closes what is open. */
  onOpen: (id: string | null) => void
  mover: Mover
}

const BY_ROOM: Sort = { by: 'cost', way: 'descending' }

/** What begins an edit when it is typed on a cell. */
const STARTS = { figure: /[\d.,+\-−]/u, word: /\S/u, choice: /(?!)/u }

export function GearTable(props: TableProps) {
  const { gear, groups, costs, widthRem, opened, onOpen, mover } = props
  const system = useSystem()
  const [chosen, setSort] = useState<Sort | null>(null)
  // Asking what takes the room, or for the own order again, is a choice of order too.
  useEffect(() => setSort(null), [gearOrder.value])
  const sort = chosen && (chosen.by !== 'cost' || costs) ? chosen : costs ? BY_ROOM : null
  const within = useState(false)
  const entries = useEntries(props, sort, within[0])
  const columns = useMemo(() => columnsFor(widthRem, costs !== null), [widthRem, costs !== null])
  const items = useMemo(() => new Map(gear.map((item, index) => [item.id, { item, index }])), [gear])
  const unread = useUnread(openTrip.value?.typed)
  const sheet = useMemo((): Sheet => {
    const headings = new Set(entries.flatMap(({ key, heading }) => (heading === undefined ? [] : key)))
    const keys = entries.map(({ key }) => key)
    return {
      rows: [HEAD, ...keys],
      items: keys.filter(key => !headings.has(key)),
      columns: [...columns.map(({ key }) => key), 'home', 'open'],
      has: ({ row, column }) =>
        row === HEAD ? column !== 'home' && column !== 'open' : !headings.has(row) || column === 'home',
    }
  }, [entries, columns])
  const nameOf = (id: string) => items.get(id)?.item.name || `Item ${(items.get(id)?.index ?? 0) + 1}`

  const toggle = (id: string) => onOpen(opened === id ? null : id)

  /** The item added last: the next one comes below it, though the cursor has gone on to the row after it. */
  const added = useRef('')
  const doing: Doing = {
    edits: ({ row, column }: At) => {
      const item = items.get(row)?.item
      const at = columns.find(({ key }) => key === column)
      if (!item || !at || column === 'cost' || cellText(item, column as CellField, system).isLocked)
        return null
      return at.isFigure
        ? STARTS.figure
        : column === 'name' || column === 'group'
          ? STARTS.word
          : STARTS.choice
    },
    keys: {
      n: ({ row }) =>
        add(items.get(itemBeside(sheet, row, -1) === added.current ? added.current : row)?.item),
      h: ({ row }) => toggleHome({ items: [items.get(row)!.item], name: nameOf(row) }),
      o: ({ row }) => toggle(row),
      Delete: at => {
        const { row } = at
        cursor.pass(at)
        actions.edit(`Delete item ${nameOf(row)}`, draft => removeItem(draft, row))
      },
    },
    onStep: () => {
      added.current = ''
    },
    onMove: (row, key) => {
      if (!sort) mover.step({ key: row, name: nameOf(row) }, key)
    },
  }
  const cursor = useCursor(sheet, doing, within)
  function add(above?: DraftItem) {
    added.current = addBelow(gear, above)
    cursor.go({ row: added.current, column: 'name', typed: null })
  }
  const hand = useStable({ onLeave: cursor.leave, onOpen: toggle })
  const { at } = cursor
  return (
    <div class="gear-table" style={{ '--columns': widthsOf(columns) }}>
      <MoveWords mover={mover} />
      <div ref={cursor.grid} {...ROLES.grid('Gear', entries.length + 1)} {...cursor.on}>
        <Head
          columns={columns}
          sort={sort}
          stop={at.row === HEAD ? at.column : null}
          onSort={key => setSort(afterPress(sort, key))}
        />
        <LongList
          entries={entries}
          open={at.row}
          mover={mover}
          inGrid
          class="gear-rows"
          draw={index => {
            const { key, heading } = entries[index]!
            if (heading !== undefined)
              return (
                <div key={key} {...ROLES.row(index + 2)} class="group" data-entry={key}>
                  <div {...ROLES.name}>
                    <h3>{heading || 'Other'}</h3>
                  </div>
                  <div {...ROLES.cell} data-cell={`${key}/home`}>
                    <HomeButton
                      items={groups.get(key) ?? []}
                      name={heading || 'Other'}
                      inGrid={{ isStop: at.row === key }}
                    />
                  </div>
                </div>
              )
            const { item } = items.get(key)!
            const isHere = at.row === key
            return (
              <TableRow
                key={key}
                item={item}
                name={nameOf(key)}
                index={index + 2}
                columns={columns}
                system={system}
                unread={unread.get(key)}
                inside={item.inside === undefined ? undefined : items.get(item.inside)?.item.name}
                cost={costs?.get(key)}
                stop={isHere ? at.column : null}
                typed={isHere ? at.typed : undefined}
                isOpen={opened === key}
                mover={sort ? null : mover}
                {...hand}
              />
            )
          }}
        />
      </div>
      <button type="button" class="add-row" title="Key in the table: n" onClick={() => add()}>
        Add an item
      </button>
      <Keys />
    </div>
  )
}

/** What the table shows, in its order. While the cursor is in a sorted table its rows keep their places. */
function useEntries({ gear, entries, costs }: TableProps, sort: Sort | null, isHeld: boolean) {
  const kept = useRef<{ sort: Sort | null; entries: readonly Entry[] }>({ sort: null, entries })
  const sorted = useMemo(
    (): readonly Entry[] => (sort ? sortedBy(gear, sort, costs).map(({ id }) => ({ key: id })) : entries),
    [gear, entries, sort, costs],
  )
  const stays = sort !== null && isHeld && kept.current.sort === sort
  const shown = useMemo(() => (stays ? keptOrder(kept.current.entries, sorted) : sorted), [sorted, stays])
  kept.current = { sort, entries: shown }
  return shown
}

/** The texts that could not be read, by item and field. */
function useUnread(typed: Typed | undefined): ReadonlyMap<string, Unread> {
  return useMemo(() => {
    const texts = new Map<string, Record<string, string>>()
    for (const [path, text] of Object.entries(typed ?? {})) {
      const [area, id = '', field = '', ...deeper] = pathParts(path)
      if (area !== 'gear' || deeper.length > 0) continue
      texts.set(id, { ...texts.get(id), [field]: text })
    }
    return texts
  }, [typed])
}

/** The same functions at each drawing, which do what those of the last one do. */
function useStable<T extends Record<string, (...args: never[]) => void>>(now: T): T {
  const latest = useRef(now)
  latest.current = now
  return useMemo(() => {
    const through = Object.keys(now).map(name => [name, (...args: never[]) => latest.current[name]!(...args)])
    return Object.fromEntries(through) as T
  }, [])
}
