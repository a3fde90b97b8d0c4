// A pack judged as far as it is known: the answer, what decides it, and what is missing.

import type { Plan } from '../../plan'
import { ANSWERS } from '../../report'
import type { KnownPack, Partly } from '../../report/compare-packs'
import { Why } from '../why'

interface PartlyJudgedProps {
  judged: Partly
  name: string | null
  /** What it was judged by. */
  plan: Plan
  known: KnownPack
}

export function PartlyJudged({ judged, name, plan, known }: PartlyJudgedProps) {
  return (
    <div class="verdict" data-figures="why" data-answer={judged.answer}>
      <p class="verdict-answer">
        <span aria-hidden="true">{ANSWERS[judged.answer].mark} </span>
        {name ? <bdi>{name}: </bdi> : null}
        {ANSWERS[judged.answer].words}
      </p>
      {judged.verdicts.map(({ code, lead, rest }) => (
        <p key={code}>
          <strong>{lead}</strong>
          {rest}
        </p>
      ))}
      {judged.basis ? <p class="hint">{judged.basis}</p> : null}
      {judged.missing.map(text => (
        <p key={text} class="hint">
          {text}
        </p>
      ))}
      {judged.verdicts.length ? <Why about={{ kind: 'tag', plan, known }} figure="All figures" /> : null}
    </div>
  )
}
