// Cautions in their standard signal words: the word, then the hazard, its outcome and how to avoid it.

import type { Caution } from '../../report'
import { Why } from '../why'

interface CautionsProps {
  cautions: readonly Caution[]
}

export function Cautions({ cautions }: CautionsProps) {
  if (cautions.length === 0) return null
  return (
    <ul class="cautions">
      {cautions.map(({ signal, text, more, asks }) => (
        <li key={text} class={`caution ${signal.toLowerCase()}`} data-figures={asks ? 'why' : 'cited'}>
          <strong>{signal}</strong> {text}
          {more?.length ? (
            <details>
              <summary>The other {more.length === 1 ? 'stretch' : `${more.length} stretches`}</summary>
              <ul>
                {more.map(line => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </details>
          ) : null}
          {asks?.map(({ figure, about }) => (
            <Why key={figure} about={about} figure={figure} />
          ))}
        </li>
      ))}
    </ul>
  )
}
