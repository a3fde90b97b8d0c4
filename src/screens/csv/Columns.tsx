// What each column of a table holds, a card each: its heading, a few of its cells, the field, the unit of bare numbers.

import { useId } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { amountIn, type Column, type Field, type Grid, type Layout, unitIn } from '../../files/csv'
import { type Unit, unitChoices } from '../../units'

/** What a column may hold. */
export interface Offered<F extends string> {
  fields: Readonly<Record<F, Field>>
  /** Most tables hold these; they come first. */
  often: readonly F[]
  also: readonly F[]
}

interface ColumnsProps<F extends string> {
  grid: Grid
  layout: Layout<F>
  offered: Offered<F>
  onColumns: (columns: Column<F>[]) => void
}

const LEFT_OUT = ''
const EXAMPLES = 3
const EXAMPLE_LENGTH = 24

export function Columns<F extends string>({ grid, layout, offered, onColumns }: ColumnsProps<F>) {
  const { columns } = layout
  const hasName = columns.some(({ field }) => field === 'name')
  const headings = columns.map((_, i) => headingOf(grid, layout, i))
  const filled = columns.map((_, i) => examplesOf(grid, layout, i))
  const shown = columns.flatMap((_, i) => (headings[i] || filled[i]!.length > 0 ? [i] : []))
  const change = (at: number, column: Column<F>) =>
    onColumns(
      columns.map((old, i) => {
        if (i === at) return column
        // A field is read from one column.
        return column.field && old.field === column.field ? { field: null, unit: null } : old
      }),
    )
  return (
    <details class="more" open={!hasName}>
      <summary>{mappingText(layout, shown, headings)}</summary>
      <ul class="rows columns">
        {shown.map(i => (
          <ColumnCard
            key={i}
            heading={headings[i] || `Column ${i + 1}`}
            examples={filled[i]!}
            column={columns[i]!}
            offered={offered}
            onColumn={column => change(i, column)}
          />
        ))}
      </ul>
    </details>
  )
}

interface ColumnCardProps<F extends string> {
  heading: string
  examples: string[]
  column: Column<F>
  offered: Offered<F>
  onColumn: (column: Column<F>) => void
}

function ColumnCard<F extends string>({
  heading,
  examples,
  column,
  offered: { fields, often, also },
  onColumn,
}: ColumnCardProps<F>) {
  const id = useId()
  const system = useSystem()
  const { field, unit } = column
  const amount = field && amountIn(fields[field])
  const units = amount ? unitChoices(amount.kind) : []
  const option = (name: F) => (
    <option key={name} value={name}>
      {fields[name].label}
    </option>
  )
  return (
    <li class="row column">
      <label for={id}>
        <bdi class="name">{heading}</bdi>
        <bdi class="facts-line">{examples.join(' · ')}</bdi>
      </label>
      <div class="column-as">
        <select
          id={id}
          value={field ?? LEFT_OUT}
          onChange={event => {
            const field = (event.currentTarget.value || null) as F | null
            onColumn({ field, unit: field && unitIn(fields[field], system) })
          }}
        >
          <option value={LEFT_OUT}>Leave out</option>
          <optgroup label="Often">{often.map(option)}</optgroup>
          <optgroup label="Also">{also.map(option)}</optgroup>
        </select>
        {units.length > 1 ? (
          <select
            aria-label={`Unit of bare numbers in ${heading}`}
            value={unit ?? ''}
            onChange={event => onColumn({ field, unit: event.currentTarget.value as Unit })}
          >
            {units.map(unit => (
              <option key={unit} value={unit}>
                {unit}
              </option>
            ))}
          </select>
        ) : null}
      </div>
    </li>
  )
}

type Headed = Pick<Layout<string>, 'headerRow'>

const headingOf = ({ rows }: Grid, { headerRow }: Headed, column: number): string =>
  headerRow === null ? '' : (rows[headerRow]?.[column]?.trim().slice(0, 80) ?? '')

/** The first few different cells of a column. */
function examplesOf({ rows }: Grid, { headerRow }: Headed, column: number): string[] {
  const found = new Set<string>()
  for (const row of rows.slice(headerRow === null ? 0 : headerRow + 1)) {
    const cell = row[column]?.trim()
    if (cell) found.add(cell.slice(0, EXAMPLE_LENGTH))
    if (found.size === EXAMPLES) break
  }
  return [...found]
}

/** "Columns used: Item, Weight (g); left out: Price" */
function mappingText(
  { columns }: Pick<Layout<string>, 'columns'>,
  shown: readonly number[],
  headings: readonly string[],
): string {
  const named = (i: number) => headings[i] || `column ${i + 1}`
  const used = shown.filter(i => columns[i]!.field !== null)
  const left = shown.filter(i => columns[i]!.field === null)
  const list = (which: number[]) =>
    which.slice(0, 6).map(named).join(', ') + (which.length > 6 ? ` and ${which.length - 6} more` : '')
  if (used.length === 0) return 'Say which column holds the names'
  return `Columns used: ${list(used)}${left.length > 0 ? `; left out: ${list(left)}` : ''}`
}
