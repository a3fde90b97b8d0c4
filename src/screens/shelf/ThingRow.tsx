// One thing in the list: opened to be edited, or ticked while several are being chosen.

import { useMemo } from 'preact/hooks'
import { entryProps, Grip, type Mover } from '../../components/long-list'
import { Row } from '../../components/pieces'
import { duplicateThing, removeThings, type Thing } from '../../plan/shelf'
import { actions, newId } from '../../store'
import type { System } from '../../units'
import { ThingEditor } from './ThingEditor'
import { nameOf, ThingLines } from './thing-words'
import { choose } from './view'

interface ThingRowProps {
  thing: Thing
  /** Its place among the entries of the list; `of` how many where not all are drawn. */
  at: number
  of: number | undefined
  system: System
  uses: number
  isInTrip: boolean
  isOpen: boolean
  /** Whether it is ticked; null while nothing is being chosen. */
  isChosen: boolean | null
  /** Null where the order is not the shelf's own. */
  mover: Mover | null
  onOpen: (id: string | null) => void
}

/** Drawn again only when something of its own changes. */
export function ThingRow(props: ThingRowProps) {
  return useMemo(() => <DrawnRow {...props} />, Object.values(props))
}

function DrawnRow({ thing, at, of, isChosen, isOpen, mover, onOpen, ...told }: ThingRowProps) {
  const { id } = thing
  const name = nameOf(thing)
  const lines = <ThingLines thing={thing} {...told} />
  const entry = entryProps(id, at, of)
  if (isChosen !== null)
    return (
      <li class="row" {...entry}>
        <label class="toggle tick">
          <input type="checkbox" checked={isChosen} onChange={() => choose([id], !isChosen)} />
          <span>{lines}</span>
        </label>
      </li>
    )
  const step = (key: string) => mover && (() => mover.step({ key: id, name }, key))
  return (
    <Row
      id={id}
      open={isOpen}
      onToggle={() => onOpen(isOpen ? null : id)}
      summary={lines}
      grip={mover ? <Grip mover={mover} id={id} name={name} /> : null}
      entry={entry}
      actions={{
        name,
        moveUp: step('ArrowUp') ?? undefined,
        moveDown: step('ArrowDown') ?? undefined,
        duplicate: () =>
          actions.editShelf(`Duplicate ${name} on the shelf`, shelf =>
            duplicateThing(shelf, id, { newId, now: Date.now() }),
          ),
        remove: () => {
          actions.editShelf(`Delete ${name} from the shelf`, shelf => removeThings(shelf, [id]))
          onOpen(null)
        },
      }}
    >
      <ThingEditor thing={thing} isInTrip={told.isInTrip} />
    </Row>
  )
}
