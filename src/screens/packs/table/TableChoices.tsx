// What the table shows: its columns, and whether answers are kept together.

import { WhenOpen } from '../../../components/pieces'
import { FIGURE_NAMES, type FigureName, PACK_FIGURES } from '../../../report/compare-packs'
import { actions } from '../../../store'
import { mixAnswers, order } from './order'

interface ChoicesProps {
  columns: readonly FigureName[]
  /** There is a figure of one's own, and what it is called. */
  ownName: string | null
  hasAnswers: boolean
}

export function TableChoices({ columns, ownName, hasAnswers }: ChoicesProps) {
  const offered = FIGURE_NAMES.filter(name => name !== 'own' || ownName !== null)
  const { isMixed } = order.value
  return (
    <div class="cluster table-choices">
      <WhenOpen class="more" summary={`Columns: ${columns.length}`}>
        {() => (
          <fieldset class="column-choices">
            <legend class="unseen">Columns</legend>
            {offered.map(name => (
              <label key={name} class="toggle">
                <input
                  type="checkbox"
                  checked={columns.includes(name)}
                  onChange={({ currentTarget: { checked } }) =>
                    actions.setPackColumns(
                      FIGURE_NAMES.filter(each => (each === name ? checked : columns.includes(each))),
                    )
                  }
                />
                <span>{name === 'own' ? ownName : PACK_FIGURES[name].name}</span>
              </label>
            ))}
          </fieldset>
        )}
      </WhenOpen>
      {hasAnswers ? (
        <label class="toggle">
          <input
            type="checkbox"
            checked={isMixed}
            onChange={event => mixAnswers(event.currentTarget.checked)}
          />
          <span>Mix answers when sorting</span>
        </label>
      ) : null}
    </div>
  )
}
