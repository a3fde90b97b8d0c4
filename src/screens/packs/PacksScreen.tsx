// Packs: each with its set-ups judged for this trip, in the order asked for, and its figures one tap away.

import { useMemo, useRef } from 'preact/hooks'
import { readQuantity, useSystem } from '../../components/fields'
import { later, toTop } from '../../components/frame'
import { Warnings } from '../../components/judged'
import { entryProps, LongList } from '../../components/long-list'
import { MissingFigures } from '../../components/missing'
import { Doors, Row, WhenOpen } from '../../components/pieces'
import {
  addPack,
  type DraftPack,
  duplicatePack,
  groupedBy,
  LIMITS,
  movePack,
  type Plan,
  removePack,
} from '../../plan'
import type { Reckoning } from '../../reckon'
import { FIT_LINE, type Formats, formatsIn, missingOf, shortCautions } from '../../report'
import { actions, apart, edited, newId, openTrip } from '../../store'
import { type Detail, firstId, rowActions } from '../rows'
import { AnswerCounts } from './Answers'
import { ApartCard } from './ApartCard'
import { scaleOf } from './Bars'
import { useJudged } from './judged'
import { OwnFigures } from './OwnFigures'
import { PackEditor } from './PackEditor'
import { PackPictures } from './PackPictures'
import { PackSummary, PackVerdicts } from './PackSummary'
import './packs.css'
import { Thresholds } from './Thresholds'
import { takenWords } from './taken'
import { ViewChoices } from './ViewChoices'
import { AS_LISTED, answering, answerOf, inOrder, passes, view } from './view'

const EDITS = { what: 'pack', move: movePack, duplicate: duplicatePack, remove: removePack }

const ImportPacks = later(async () => (await import('../csv')).ImportPacks)
const GivePacks = later(async () => (await import('../share')).GivePacks)
const TABLE_DOORS = [{ label: 'Import a table', draw: () => <ImportPacks /> }]

/** Fewer packs than this need no ordering. */
const WORTH_SORTING = 2

/** More packs than this are a row each, that opens its card: sixty cards are forty screens of a phone. */
const MOST_CARDS = 6

/** `isApart`: apart from any trip, even where one is open. */
export function PacksScreen({ detail, onDetail, isApart = false }: Detail & { isApart?: boolean }) {
  const system = useSystem()
  const formats = formatsIn(system)
  const { packs } = (isApart ? apart : edited).value.draft
  const Card = isApart ? ApartCard : PackVerdicts
  const judged = useJudged(isApart)
  const { settled, comparisons } = judged
  // One pack alone has no choices on show that could bring it back.
  const chosen = packs.length >= WORTH_SORTING ? view.value : AS_LISTED
  const editing = packs.find(pack => detail === `packs/${pack.id}`)
  const price = readQuantity(chosen.priceText, {
    kind: 'money',
    label: 'Price up to',
    limit: LIMITS.pack.price,
    system,
  })
  const mass = readQuantity(chosen.massText, {
    kind: 'mass',
    label: 'Pack mass up to',
    limit: LIMITS.setup.massKg,
    system,
    fine: true,
  })
  const bounds = {
    price: 'value' in price ? price.value : undefined,
    massKg: 'value' in mass ? mass.value : undefined,
  }
  const byPack = useMemo(
    () => groupedBy(comparisons, ({ pack }) => settled?.packIds[pack] ?? ''),
    [comparisons],
  )
  const of = (id: string) => answering(byPack.get(id) ?? [])
  const isShort = packs.length > MOST_CARDS
  const hasAnswer = ({ id }: DraftPack) => chosen.answer === null || answerOf(of(id)) === chosen.answer
  const wanted = packs.filter(pack => pack === editing || (hasAnswer(pack) && passes(pack, chosen, bounds)))
  const ordered = inOrder(wanted, chosen.order, of)
  const rows = useHeld(ordered, editing?.id ?? null)
  // What is the same list is the same object, so that no scrolling starts anew.
  const order = rows.map(({ id }) => id).join('\n')
  const entries = useMemo(() => rows.map(({ id }) => ({ key: id })), [order])
  const asListed =
    chosen.order === 'listed' && rows.length === packs.length && packs.every(pack => pack.aside === undefined)
  const scale = useMemo(
    () => (settled && !isApart ? scaleOf(settled, comparisons) : null),
    [settled, comparisons],
  )
  const add = () => {
    const id = newId()
    actions.edit('Add a pack', draft => addPack(draft, firstId(id)))
    onDetail(`packs/${id}`)
  }
  return (
    <div class="screen">
      {openTrip.value ? null : <h1 class="unseen">Pack Reckoner</h1>}
      <div class="heading">
        <h2>{isApart ? 'My packs' : 'Packs'}</h2>
        {isApart ? (
          <button type="button" class="quiet" onClick={() => toTop(openTrip.value ? 'packs' : 'more')}>
            {openTrip.value ? 'Back to the trip' : 'Close'}
          </button>
        ) : null}
      </div>
      {packs.length === 0 ? <p>Type a few figures from a pack’s tag to see what it is good for.</p> : null}
      {!isApart && (isShort || chosen.answer) ? (
        <AnswerCounts
          answers={packs.flatMap(({ id, aside }) => (aside === undefined ? [answerOf(of(id))] : []))}
        />
      ) : null}
      {packs.length >= WORTH_SORTING ? (
        <ViewChoices
          shown={rows.length}
          all={packs.length}
          tags={tagsOf(packs)}
          {...{ system, price, mass }}
        />
      ) : null}
      {settled && !isApart ? (
        <>
          <Warnings cautions={shortCautions(settled.plan, settled.reckoning, formats)} />
          <CannotTell {...{ ...settled, formats }} />
        </>
      ) : null}
      <LongList
        entries={entries}
        open={editing?.id ?? null}
        class={isShort ? 'short-rows' : ''}
        draw={(at, count) => {
          const pack = rows[at]!
          const path = `packs/${pack.id}`
          const index = packs.indexOf(pack)
          const name = pack.name || `Pack ${index + 1}`
          const place = asListed ? { index, count: packs.length } : { index: 0, count: 1 }
          return (
            <Row
              key={pack.id}
              id={pack.id}
              entry={entryProps(pack.id, at, count)}
              open={detail === path}
              onToggle={() => onDetail(detail === path ? null : path)}
              summary={
                <PackSummary
                  {...{ pack, name, formats, isApart, scale }}
                  comparisons={of(pack.id)}
                  short={isShort}
                />
              }
              below={isShort && detail !== path ? null : <Card {...{ pack, judged, formats }} />}
              actions={rowActions(EDITS, { id: pack.id, name, besides: takenWords(pack.id), ...place })}
            >
              <PackEditor pack={pack} />
            </Row>
          )
        }}
      />
      {packs.length === 0 ? null : <p class="hint">{FIT_LINE}</p>}
      <button type="button" class="primary" onClick={add}>
        Add a pack
      </button>
      <Doors doors={[...TABLE_DOORS, { label: 'Give packs on', draw: () => <GivePacks packs={rows} /> }]} />
      {isApart ? null : (
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
      )}
      {settled && settled.reckoning.packs.length >= WORTH_SORTING ? (
        <WhenOpen class="more section" summary={<h3>Pictures</h3>}>
          {() => <PackPictures {...settled} formats={formats} />}
        </WhenOpen>
      ) : null}
      {isApart ? <OwnFigures /> : <Thresholds />}
    </div>
  )
}

const tagsOf = (packs: DraftPack[]) => [...new Set(packs.flatMap(({ tags = [] }) => tags))].sort()

/** The packs in their order; while one of them is being edited they keep the order they had before. */
function useHeld(ordered: DraftPack[], editing: string | null): DraftPack[] {
  const held = useRef<{ editing: string | null; view: unknown; ids: string[] } | null>(null)
  const before = held.current
  if (!before || editing === null || before.editing !== editing || before.view !== view.value) {
    held.current = { editing, view: view.value, ids: ordered.map(pack => pack.id) }
    return ordered
  }
  const at = (pack: DraftPack) =>
    before.ids.includes(pack.id) ? before.ids.indexOf(pack.id) : before.ids.length
  return ordered.toSorted((a, b) => at(a) - at(b))
}

interface CannotTellProps {
  plan: Plan
  reckoning: Reckoning
  formats: Formats
}

/** What nobody has said, once above the packs it leaves open. */
function CannotTell({ plan, reckoning, formats }: CannotTellProps) {
  const missing = missingOf(plan)
  const isOpen = reckoning.packs.some(({ answer }) => answer === 'cannot-tell')
  if (!isOpen || reckoning.missing.length === 0) return null
  return (
    <section class="sure-packing" aria-label="Not known yet">
      <h3>To tell more, say</h3>
      <MissingFigures {...{ missing, formats }} />
    </section>
  )
}
