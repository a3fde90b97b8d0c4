// A pack judged as far as it is known: the answer, what decides it, and what is missing.

import type { Partly } from '../../report/choosing'

export function PartlyJudged({ judged, name }: { judged: Partly; name: string | null }) {
  return (
    <div class="verdict">
      <p class="verdict-answer">
        {name ? <bdi>{name}: </bdi> : null}
        {judged.answer}
      </p>
      {judged.verdicts.map(({ code, lead, rest }) => (
        <p key={code}>
          <strong>{lead}</strong>
          {rest}
        </p>
      ))}
      {judged.missing.map(text => (
        <p key={text} class="hint">
          {text}
        </p>
      ))}
    </div>
  )
}
