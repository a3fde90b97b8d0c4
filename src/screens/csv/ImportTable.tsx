// A table from a spreadsheet as items of the open trip or things of the shelf: choose or paste it, see how it is read,
// add it in one edit. Loaded when it is opened. Nothing changes before "Add".

import { useMemo, useState } from 'preact/hooks'
import { Choice, useSystem } from '../../components/fields'
import { FIELD_NAMES, FIELDS, type FieldName, isTableOfPacks, type Target } from '../../files/csv'
import { openTrip } from '../../store'
import type { AddedNote } from './Added'
import type { Offered } from './Columns'
import { ImportDoor } from './ImportDoor'
import { ImportPacks } from './ImportPacks'
import { gridOf, layoutOf } from './opened'
import { ReadAs } from './ReadAs'
import { type Kept, usePacksSource, useSource } from './source'
import { TableRows } from './TableRows'
import './csv.css'

interface ImportTableProps {
  /** Where it goes unless the reader says otherwise. */
  to?: Target
  /** The level of its heading. */
  heading?: 'h2' | 'h3'
  /** Called to go over to plain lists, where that can be done. */
  onList?: () => void
}

const TARGETS = [
  { value: 'trip', label: 'This trip’s gear' },
  { value: 'shelf', label: 'The shelf' },
] as const

export function ImportTable({ to = 'trip', heading = 'h3', onList }: ImportTableProps) {
  const trip = openTrip.value
  const [chosen, setChosen] = useState<Target>(to)
  const target = trip ? chosen : 'shelf'
  const [kept, keep] = useSource(trip?.id)
  const [, keepPacks] = usePacksSource(trip?.id ?? '')
  const [asPacks, setAsPacks] = useState(false)
  if (asPacks && trip) return <ImportPacks heading={heading} />
  return (
    <ImportDoor
      title="Import a table"
      heading={heading}
      kept={kept}
      onKept={keep}
      beside={
        onList ? (
          <p class="hint">
            No columns, just an item a line?{' '}
            <button type="button" class="link" onClick={onList}>
              Paste a list instead
            </button>
          </p>
        ) : null
      }
      read={onAdded => (
        <>
          {trip ? <Choice label="Add to" options={TARGETS} chosen={target} onChoose={setChosen} /> : null}
          <OpenedTable
            key={target}
            kept={kept}
            target={target}
            onAsked={asked => keep({ ...kept, asked })}
            onAdded={onAdded}
            {...(trip && {
              onPacks: () => {
                keepPacks({ source: kept.source, asked: {} })
                keep({ source: null, asked: {} })
                setAsPacks(true)
              },
            })}
          />
        </>
      )}
    />
  )
}

const OFTEN: readonly FieldName[] = [
  'name',
  'group',
  'count',
  'mass',
  'massOfAll',
  'massUnit',
  'litres',
  'place',
  'worn',
  'use',
  'kcal',
  'kcalEach',
  'note',
]

function offeredFor(target: Target): Offered<FieldName> {
  const names = FIELD_NAMES.filter(name => target === 'shelf' || !FIELDS[name].shelf)
  return {
    fields: FIELDS,
    often: names.filter(name => OFTEN.includes(name)),
    also: names.filter(name => !OFTEN.includes(name)),
  }
}

interface OpenedTableProps {
  kept: Kept
  target: Target
  onAsked: (asked: Kept['asked']) => void
  onAdded: (note: AddedNote) => void
  /** Goes over to packs, where there is a trip to have them. */
  onPacks?: () => void
}

function OpenedTable({ kept: { source, asked }, target, onAsked, onAdded, onPacks }: OpenedTableProps) {
  const system = useSystem()
  const { encoding, separator } = asked
  const { grid, encoding: taken } = useMemo(() => gridOf(source!, asked), [source, encoding, separator])
  const layout = useMemo(
    () => (grid.ok ? layoutOf(grid, asked, { target, system }) : null),
    [grid, asked, target, system],
  )
  const isPacks = useMemo(() => grid.ok && isTableOfPacks(grid), [grid])
  return (
    <>
      {onPacks && isPacks ? (
        <p>
          These look like packs, not gear.{' '}
          <button type="button" onClick={onPacks}>
            Bring them in as packs
          </button>
        </p>
      ) : null}
      <ReadAs
        opened={{ grid, encoding: taken, layout }}
        offered={offeredFor(target)}
        {...(layout && { headings: layout.headings })}
        asked={asked}
        onAsked={onAsked}
      />
      {grid.ok && layout ? <TableRows grid={grid} layout={layout} target={target} onAdded={onAdded} /> : null}
    </>
  )
}
