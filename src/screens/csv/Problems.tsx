// What of a table could not be read: row, column, the cell's text, and how to mend it.

import type { RowProblem } from '../../files/csv'
import { counted } from '../../units'

const SHOWN = 40

export function Problems({ problems }: { problems: readonly RowProblem[] }) {
  if (problems.length === 0) return null
  const rows = new Set(problems.map(({ row }) => row)).size
  return (
    <div class="left-out">
      <p class="name">{counted(rows, 'row')} left out, to be corrected in the table</p>
      <ul>
        {problems.slice(0, SHOWN).map(({ row, column, text, why }) => (
          <li key={`${row}/${column?.number}`}>
            Row {row}
            {column ? <>, {column.name ? <bdi>{column.name}</bdi> : `column ${column.number}`}</> : null},{' '}
            <q>
              <bdi>{text}</bdi>
            </q>
            : {why}
          </li>
        ))}
      </ul>
      {problems.length > SHOWN ? <p class="hint">And {problems.length - SHOWN} more.</p> : null}
    </div>
  )
}
