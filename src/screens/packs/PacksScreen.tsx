// The list of packs: how many are suitable, what is looked at, a row a pack, and what is done with all of them.

import { useMemo, useState } from 'preact/hooks'
import { later, toTop } from '../../components/frame'
import { Warnings } from '../../components/judged'
import { GroupHeading, LongList } from '../../components/long-list'
import { MissingFigures } from '../../components/missing'
import { Doors } from '../../components/pieces'
import { addPack } from '../../plan'
import { FIT_LINE, type Formats, missingOf, shortCautions } from '../../report'
import { actions, newId, openTrip } from '../../store'
import { firstId } from '../rows'
import { scaleOf } from './Bars'
import { ChartAndTable } from './ChartAndTable'
import { Counts } from './Counts'
import { Heading } from './Heading'
import type { Judgement } from './judged'
import { useLines } from './lines'
import { OwnFigures } from './OwnFigures'
import { PackRow } from './PackRow'
import { type PackList, usePackList } from './pack-list'
import { Thresholds } from './Thresholds'
import { ViewBar } from './ViewBar'

const ImportPacks = later(async () => (await import('../csv')).ImportPacks)
const GivePacks = later(async () => (await import('../share')).GivePacks)
const TABLE_DOORS = [{ label: 'Import a table', draw: () => <ImportPacks /> }]

interface PacksScreenProps {
  /** Apart from any trip, even where one is open. */
  isApart: boolean
  /** The pack whose page is open, or was open last: its row stays drawn. */
  open: string | null
  /** The page stands beside the list. */
  isBeside: boolean
  /** Wide enough for a table of all packs. */
  isDesk: boolean
  onOpen: (id: string) => void
}

export function PacksScreen({ isApart, open, isBeside, isDesk, onOpen }: PacksScreenProps) {
  const list = usePackList(isApart, isBeside ? open : null)
  const { packs, rows, judged, formats, isSortable } = list
  const { settled } = judged
  const onTrip = isApart ? null : settled
  const cautions = useMemo(
    () => (onTrip ? shortCautions(onTrip.plan, onTrip.reckoning, formats) : []),
    [onTrip, formats],
  )
  const [hasChart, setHasChart] = useState(false)
  const hasTable = isDesk && settled !== null && isSortable
  const lines = useLines(list, { isApart, isOn: hasTable || (hasChart && isSortable) })
  const inTable = new Set(lines.inArea.map(({ packId }) => packId))
  const seen = hasTable ? rows.filter(({ id }) => inTable.has(id)) : rows
  const add = () => {
    const id = newId()
    actions.edit('Add a pack', draft => addPack(draft, firstId(id)))
    onOpen(id)
  }
  return (
    <div class={hasTable ? 'screen packs over-all' : 'screen packs'}>
      {isApart ? <ApartHeading /> : <Heading list={list} />}
      {packs.length === 0 ? <p>Type a few figures from a pack’s tag to see what it is good for.</p> : null}
      <Warnings cautions={cautions} />
      {isSortable ? (
        <div class="stack">
          <Counts list={list} isApart={isApart} />
          <ViewBar {...{ list, isApart, hasTable }}>
            {hasTable || !settled ? null : (
              <button
                type="button"
                class="link"
                aria-expanded={hasChart}
                onClick={() => setHasChart(!hasChart)}
              >
                Chart
              </button>
            )}
          </ViewBar>
        </div>
      ) : null}
      {onTrip ? <CannotTell {...onTrip} formats={formats} /> : null}
      <ChartAndTable
        {...{ list, lines, isApart, hasTable, onOpen }}
        hasChart={hasTable || hasChart}
        chosen={isBeside ? open : null}
      />
      {hasTable ? null : <Rows {...{ list, isApart, open, isBeside, onOpen }} />}
      <button type="button" class="primary" onClick={add}>
        Add a pack
      </button>
      <Doors doors={[...TABLE_DOORS, { label: 'Give packs on', draw: () => <GivePacks packs={seen} /> }]} />
      {isApart ? null : <FromPacks />}
      {packs.length === 0 ? null : <p class="hint">{FIT_LINE}</p>}
      {isApart ? <OwnFigures /> : <Thresholds />}
    </div>
  )
}

const ApartHeading = () => (
  <div class="heading">
    <h2>My packs</h2>
    <button type="button" class="quiet" onClick={() => toTop(openTrip.value ? 'packs' : 'more')}>
      {openTrip.value ? 'Back to the trip' : 'Close'}
    </button>
  </div>
)

function Rows({ list, ...rest }: Omit<PacksScreenProps, 'isDesk'> & { list: PackList }) {
  const { rows, entries, judged, isSortable } = list
  const { settled, comparisons } = judged
  const byId = useMemo(() => new Map(rows.map(pack => [pack.id, pack])), [rows])
  const scale = useMemo(
    () => (settled && !rest.isApart ? scaleOf(settled, comparisons) : null),
    [settled, comparisons, rest.isApart],
  )
  return (
    <>
      <LongList
        entries={entries}
        open={rest.open}
        class="pack-rows"
        draw={(at, of) => {
          const { key, heading } = entries[at]!
          if (heading !== undefined) return <GroupHeading key={key} id={key} name={heading} at={at} of={of} />
          const pack = byId.get(key)!
          return (
            <PackRow
              key={key}
              {...{ pack, at, of, list, scale }}
              isApart={rest.isApart}
              isOpen={rest.isBeside && rest.open === key}
              onOpen={rest.onOpen}
            />
          )
        }}
      />
      {scale && isSortable ? (
        <p class="hint">Bars: litres above, load it can carry below. The mark: what this trip asks for.</p>
      ) : null}
    </>
  )
}

/** At a desk they stand beside the answer. */
const FromPacks = () => (
  <div class="actions from-packs">
    <button type="button" onClick={() => toTop('shop')}>
      At the shop
    </button>
    <button type="button" onClick={() => toTop('all-trips')}>
      All my trips
    </button>
    <button type="button" onClick={() => toTop('packs-beside')}>
      Packs side by side
    </button>
    <button type="button" onClick={() => toTop('side-by-side')}>
      Side by side
    </button>
    <button type="button" onClick={() => toTop('own-packs')}>
      Without a trip
    </button>
  </div>
)

/** What nobody has said, once above the packs it leaves open. */
function CannotTell({ plan, reckoning, formats }: Judgement & { formats: Formats }) {
  const isOpen = reckoning.packs.some(({ answer }) => answer === 'cannot-tell')
  if (!isOpen || reckoning.missing.length === 0) return null
  return (
    <section class="sure-packing" aria-label="Not known yet">
      <h3>To tell more, say</h3>
      <MissingFigures missing={missingOf(plan)} formats={formats} />
    </section>
  )
}
