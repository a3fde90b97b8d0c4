// A row of the table: an item, its facts as text, one of them as a field while it is edited.

import { useMemo } from 'preact/hooks'
import { readQuantity } from '../../../components/fields'
import { Grip, type Mover } from '../../../components/long-list'
import { type DraftItem, fieldPath } from '../../../plan'
import { type Cost, costText, formatsIn } from '../../../report'
import { capital, type System } from '../../../units'
import { HomeButton } from '../AtHome'
import { CellField, type Left } from './CellField'
import { type CellText, cellText, rowOf } from './cells'
import type { Column, CellField as FieldName } from './columns'
import { ROLES } from './roles'

/** The texts of an item that could not be read, by field. */
export type Unread = Readonly<Partial<Record<string, string>>>

export interface RowProps {
  item: DraftItem
  name: string
  /** Counted from 1, the head among them. */
  index: number
  columns: readonly Column[]
  system: System
  unread: Unread | undefined
  /** What it is carried in. */
  inside: string | undefined
  cost: Cost | undefined
  /** The column that Tab stops at; null: in another row. */
  stop: string | null
  /** What was typed on that cell, which is edited; null: nothing; undefined: it is not edited. */
  typed: string | null | undefined
  isOpen: boolean
  /** Null: rows stand in an order of their own, and cannot be moved. */
  mover: Mover | null
  onLeave: (how: Left) => void
  onOpen: (id: string) => void
}

/** Drawn again only when something of its own changes. */
export function TableRow(props: RowProps) {
  return useMemo(() => <DrawnRow {...props} />, Object.values(props))
}

function DrawnRow(props: RowProps) {
  const { item, name, index, columns, cost, stop, isOpen, mover, system, unread, onOpen } = props
  const { id } = item
  const problems = columns.flatMap(({ key }) => {
    const text = unread?.[key]
    const isEdited = stop === key && props.typed !== undefined
    const message = text === undefined || isEdited ? null : problemOf(key as FieldName, text, system)
    return message === null ? [] : [{ key, message }]
  })
  const classes = ['gear-row', item.atHome ? 'set-aside' : '', isOpen ? 'open' : '']
  return (
    <div {...ROLES.row(index)} class={classes.filter(Boolean).join(' ')} data-entry={id}>
      <div {...ROLES.cell}>{mover ? <Grip mover={mover} id={id} name={name} inGrid /> : null}</div>
      {columns.map(({ key, isFigure }) =>
        key === 'cost' ? (
          <div
            key={key}
            {...ROLES.cell}
            class="cell cost"
            data-cell={`${id}/cost`}
            tabIndex={stop === key ? 0 : -1}
          >
            {cost ? capital(costText(cost, formatsIn(system))) : ''}
          </div>
        ) : (
          <Cell
            {...props}
            key={key}
            field={key}
            isFigure={isFigure ?? false}
            isProblem={problems.some(problem => problem.key === key)}
          />
        ),
      )}
      <div {...ROLES.cell} data-cell={`${id}/home`}>
        <HomeButton items={[item]} name={name} inGrid={{ isStop: stop === 'home' }} />
      </div>
      <div {...ROLES.cell} data-cell={`${id}/open`}>
        <button
          type="button"
          class="quiet icon"
          aria-label={`Open ${name}`}
          aria-expanded={isOpen}
          title="All about it (o)"
          tabIndex={stop === 'open' ? 0 : -1}
          onClick={() => onOpen(id)}
        >
          …
        </button>
      </div>
      {problems.length > 0 ? (
        <div {...ROLES.cell} class="cell-problems">
          {problems.map(({ key, message }) => (
            <p key={key} id={`problem-${id}-${key}`} class="problem">
              {message}
            </p>
          ))}
        </div>
      ) : null}
    </div>
  )
}

interface CellProps extends RowProps {
  field: FieldName
  isFigure: boolean
  isProblem: boolean
}

function Cell({ field, isFigure, isProblem, ...row }: CellProps) {
  const { item, system, stop, typed, unread } = row
  const kept = unread?.[field]
  const { text, isUsual } = kept === undefined ? shown(row, field) : ({ text: kept } as CellText)
  const isStop = stop === field
  const classes = ['cell', isFigure ? 'numbers' : '', field === 'name' ? 'name' : '', isUsual ? 'usual' : '']
  return (
    <div
      {...(field === 'name' ? ROLES.name : ROLES.cell)}
      class={classes.filter(Boolean).join(' ')}
      data-cell={`${item.id}/${field}`}
      data-figures="typed"
      tabIndex={isStop ? 0 : -1}
      aria-invalid={isProblem ? 'true' : undefined}
      aria-describedby={isProblem ? `problem-${item.id}-${field}` : undefined}
    >
      <bdi>{text}</bdi>
      {isStop && typed !== undefined ? (
        <CellField
          key={system}
          item={item}
          field={field}
          path={fieldPath('gear', item.id, field)}
          typed={typed}
          onLeave={row.onLeave}
        />
      ) : null}
    </div>
  )
}

function shown({ item, name, inside, system }: RowProps, field: FieldName): CellText {
  if (field === 'name') return { text: name, isUsual: !item.name }
  const cell = cellText(item, field, system)
  return field === 'stow' && inside ? { text: `In ${inside}` } : cell
}

/** What is wrong with a text; null where it can be read now, as in other units. */
function problemOf(field: FieldName, text: string, system: System): string | null {
  const row = rowOf(field)
  if (row.as !== 'amount') return null
  const { kind, fine, label = '' } = row
  const reading = readQuantity(text, { kind, label, limit: row, fine, system })
  return 'message' in reading ? reading.message : null
}
