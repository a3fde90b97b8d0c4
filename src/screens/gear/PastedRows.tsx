// Lines of a pasted list: those to look at one by one, the clear ones in one line that opens.

import { useState } from 'preact/hooks'
import { counted } from '../../units'
import { PastedRow } from './PastedRow'
import { type Choices, choose, chosenOf, type PastedLine } from './pasted'

/** More are drawn only when they are asked for. */
export const SHOWN_ROWS = 60

interface RowsProps {
  rows: readonly PastedLine[]
  choices: Choices
  onChoices: (choices: Choices) => void
}

export function PastedRows({ rows, choices, onChoices }: RowsProps) {
  const [all, setAll] = useState(false)
  return (
    <>
      <ul class="rows">
        {rows.slice(0, all ? undefined : SHOWN_ROWS).map(row => (
          <PastedRow
            key={row.key}
            row={row}
            chosen={chosenOf(row, choices)}
            onChoose={change => onChoices(choose(choices, row, change))}
          />
        ))}
      </ul>
      {!all && rows.length > SHOWN_ROWS ? (
        <button type="button" class="quiet" onClick={() => setAll(true)}>
          Show all {rows.length} lines
        </button>
      ) : null}
    </>
  )
}

/** The lines that nothing is asked of, in one; drawn one by one only when they are asked for. */
export function ClearRows({ rows, choices, onChoices }: RowsProps) {
  const [open, setOpen] = useState(false)
  const groups = new Set(rows.flatMap(({ row }) => row.group ?? [])).size
  const said = [
    counted(rows.length, 'clear line'),
    groups > 0 && `in ${counted(groups, 'group')}`,
    ...(['worn', 'daily', 'nightly'] as const).map(what => {
      const n = rows.filter(({ row }) => (what === 'worn' ? row.worn : row.use === what)).length
      return n > 0 && `${n} ${WORDS[what]}`
    }),
  ]
  return (
    <details class="more" open={open} onToggle={event => setOpen(event.currentTarget.open)}>
      <summary>{said.filter(Boolean).join(', ')}</summary>
      {open ? <PastedRows rows={rows} choices={choices} onChoices={onChoices} /> : null}
    </details>
  )
}

const WORDS = { worn: 'worn', daily: 'a day', nightly: 'a night' } as const
