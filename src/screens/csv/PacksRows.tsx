// The packs of a table as they would come in, what they would change, what could not be read, and the tap that does it.

import { useMemo, useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import {
  type ChangedPack,
  compareWithPacks,
  type Grid,
  type PackChange,
  type PackFacts,
  type PackLayout,
  plainLitresHeading,
  readPackRows,
  reckonedHeadings,
  takePacks,
  unitlessMasses,
} from '../../files/csv'
import { CAPS, fieldWord } from '../../plan'
import { type Formats, formatsIn, valueText } from '../../report'
import { priceText } from '../../report/compare-packs'
import { actions, edited, newId } from '../../store'
import { capital, counted, type System } from '../../units'
import type { AddedNote } from './Added'
import { Problems } from './Problems'

interface PacksRowsProps {
  grid: Grid
  layout: PackLayout
  onAdded: (note: AddedNote) => void
}

const SHOWN = 10
const MORE = 100

/** As many as the most packs could have, and few enough to be read at once. */
const MOST_ROWS = 4 * CAPS.packs

export function PacksRows(props: PacksRowsProps) {
  const { length } = props.grid.rows
  return length > MOST_ROWS ? (
    <p class="problem">
      It has {counted(length, 'row')}, and at most {counted(MOST_ROWS, 'row')} of packs are read: leave some
      out of the table.
    </p>
  ) : (
    <ReadPacks {...props} />
  )
}

function ReadPacks({ grid, layout, onAdded }: PacksRowsProps) {
  const system = useSystem()
  const formats = formatsIn(system)
  const known = edited.value.draft.packs
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set())
  const [most, setMost] = useState(SHOWN)
  const read = useMemo(() => readPackRows(grid, layout), [grid, layout])
  const compared = useMemo(() => compareWithPacks(known, read.packs, newId), [read, known])
  const isTaken = ({ rows: [first] }: { rows: number[] }) => !left.has(first!)
  const added = compared.added.filter(isTaken)
  const changed = compared.changed.filter(isTaken)
  const entries = [
    ...compared.changed.map(each => ({ ...each, isNew: false as const })),
    ...compared.added.map(each => ({ ...each, isNew: true as const })),
  ]
  const room = CAPS.packs - known.length
  const words = [
    added.length > 0 ? `add ${counted(added.length, 'pack')}` : '',
    changed.length > 0 ? `update ${counted(changed.length, 'pack')}` : '',
  ].filter(Boolean)
  const label = capital(words.join(', '))

  function add() {
    actions.edit(label, draft => takePacks(draft, { added, changed }, newId))
    onAdded({ label, target: 'packs', problems: read.problems })
  }

  if (read.packs.length === 0 && read.problems.length === 0)
    return <p class="hint">There are no rows below the names of the columns.</p>
  return (
    <>
      <p role="status">{summaryOf(compared, new Set(read.problems.map(({ row }) => row)).size)}</p>
      <Notes grid={grid} layout={layout} doubts={read.doubts} />
      {added.length > room ? (
        <p class="problem">There is room for {room} more packs: leave some out.</p>
      ) : words.length > 0 ? (
        <button type="button" class="primary" onClick={add}>
          {label}
        </button>
      ) : null}
      <Problems problems={read.problems} />
      <ul class="rows" aria-label="Packs as they would come in">
        {entries.slice(0, most).map(entry => (
          <li class="row table-row" key={entry.rows[0]}>
            <label class="toggle">
              <input
                type="checkbox"
                checked={isTaken(entry)}
                onChange={event => setLeft(without(left, entry.rows[0]!, event.currentTarget.checked))}
              />
              <span>
                <bdi class="name">{entry.pack.name}</bdi>
                <bdi class="facts-line"> {entry.isNew ? factsOf(entry.pack, formats).join(', ') : null}</bdi>
                {entry.isNew ? null : <Changes changes={entry.changes} system={system} />}
              </span>
            </label>
          </li>
        ))}
      </ul>
      {entries.length > most ? (
        <button type="button" class="quiet" onClick={() => setMost(most + MORE)}>
          Show {Math.min(MORE, entries.length - most)} more of {entries.length} packs
        </button>
      ) : null}
    </>
  )
}

function without(left: ReadonlySet<number>, row: number, taken: boolean): Set<number> {
  const next = new Set(left)
  if (taken) next.delete(row)
  else next.add(row)
  return next
}

function summaryOf({ added, changed, same }: ReturnType<typeof compareWithPacks>, problems: number): string {
  return [
    `${counted(added.length, 'new pack')}.`,
    changed.length > 0 ? `${changed.length} here already would change.` : '',
    same.length > 0 ? `${same.length} here already, the same.` : '',
    problems > 0 ? `${counted(problems, 'row')} not understood.` : '',
  ]
    .filter(Boolean)
    .join(' ')
}

/** What was decided in reading, once each. */
function Notes({ grid, layout, doubts }: { grid: Grid; layout: PackLayout; doubts: readonly string[] }) {
  const plain = plainLitresHeading(grid, layout)
  const reckoned = reckonedHeadings(grid, layout)
  const notes = [
    plain === null
      ? ''
      : `“${plain}” is taken as the total with pockets. If it is the main body alone, change it under the columns.`,
    ...unitlessMasses(grid, layout).map(
      ({ heading, unit }) =>
        `“${heading}” names no unit: read in ${unit}. If it is another, change it under the columns.`,
    ),
    reckoned.length === 0 ? '' : `Left out, as it follows from the rest: ${reckoned.join(', ')}.`,
    ...doubts,
  ].filter(Boolean)
  return (
    <>
      {notes.map(note => (
        <p key={note} class="hint">
          {note}
        </p>
      ))}
    </>
  )
}

function Changes({ changes, system }: { changes: ChangedPack['changes']; system: System }) {
  return (
    <>
      {changes.map(change => (
        <span key={`${change.setup}/${change.field}`} class="facts-line">
          {changeText(change, system)}
        </span>
      ))}
    </>
  )
}

/** "as sold, mass: from 900 g to 950 g" */
function changeText({ setup, field, row, from, to }: PackChange, system: System): string {
  if (field === 'setup') return `new set-up: ${to}`
  const of = setup === null ? '' : `${setup}, `
  return `${of}${fieldWord(field)}: from ${valueText(row, from, system)} to ${valueText(row, to, system)}`
}

function factsOf({ bodyLitres, bodyFrom, price, currency, setups }: PackFacts, formats: Formats): string[] {
  return [
    bodyLitres === undefined
      ? 'no litres'
      : `${bodyFrom === 'guess' ? 'about ' : ''}${formats.litres(bodyLitres)}`,
    ...setups.map(({ massKg, frame, ratedKg }) =>
      [
        massKg === undefined ? 'no mass' : formats.gear(massKg),
        frame === undefined ? 'frame not said' : frame,
        ratedKg === undefined ? '' : `up to ${formats.kg(ratedKg)}`,
      ]
        .filter(Boolean)
        .join(' '),
    ),
    price === undefined ? '' : `price ${priceText(price, currency ?? null)}`,
  ].filter(Boolean)
}
