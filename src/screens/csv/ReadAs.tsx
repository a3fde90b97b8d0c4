// How a table is read: encoding, separator, names of columns, decimal mark, and what each column holds. All of it is
// guessed, said in a line, and can be changed below it.

import { SelectOne } from '../../components/fields'
import { ENCODINGS, isFilled, type Layout, SEPARATORS } from '../../files/csv'
import { Columns, type Offered } from './Columns'
import type { Opened } from './opened'
import type { Asked } from './source'

interface ReadAsProps<F extends string> {
  opened: Opened<F>
  offered: Offered<F>
  /** Whether a row with only a name is a group's heading, where a table may have such. */
  headings?: boolean
  asked: Asked<F>
  onAsked: (asked: Asked<F>) => void
}

const NO_ROW = 'none'
const FIRST_ROWS = 10

export function ReadAs<F extends string>({ opened, offered, headings, asked, onAsked }: ReadAsProps<F>) {
  const { encoding, grid, layout } = opened
  // What parts the cells decides how many columns there are: what was said of them is void.
  const { columns: _columns, headerRow: _headerRow, ...kept } = asked
  return (
    <>
      <div role="status">
        {grid.ok ? null : (
          <>
            <p class="problem">{grid.message}</p>
            <p class="hint">Nothing here has changed.</p>
          </>
        )}
      </div>
      <details class="more" open={!grid.ok}>
        <summary>{grid.ok && layout ? readAsText(opened, layout) : 'How it is read'}</summary>
        <div class="fields">
          {encoding ? (
            <SelectOne
              label="Encoding"
              options={ENCODINGS}
              chosen={encoding}
              onChoose={encoding => onAsked({ ...kept, encoding })}
            />
          ) : null}
          <SelectOne
            label="Column separator"
            options={SEPARATORS}
            chosen={grid.ok ? grid.separator : (asked.separator ?? ',')}
            onChoose={separator => onAsked({ ...kept, separator })}
          />
          {grid.ok && layout ? (
            <>
              <SelectOne
                label="The columns are named in"
                options={headerRows(grid.rows)}
                chosen={layout.headerRow === null ? NO_ROW : String(layout.headerRow)}
                onChoose={row => onAsked({ ...kept, headerRow: row === NO_ROW ? null : Number(row) })}
              />
              <SelectOne
                label="Decimal mark"
                options={[
                  { value: '.', label: 'Point (1.5)' },
                  { value: ',', label: 'Comma (1,5)' },
                ]}
                chosen={layout.decimal}
                onChoose={decimal => onAsked({ ...asked, decimal })}
              />
              {headings === undefined ? null : (
                <SelectOne
                  label="A row with only a name is"
                  options={[
                    { value: 'item', label: 'An item' },
                    { value: 'heading', label: 'A group’s heading' },
                  ]}
                  chosen={headings ? 'heading' : 'item'}
                  onChoose={what => onAsked({ ...asked, headings: what === 'heading' })}
                />
              )}
            </>
          ) : null}
        </div>
      </details>
      {grid.ok && layout ? (
        <Columns
          grid={grid}
          layout={layout}
          offered={offered}
          onColumns={columns => onAsked({ ...asked, columns })}
        />
      ) : null}
    </>
  )
}

function readAsText(
  { encoding, grid }: Pick<Opened<string>, 'encoding' | 'grid'>,
  { headerRow, decimal }: Omit<Layout<string>, 'columns'>,
): string {
  const parted = SEPARATORS.find(({ value }) => grid.ok && value === grid.separator)!.many
  return [
    encoding ? `Read as ${ENCODINGS.find(({ value }) => value === encoding)!.label}` : 'Read as pasted',
    `separated by ${parted}`,
    headerRow === null ? 'columns without names' : `columns named in row ${headerRow + 1}`,
    `decimal ${decimal === ',' ? 'commas' : 'points'}`,
  ].join(', ')
}

/** The first rows that hold something, any of which may name the columns. */
function headerRows(rows: readonly string[][]) {
  const first = rows
    .map((row, i) => ({ row, i }))
    .filter(({ row }) => isFilled(row))
    .slice(0, FIRST_ROWS)
  return [
    { value: NO_ROW, label: 'No row' },
    ...first.map(({ row, i }) => ({ value: String(i), label: `Row ${i + 1}: ${startOf(row)}` })),
  ]
}

const startOf = (row: readonly string[]) =>
  row
    .filter(cell => cell.trim())
    .join(', ')
    .slice(0, 30)
