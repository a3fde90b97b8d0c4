// A pack in a line or two, and below it what it is for this trip.

import type { DraftPack } from '../../plan'
import { ANSWERS, type Formats } from '../../report'
import { type Comparison, ownWords } from '../../report/compare-packs'
import { shelf } from '../../store'
import { Bars, type Scale } from './Bars'
import type { Judged } from './judged'
import { PartlyKnown, partlyKnown } from './Partly'
import { Verdicts } from './Verdicts'
import { answerOf, orderFigure, view } from './view'

interface SummaryProps {
  pack: DraftPack
  name: string
  comparisons: readonly Comparison[]
  /** With its answer and the figure sorted by, since nothing stands below it. */
  short: boolean
  /** Apart from any trip there is no answer: what it would be when full. */
  isApart: boolean
  /** Of the bars of a short row; null: there are none. */
  scale: Scale | null
  formats: Formats
}

export function PackSummary({ pack, name, comparisons, short, isApart, scale, formats }: SummaryProps) {
  const masses = pack.setups.flatMap(setup =>
    setup.massKg === undefined ? [] : [formats.gear(setup.massKg)],
  )
  const litres = pack.bodyLitres === undefined ? 'no litres yet' : formats.litres(pack.bodyLitres)
  const earned = ownWords(comparisons, shelf.value.figures ?? {})
  const answer = short && !isApart ? answerOf(comparisons) : null
  const isOutgrown = isApart && comparisons.length > 0 && comparisons.every(({ outgrows }) => outgrows)
  const figure = short
    ? orderFigure(view.value.order, comparisons, { formats, currency: pack.currency })
    : null
  return (
    <>
      <PackName pack={pack} name={name} />
      <span class="facts-line" data-figures="typed">
        {answer ? (
          <>
            <span class="row-answer" data-answer={answer}>
              <span aria-hidden="true">{ANSWERS[answer].mark} </span>
              {ANSWERS[answer].words}
            </span>
            {' · '}
          </>
        ) : null}
        {[litres, ...masses].join(', ')}
        {figure ? <span data-figures="why"> · {figure}</span> : null}
        {isOutgrown ? ' · too heavy when full' : null}
        {earned.length > 0 ? ` · ${earned.join(', ')}` : null}
        {pack.aside === undefined ? null : ` · set aside${pack.aside ? `: ${pack.aside}` : ''}`}
      </span>
      {short && scale ? <Bars {...{ pack, comparisons, scale }} /> : null}
    </>
  )
}

/** Struck through where it is set aside, and with what marks it among many. */
function PackName({ pack, name }: { pack: DraftPack; name: string }) {
  const marks = [pack.starred ? 'starred' : '', pack.has === 'owned' ? 'mine' : (pack.has ?? '')].filter(
    Boolean,
  )
  return (
    <span class="name">
      {pack.aside === undefined ? <bdi>{name}</bdi> : <s>{name}</s>}
      {marks.length > 0 ? <span class="facts-line"> {marks.join(', ')}</span> : null}
    </span>
  )
}

interface JudgedProps {
  pack: DraftPack
  judged: Judged
  formats: Formats
}

/** The verdicts; of set-ups that lack their mass or litres, as much as can be said. */
export function PackVerdicts({ pack, judged: { settled, comparisons, isRefused }, formats }: JudgedProps) {
  if (isRefused)
    return (
      <p class="hint verdict">
        Not judged: the food has too little energy for its mass; change it under Food.
      </p>
    )
  if (!settled) return null
  const { plan, packIds, reckoning } = settled
  const packIndex = packIds.indexOf(pack.id)
  return (
    <>
      {packIndex < 0 ? null : (
        <Verdicts
          {...{ packIndex, plan, reckoning, formats }}
          notBeaten={comparisons.map(c => c.standsOut)}
        />
      )}
      {partlyKnown(pack).map(setup => (
        <PartlyKnown key={setup.id} {...{ pack, setup, plan, formats }} />
      ))}
    </>
  )
}
