// The heads of the columns: each sorts, and once more the other way round.

import { type FigureName, headText, type LineOrder, PACK_FIGURES } from '../../../report/compare-packs'
import type { System } from '../../../units'
import { order, sortBy } from './order'

interface HeadProps {
  columns: readonly FigureName[]
  hasAnswers: boolean
  /** What the hiker calls their own figure. */
  ownName: string
  system: System
}

export function TableHead({ columns, hasAnswers, ownName, system }: HeadProps) {
  return (
    <thead>
      <tr aria-rowindex={1}>
        <Head by="name" text="Pack" />
        {hasAnswers ? <Head by="answer" text="For this trip" /> : null}
        {columns.map(name => (
          <Head
            key={name}
            by={name}
            text={name === 'own' ? ownName : headText(name, system)}
            of={PACK_FIGURES[name].headOf}
          />
        ))}
      </tr>
    </thead>
  )
}

function Head({ by, text, of }: { by: LineOrder['by']; text: string; of?: string | undefined }) {
  const { by: now, isDown } = order.value
  const sort = now === by ? (isDown ? 'descending' : 'ascending') : undefined
  const isFigure = by !== 'name' && by !== 'answer'
  return (
    <th scope="col" aria-sort={sort} class={isFigure ? 'number' : undefined}>
      <button type="button" onClick={() => sortBy(by)} title={isFigure ? PACK_FIGURES[by].name : undefined}>
        {text}
        {of ? <span class="unseen">, {of}</span> : null}
        <span class="way" aria-hidden="true">
          {sort ? (isDown ? '▼' : '▲') : ''}
        </span>
      </button>
    </th>
  )
}
