// The head of the table: a button on each column sorts by it.

import type { Column, ColumnKey } from './columns'
import { ROLES } from './roles'
import type { Sort } from './sorting'
import { HEAD } from './use-cursor'

interface HeadProps {
  columns: readonly Column[]
  sort: Sort | null
  /** The column that Tab stops at; null: in another row. */
  stop: string | null
  onSort: (key: ColumnKey) => void
}

export const Head = ({ columns, sort, stop, onSort }: HeadProps) => (
  <div {...ROLES.group} class="gear-head">
    <div {...ROLES.row(1)} class="gear-row">
      <div {...ROLES.head()}>
        <span class="unseen">Move</span>
      </div>
      {columns.map(({ key, head, isFigure }) => {
        const way = sort?.by === key ? sort.way : undefined
        return (
          <div
            key={key}
            {...ROLES.head(way)}
            class={isFigure ? 'numbers' : undefined}
            data-cell={`${HEAD}/${key}`}
          >
            <button
              type="button"
              title={
                way === undefined ? `Sort by ${head.toLowerCase()}` : 'Sort the other way, then in my order'
              }
              tabIndex={stop === key ? 0 : -1}
              onClick={() => onSort(key)}
            >
              {head}
              <span aria-hidden="true">{way === undefined ? '' : way === 'ascending' ? ' ▲' : ' ▼'}</span>
            </button>
          </div>
        )
      })}
      <div {...ROLES.head()}>
        <span class="unseen">At home</span>
      </div>
      <div {...ROLES.head()}>
        <span class="unseen">Open</span>
      </div>
    </div>
  </div>
)
