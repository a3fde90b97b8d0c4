// One row of the table: its name opens the pack, its cells are what was asked for.

import { useComputed } from '@preact/signals'
import type { Plan } from '../../../plan'
import { ANSWERS, type Formats, missingOf } from '../../../report'
import { type FigureName, figureText, PACK_FIGURES, type PackLine } from '../../../report/compare-packs'
import { light, lit } from '../chart'

export interface RowContext {
  columns: readonly FigureName[]
  hasAnswers: boolean
  /** The column sorted by. */
  sorted: string
  plan: Plan
  formats: Formats
}

interface RowProps extends RowContext {
  line: PackLine
  index: number
  isChosen: boolean
  /** It is where the keyboard enters the rows. */
  isStop: boolean
  onOpen: (packId: string) => void
}

export function TableRow({ line, index, isChosen, isStop, onOpen, ...context }: RowProps) {
  const isLit = useComputed(() => lit.value === line.key).value
  const { name, answer, aside, isStarred } = line
  const classes = ['pack-line', isLit ? 'lit' : '', answer === 'does-not' || aside !== null ? 'faint' : '']
  return (
    <tr
      data-row={index}
      aria-rowindex={index + 2}
      class={classes.filter(Boolean).join(' ')}
      aria-current={isChosen ? 'true' : undefined}
      onPointerEnter={() => light(line.key)}
      onClick={() => onOpen(line.packId)}
    >
      <th scope="row">
        <button type="button" tabIndex={isStop ? 0 : -1} title={name} onFocus={() => light(line.key)}>
          <span class="answer-mark" aria-hidden="true">
            {answer && context.hasAnswers ? ANSWERS[answer].mark : ''}
          </span>
          <Name
            class="line-name"
            isAside={aside !== null}
            text={line.setupName ? name.slice(0, -line.setupName.length) : name}
          />
          {line.setupName ? <Name isAside={aside !== null} text={line.setupName} /> : null}
          {isStarred ? (
            <>
              <span aria-hidden="true"> ★</span>
              <span class="unseen">, starred</span>
            </>
          ) : null}
        </button>
      </th>
      {context.hasAnswers ? <AnswerCell line={line} {...context} /> : null}
      {context.columns.map(figure => (
        <td
          key={figure}
          class={figure === context.sorted ? 'number sorted' : 'number'}
          data-figures={PACK_FIGURES[figure].isTyped ? 'typed' : undefined}
        >
          {cellText(line, figure, context)}
        </td>
      ))}
    </tr>
  )
}

function Name({ isAside, text, class: className }: { isAside: boolean; text: string; class?: string }) {
  return isAside ? (
    <s class={className}>
      <bdi>{text}</bdi>
    </s>
  ) : (
    <bdi class={className}>{text}</bdi>
  )
}

function cellText(line: PackLine, figure: FigureName, { plan, formats }: RowContext): string {
  const { atMost, atLeast } = PACK_FIGURES[figure]
  const lacks = (of: typeof atMost) => value !== null && of !== undefined && missingOf(plan)[of].length > 0
  const value = line.figures[figure] ?? null
  const text = figureText(figure, value, { formats, currency: line.currency, isBare: true })
  return `${lacks(atMost) ? '≤ ' : lacks(atLeast) ? '≥ ' : ''}${text}`
}

function AnswerCell({ line: { answer, aside, short }, formats }: RowContext & { line: PackLine }) {
  const plain = answer ? ANSWERS[answer].words.toLowerCase() : 'not judged yet'
  const words = aside ? `“${aside}”` : short(formats) || plain
  return (
    <td class="reason" title={words}>
      {answer === null || words === plain ? null : <span class="unseen">{ANSWERS[answer].words}: </span>}
      {words}
    </td>
  )
}
