// One row of a table as it would come in: whether it is taken, and what it says.

import { useFormats } from '../../components/fields'
import type { ReadItem } from '../../files/csv'
import { isFood, NOT_EATEN } from '../../files/list'
import type { Kind } from '../../plan/kinds'

import { factsOf } from './row-words'

interface TableRowProps {
  row: ReadItem
  taken: boolean
  /** Whether it looks like a thing that is there. */
  isSame: boolean
  kind: Kind | null
  onTake: (take: boolean) => void
}

export function TableRow({ row, taken, isSame, kind, onTake }: TableRowProps) {
  const formats = useFormats()
  const { name, count = 1, use } = row.item
  const isUneaten = taken && use === undefined && kind?.use !== 'daily' && isFood(name ?? '')
  return (
    <li class="row table-row">
      <label class="toggle">
        <input type="checkbox" checked={taken} onChange={event => onTake(event.currentTarget.checked)} />
        <span>
          <bdi class="name">
            {count === 1 ? '' : `${count} × `}
            {name}
          </bdi>
          <bdi class="facts-line"> {factsOf(row, kind, formats).join(', ')}</bdi>
          {isSame ? <em> – like one that is there</em> : null}
          {row.isSum ? <em> – looks like the sum of the others</em> : null}
          {row.isPack ? <em> – your pack? Its mass belongs under Packs</em> : null}
          {row.doubts.map(doubt => (
            <em key={doubt}> – {doubt}</em>
          ))}
          {isUneaten ? <em> – {NOT_EATEN}</em> : null}
        </span>
      </label>
    </li>
  )
}
