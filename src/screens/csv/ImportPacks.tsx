// A table of packs from a spreadsheet as packs of the open trip: what each column holds, what would come in and what it
// would change, and one edit that does it. Nothing changes before "Add".

import { useMemo } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { guessPacksLayout, PACK_FIELD_NAMES, PACK_FIELDS, type PackFieldName } from '../../files/csv'
import { openTrip } from '../../store'
import type { AddedNote } from './Added'
import type { Offered } from './Columns'
import { ImportDoor } from './ImportDoor'
import { gridOf, withAsked } from './opened'
import { PacksRows } from './PacksRows'
import { ReadAs } from './ReadAs'
import { type Kept, usePacksSource } from './source'
import './csv.css'

const OFTEN: readonly PackFieldName[] = [
  'name',
  'maker',
  'body',
  'total',
  'outside',
  'mass',
  'massFrameOut',
  'frame',
  'rated',
  'price',
  'sealed',
]
const OFFERED: Offered<PackFieldName> = {
  fields: PACK_FIELDS,
  often: OFTEN,
  also: PACK_FIELD_NAMES.filter(name => !OFTEN.includes(name)),
}

export function ImportPacks({ heading = 'h3' }: { heading?: 'h2' | 'h3' }) {
  const [kept, keep] = usePacksSource(openTrip.value?.id ?? '')
  return (
    <ImportDoor
      title="Import a table of packs"
      heading={heading}
      kept={kept}
      onKept={keep}
      read={onAdded => (
        <OpenedPacks kept={kept} onAsked={asked => keep({ ...kept, asked })} onAdded={onAdded} />
      )}
    />
  )
}

interface OpenedPacksProps {
  kept: Kept<PackFieldName>
  onAsked: (asked: Kept<PackFieldName>['asked']) => void
  onAdded: (note: AddedNote) => void
}

function OpenedPacks({ kept: { source, asked }, onAsked, onAdded }: OpenedPacksProps) {
  const system = useSystem()
  const { encoding, separator, headerRow } = asked
  const { grid, encoding: taken } = useMemo(() => gridOf(source!, asked), [source, encoding, separator])
  const layout = useMemo(
    () =>
      grid.ok
        ? withAsked(
            guessPacksLayout(grid, { system, ...(headerRow === undefined ? {} : { headerRow }) }),
            asked,
          )
        : null,
    [grid, asked, system],
  )
  return (
    <>
      <ReadAs opened={{ grid, encoding: taken, layout }} offered={OFFERED} asked={asked} onAsked={onAsked} />
      {grid.ok && layout ? <PacksRows grid={grid} layout={layout} onAdded={onAdded} /> : null}
    </>
  )
}
