// A pack in a line or two, and below it what it is for this trip.

import type { DraftPack } from '../../plan'
import { ANSWERS, type Formats } from '../../report'
import type { Comparison } from '../../report/compare-packs'
import { reckoned } from '../../store'
import type { Judgement } from './judged'
import { PartlyKnown, partlyKnown } from './Partly'
import { Verdicts } from './Verdicts'
import { answerOf, orderFigure, view } from './view'

interface SummaryProps {
  pack: DraftPack
  name: string
  comparisons: readonly Comparison[]
  /** With its answer and the figure sorted by, since nothing stands below it. */
  short: boolean
  formats: Formats
}

export function PackSummary({ pack, name, comparisons, short, formats }: SummaryProps) {
  const masses = pack.setups.flatMap(setup =>
    setup.massKg === undefined ? [] : [formats.gear(setup.massKg)],
  )
  const litres = pack.bodyLitres === undefined ? 'no litres yet' : formats.litres(pack.bodyLitres)
  const answer = short ? answerOf(comparisons) : null
  const figure = short
    ? orderFigure(view.value.order, comparisons, { formats, currency: pack.currency })
    : null
  return (
    <>
      <bdi class="name">{name}</bdi>
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
      </span>
    </>
  )
}

interface JudgedProps {
  pack: DraftPack
  settled: Judgement | null
  comparisons: Comparison[]
  formats: Formats
}

/** The verdicts; of set-ups that lack their mass or litres, as much as can be said. */
export function Judged({ pack, settled, comparisons, formats }: JudgedProps) {
  if (!reckoned.value) return null
  if (!settled)
    return (
      <p class="hint verdict">
        Not judged: the food has too little energy for its mass; change it under Food.
      </p>
    )
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
