// The four answers, and every verdict with its sentence, as it is said of invented packs.

import { useMemo } from 'preact/hooks'
import { OtherPlan, Why } from '../../components/why'
import { ANSWERS } from '../../report'
import { thresholdsText, type VerdictExample, verdictExamples } from '../../report/help'
import type { ContentsProps } from './contents-props'

const TITLE = 'Said of an invented pack'

const GROUPS = [
  { answer: 'does', weight: null, says: 'Room and support are enough.' },
  { answer: 'with-care', weight: 'warns', says: 'It is enough, but:' },
  { answer: 'cannot-tell', weight: 'leaves-open', says: 'A missing figure could turn the answer:' },
  { answer: 'does-not', weight: 'fails', says: 'One of these holds:' },
] as const

export function Answers({ formats }: ContentsProps) {
  const examples = useMemo(() => verdictExamples(formats), [formats])
  const of = (weight: VerdictExample['weight']) => examples.filter(each => each.weight === weight)
  return (
    <>
      <p>Tap one for its sentence.</p>
      {GROUPS.map(({ answer, weight, says }) => (
        <section key={answer} class="verdict" data-answer={answer}>
          <h3 class="verdict-answer">
            <span aria-hidden="true">{ANSWERS[answer].mark} </span>
            {ANSWERS[answer].words}
          </h3>
          <p>{says}</p>
          {weight ? <Verdicts examples={of(weight)} /> : null}
        </section>
      ))}
      <section>
        <h3>Said with any answer</h3>
        <Verdicts examples={of('says')} />
      </section>
      <p>{thresholdsText(formats)}</p>
    </>
  )
}

/** Each by its first words; the sentence opens with its reasons, and stands in full on paper. */
function Verdicts({ examples }: { examples: readonly VerdictExample[] }) {
  return (
    <ul class="help-leads cluster">
      {examples.map(({ code, lead, rest, of, about }) => {
        const short = lead.replace(/[:,]$/, '')
        return (
          <li key={code}>
            <OtherPlan.Provider value={of}>
              <Why about={about} figure={short} title={TITLE}>
                <p data-figures={code === 'brim' ? 'cited' : undefined}>
                  <strong>{lead}</strong>
                  {rest}
                </p>
              </Why>
            </OtherPlan.Provider>
            <span class="help-printed">{lead.slice(short.length) + rest}</span>
          </li>
        )
      })}
    </ul>
  )
}
