// What was added of a table, the way back, and the rows that are still to be mended.

import { useEffect, useRef } from 'preact/hooks'
import { AddedWords } from '../../components/pieces'
import type { RowProblem, Target } from '../../files/csv'
import { actions, lastLabel } from '../../store'
import { Problems } from './Problems'

export interface AddedNote {
  label: string
  target: Target | 'packs'
  problems: readonly RowProblem[]
}

export function Added({ added, onUndone }: { added: AddedNote; onUndone: () => void }) {
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => said.current?.focus(), [added])
  const { label, target, problems } = added
  return (
    <>
      <p class="added" ref={said} tabIndex={-1} role="status">
        <AddedWords deed={added} what={label.replace('Add ', '')} to={target === 'trip' ? 'gear' : target} />{' '}
        {lastLabel.value === label ? (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              actions.undo()
              onUndone()
            }}
          >
            Undo
          </button>
        ) : null}
      </p>
      <Problems problems={problems} />
    </>
  )
}
