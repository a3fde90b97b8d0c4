// One pack in a row: the mark of its answer and why, its two bars, the figure sorted by. It is the door to its page,
// where every figure has its reason.

import { useMemo } from 'preact/hooks'
import { entryProps } from '../../components/long-list'
import { type DraftPack, packName } from '../../plan'
import { ANSWERS, type Formats } from '../../report'
import type { Comparison } from '../../report/compare-packs'
import { Bars, type Scale } from './Bars'
import { PackMenu } from './PackMenu'
import type { Place } from './pack-actions'
import type { PackList } from './pack-list'
import { answerWords, packFacts, packMarks, packWords } from './pack-words'
import './pack-rows.css'
import { orderFigure, type PackAnswer } from './view'

interface PackRowProps {
  pack: DraftPack
  /** Its place among all entries of the list; `of` how many where not all are drawn. */
  at: number
  of: number | undefined
  list: PackList
  /** Null: there are no bars. */
  scale: Scale | null
  isApart: boolean
  /** Its page stands beside the list. */
  isOpen: boolean
  onOpen: (id: string) => void
}

/** Drawn again only when something of its own changes: the list draws itself anew while it is scrolled. */
export function PackRow(props: PackRowProps) {
  return useMemo(() => <DrawnRow {...props} />, Object.values(props))
}

function DrawnRow({ pack, at, of, list, scale, isApart, isOpen, onOpen }: PackRowProps) {
  const { packs, isAsListed, chosen, formats } = list
  const index = packs.indexOf(pack)
  const name = packName(pack, index)
  const place: Place = isAsListed ? { index, count: packs.length } : { index: 0, count: 1 }
  const answer = isApart ? null : list.answerOf(pack.id)
  const short = answer ? (list.judged.packs.get(pack.id)?.short(formats) ?? '') : ''
  const comparisons = list.of(pack.id)
  const figure = orderFigure(chosen.order, { pack, comparisons }, { formats, missing: list.missing })
  return (
    <li
      class={isOpen ? 'row pack-row open' : 'row pack-row'}
      id={`row-${pack.id}`}
      data-answer={answer}
      {...entryProps(pack.id, at, of)}
    >
      <button
        type="button"
        class="summary door"
        aria-current={isOpen ? 'true' : undefined}
        onClick={() => onOpen(pack.id)}
      >
        <span class="row-mark" aria-hidden="true">
          {answer ? ANSWERS[answer].mark : ''}
        </span>
        <span class="row-head">
          <PackName pack={pack} name={name} />
          <span class="row-figure">
            {figure ?? (
              <>
                <span aria-hidden="true">–</span>
                <span class="unseen">not known</span>
              </>
            )}
          </span>
        </span>
        <Says {...{ pack, comparisons, answer, short, formats }} />
        {scale ? <Bars {...{ pack, comparisons, scale }} /> : null}
      </button>
      <PackMenu pack={pack} name={name} place={place} />
    </li>
  )
}

/** Struck through where it is set aside, and with what marks it among many. */
function PackName({ pack, name }: { pack: DraftPack; name: string }) {
  const marks = packMarks(pack)
  return (
    <span class="row-name">
      <span class="name">{pack.aside === undefined ? <bdi>{name}</bdi> : <s>{name}</s>}</span>
      {pack.starred ? (
        <span>
          {' '}
          <span aria-hidden="true">★</span>
          <span class="unseen">starred</span>
        </span>
      ) : null}
      {marks.length > 0 ? <span class="facts-line"> {marks.join(', ')}</span> : null}
    </span>
  )
}

interface SaysProps {
  pack: DraftPack
  comparisons: readonly Comparison[]
  /** Null: apart from any trip, where its own figures stand instead. */
  answer: PackAnswer | null
  /** Why, in a few words. */
  short: string
  formats: Formats
}

function Says({ pack, comparisons, answer, short, formats }: SaysProps) {
  const isOutgrown = !answer && comparisons.length > 0 && comparisons.every(({ outgrows }) => outgrows)
  // Of one that does not, the mark says so and by how much tells more.
  const isShort = answer === 'does-not' && short
  const words = [
    answer ? (isShort ? short : answerWords(answer, short)) : packFacts(pack, formats),
    ...(isOutgrown ? ['too heavy when full'] : []),
    ...packWords(pack, comparisons),
  ]
  return (
    <span class="row-says">
      {isShort ? <span class="unseen">{answerWords(answer, '')}: </span> : null}
      {words.join(' · ')}
    </span>
  )
}
