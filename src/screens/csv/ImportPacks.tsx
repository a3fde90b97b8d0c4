// A table of packs from a spreadsheet as packs of the open trip: what each column holds, what would come in and what it
// would change, and one edit that does it. Nothing changes before "Add".

import { useMemo, useState } from 'preact/hooks'
import { useSystem } from '../../components/fields'
import { guessPacksLayout, PACK_FIELD_NAMES, PACK_FIELDS, type PackFieldName } from '../../files/csv'
import { openTrip } from '../../store'
import { Added, type AddedNote } from './Added'
import type { Offered } from './Columns'
import { gridOf, withAsked } from './opened'
import { PacksRows } from './PacksRows'
import { ReadAs } from './ReadAs'
import { type Kept, usePacksSource } from './source'
import { TableSource } from './TableSource'
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

export function ImportPacks({ heading: Heading = 'h3' }: { heading?: 'h2' | 'h3' }) {
  const trip = openTrip.value
  const [kept, keep] = usePacksSource(trip?.id ?? '')
  const [added, setAdded] = useState<(AddedNote & { from: Kept<PackFieldName> }) | null>(null)
  if (!trip) return null
  return (
    <section class="table-import" aria-label="Import a table of packs">
      <Heading>Import a table of packs</Heading>
      {added ? (
        <Added
          added={added}
          onUndone={() => {
            keep(added.from)
            setAdded(null)
          }}
        />
      ) : null}
      <TableSource
        source={kept.source}
        onSource={source => {
          setAdded(null)
          keep({ source, asked: {} })
        }}
      />
      {kept.source ? (
        <OpenedPacks
          kept={kept}
          onAsked={asked => keep({ ...kept, asked })}
          onAdded={note => {
            setAdded({ ...note, from: kept })
            keep({ source: null, asked: {} })
          }}
        />
      ) : null}
    </section>
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
